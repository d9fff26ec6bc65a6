/** Markdown -> HTML tree: remark with the table extension only, sanitized. Not in the page: there chapters are parsed already. */
import type { Root } from "hast";
import type { Root as MdRoot } from "mdast";
import { gfmTableFromMarkdown } from "mdast-util-gfm-table";
import { gfmTable } from "micromark-extension-gfm-table";
import rehypeSanitize from "rehype-sanitize";
import remarkParse from "remark-parse";
import remarkRehype from "remark-rehype";
import { type Processor, unified } from "unified";

/** Pipe tables and nothing else of GFM: no autolinks. */
function tables(this: Processor): void {
  const data = this.data() as Record<string, unknown[] | undefined>;
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), gfmTable()];
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), gfmTableFromMarkdown()];
}

const pipeline = unified()
  .use(remarkParse)
  .use(tables as never)
  .use(remarkRehype)
  .use(rehypeSanitize)
  .freeze();

/** The Markdown tree, as the parser of the booklet reads it. */
export const parseMarkdown = (markdown: string): MdRoot => pipeline.parse(markdown) as MdRoot;

/** Sanitized HTML nodes, each with the place in the Markdown it came from. */
export const parseToHtml = (markdown: string): Root => pipeline.runSync(pipeline.parse(markdown)) as Root;
