/** What is wrong with a formula, as a problem. */
import type { FormulaError } from "../../quantity/formula.ts";
import type { Problem } from "../../recipe/problem.ts";

/** A formula's fault as a problem. */
export const formulaProblem = (error: FormulaError): Problem => ({
  code: "formula",
  text: error.message,
  ...(error.hint === undefined ? {} : { hint: error.hint }),
});
