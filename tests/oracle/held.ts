/** Holds the program's formulas against two oracles at once: full mathjs in fractions, and rationals of our own. */
import fc from "fast-check";
import { all, create } from "mathjs";
import { expect } from "vitest";
import { type Result, readFormula } from "../../src/quantity/formula.ts";
import { dim, fraction, type Quantity, quantity } from "../../src/quantity/quantity.ts";
import { randomChains } from "./chains.ts";
import { order, textOf } from "./rational.ts";
import { NAMED, randomComparisons, randomSums, type Sum } from "./sums.ts";

const values = new Map<string, Quantity>(
  Object.entries(NAMED).map(([name, { power, value }]) => [name, quantity(fraction(value), dim(power))]),
);

/** What the program makes of a formula; undefined where it refuses it for what the oracle refuses it for. */
function ours(formula: string): Result | undefined {
  try {
    return readFormula(formula).evaluate((name) => values.get(name));
  } catch (error) {
    if (/divide by nothing|must be above 0/.test((error as Error).message)) return undefined;
    throw error;
  }
}

/** mathjs does not round ties to even, so that is put in, of its own parts. */
export function fullMathjs(): (formula: string) => string {
  const math = create(all ?? {}, { number: "Fraction" });
  const { floor, add, subtract, mod, equal, larger, fraction: of } = math;
  math.import({
    evenly: (x: math.Fraction) => {
      const low = floor(x);
      const rest = subtract(x, low);
      const half = of(1, 2);
      if (equal(rest, half)) return equal(mod(low, 2), 0) ? low : add(low, of(1));
      return larger(rest, half) ? add(low, of(1)) : low;
    },
  });
  return (formula) => (math.evaluate(formula) as { toFraction(): string }).toFraction();
}

/** So many random formulas must come out as the two oracles have them, to the last digit. */
export function holdSums(runs: number): { refused: number; mathjs: number } {
  const theirs = fullMathjs();
  const found = { refused: 0, mathjs: 0 };
  fc.assert(
    fc.property(randomSums, (sum: Sum) => {
      const result = ours(sum.ours);
      if (sum.value === undefined) {
        found.refused += 1;
        expect(result, sum.ours).toBeUndefined();
        return;
      }
      if (result === undefined || typeof result === "boolean") throw new Error(`${sum.ours}: ${result}`);
      expect(result.dim.length, sum.ours).toBe(sum.power);
      const wanted = textOf(sum.value);
      expect(result.value.toFraction(), sum.ours).toBe(wanted);
      expect(theirs(sum.mathjs), sum.mathjs).toBe(wanted);
      found.mathjs += 1;
    }),
    { numRuns: runs },
  );
  return found;
}

const SAYS: Readonly<Record<string, (difference: number) => boolean>> = {
  "<": (d) => d < 0,
  ">": (d) => d > 0,
  "<=": (d) => d <= 0,
  ">=": (d) => d >= 0,
  "==": (d) => d === 0,
  "!=": (d) => d !== 0,
};

/** And so many comparisons. */
export function holdComparisons(runs: number): void {
  fc.assert(
    fc.property(randomComparisons, ({ a, b, sign }) => {
      const result = ours(`${a.ours} ${sign} ${b.ours}`);
      if (a.value === undefined || b.value === undefined) expect(result).toBeUndefined();
      else expect(result).toBe(SAYS[sign]?.(order(a.value, b.value)));
      expect(ours(`${a.ours} == ${a.ours}`)).toBe(a.value === undefined ? undefined : true);
    }),
    { numRuns: runs },
  );
}

/** And so many chains without brackets. */
export function holdChains(runs: number): void {
  const theirs = fullMathjs();
  fc.assert(
    fc.property(randomChains, ({ text, mathjs, value }) => {
      const result = ours(text);
      if (value === undefined) {
        expect(result, text).toBeUndefined();
        return;
      }
      if (result === undefined || typeof result === "boolean") throw new Error(`${text}: ${result}`);
      expect(result.value.toFraction(), text).toBe(textOf(value));
      expect(theirs(mathjs), mathjs).toBe(textOf(value));
    }),
    { numRuns: runs },
  );
}
