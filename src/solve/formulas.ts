/** Formulas by their text: each is read once, and shown in numbers in one way. */
import { type Formula, readFormula } from "../quantity/formula.ts";

const read = new Map<string, Formula>();

/** The formula a text says. Throws FormulaError. */
export function formulaOf(text: string): Formula {
  const known = read.get(text);
  if (known) return known;
  const made = readFormula(text);
  read.set(text, made);
  return made;
}

/** A name in a formula's text, and no function. */
const NAME = /(?<![\w.])([a-z]\w*(?:\.\w+)*)(?!\w|\s*\()/g;

/** Texts taken apart: at odd places the names, between them what stands there. */
const apart = new Map<string, readonly string[]>();

function piecesOf(formula: string): readonly string[] {
  const known = apart.get(formula);
  if (known) return known;
  const made = formula.split(NAME);
  apart.set(formula, made);
  return made;
}

/** A formula's text with every name replaced by what it is shown as; a name that has nothing to show stays. */
export const inNumbers = (formula: string, shown: (name: string) => string | undefined): string =>
  piecesOf(formula)
    .map((piece, i) => (i % 2 === 1 ? (shown(piece) ?? piece) : piece))
    .join("");
