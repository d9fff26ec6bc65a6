/** Published numbers about bias strips and piping, and the slips in print that must not come out. */
import { describe, expect, it } from "vitest";
import { readFormula } from "../../src/quantity/formula.ts";
import { inches, millimetres, type Quantity, sum, toInches } from "../../src/quantity/quantity.ts";
import { biasSquare, stripsOf } from "../../src/solve/piping.ts";
import { planOf } from "../recipes.ts";

const evaluated = (formula: string): Quantity => {
  const result = readFormula(formula).evaluate(() => undefined);
  if (typeof result === "boolean") throw new Error(formula);
  return result;
};
const inInches = (formula: string): string => toInches(evaluated(formula)).toFraction();

describe("row 11: cords run 1/16 to 3/16 in (J. Rosbrugh on piping; seen)", () => {
  it.each(["1/16 in", "1/8 in", "3/16 in"])("a cord of %s takes a strip of 1 1/4 to 1 5/8 in", (cord) => {
    const width = planOf({ attach: { to: "bodice-edge", piping: { cord } } }).values.get("piping.width");
    const is = toInches(width?.quantity ?? inches("0"));
    expect(is.compare("5/4")).toBeGreaterThanOrEqual(0);
    expect(is.compare("13/8")).toBeLessThanOrEqual(0);
  });
});

describe("row 12: true bias, length along the selvedge, to the nearest eighth (L. I. Baldt, Clothing for Women, 1916, ch. 22, table; seen)", () => {
  const toNearestEighth = (width: string): string =>
    inInches(`round(diagonal(${width} in, 1/4096 in), 1/8 in)`);
  it.each([
    ["1", "11/8"],
    ["1 1/2", "17/8"],
    ["3", "17/4"],
    ["5", "57/8"],
    ["7", "79/8"],
    ["10", "113/8"],
    ["11", "31/2"],
  ])("%s in wide -> %s in", (width, wanted) => {
    expect(toNearestEighth(width)).toBe(wanted);
  });
  it.each([
    ["2", "11/4"],
    ["6 1/2", "73/8"],
    ["8", "45/4"],
  ])("%s in wide: the table prints %s in, an eighth low", (width, printed) => {
    expect(toNearestEighth(width)).toBe(inInches(`${printed} in + 1/8 in`));
  });
  it("one third more, a known wrong rule, would be too narrow on the bias", () => {
    const along = planOf({ attach: { to: "bodice-edge" } }).values.get("piping.alongSelvedge");
    expect(toInches(along?.quantity ?? inches("0")).compare(toInches(evaluated("1 1/4 in * 4/3")))).toBe(1);
  });
});

describe("row 13: never more strip than area / width (area rule in several handbooks; NIMI p. 220; seen)", () => {
  // By hand, on sixteenths: 36 x 1.41421 = 50 7/8, less 2; then seven pairs from 44 7/8 down to 20 7/8 (fifteen strips are
  // the most): 48 7/8 + 14 x 32 7/8. 12 x 1.41421 = 16 15/16: 14 15/16 + 2 x (10 15/16 + 6 15/16).
  it.each([
    ["36", "648", "4073/8"],
    ["12", "72", "811/16"],
  ])("%s in square at 2 in: %s in at most; %s in as it is cut here", (side, most, cut) => {
    const strips = stripsOf(inches(side), { width: inches("2"), join: inches("0"), tape: inches("1/16") });
    const all = toInches(sum(strips[0] as Quantity, ...strips.slice(1)));
    expect(all.compare(most)).toBeLessThanOrEqual(0);
    expect(all.toFraction()).toBe(cut);
    expect(inInches(`${side} in * ${side} in / (2 in)`)).toBe(most);
  });
  it("a 65 cm square, 3 cm strip: one strip of 88 cm along the diagonal", () => {
    const [first] = stripsOf(millimetres("650"), {
      width: millimetres("30"),
      join: millimetres("12"),
      tape: millimetres("10"),
    });
    expect(first?.value.toFraction()).toBe("880");
  });
  it("10 yd of 1 1/4 in from 9 x 40 in, as one page has it, is impossible: 8 yd is the limit", () => {
    expect(inInches("9 in * 40 in / (1 1/4 in)")).toBe(inInches("8 yd"));
    expect(
      biasSquare(evaluated("10 yd"), inches("9"), {
        width: inches("5/4"),
        join: inches("1/2"),
        tape: inches("1/16"),
      }),
    ).toBeUndefined();
  });
});
