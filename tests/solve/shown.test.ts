/** How every kind of value is printed, in inches and in centimetres: shown.json, worked by hand. */
import { describe, expect, it } from "vitest";
import { readFormula } from "../../src/quantity/formula.ts";
import {
  type Dim,
  inches,
  MONEY,
  millimetres,
  type Quantity,
  quantity,
  RATE,
  TIME,
} from "../../src/quantity/quantity.ts";
import type { Style } from "../../src/solve/plan.ts";
import { shown } from "../../src/solve/shown.ts";
import cases from "./shown.json" with { type: "json" };

const IN = { show: "in", tape: inches("1/16"), currency: "GBP" } as const;
const CM = { show: "cm", tape: millimetres(1n), currency: "GBP" } as const;

function read(formula: string): Quantity {
  const value = readFormula(formula).evaluate(() => undefined);
  if (typeof value === "boolean") throw new Error(formula);
  return value;
}

describe("values as they are printed", () => {
  it.each(cases.values)("$of, $style: $in and $cm", ({ style, of, in: inInches, cm }) => {
    expect(shown(read(of), style as Style, IN)).toBe(inInches);
    expect(shown(read(of), style as Style, CM)).toBe(cm);
  });
  it.each(cases.times)("$seconds seconds: $printed", ({ seconds, printed }) => {
    expect(shown(quantity(seconds, TIME), "time", IN)).toBe(printed);
  });
  it.each(cases.minutes)("whole minutes, never less: $of seconds are $printed", ({ of, printed }) => {
    expect(shown(quantity(of, TIME), "minutes", IN)).toBe(printed);
  });
  it.each(cases.rates)("a rate of $of a second: $printed", ({ of, printed }) => {
    expect(shown(quantity(of, RATE), "rate", IN)).toBe(printed);
  });
  it.each(cases.money)("$style of $of: $in", ({ style, of, in: inInches, cm }) => {
    expect(shown(quantity(of, MONEY as Dim), style as Style, IN)).toBe(inInches);
    expect(shown(quantity(of, MONEY as Dim), style as Style, CM)).toBe(cm);
  });
});
