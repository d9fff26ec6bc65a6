/** Literals in a formula: read first, and stood in for by names of the same width, so that columns in messages stay true. */
import { FormulaError } from "./formula-error.ts";
import * as q from "./quantity.ts";
import { FORMULA_NUMBER_SOURCE as NUMBER, readNumber, readQuantity, unitSource } from "./read.ts";

/** A weight of cloth comes before a weight, whose unit begins its own. */
const LITERAL_KINDS: readonly q.Dim[] = [q.LENGTH, q.AREAL, q.MASS, q.RATE, q.PLAIN];
const LITERAL = new RegExp(`(?<![\\w.\\u00c0-\\u02af])(?:${NUMBER})`, "g");

export interface Literals {
  /** The text with every literal turned into a name of the same width, so that columns stay true. */
  readonly text: string;
  readonly values: ReadonlyMap<string, q.Quantity>;
}

/** First letters of stand-in names: Latin letters that no value name uses and mathjs takes for letters. */
const STAND_IN = 0x100;

/** Takes every literal out of a formula. Throws FormulaError for a number that cannot be used. */
export function takeLiterals(text: string): Literals {
  const values = new Map<string, q.Quantity>();
  const stand = (value: q.Quantity, width: number): string => {
    const name = String.fromCharCode(STAND_IN + values.size) + "_".repeat(width - 1);
    values.set(name, value);
    return name;
  };
  let out = "";
  let at = 0;
  for (const found of text.matchAll(LITERAL)) {
    if (found.index < at) continue;
    const after = /^[A-Za-z_]\S*/.exec(text.slice(found.index + found[0].length));
    const end = literalEnd(text, found.index + found[0].length);
    const written = text.slice(found.index, end.at);
    if (/^\d+[/⁄]/.test(found[0]) && /\/[ \u00a0]*$/.test(text.slice(0, found.index))) {
      throw new FormulaError(
        `"/ ${found[0]}" can be read two ways`,
        found.index,
        `write / (${found[0]}), or put spaces round both strokes to divide twice`,
      );
    }
    if (after && end.dim === q.PLAIN) {
      throw new FormulaError(
        `"${found[0]}${after[0]}" is neither a number nor a name`,
        found.index,
        "write a unit known here, as in 3 in",
      );
    }
    out += text.slice(at, found.index) + stand(literalValue(written, found.index, end.dim), written.length);
    at = end.at;
  }
  return { text: out + text.slice(at), values };
}

/** Where a literal ends: after its unit, and after further number-unit terms of a length (`2 ft 3 in`). */
function literalEnd(text: string, from: number): { at: number; dim: q.Dim } {
  for (const kind of LITERAL_KINDS) {
    if (kind === q.PLAIN) continue;
    const unit = new RegExp(`[ \\u00a0]*(?:${unitSource(kind)})`, "y");
    unit.lastIndex = from;
    const found = unit.exec(text);
    if (!found) continue;
    let at = from + found[0].length;
    const further = new RegExp(`[ \\u00a0]*(?:${NUMBER})[ \\u00a0]*(?:${unitSource(kind)})`, "y");
    for (;;) {
      further.lastIndex = at;
      const next = further.exec(text);
      if (!next) return { at, dim: kind };
      at += next[0].length;
    }
  }
  const percent = /[ \u00a0]*%/y;
  percent.lastIndex = from;
  const share = percent.exec(text);
  return { at: share ? from + share[0].length : from, dim: q.PLAIN };
}

function literalValue(written: string, at: number, dim: q.Dim): q.Quantity {
  if (dim === q.PLAIN && !written.includes("%")) {
    const value = readNumber(written);
    if (value) return q.plain(value);
    throw new FormulaError(`"${written.slice(0, 20)}" is not a number that can be used here`, at);
  }
  const reading = readQuantity(written, dim);
  if (reading.ok) return reading.value;
  throw new FormulaError(reading.error, at + reading.at, reading.hint);
}
