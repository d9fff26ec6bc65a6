/** The bare pipeline of the given packages, doing only the Markdown of a booklet: what everything is measured against. */
import { readFileSync, writeFileSync } from "node:fs";
import { gfmTableFromMarkdown } from "mdast-util-gfm-table";
import { gfmTable } from "micromark-extension-gfm-table";
import rehypeStringify from "rehype-stringify";
import remarkParse from "remark-parse";
import remarkRehype from "remark-rehype";
import { type Processor, unified } from "unified";

function tables(this: Processor): void {
  Object.assign(this.data(), {
    micromarkExtensions: [gfmTable()],
    fromMarkdownExtensions: [gfmTableFromMarkdown()],
  });
}

const pipeline = unified().use(remarkParse).use(tables).use(remarkRehype).use(rehypeStringify).freeze();

/** Markdown as HTML. */
export const toHtml = (markdown: string): string => String(pipeline.processSync(markdown));

// As a program: a booklet.md in, its HTML out.
const [, , from, to] = process.argv;
if (from?.endsWith("booklet.md") && to?.endsWith(".html"))
  writeFileSync(to, toHtml(readFileSync(from, "utf8")));
