/**
 * A template as a tree: what Handlebars' parser read, without what a chapter cannot use. Plain data, so that it can be
 * made when the program is built, lie in a page, and be rendered without making code.
 */
import type { Code } from "../../recipe/messages/code.ts";

/** Where a part stands in its own text: line from 1, column from 1, length in characters. Left out in standard chapters. */
export type At = readonly [line: number, column: number, length: number];

/**
 * What is asked for: a path as it is written (`waist.seam`, `../garment.edge`, `@first`, `this`), a word or number that
 * stands for itself, or a helper's answer.
 */
export type Expression =
  | string
  | { readonly says: string }
  | { readonly helper: string; readonly with: readonly Expression[]; readonly at?: At };

/** One part: text, a value to print, a choice, a list gone through, a chapter put in. */
export type Part =
  | string
  | { readonly print: Expression; readonly at?: At }
  | { readonly if: Expression; readonly do: Template; readonly else: Template; readonly at?: At }
  | { readonly each: Expression; readonly do: Template; readonly else: Template; readonly at?: At }
  | { readonly chapter: string; readonly at?: At };

export type Template = readonly Part[];

/** A fault of a template, with its place in the template's own text where that is known. The message is fit to show. */
export class TemplateError extends Error {
  readonly at: At | undefined;
  readonly code: Code;
  readonly hint: string | undefined;
  constructor(
    message: string,
    { at, code = "template", hint }: { at?: At | undefined; code?: Code; hint?: string } = {},
  ) {
    super(message);
    this.at = at;
    this.code = code;
    this.hint = hint;
  }
}
