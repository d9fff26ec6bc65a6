/** Plan -> every file of a booklet. Pure: the same plan and notebook give the same bytes, in Node and in the browser. */
import version from "plainwork:version";
import { picture } from "../figure/picture.ts";
import { svgFile } from "../figure/serialize.ts";
import { planJson } from "../solve/json.ts";
import type { Plan } from "../solve/plan.ts";
import { joinChapters } from "./markdown.ts";
import { escapedMarks } from "./marks.ts";
import { isAsked, MEASURE_YOUR_OWN, ownMeasuresPage } from "./measure-your-own.ts";
import { writeSections } from "./notebook/compose.ts";
import { type Notebook, STANDARD } from "./notebook/notebook.ts";
import type { Photographs } from "./notebook/photographs.ts";
import { work } from "./notebook/work.ts";
import { bookletPage } from "./page.ts";
import { bookletParts } from "./parts.ts";
import { sheetsOf } from "./sheet-list.ts";
import { sheetPage } from "./sheets.ts";

/** File name inside the booklet's folder -> its text. Photographs are copied beside them. */
export type Files = ReadonlyMap<string, string>;

/** The maker's own part of a booklet. */
export interface Own {
  readonly notebook: Notebook;
  readonly photographs: Photographs;
  /** What the page carries so that it can be worked out again from its own text: JSON with no `<` in it, and its checksum. */
  readonly source?: { readonly text: string; readonly sum: string };
}

const NOTHING: Own = { notebook: STANDARD, photographs: new Map() };

/**
 * Writes a booklet: page, Markdown, figures, plan. Throws TemplateError when a standard chapter asks for what is not there;
 * a notebook has been held against this plan before.
 *
 * @param own the notebook and its photographs; without it the standard booklet
 */
export function makeBooklet(plan: Plan, { notebook, photographs, source }: Own = NOTHING): Files {
  const worked = work(plan, notebook);
  const pictures = new Map([...photographs].map(([path, { data }]) => [path, data]));
  const parts = bookletParts(worked, undefined, { notebook, pictures });
  const { sections } = writeSections(worked, notebook, parts.context);
  const files = new Map<string, string>();
  files.set("booklet.html", bookletPage(worked.plan, parts, version, { notebook, pictures }, source));
  files.set("booklet.md", escapedMarks(joinChapters(plan, sections)));
  for (const [name, figure] of parts.figures) files.set(`figures/${name}.svg`, svgFile(figure.svg));
  files.set("figures/picture.svg", svgFile(picture(plan)));
  for (const [name, guide] of parts.guides) files.set(`guides/${name}.svg`, svgFile(guide.svg));
  if (plan.recipe.size === undefined && isAsked(plan.recipe, false))
    files.set(MEASURE_YOUR_OWN, ownMeasuresPage(plan.recipe, version, { notebook, pictures }));
  for (const sheet of sheetsOf(plan.recipe))
    files.set(sheet.file, sheetPage(sheet, worked.plan, parts.context, version));
  files.set("plan.json", planFile(worked.plan));
  return files;
}

/** plan.json. @param plan with the workings among its values */
export const planFile = (plan: Plan): string => `${JSON.stringify(planJson(plan, version), null, 1)}\n`;
