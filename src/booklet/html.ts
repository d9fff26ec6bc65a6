/** Markdown -> HTML tree. Parsing: remark with the table extension only; sanitized before figures and numbers go in. */
import type { Element, ElementContent, Root, RootContent } from "hast";
import type { Root as MdRoot } from "mdast";
import { gfmTableFromMarkdown } from "mdast-util-gfm-table";
import { gfmTable } from "micromark-extension-gfm-table";
import rehypeSanitize from "rehype-sanitize";
import remarkParse from "remark-parse";
import remarkRehype from "remark-rehype";
import { type Processor, unified } from "unified";
import type { Figure } from "../figure/figure.ts";
import { exact } from "../solve/json.ts";
import type { Plan, Value } from "../solve/plan.ts";
import { filled, type Run, skeleton, withoutMarks } from "./marks.ts";
import type { Photographs } from "./notebook/photographs.ts";
import { pictureOf } from "./notebook/picture.ts";
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

/** The Markdown tree, as the parser of the booklet reads it. */
export const parseMarkdown = (markdown: string): MdRoot => pipeline.parse(markdown) as MdRoot;

/** Parsed shapes by chapter: while only numbers change, a chapter is parsed once. */
export type Shapes = Map<string, { readonly shape: string; readonly tree: Root }>;

/**
 * One chapter's Markdown as HTML nodes: numbers become <data>, figure images become the drawings.
 *
 * @param shapes what was parsed before; the chapter's shape is kept there
 * @param photographs the project's own pictures by path
 */
export function chapterNodes(
  name: string,
  markdown: string,
  plan: Plan,
  figures: ReadonlyMap<string, Figure>,
  shapes: Shapes = new Map(),
  photographs: Photographs = new Map(),
): Element {
  const { shape, slots } = skeleton(markdown);
  let known = shapes.get(name);
  if (known?.shape !== shape) {
    known = { shape, tree: pipeline.runSync(pipeline.parse(shape)) as Root };
    shapes.set(name, known);
  }
  return shapeChapter(name, new Filling(plan, figures, slots, photographs).all(known.tree.children));
}

class Filling {
  private readonly plan: Plan;
  private readonly figures: ReadonlyMap<string, Figure>;
  private readonly slots: readonly Run[];
  private readonly photographs: Photographs;

  constructor(
    plan: Plan,
    figures: ReadonlyMap<string, Figure>,
    slots: readonly Run[],
    photographs: Photographs,
  ) {
    this.plan = plan;
    this.figures = figures;
    this.slots = slots;
    this.photographs = photographs;
  }

  all(nodes: readonly RootContent[]): ElementContent[] {
    return nodes.flatMap((node): ElementContent[] => {
      if (node.type === "text") return this.text(node.value);
      if (node.type !== "element") return [];
      const picture = figureOf(node, this.figures) ?? pictureOf(node, this.photographs);
      return [picture ?? { ...node, children: this.all(node.children) }];
    });
  }

  /** Plain text side by side is one node, as a browser reads it. */
  private text(text: string): ElementContent[] {
    const nodes: ElementContent[] = [];
    for (const run of filled(text, this.slots)) {
      const value = run.name === undefined ? undefined : this.plan.values.get(run.name);
      const last = nodes.at(-1);
      if (value) nodes.push(dataNode(value, run.text));
      else if (last?.type === "text") last.value += run.text;
      else nodes.push({ type: "text", value: run.text });
    }
    return nodes;
  }
}

const dataNode = (value: Value, text: string): Element => ({
  type: "element",
  tagName: "data",
  properties: { value: exact(value.quantity), dataName: value.name },
  children: [{ type: "text", value: text }],
});

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
