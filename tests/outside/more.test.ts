/** Published numbers that are no single value of a plan: units, tape readings, sharing out, what cannot be. */
import { describe, expect, it } from "vitest";
import { readFormula } from "../../src/quantity/formula.ts";
import {
  AREAL,
  div,
  fraction,
  inches,
  millimetres,
  mul,
  plain,
  type Quantity,
  sum,
  toInches,
} from "../../src/quantity/quantity.ts";
import { readLength, readQuantity } from "../../src/quantity/read.ts";
import { roundTo, share, tally } from "../../src/quantity/tape.ts";
import { readOriginal } from "../../src/recipe/original/read.ts";
import { marksOf } from "../../src/solve/bites.ts";
import { FLOUNCE_ROUND, STRIPS } from "../../src/solve/flounces.ts";
import { workOriginal } from "../../src/solve/original/answers.ts";
import { sheetText } from "../original/sheet.ts";
import { planOf } from "../recipes.ts";

const inInches = (text: string): string => {
  const reading = readLength(text);
  if (!reading.ok) throw new Error(reading.error);
  return toInches(reading.value).toFraction();
};

describe("row 19: the surviving dress, measured as an original", () => {
  it("gives its raw width, its seams and its fullness back", () => {
    const text = sheetText({
      breadths: "[{width: 18 1/2 in, count: 8}]",
      "hem-round": "148 in",
      waist: "28 in",
      seam: "11/64 in",
      set: "pleated",
      "pleats-in-all": null,
      lengths: "{front: 43 in, back: 46 in}",
      fold: null,
    });
    const { original, placeOf, messages } = readOriginal("original.yaml", text);
    expect(messages).toEqual([]);
    if (!original) throw new Error("the sheet is sound");
    const { found } = workOriginal(original, placeOf);
    expect(found.get("cloth.width").value.mul(8).div("25.4").toFraction()).toBe("603/4");
    expect(found.get("seam.lost").value.div("25.4").toFraction()).toBe("11/4");
    expect(Math.abs(found.get("fullness.ratio").value.valueOf() - 5.29)).toBeLessThan(0.005);
  });
});

describe("row 6: 60 in of 0.8 mm wool in three layers at 8 pleats an inch cannot be (geometry)", () => {
  const plan = planOf({
    wearer: { waist: "28 in" },
    cloth: { width: "33 in", selvedge: "0 in", thickness: "0.8 mm" },
    fullness: { "pleats-per-inch": "8", stay: { thickness: "0.8 mm" } },
  });
  it("packed spacing is 4.8 mm, and no section is set closer, though 8 an inch (3.2 mm) are wished", () => {
    expect(plan.values.get("gauging.packed")?.quantity.value.toFraction()).toBe("24/5");
    for (const section of plan.gauged)
      expect(section.spacing.value.compare(fraction("4.8"))).toBeGreaterThanOrEqual(0);
  });
});

describe("row 16: 1.80 m at 3:1 takes 5.40 m; cloth 1.10 m: 5 strips, 15 cm each: 75 cm (NIMI, Dress Making, p. 212; seen)", () => {
  const given: Record<string, Quantity> = {
    "skirt.round": millimetres("1800"),
    "skirt.flounces.fullness": plain(3n),
    "flounces.round": millimetres("5400"),
    "breadths.finished": millimetres("1100"),
  };
  const worked = (formula: string) => {
    const result = readFormula(formula).evaluate((name) => given[name]);
    return typeof result === "boolean" ? "" : result.value.toFraction();
  };
  it("by the formulas that the program shows", () => {
    expect(worked(FLOUNCE_ROUND)).toBe("5400");
    expect(worked(STRIPS.straight)).toBe("5");
    expect(worked(`${STRIPS.straight} * 15 cm`)).toBe("750");
  });
  it("on the cross four would do: 4 x 1.10 x 1.414 is 6.22 m, 3 only 4.67 m", () => {
    expect(worked(STRIPS.cross)).toBe("4");
  });
});

describe("row 21: units (international yard and pound 1959; NIST Handbook 44 app. C; J. Ray, Practical Arithmetic 1859)", () => {
  it.each([
    ["25.4 mm", "1"],
    ["0.9144 m", "36"],
    ["1 nail", "9/4"],
    ["16 nails", "36"],
    ["1 ell", "45"],
    ["20 nails", "45"],
    ["9 yd 15 nails", "1431/4"],
    ["159 nails", "1431/4"],
  ])("%s is %s in (159 nails = 9 yd 3 quarters 3 nails = 9 yd 15 nails)", (text, wanted) => {
    expect(inInches(text)).toBe(wanted);
  });
  it("1 oz/yd2 is 28.349523125 / 0.83612736 g/m2; the law pairs 2.6 oz with 88.2 g (16 CFR 1610.1(d))", () => {
    const reading = readQuantity("2.6 oz/yd2", AREAL);
    if (!reading.ok) throw new Error(reading.error);
    const grams = reading.value.value.mul(1_000_000);
    expect(grams.equals(fraction("2.6").mul(fraction("28.349523125")).div(fraction("0.83612736")))).toBe(
      true,
    );
    expect(grams.sub(fraction("88.2")).abs().compare("0.05")).toBeLessThanOrEqual(0);
  });
});

describe("row 22: a reading midway goes to the even graduation (NIST Handbook 44, 10.3 and 5.52; seen 2nd)", () => {
  it.each([
    ["5/16", "1/8", "1/4"],
    ["7/16", "1/8", "1/2"],
    ["3/32", "1/16", "1/8"],
  ])("%s on marks of %s reads %s", (length, mark, wanted) => {
    expect(toInches(roundTo(inches(length), inches(mark))).toFraction()).toBe(wanted);
  });
});

describe("row 23: 50 in over 9 spaces on eighths (workroom example)", () => {
  const { parts } = share(inches("50"), 9, inches("1/8"));
  it("five of 5 1/2 and four of 5 5/8, not nine of 5 1/2, which loses half an inch", () => {
    expect(tally(parts).map(({ size, count }) => [toInches(size).toFraction(), count])).toEqual([
      ["45/8", 4],
      ["11/2", 5],
    ]);
    expect(toInches(sum(parts[0] as (typeof parts)[0], ...parts.slice(1))).toFraction()).toBe("50");
    expect(mul(inches("11/2"), plain(9n)).value.equals(inches("50").value)).toBe(false);
  });
  it("E(3,8) is x..x..x. up to rotation (Toussaint 2005)", () => {
    const rhythm = share(inches("11"), 8, inches("1")).parts.map((part) =>
      toInches(part).equals(2) ? "x" : ".",
    );
    expect(`${rhythm.join("")}${rhythm.join("")}`).toContain("x..x..x.");
  });
});

describe("row 8: 77 stitches with one on each end (a doll-dressmaker's worked count; seen)", () => {
  it("at 1/8 in each the 76 spaces would need 9 1/2 in, not 8", () => {
    expect(
      tally(share(inches("19/2"), 76, inches("1/8")).parts).map(({ size, count }) => [
        toInches(size).toFraction(),
        count,
      ]),
    ).toEqual([["1/8", 76]]);
    expect(tally(share(inches("8"), 76, inches("1/8")).parts)).toHaveLength(2);
  });
});

describe("row 9: 28 cm, ends 2 cm in, taken as 15 gaps (NIMI, Dress Making, Trade Practical, p. 209; seen)", () => {
  it("the true gap is 1.6 cm, and 16 marks stand on 15 gaps", () => {
    const { parts } = share(millimetres("240"), 15, millimetres("1"));
    expect(marksOf(parts).length).toBe(16);
    expect(tally(parts).map(({ size, count }) => [size.value.toFraction(), count])).toEqual([["16", 15]]);
  });
  it("16 tucks of 0.2 cm take twice that each: 28 cm come from 34.4 cm flat", () => {
    const plan = planOf({ show: "cm", skirt: { tucks: { count: "16", depth: "0.2 cm" } } });
    const takes = plan.values.get("tucks.takeUp")?.quantity.value.div(10);
    expect(takes?.add(28).toFraction()).toBe(fraction("34.4").toFraction());
  });
  it("24 / 1.7 is 14.1: the book does not take the nearest whole number, which is 14", () => {
    expect(roundTo(div(millimetres("240"), millimetres("17")), plain(1n)).value.toFraction()).toBe("14");
  });
});

describe("row 35: a trial eighth of a 24 in waist that closes to 4 in wants bites a third larger (common practice, no source)", () => {
  const keys = { wearer: { waist: "24 in" }, cloth: { thickness: "0.25 mm" } };
  const before = planOf(keys);
  const trial = before.values.get("trial.cloth");
  const pleats = before.values.get("trial.pleats");
  const after = planOf({
    ...keys,
    fullness: { trial: { cloth: trial?.shown ?? "", pleats: pleats?.shown ?? "", "closes-to": "4 in" } },
  });
  const bite = (plan: typeof before) => plan.values.get("gauging.bite")?.quantity ?? plain(0n);
  it("a third larger only just closes; the advised bite is at least that, and a tenth more within a pleat", () => {
    const ratio = div(bite(after), bite(before)).value;
    expect(ratio.compare("4/3")).toBeGreaterThanOrEqual(0);
    expect(ratio.compare("1.65")).toBeLessThan(0);
  });
  it("and the new pleats close, packed as the trial was", () => {
    for (const section of after.gauged) {
      const packed = after.values.get("gauging.packed")?.quantity ?? plain(0n);
      expect(mul(packed, plain(section.pleats)).value.compare(section.waist.value)).toBeLessThanOrEqual(0);
    }
  });
});
