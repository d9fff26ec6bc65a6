/** Tags that need a line of their own: a chapter is a section of the booklet, a figure a drawing between paragraphs. */
import { type At, type Part, type Template, TemplateError } from "../template/tree.ts";
import type { Line } from "./scan.ts";

/** A fault for every chapter or figure of a tree that stands among other text. `lines` are the text's own. */
export function tagFaults(template: Template, lines: readonly Line[]): TemplateError[] {
  return tagsIn(template, false).flatMap(({ what, at, isListed }) => {
    const line = lines[(at?.[0] ?? 1) - 1];
    const fault = (text: string, hint: string): TemplateError[] => [
      new TemplateError(text, { at, code: what.startsWith("{{>") ? "chapter-place" : "figure-place", hint }),
    ];
    if (line?.fenced)
      return fault(`${what} stands in a block of code`, `write \\${what} to show the tag itself`);
    if (isListed && what.startsWith("{{>")) {
      return fault(`${what} stands inside {{#each}}`, "a chapter stands once, outside lists");
    }
    const own = line?.text.trim() ?? "";
    return line === undefined ||
      (/^(?:\{\{[^{}]*\}\})+$/.test(own.replace(/\{\{[#/][^{}]*\}\}|\{\{else\}\}/g, "").trim()) && only(own))
      ? []
      : fault(`${what} stands among other text`, "put its tag on a line of its own");
  });
}

/** One tag that prints something, at most. */
const only = (line: string): boolean => (line.match(/\{\{(?![#/]|else\b)/g) ?? []).length === 1;

interface Tag {
  readonly what: string;
  readonly at: At | undefined;
  readonly isListed: boolean;
}

const tagsIn = (template: Template, isListed: boolean): Tag[] =>
  template.flatMap((part: Part): Tag[] => {
    if (typeof part === "string") return [];
    if ("chapter" in part) return [{ what: `{{> ${part.chapter}}}`, at: part.at, isListed }];
    if ("do" in part) {
      const inList = isListed || "each" in part;
      return [...tagsIn(part.do, inList), ...tagsIn(part.else, isListed)];
    }
    const { print } = part;
    if (typeof print === "string" || !("helper" in print) || print.helper !== "figure") return [];
    const [name] = print.with;
    const said = typeof name === "object" && "says" in name ? ` "${name.says}"` : "";
    return [{ what: `{{figure${said}}}`, at: part.at, isListed }];
  });
