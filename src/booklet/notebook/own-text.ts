/** A text of the maker's own with its shape, and where it begins. */
import type { Place } from "../../recipe/message.ts";
import type { Problem } from "../../recipe/problem.ts";
import { compileShape } from "../shape/compile.ts";
import type { Shape } from "../shape/tree.ts";
import { type Part, type Template, TemplateError } from "../template/tree.ts";
import type { OwnText } from "./notebook.ts";

/** Said where the Markdown's blocks and the template's cross each other. */
export const CROSSED: Problem = {
  code: "crossed",
  text: "the choices and lists of this section cross its paragraphs, items or rows",
  hint: "put {{#if}}, {{#each}}, {{else}} and their ends on lines of their own, round whole paragraphs, items or rows",
};

/** Shapes made before, by the text of their template: a text that stands as it stood is not parsed again. */
export type Shapes = Map<string, Shape>;

/** Makes it; `onFault` is told where no shape can be made. `known` gives shapes made before, and takes the new one. */
export function ownText(template: Template, place: Place, onFault: () => void, known?: Shapes): OwnText {
  if (!known) return { template, shape: shapeOf(template, onFault), place };
  const text = JSON.stringify(template, (key, value) => (key === "at" ? undefined : value));
  const before = known.get(text);
  if (before) return { template, shape: before, place };
  let isSound = true;
  const shape = shapeOf(template, () => {
    isSound = false;
    onFault();
  });
  if (known.size >= MOST_SHAPES) known.clear();
  if (isSound) known.set(text, shape);
  return { template, shape, place };
}

/** More shapes than a booklet has texts, so that a long sitting does not fill the machine. */
const MOST_SHAPES = 500;

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
