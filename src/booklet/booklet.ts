/** Plan -> every file of a booklet. Pure: the same plan gives the same bytes, in Node and in the browser. */
import version from "plainwork:version";
import { svgFile } from "../figure/serialize.ts";
import { planJson } from "../solve/json.ts";
import type { Plan } from "../solve/plan.ts";
import { joinChapters, writeChapters } from "./markdown.ts";
import { escapedMarks } from "./marks.ts";
import { bookletPage } from "./page.ts";
import { bookletParts } from "./parts.ts";

/** File name inside the booklet's folder -> its text. */
export type Files = ReadonlyMap<string, string>;

/** Writes a booklet: page, Markdown, figures, plan. Throws TemplateError when a chapter asks for what is not there. */
export function makeBooklet(plan: Plan): Files {
  const parts = bookletParts(plan);
  const files = new Map<string, string>();
  files.set("booklet.html", bookletPage(plan, parts, version));
  files.set("booklet.md", escapedMarks(joinChapters(plan, writeChapters(plan, parts.context))));
  for (const [name, figure] of parts.figures) files.set(`figures/${name}.svg`, svgFile(figure.svg));
  for (const [name, guide] of parts.guides) files.set(`guides/${name}.svg`, svgFile(guide.svg));
  files.set("plan.json", `${JSON.stringify(planJson(plan, version), null, 1)}\n`);
  return files;
}
