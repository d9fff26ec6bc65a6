/** A chapter's tag stands alone on its line, outside code, quotes and lists: a chapter is a section of the booklet. */
import { type Part, type Template, TemplateError } from "../template/tree.ts";
import type { Line } from "./scan.ts";

/** A fault for every chapter of a tree that does not. `lines` are the text's own. */
export function chapterFaults(template: Template, lines: readonly Line[]): TemplateError[] {
  return chaptersIn(template).flatMap(({ chapter, at }) => {
    const line = lines[(at?.[0] ?? 1) - 1];
    const fault = (text: string, hint: string): TemplateError[] => [
      new TemplateError(text, { at, code: "chapter-place", hint }),
    ];
    if (line?.fenced) {
      return fault(
        "a chapter cannot be put into a block of code",
        `write \\{{> ${chapter}}} to show the tag itself`,
      );
    }
    return line === undefined || /^\{\{~?>[^{}]*\}\}$/.test(line.text.trim())
      ? []
      : fault(`the chapter "${chapter}" stands among other text`, "put its tag on a line of its own");
  });
}

type ChapterPart = Extract<Part, { readonly chapter: string }>;

const chaptersIn = (template: Template): ChapterPart[] =>
  template.flatMap((part) => {
    if (typeof part === "string" || "print" in part) return [];
    return "chapter" in part ? [part] : [...chaptersIn(part.do), ...chaptersIn(part.else)];
  });
