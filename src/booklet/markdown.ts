/** Plan -> Markdown, with number marks still in it; `escapedMarks` makes the file. */
import { wholeTitle } from "../recipe/recipe.ts";
import type { Plan } from "../solve/plan.ts";
import { chaptersOf } from "./chapters.ts";
import { escapeMarkdown } from "./escape.ts";
import { sheetsOf } from "./sheet-list.ts";
import { renderChapter } from "./template/chapter.ts";
import type { Context } from "./template/evaluate.ts";

/** One chapter's Markdown by its name. */
export interface ChapterText {
  readonly name: string;
  readonly markdown: string;
}

/** Every chapter of this garment's booklet, in order. Throws TemplateError when a template asks for what is not there. */
export function writeChapters(plan: Plan, context: Context): ChapterText[] {
  return chaptersOf(plan).map((name) => ({ name, markdown: tidyMarkdown(renderChapter(name, context)) }));
}

/** The whole booklet as one Markdown text: the title, then the chapters. */
export function joinChapters(plan: Plan, chapters: readonly ChapterText[]): string {
  const sheets = sheetsOf(plan.recipe).map(({ file, title }) => `- [${title}](${file})`);
  return [
    `# ${escapeMarkdown(wholeTitle(plan.recipe))}`,
    ...(sheets.length > 0 ? [sheets.join("\n")] : []),
    ...chapters.map(({ markdown }) => markdown),
  ]
    .join("\n\n")
    .concat("\n");
}

/** No more than one blank line, none at the ends, none trailing on a line. */
export function tidyMarkdown(markdown: string): string {
  return markdown
    .replace(/[ \t]+$/gm, "")
    .replace(/\n{3,}/g, "\n\n")
    .trim();
}
