/** Markdown -> HTML tree: remark with the table extension only, sanitized. Not in the page: there chapters are parsed already. */
import type { Element, ElementContent, Root, RootContent } from "hast";
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
export const parseToHtml = (markdown: string): Root => {
  const tree = pipeline.runSync(pipeline.parse(markdown)) as Root;
  return { ...tree, children: tree.children.map(tightened) };
};

const isParagraph = (node: ElementContent): node is Element =>
  node.type === "element" && node.tagName === "p";

const holdsImage = ({ children }: Element): boolean =>
  children.length === 1 && children[0]?.type === "element" && children[0].tagName === "img";

/** A step with a figure makes Markdown's whole list loose: its items' only paragraphs of text become plain text again. */
function tightened<Node extends RootContent>(node: Node): Node {
  if (node.type !== "element") return node;
  const children = node.children.map(tightened);
  const texts = children.filter((child) => isParagraph(child) && !holdsImage(child));
  if (node.tagName !== "li" || texts.length !== 1) return { ...node, children };
  const kept = children.filter((child) => child.type !== "text" || child.value.trim() !== "");
  return {
    ...node,
    children: kept.flatMap((child) => (child === texts[0] ? (child as Element).children : [child])),
  };
}
