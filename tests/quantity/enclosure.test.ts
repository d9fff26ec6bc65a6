/** Irrational numbers between rationals: pi, roots, the ellipse's girth, and the tape mark they decide. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Enclosure,
  ellipseGirth,
  enclosed,
  ends,
  middle,
  nearestSteps,
  PI,
  root,
  wholeRoot,
} from "../../src/quantity/enclosure.ts";
import { fraction } from "../../src/quantity/quantity.ts";

const of = (text: string): Enclosure => enclosed(fraction(text));
const holds = (number: Enclosure, text: string, within = "1/10000000000000000000000000"): void => {
  const [low, high] = ends(number);
  expect(low.compare(fraction(text).add(fraction(within)))).toBeLessThanOrEqual(0);
  expect(high.compare(fraction(text).sub(fraction(within)))).toBeGreaterThanOrEqual(0);
  expect(high.sub(low).compare(fraction("1/1000000000000000000000000000000"))).toBeLessThan(0);
};

it("a number on both sides of nothing is rounded outward", () => {
  for (const text of ["1/3", "-1/3", "-2"]) {
    const [low, high] = ends(of(text));
    expect(low.compare(fraction(text)) <= 0 && high.compare(fraction(text)) >= 0).toBe(true);
    expect(of(text).high - of(text).low).toBe(text === "-2" ? 0n : 1n);
  }
});

describe("roots", () => {
  it("of 2, to 30 places (any table of constants)", () => {
    holds(root(of("2")), "1.414213562373095048801688724210");
  });
  it("of squares are exact", () => {
    expect(ends(root(of("961/16"))).map((end) => end.toFraction())).toEqual(["31/4", "31/4"]);
    expect(root(of("0")).high).toBe(0n);
  });
  it("of whole numbers are the largest whole number whose square is no more", () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 60n }), (n) => {
        const r = wholeRoot(n);
        expect(r * r <= n && (r + 1n) * (r + 1n) > n).toBe(true);
      }),
    );
  });
});

describe("the girth of an ellipse", () => {
  it("row 25: semi-axes 3.5 and 2.1 -> 17.868899204378693 (SciPy's ellipe documentation; a float of 17 figures; seen)", () => {
    for (const [a, b] of [
      ["3.5", "2.1"],
      ["2.1", "3.5"],
    ] as const)
      expect(Math.abs(middle(ellipseGirth(of(a), of(b)), 18).valueOf() - 17.868899204378693)).toBeLessThan(
        8e-15,
      );
  });
  it("of a circle is 2 pi r, of a line twice there and back", () => {
    holds(ellipseGirth(of("1"), of("1")), ends(PI)[0].mul(2).toFraction());
    expect(ends(ellipseGirth(of("31"), of("0")))[1].toFraction()).toBe("124");
  });
  it("lies between the inscribed and the circumscribed figure, and grows with an axis", () => {
    const axis = fc.integer({ min: 1, max: 400 }).map((n) => `${n}/8`);
    fc.assert(
      fc.property(axis, axis, (a, b) => {
        const [low, high] = ends(ellipseGirth(of(a), of(b)));
        expect(low.compare(high)).toBeLessThanOrEqual(0);
        const [x, y] = [fraction(a), fraction(b)];
        const chord = x.mul(x).add(y.mul(y)).mul(16);
        expect(high.mul(high).compare(chord)).toBeGreaterThan(0);
        expect(low.compare(x.add(y).mul(4))).toBeLessThan(0);
        expect(ends(ellipseGirth(of(a), enclosed(y.add(1))))[0].compare(high)).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });
});

describe("the nearest mark", () => {
  it.each([
    ["42.666", "1/8", "341"],
    ["42.666", "1/16", "683"],
    ["3/32", "1/16", "2"],
    ["5/32", "1/16", "2"],
  ])("%s on marks of %s is %s of them, midway to the even one", (length, step, wanted) => {
    expect(nearestSteps(of(length), fraction(step)).toFraction()).toBe(wanted);
  });
  it("a midpoint inside the enclosure goes to the even mark, whichever end is nearer", () => {
    const step = fraction(1n);
    const near = (low: string, high: string) =>
      nearestSteps({ low: of(low).low, high: of(high).high }, step).toFraction();
    expect(near("2.4999", "2.5001")).toBe("2");
    expect(near("3.4999", "3.5001")).toBe("4");
  });
});
