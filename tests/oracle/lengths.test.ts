/** Lengths that are no fractions, held against a series for pi, squares, and sums over small steps. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { diagonal } from "../../src/quantity/diagonal.ts";
import { ellipseGirth, enclosed, ends, middle, PARTS, PI, root } from "../../src/quantity/enclosure.ts";
import { hypotenuse } from "../../src/quantity/hypotenuse.ts";
import { fraction, inches, toInches } from "../../src/quantity/quantity.ts";

/** arctan(1 / n) counted in so many parts of one, by its series. */
function arctan(n: bigint, parts: bigint): bigint {
  let power = parts / n;
  let sum = power;
  for (let k = 3n; power !== 0n; k += 2n) {
    power = -power / (n * n);
    sum += power / k;
  }
  return sum;
}

it("pi lies where Machin's formula (1706) puts it: 16 arctan 1/5 - 4 arctan 1/239", () => {
  const fine = PARTS * 10n ** 12n;
  const pi = 16n * arctan(5n, fine) - 4n * arctan(239n, fine);
  expect(PI.low * 10n ** 12n < pi && pi < PI.high * 10n ** 12n).toBe(true);
});

it("roots: the number lies between the squares of the two ends, and these are next to each other", () => {
  const number = fc.tuple(fc.bigInt({ min: 0n, max: 10n ** 9n }), fc.bigInt({ min: 1n, max: 10n ** 4n }));
  fc.assert(
    fc.property(number, ([n, d]) => {
      const { low, high } = root(enclosed(fraction(n, d)));
      expect(low * low * d <= n * PARTS * PARTS && n * PARTS * PARTS <= high * high * d).toBe(true);
      expect(high - low).toBeLessThanOrEqual(n % d === 0n ? 1n : 10n ** 12n);
    }),
    { numRuns: 300 },
  );
});

it("a diagonal is the whole number of steps next to x times the root of 2, above or below", () => {
  const side = fc.tuple(fc.bigInt({ min: 0n, max: 90000n }), fc.constantFrom(7n, 8n, 16n, 1n));
  fc.assert(
    fc.property(side, fc.constantFrom(8n, 16n), ([n, d], marks) => {
      const x = inches(fraction(n, d));
      const step = inches(fraction(1n, marks));
      const steps = (way: "up" | "down"): bigint => toInches(diagonal(x, step, way)).mul(marks).n;
      // k steps against root 2 x n / d: both squared, over the common denominator.
      const square = 2n * n * n * marks * marks;
      const [up, down] = [steps("up"), steps("down")];
      expect(up * up * d * d >= square && (up === 0n || (up - 1n) ** 2n * d * d < square)).toBe(true);
      expect(down * down * d * d <= square && (down + 1n) ** 2n * d * d > square).toBe(true);
    }),
    { numRuns: 500 },
  );
});

it("a slant is the whole number of steps nearest the root of both squares, midway the even one", () => {
  const side = fc.bigInt({ min: 0n, max: 4000n });
  fc.assert(
    fc.property(side, side, fc.constantFrom(1n, 2n, 5n, 16n), (a, b, step) => {
      const slant = hypotenuse(inches(fraction(a)), inches(fraction(b)), inches(fraction(step)));
      const k = toInches(slant).div(step).n;
      expect(toInches(slant).equals(fraction(k * step))).toBe(true);
      // (2 k - 1) and (2 k + 1) half steps lie on either side of the root, twice each squared.
      const twice = 4n * (a * a + b * b);
      const [under, over] = [(2n * k - 1n) * step, (2n * k + 1n) * step];
      expect(k === 0n || under * under <= twice).toBe(true);
      expect(twice <= over * over).toBe(true);
      if (under * under === twice || over * over === twice) expect(k % 2n).toBe(0n);
    }),
    { numRuns: 300 },
  );
});

it.each([
  [3n, 4n, 2n, 4n],
  [9n, 12n, 2n, 16n],
  [3n, 4n, 10n, 0n],
  [9n, 12n, 10n, 20n],
])("%s and %s make 5 or 15: midway between two steps of %s, so the even one, %s", (a, b, step, is) => {
  const slant = hypotenuse(inches(fraction(a)), inches(fraction(b)), inches(fraction(step)));
  expect(toInches(slant).equals(fraction(is))).toBe(true);
});

/** The girth by the trapezium rule over the angle, with twice as many steps until nothing changes. */
function girth(a: number, b: number): number {
  let last = 0;
  for (let steps = 64; steps <= 2 ** 20; steps *= 2) {
    let sum = 0;
    for (let i = 0; i < steps; i += 1) {
      const angle = (2 * Math.PI * (i + 0.5)) / steps;
      sum += Math.hypot(a * Math.sin(angle), b * Math.cos(angle));
    }
    const now = (sum * 2 * Math.PI) / steps;
    if (Math.abs(now - last) < now * 1e-14) return now;
    last = now;
  }
  return last;
}

describe("the girth of an ellipse, and a quarter of it, the way over a dome", () => {
  it("is what many small steps come to, to twelve figures", () => {
    const axis = fc.integer({ min: 8, max: 800 });
    fc.assert(
      fc.property(axis, axis, (a, b) => {
        const ours = middle(ellipseGirth(enclosed(fraction(`${a}/8`)), enclosed(fraction(`${b}/8`))), 20);
        const steps = girth(a / 8, b / 8);
        expect(Math.abs(ours.valueOf() - steps)).toBeLessThan(steps * 1e-12);
      }),
      { numRuns: 100 },
    );
  });
  it("the enclosure is so tight that no tape could tell its ends apart", () => {
    const [low, high] = ends(ellipseGirth(enclosed(fraction(21n)), enclosed(fraction("13/2"))));
    expect(high.sub(low).compare("1/1000000000000000000000000000000")).toBeLessThan(0);
  });
});
