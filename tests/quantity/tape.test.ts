import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fraction, inches, millimetres, plain, sum, toInches } from "../../src/quantity/quantity.ts";
import { onMark, roundTo, share, steps, tally } from "../../src/quantity/tape.ts";

const sixteenth = inches("1/16");
const inInches = (text: string, step: string, way?: "up" | "down"): string =>
  toInches(roundTo(inches(text), inches(step), way)).toFraction();

describe("rounding to tape marks", () => {
  it.each([
    ["5/16", "1/8", undefined, "1/4"],
    ["7/16", "1/8", undefined, "1/2"],
    ["3/32", "1/16", undefined, "1/8"],
    ["-3/32", "1/16", undefined, "-1/8"],
    ["1/32", "1/16", undefined, "0"],
    ["63/20", "1/16", undefined, "25/8"],
    ["63/20", "1/16", "up", "51/16"],
    ["63/20", "1/16", "down", "25/8"],
    ["3", "1/16", "up", "3"],
  ] as const)("%s on %s, %s -> %s", (length, step, way, wanted) => {
    expect(inInches(length, step, way)).toBe(wanted);
  });
  it("refuses a step of nothing and steps of another kind", () => {
    expect(() => roundTo(inches("1"), inches("0"))).toThrow("above 0");
    expect(() => steps(inches("1"), plain(1n))).toThrow("one kind");
  });
});

describe("sharing out", () => {
  const lengths = fc.record({
    marks: fc.bigInt({ min: 0n, max: 20000n }),
    rest: fc.record({ n: fc.bigInt({ min: 0n, max: 6n }), d: fc.constant(7n) }),
    n: fc.integer({ min: 1, max: 400 }),
    metric: fc.boolean(),
  });

  it("sums exactly; parts differ by a mark at most; larger parts lie evenly; the remainder is in the last", () => {
    fc.assert(
      fc.property(lengths, ({ marks, rest, n, metric }) => {
        const mark = metric ? millimetres(1n) : sixteenth;
        const total = {
          value: mark.value.mul(fraction(marks)).add(mark.value.mul(fraction(rest.n, rest.d))),
          dim: mark.dim,
        };
        const { parts, remainder } = share(total, n, mark);
        expect(parts).toHaveLength(n);
        expect(sum(parts[0] as typeof total, ...parts.slice(1)).value.equals(total.value)).toBe(true);
        expect(remainder.value.compare(mark.value)).toBeLessThan(0);
        const whole = parts.map((part, i) =>
          steps(i === n - 1 ? { ...part, value: part.value.sub(remainder.value) } : part, mark),
        );
        for (const part of whole) expect(part.d).toBe(1n);
        const counts = whole.map((part) => Number(part.n));
        const least = Math.min(...counts);
        expect(Math.max(...counts) - least).toBeLessThanOrEqual(1);
        expect(counts.at(-1)).toBe(least);
        // Any two runs of equally many parts differ by one mark at most: checked for a few run lengths.
        for (const run of [2, 3, 5, 8].filter((length) => length < n)) {
          const sums = Array.from({ length: n - run + 1 }, (_, i) =>
            counts.slice(i, i + run).reduce((a, b) => a + b),
          );
          expect(Math.max(...sums) - Math.min(...sums)).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("tallies sizes, the largest first", () => {
    const sizes = tally(share(inches("50"), 9, inches("1/8")).parts);
    expect(sizes.map(({ size, count }) => [toInches(size).toFraction(), count])).toEqual([
      ["45/8", 4],
      ["11/2", 5],
    ]);
  });

  it("refuses no parts", () => {
    expect(() => share(inches("1"), 0, sixteenth)).toThrow("0 parts");
    expect(onMark(inches("3/32"), sixteenth)).toBe(false);
    expect(onMark(inches("3/16"), sixteenth)).toBe(true);
  });
});
