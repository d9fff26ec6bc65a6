/** Plan -> every file of a booklet. Pure: the same plan gives the same bytes, in Node and in the browser. */
import version from "plainwork:version";
import type { Figure } from "../figure/figure.ts";
import { drawFigure, figuresOf } from "../figure/index.ts";
import { svgFile } from "../figure/serialize.ts";
import { planJson } from "../solve/json.ts";
import type { Plan } from "../solve/plan.ts";
import { chapterNodes } from "./html.ts";
import { joinChapters, writeChapters } from "./markdown.ts";
import { escapedMarks } from "./marks.ts";
import { bookletPage } from "./page.ts";

/** File name inside the booklet's folder -> its text. */
export type Files = ReadonlyMap<string, string>;

/** Writes a booklet: page, Markdown, figures, plan. Throws TemplateError when a chapter asks for what is not there. */
export function makeBooklet(plan: Plan): Files {
  const figures = new Map<string, Figure>(figuresOf(plan).map((name) => [name, drawFigure(name, plan)]));
  const titles = Object.fromEntries([...figures].map(([name, { title }]) => [name, title]));
  const chapters = writeChapters(plan, titles);
  const nodes = chapters.map(({ name, markdown }) => chapterNodes(name, markdown, plan, figures));
  const files = new Map<string, string>();
  files.set("booklet.html", bookletPage(plan, nodes, version));
  files.set("booklet.md", escapedMarks(joinChapters(plan, chapters)));
  for (const [name, figure] of figures) files.set(`figures/${name}.svg`, svgFile(figure.svg));
  files.set("plan.json", `${JSON.stringify(planJson(plan, version), null, 1)}\n`);
  return files;
}
