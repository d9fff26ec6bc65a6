/** What `{{ }}` prints: a text with number marks in it. */
import { allMarked } from "../marks.ts";
import { Printed } from "../printed.ts";
import { answer, type Context, type Scope } from "./evaluate.ts";
import { Ready } from "./helpers.ts";
import { type At, type Expression, TemplateError } from "./tree.ts";

/** The text an expression prints, marked. Throws TemplateError where there is nothing to print. */
export function printed(expression: Expression, scope: Scope, context: Context, at?: At): string {
  const value = answer(expression, scope, context);
  if (value instanceof Printed || value instanceof Ready) return value.toString();
  if (typeof value === "string" || typeof value === "number") return allMarked(String(value));
  const name = typeof expression === "string" ? ` "${expression}"` : "";
  if (value === undefined || value === null)
    throw new TemplateError(`this garment has no value${name} to print`, {
      at,
      code: "no-value",
      hint: `print it inside {{#if${name.replaceAll('"', "")}}} … {{/if}}`,
    });
  const what = Array.isArray(value) ? "list" : "block of values or a flag";
  throw new TemplateError(`${name.trim() || "this"} is a ${what}, not a value to print`, {
    at,
    code: "not-printable",
  });
}
