/** A text of the maker's own with its shape, and where it begins. */
import type { Place } from "../../recipe/message.ts";
import { compileShape } from "../shape/compile.ts";
import type { Shape } from "../shape/tree.ts";
import { type Part, type Template, TemplateError } from "../template/tree.ts";
import type { OwnText } from "./notebook.ts";

/** Said where the Markdown's blocks and the template's cross each other. */
export const CROSSED = {
  code: "crossed",
  text: "the choices and lists of this section cross its paragraphs, items or rows",
  hint: "put {{#if}}, {{#each}}, {{else}} and their ends on lines of their own, round whole paragraphs, items or rows",
};

/** Makes it; `onFault` is told where no shape can be made. */
export function ownText(template: Template, place: Place, onFault: () => void): OwnText {
  return { template, shape: shapeOf(template, onFault), place };
}

function shapeOf(template: Template, onFault: () => void): Shape {
  try {
    return compileShape(guarded(template));
  } catch (error) {
    // A chapter inside is told by the check of the tags.
    if (!(error instanceof TemplateError)) onFault();
    return [];
  }
}

/**
 * A space at the end of a choice or a list is written by its number: with every branch taken it may come to stand at a
 * line's end, where Markdown drops it, though for one garment text follows it.
 */
const guarded = (template: Template): Template =>
  template.map((part): Part => {
    if (typeof part === "string" || !("do" in part)) return part;
    return { ...part, do: kept(guarded(part.do)), else: kept(guarded(part.else)) };
  });

function kept(template: Template): Template {
  const last = template.at(-1);
  if (typeof last !== "string" || !/[ \t]$/.test(last)) return template;
  return [...template.slice(0, -1), last.replace(/[ \t]+$/, "&#32;")];
}
