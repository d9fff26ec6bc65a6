/** Plan -> every file of a booklet. Pure: the same plan and notebook give the same bytes, in Node and in the browser. */
import version from "plainwork:version";
import type { Figure } from "../figure/figure.ts";
import { drawFigure, figuresOf } from "../figure/index.ts";
import { svgFile } from "../figure/serialize.ts";
import { planJson } from "../solve/json.ts";
import type { Plan } from "../solve/plan.ts";
import { chapterNodes } from "./html.ts";
import { joinChapters } from "./markdown.ts";
import { escapedMarks } from "./marks.ts";
import { writeSections } from "./notebook/compose.ts";
import { asNote } from "./notebook/note.ts";
import { type Notebook, STANDARD } from "./notebook/notebook.ts";
import type { Photographs } from "./notebook/photographs.ts";
import { apart } from "./notebook/repeated-figures.ts";
import { work } from "./notebook/work.ts";
import { bookletPage } from "./page.ts";

/** File name inside the booklet's folder -> its text. Photographs are copied beside them. */
export type Files = ReadonlyMap<string, string>;

/** The maker's own part of a booklet. */
export interface Own {
  readonly notebook: Notebook;
  readonly photographs: Photographs;
}

/**
 * Writes a booklet: page, Markdown, figures, plan. Throws TemplateError when a standard chapter asks for what
 * is not there; a notebook has been held against this plan before.
 *
 * @param own the notebook and its photographs; without it the standard booklet
 */
export function makeBooklet(plan: Plan, { notebook, photographs }: Own = NOTHING): Files {
  const worked = work(plan, notebook);
  const figures = new Map<string, Figure>(
    figuresOf(plan).map((name) => [name, drawFigure(name, worked.plan)]),
  );
  const titles = Object.fromEntries([...figures].map(([name, { title }]) => [name, title]));
  const { sections } = writeSections(worked, notebook, titles);
  const nodes = sections.map(({ name, markdown, isNote }) => {
    const section = chapterNodes(name, markdown, worked.plan, figures, new Map(), photographs);
    return isNote ? asNote(section) : section;
  });
  const files = new Map<string, string>();
  files.set("booklet.html", bookletPage(worked.plan, apart(nodes), version));
  files.set("booklet.md", escapedMarks(joinChapters(plan, sections)));
  for (const [name, figure] of figures) files.set(`figures/${name}.svg`, svgFile(figure.svg));
  files.set("plan.json", `${JSON.stringify(planJson(worked.plan, version), null, 1)}\n`);
  return files;
}

const NOTHING: Own = { notebook: STANDARD, photographs: new Map() };
