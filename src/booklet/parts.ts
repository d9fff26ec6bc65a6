/** Plan -> the parts every form of a booklet is made of: drawings, Markdown, HTML nodes. The same in Node and in the page. */
import type { Element } from "hast";
import type { Figure } from "../figure/figure.ts";
import { drawFigure, figuresOf } from "../figure/index.ts";
import type { Plan } from "../solve/plan.ts";
import { contents } from "./contents.ts";
import { chapterFields } from "./fields.ts";
import { type Before, chapterNodes, type Shapes } from "./html.ts";
import { type ChapterText, writeChapters } from "./markdown.ts";

export interface Parts {
  readonly figures: ReadonlyMap<string, Figure>;
  readonly chapters: readonly ChapterText[];
  /** One section a chapter. */
  readonly nodes: readonly Element[];
  readonly contents: Element;
}

/**
 * Makes a booklet's parts. Throws TemplateError when a chapter asks for what is not there.
 *
 * @param shapes chapters parsed before, so that they are parsed once
 * @param before the booklet as it was published: what differs from it is marked
 */
export function bookletParts(plan: Plan, shapes?: Shapes, before?: Before): Parts {
  const figures = new Map<string, Figure>(figuresOf(plan).map((name) => [name, drawFigure(name, plan)]));
  const titles = Object.fromEntries([...figures].map(([name, { title }]) => [name, title]));
  const chapters = writeChapters(plan, titles);
  const nodes = chapters.map(({ name, markdown }) => {
    const chapter = chapterNodes(name, markdown, { plan, figures, before }, shapes);
    const fields = chapterFields(name, plan);
    return fields ? { ...chapter, children: [...chapter.children, fields] } : chapter;
  });
  return { figures, chapters, nodes, contents: contents(nodes) };
}
