/** Markdown -> HTML tree -> page. Parsing: remark with the table extension only; sanitized before figures go in. */
import type { Element, ElementContent, Root, RootContent } from "hast";
import type { Root as MdRoot } from "mdast";
import { gfmTableFromMarkdown } from "mdast-util-gfm-table";
import { gfmTable } from "micromark-extension-gfm-table";
import rehypeSanitize from "rehype-sanitize";
import rehypeStringify from "rehype-stringify";
import remarkParse from "remark-parse";
import remarkRehype from "remark-rehype";
import { type Processor, unified } from "unified";
import type { Figure } from "../figure/figure.ts";
import { exact } from "../solve/json.ts";
import type { Plan } from "../solve/plan.ts";
import { runs, withoutMarks } from "./marks.ts";
import { shapeChapter } from "./shape.ts";

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
const stringifier = unified().use(rehypeStringify).freeze();

/** The Markdown tree, as the parser of the booklet reads it. */
export const parseMarkdown = (markdown: string): MdRoot => pipeline.parse(markdown) as MdRoot;

/** One chapter's Markdown as HTML nodes: numbers become <data>, figure images become the drawings. */
export function chapterNodes(
  name: string,
  markdown: string,
  plan: Plan,
  figures: ReadonlyMap<string, Figure>,
): Element {
  const tree = pipeline.runSync(pipeline.parse(markdown)) as Root;
  return shapeChapter(name, replaceAll(tree.children, plan, figures));
}

function replaceAll(
  nodes: readonly RootContent[],
  plan: Plan,
  figures: ReadonlyMap<string, Figure>,
): ElementContent[] {
  return nodes.flatMap((node): ElementContent[] => {
    if (node.type === "text") return dataNodes(node.value, plan);
    if (node.type !== "element") return [];
    const figure = figureOf(node, figures);
    if (figure) return [figure];
    return [{ ...node, children: replaceAll(node.children, plan, figures) }];
  });
}

function dataNodes(text: string, plan: Plan): ElementContent[] {
  return runs(text).map((run): ElementContent => {
    const value = run.name === undefined ? undefined : plan.values.get(run.name);
    if (!value) return { type: "text", value: run.text };
    return {
      type: "element",
      tagName: "data",
      properties: { value: exact(value.quantity), dataName: value.name },
      children: [{ type: "text", value: run.text }],
    };
  });
}

/** A paragraph that holds one figure's image and nothing else. */
function figureOf(node: Element, figures: ReadonlyMap<string, Figure>): Element | undefined {
  if (node.tagName !== "p" || node.children.length !== 1) return undefined;
  const [image] = node.children;
  if (image?.type !== "element" || image.tagName !== "img") return undefined;
  const name = /^figures\/([\w-]+)\.svg$/.exec(String(image.properties.src))?.[1];
  const figure = name === undefined ? undefined : figures.get(name);
  if (!figure) return undefined;
  return {
    type: "element",
    tagName: "figure",
    properties: { id: `figure-${figure.name}` },
    children: [
      figure.svg,
      {
        type: "element",
        tagName: "figcaption",
        properties: {},
        children: [{ type: "text", value: withoutMarks(figure.title) }],
      },
    ],
  };
}

/** HTML text of nodes. */
export function nodesToHtml(children: readonly ElementContent[]): string {
  return stringifier.stringify({ type: "root", children: [...children] });
}
