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
const NAME = /(?<![\w.])[a-z]\w*(?:\.\w+)*(?!\w|\s*\()/g;

/** A formula's text with every name replaced by what it is shown as; a name that has nothing to show stays. */
export const inNumbers = (formula: string, shown: (name: string) => string | undefined): string =>
  formula.replace(NAME, (name) => shown(name) ?? name);
