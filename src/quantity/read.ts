/** Reads quantities as a maker writes them: `26 1/2 in`, `26½"`, `2 ft 2 1/2 in`, `67.3 cm`, `3 nails`. */
import { MOST_DIGITS } from "./limits.ts";
import { type Dim, type Fraction, fraction, LENGTH, PLAIN, type Quantity, quantity } from "./quantity.ts";
import { formsOf, UNITS } from "./units.ts";

/** A quantity, or what is wrong with the text, where in it (from 0), and what to write instead. */
export type Reading =
  | { readonly ok: true; readonly value: Quantity }
  | { readonly ok: false; readonly error: string; readonly at: number; readonly hint: string };

// biome-ignore format: one table
const VULGAR: Record<string, string> = {
  "½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5",
  "⅙": "1/6", "⅚": "5/6", "⅐": "1/7", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8", "⅑": "1/9", "⅒": "1/10",
};

const GLYPHS = Object.keys(VULGAR).join("");

const numberSource = (joint: string, vulgar: string): string =>
  [
    `\\d+[ \\u00a0${joint}]?[${GLYPHS}]`,
    `[${GLYPHS}]`,
    `\\d+[ \\u00a0${joint}]+\\d+ ?[/⁄] ?\\d+`,
    vulgar,
    "\\d+\\.\\d+",
    "\\.\\d+",
    "\\d+",
  ].join("|");

/** Source of a pattern for one number: mixed (`26 1/2`, also `26-1/2`), vulgar, glyph, decimal or whole. Longest first. */
export const NUMBER_SOURCE = numberSource("-", "\\d+ ?[/⁄] ?\\d+");

/** The same inside a formula, where a hyphen is a minus, and a stroke with a space beside it, or before a decimal, divides. */
export const FORMULA_NUMBER_SOURCE = numberSource("", "\\d+[/⁄]\\d+(?![.\\d])");

const NUMBER = new RegExp(`(?:${NUMBER_SOURCE})`, "y");
const GAP = /[ \u00a0\t]*/y;

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
}

/** Source of a pattern for the units of one kind; a word form must end at a word's end. */
export function unitSource(dim: Dim): string {
  return formsOf(dim)
    .map((form) => (/[a-z0-9²]$/.test(form) ? `${escaped(form)}(?![\\w²])` : escaped(form)))
    .join("|");
}

const unitPatterns = new Map<Dim, RegExp>();
function unitPattern(dim: Dim): RegExp {
  const known = unitPatterns.get(dim);
  if (known) return known;
  const made = new RegExp(`(?:${unitSource(dim)})`, "y");
  unitPatterns.set(dim, made);
  return made;
}

/** One number as written (`26 1/2`, `½`, `1.10`) to its exact value; undefined where a denominator is 0 or it is too long. */
export function readNumber(text: string): Fraction | undefined {
  const plainText = text
    .replace(/⁄/g, "/")
    .replace(new RegExp(`[${GLYPHS}]`, "g"), (glyph) => ` ${VULGAR[glyph]}`)
    .replace(/ ?\/ ?/g, "/")
    .replace(/[-\u00a0 ]+/g, " ")
    .trim();
  if (plainText.replace(/\D/g, "").length > MOST_DIGITS) return undefined;
  if (/\/0+$/.test(plainText)) return undefined;
  return plainText
    .split(" ")
    .map((part) => fraction(part.startsWith(".") ? `0${part}` : part))
    .reduce((a, b) => a.add(b));
}

function match(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

const fail = (error: string, at: number, hint: string): Reading => ({ ok: false, error, at, hint });

/** How wide the gap is that may stand at a place. */
const gapAt = (text: string, at: number): number => (match(GAP, text, at) as string).length;

const EXAMPLES = new Map<Dim, string>([
  [LENGTH, "26 1/2 in, 67.3 cm or 2 ft 2 1/2 in"],
  [PLAIN, "4, 3 1/2 or 4/3"],
]);

/**
 * Reads a quantity of one kind, with its unit.
 *
 * Terms may follow each other from the larger unit to the smaller (`2 ft 2 1/2 in`). A sign may stand first. A length
 * with no unit, a decimal comma, two numbers with one unit, a zero denominator and anything left over are refused, each
 * with its place in the text.
 */
export function readQuantity(text: string, dim: Dim, example?: string): Reading {
  const wanted = example ?? EXAMPLES.get(dim) ?? "a number with its unit";
  let at = gapAt(text, 0);
  if (at === text.length) return fail("nothing is written here", 0, `write it like ${wanted}`);
  const sign = /^[-−]/.test(text.slice(at)) ? -1n : 1n;
  if (/^[-−+]/.test(text.slice(at))) at += 1 + gapAt(text, at + 1);
  let total: Fraction | undefined;
  let smallest: Fraction | undefined;
  while (at < text.length) {
    const comma = /^(\d+),(\d+)/.exec(text.slice(at));
    if (comma) {
      return fail(
        `"${comma[0]}" has a decimal comma`,
        at,
        `write ${text.replace(",", ".").trim()} with a point`,
      );
    }
    const written = match(NUMBER, text, at);
    if (written === undefined)
      return fail(`no number where one must stand: "${text.slice(at)}"`, at, `write it like ${wanted}`);
    const number = readNumber(written);
    if (!number) {
      const zero = /[/⁄] ?0+$/.test(written);
      return fail(
        zero ? `"${written}" divides by 0` : `"${written.slice(0, 20)}…" has too many digits`,
        at,
        zero ? `write it like ${wanted}` : `at most ${MOST_DIGITS} digits`,
      );
    }
    let next = at + written.length;
    const gap = gapAt(text, next);
    const form = match(unitPattern(dim), text, next + gap);
    if (form === undefined) {
      if (dim === PLAIN && text.slice(next).trim() === "") {
        if (total) return fail("two numbers stand side by side", at, `write it like ${wanted}`);
        return { ok: true, value: quantity(number.mul(fraction(sign)), dim) };
      }
      const rest = text.slice(next + gap).trim();
      return rest === ""
        ? fail(
            `"${text.trim()}" has no unit`,
            next,
            dim === LENGTH ? whichUnit(text.trim(), wanted) : `write it like ${wanted}`,
          )
        : fail(`"${rest}" is not a unit known here`, next + gap, `write it like ${wanted}`);
    }
    const u = UNITS.get(form) as { size: Fraction };
    if (smallest && u.size.compare(smallest) >= 0) {
      return fail(
        `"${form}" comes after a unit that is not larger`,
        next + gap,
        "write the larger unit first, as in 2 ft 2 1/2 in",
      );
    }
    smallest = u.size;
    total = (total ?? fraction(0n)).add(number.mul(u.size));
    next += gap + form.length;
    at = next + gapAt(text, next);
  }
  if (!total) return fail("a sign with no number after it", 0, `write it like ${wanted}`);
  return { ok: true, value: quantity(total.mul(fraction(sign)), dim) };
}

/** What is written in millimetres, as a thickness, is not asked for in centimetres. */
const whichUnit = (number: string, wanted: string): string =>
  wanted.endsWith(" mm")
    ? `say which: ${number} mm, or ${number} in`
    : `say which: ${number} in, or ${number} cm`;

/** Reads a length: see `readQuantity`. */
export const readLength = (text: string): Reading => readQuantity(text, LENGTH);
