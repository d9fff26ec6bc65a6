/** Declarators for fields that hold measures: lengths, numbers, shares, weights of cloth, rates. */
import { printExactly } from "../quantity/print.ts";
import {
  AREAL,
  type Dim,
  isWhole,
  LENGTH,
  less,
  more,
  mul,
  PLAIN,
  plain,
  type Quantity,
  RATE,
} from "../quantity/quantity.ts";
import { readQuantity } from "../quantity/read.ts";
import { bad, type Field, field, type Options } from "./fields.ts";
import type { Kind, Limits } from "./meta.ts";
import { type Problem, quoted, type Read } from "./problem.ts";

type Measured = Extract<Kind, "length" | "number" | "share" | "weight" | "rate">;

const NAMES: Readonly<Record<Measured, string>> = {
  length: "a length",
  number: "a number",
  share: "a share",
  weight: "a weight of cloth",
  rate: "a rate",
};

function measure(kind: Measured, dim: Dim, options: Options, refuse?: RegExp): Field<Quantity> {
  const within = limiter(kind, dim, options);
  return field<Quantity>({ kind, ...options }, (written): Read<Quantity> => {
    const strange = refuse?.exec(written);
    const code = `not-a-${kind}` as const;
    if (strange) {
      return bad(code, `${quoted(strange[0].trim())} cannot stand here: this is ${NAMES[kind]}`, {
        hint: `write it like ${options.example}`,
        at: strange.index,
      });
    }
    const reading = readQuantity(written, dim, options.example);
    if (!reading.ok) {
      const { error, at, hint } = reading;
      return bad(code, error, { expected: NAMES[kind], at, hint });
    }
    const problem = within(written, reading.value);
    return problem ? { problem } : { value: reading.value };
  });
}

/** A limit of the schema; one that cannot be read is a mistake in the schema. */
function limit(text: string | undefined, dim: Dim): Quantity | undefined {
  if (text === undefined) return undefined;
  const reading = readQuantity(text, dim);
  if (!reading.ok) throw new Error(`the limit "${text}" cannot be read: ${reading.error}`);
  return reading.value;
}

/** A limit in words; one in inches is told in centimetres too. */
function told(text: string, q: Quantity): string {
  return q.dim === LENGTH && text.endsWith(" in") && q.value.n !== 0n
    ? `${text} (${printExactly(q, "cm")})`
    : text;
}

function limiter(
  kind: Kind,
  dim: Dim,
  limits: Limits,
): (written: string, q: Quantity) => Problem | undefined {
  const above = limit(limits.above, dim);
  const least = limit(limits.least, dim);
  const most = limit(limits.most, dim);
  const words = [
    limits.step && (limits.step === "whole" ? "a whole number" : "a whole or a half number"),
    above && `more than ${told(limits.above ?? "", above)}`,
    least && `at least ${told(limits.least ?? "", least)}`,
    most && `at most ${told(limits.most ?? "", most)}`,
  ].filter(Boolean);
  const expected = words.join(", ");
  return (written, q) => {
    const shown = quoted(written.trim());
    const off = (text: string): Problem => ({
      code: "limit",
      text,
      expected,
      hint: HINTS[kind] ?? "check the number",
    });
    if (limits.step && !isWhole(limits.step === "half" ? mul(q, plain(2n)) : q)) {
      return off(`${shown} is not ${limits.step === "half" ? "a whole or a half" : "a whole"} number`);
    }
    if ((above && !more(q, above)) || (least && less(q, least))) return off(`${shown} is too small`);
    if (most && more(q, most)) return off(`${shown} is too large`);
    return undefined;
  };
}

const HINTS: Partial<Record<Kind, string>> = {
  length: "check the measure and its unit",
  share: "check the share, and write parts of a hundred with their sign, as 3 %",
};

/** A length with its unit, as a maker writes it. */
export const length = (options: Options): Field<Quantity> => measure("length", LENGTH, options);

/** A plain number; a share of a hundred is not taken for one. */
export const number = (options: Options): Field<Quantity> =>
  measure("number", PLAIN, options, /(?:%|per ?cent).*/s);

/** A whole number of things. */
export const count = (options: Options): Field<Quantity> => number({ step: "whole", ...options });

/** A number of things of which one may be a half. */
export const halves = (options: Options): Field<Quantity> => number({ step: "half", ...options });

/** A share: `3 %`, or 3/100. */
export const share = (options: Options): Field<Quantity> => measure("share", PLAIN, options);

/** Weight of cloth by area. */
export const weight = (options: Options): Field<Quantity> => measure("weight", AREAL, options);

/** So many a minute. */
export const rate = (options: Options): Field<Quantity> => measure("rate", RATE, options);

/** A year, four digits. */
export function year(options: Options): Field<number> {
  return field({ kind: "year", least: "1000", most: "2100", ...options }, (written) => {
    const word = written.trim();
    const value = /^\d{4}$/.test(word) ? Number(word) : 0;
    if (value >= 1000 && value <= 2100) return { value };
    const inside = /(?<!\d)1\d{3}(?!\d)/.exec(word)?.[0];
    return bad("not-a-year", `${quoted(word)} is not a year`, {
      expected: "a year from 1000 to 2100",
      hint: `write its four figures alone, as ${inside ?? options.example}`,
    });
  });
}

/** The format this program reads. */
export const FORMAT = "1";

/** The number of the recipe's format. */
export function version(options: Options): Field<1> {
  return field<1>({ kind: "version", ...options }, (written) => {
    const word = written.trim();
    if (word === FORMAT) return { value: 1 };
    if (/^[1-9]\d{0,5}$/.test(word) && Number(word) > Number(FORMAT))
      return bad(
        "recipe-version",
        `this recipe is of format ${quoted(word)}, newer than this program reads`,
        {
          expected: `${FORMAT}, or an older format`,
          hint: `use a newer version of the program; or write recipe: ${FORMAT} if the number is a slip`,
        },
      );
    return /^[\d.]+$/.test(word)
      ? bad("recipe-version", `this recipe says that its format is ${quoted(word)}`, {
          expected: `${FORMAT}, the format this program reads`,
          hint: `write recipe: ${FORMAT}, or use the version of the program that it was written for`,
        })
      : bad("recipe-version", `${quoted(word)} is not the number of a format`, {
          expected: FORMAT,
          hint: `write recipe: ${FORMAT}`,
        });
  });
}
