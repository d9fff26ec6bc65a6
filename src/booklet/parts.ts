/** Plan -> the parts of a booklet's page: drawings and HTML nodes. The same in Node and in the page. */
import shapes from "plainwork:shapes";
import type { Element } from "hast";
import type { Figure } from "../figure/figure.ts";
import { drawFigure, figuresOf } from "../figure/index.ts";
import { guidesOf } from "../guide/index.ts";
import type { Plan } from "../solve/plan.ts";
import { chaptersOf } from "./chapters.ts";
import { contents } from "./contents.ts";
import { contextOf } from "./context.ts";
import { chapterFields } from "./fields.ts";
import { type Before, chapterNodes, type Prints } from "./html.ts";
import type { Context } from "./template/evaluate.ts";

export interface Parts {
  readonly figures: ReadonlyMap<string, Figure>;
  /** Pages at true size. */
  readonly guides: ReadonlyMap<string, Figure>;
  /** What templates can ask for. */
  readonly context: Context;
  /** One section a chapter. */
  readonly nodes: readonly Element[];
  readonly contents: Element;
  readonly prints: ReadonlyMap<string, Prints>;
}

/**
 * Makes a booklet's parts. Throws TemplateError when a chapter asks for what is not there.
 *
 * @param before the booklet as it was published: what differs from it is marked
 */
export function bookletParts(plan: Plan, before?: Before): Parts {
  const figures = new Map<string, Figure>(figuresOf(plan).map((name) => [name, drawFigure(name, plan)]));
  const guides = new Map<string, Figure>(
    guidesOf(plan).map(({ name, title, description, draw }) => [
      name,
      { name, title, description, svg: draw() },
    ]),
  );
  const titles = Object.fromEntries([...figures].map(([name, { title }]) => [name, title]));
  const context = { ...contextOf(plan), figures: titles };
  const prints = new Map<string, Prints>();
  const nodes = chaptersOf(plan).map((name) => {
    const made = chapterNodes(name, shapes[name] ?? [], { plan, context, figures, guides, before });
    prints.set(name, made.prints);
    const fields = chapterFields(name, plan);
    return fields ? { ...made.node, children: [...made.node.children, fields] } : made.node;
  });
  return { figures, guides, context, nodes, contents: contents(nodes), prints };
}
