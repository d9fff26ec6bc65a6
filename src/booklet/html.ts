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
import type { Plan } from "../solve/plan.ts";
import { type FilledRun, filled, type Run, skeleton, withoutMarks } from "./marks.ts";
import { html } from "./nodes.ts";
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

/** A booklet to compare with: what was printed in each chapter's slots, each value's text, each drawing. */
export interface Before {
  readonly chapters: ReadonlyMap<string, { readonly shape: string; readonly slots: readonly Run[] }>;
  readonly values: ReadonlyMap<string, string>;
  readonly figures: ReadonlyMap<string, string>;
}

/** What a chapter's nodes are made with. */
export interface Making {
  readonly plan: Plan;
  readonly figures: ReadonlyMap<string, Figure>;
  readonly before?: Before | undefined;
}

/**
 * One chapter's Markdown as HTML nodes: numbers become <data>, figure images become the drawings.
 *
 * @param shapes what was parsed before; the chapter's shape is kept there
 */
export function chapterNodes(
  name: string,
  markdown: string,
  making: Making,
  shapes: Shapes = new Map(),
): Element {
  const { shape, slots } = skeleton(markdown);
  let known = shapes.get(name);
  if (known?.shape !== shape) {
    known = { shape, tree: pipeline.runSync(pipeline.parse(shape)) as Root };
    shapes.set(name, known);
  }
  const before = making.before?.chapters.get(name);
  const old = before?.shape === shape ? before.slots : undefined;
  return shapeChapter(name, new Filling(making, slots, old).all(known.tree.children));
}

class Filling {
  private readonly making: Making;
  private readonly slots: readonly Run[];
  private readonly old: readonly Run[] | undefined;

  constructor(making: Making, slots: readonly Run[], old: readonly Run[] | undefined) {
    this.making = making;
    this.slots = slots;
    this.old = old;
  }

  all(nodes: readonly RootContent[]): ElementContent[] {
    return joined(
      nodes.flatMap((node): ElementContent[] => {
        if (node.type === "text") return filled(node.value, this.slots).map((run) => this.run(run));
        if (node.type !== "element") return [];
        return [figureOf(node, this.making) ?? { ...node, children: this.all(node.children) }];
      }),
    );
  }

  private run(run: FilledRun): ElementContent {
    const { plan, before } = this.making;
    const value = run.name === undefined ? undefined : plan.values.get(run.name);
    const old = run.slot === undefined ? undefined : this.old?.[run.slot]?.text;
    if (!value) {
      const changed = old !== undefined && old !== run.text && old !== "";
      return changed ? html("span", { dataWas: old }, [run.text]) : { type: "text", value: run.text };
    }
    const was = old ?? before?.values.get(value.name);
    const properties = { value: exact(value.quantity), dataName: value.name };
    return html(
      "data",
      was === undefined || was === run.text ? properties : { ...properties, dataWas: was },
      [run.text],
    );
  }
}

/** Texts side by side are one node, and empty ones none, as a browser reads them. */
function joined(nodes: readonly ElementContent[]): ElementContent[] {
  const out: ElementContent[] = [];
  for (const node of nodes) {
    const last = out.at(-1);
    if (node.type === "text" && node.value === "") continue;
    if (node.type === "text" && last?.type === "text")
      out[out.length - 1] = { type: "text", value: last.value + node.value };
    else out.push(node);
  }
  return out;
}

/** A paragraph that holds one figure's image and nothing else. */
function figureOf(node: Element, { figures, before }: Making): Element | undefined {
  if (node.tagName !== "p" || node.children.length !== 1) return undefined;
  const [image] = node.children;
  if (image?.type !== "element" || image.tagName !== "img") return undefined;
  const name = /^figures\/([\w-]+)\.svg$/.exec(String(image.properties.src))?.[1];
  const figure = name === undefined ? undefined : figures.get(name);
  if (!figure) return undefined;
  const changed = before !== undefined && before.figures.get(figure.name) !== pictureOf(figure);
  return html("figure", { id: `figure-${figure.name}`, ...(changed ? { className: ["changed"] } : {}) }, [
    figure.svg,
    html("figcaption", {}, [withoutMarks(figure.title)]),
  ]);
}

/** A drawing as a text to compare. */
export const pictureOf = (figure: Figure): string => JSON.stringify(figure.svg);
