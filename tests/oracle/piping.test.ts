/**
 * Is there a smaller bias square? Every square from one mark upward is cut up, on whole tape marks with whole numbers
 * alone, until one gives the strip; the program's must be that one.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { inches, type Quantity, quantity, toInches } from "../../src/quantity/quantity.ts";
import { biasSquare } from "../../src/solve/piping.ts";

/** All in sixteenths of an inch. */
interface Case {
  readonly length: number;
  readonly width: number;
  readonly join: number;
}

/** The longest whole number of marks in a diagonal, counted up. */
function diagonal(side: number): number {
  let marks = side;
  while ((marks + 1) ** 2 <= 2 * side ** 2) marks += 1;
  return marks;
}

/** The fewest strips, three at most, that make the length from this square; undefined where none do. */
function stripsFrom(side: number, { length, width, join }: Case): number | undefined {
  let made = 0;
  for (let i = 0; i < 3; i += 1) {
    const strip = diagonal(side) - width - 2 * width * Math.ceil(i / 2);
    if (strip < 2 * width + join) return undefined;
    made += strip - (i === 0 ? 0 : join);
    if (made >= length) return i + 1;
  }
  return undefined;
}

const marks = (n: number): Quantity => quantity(inches(`${n}/16`).value, inches("1").dim);

it("the square is the smallest that gives the strip in three pieces at most, and the pieces are the fewest", () => {
  const cases = fc.record({
    length: fc.integer({ min: 40, max: 700 }),
    width: fc.integer({ min: 12, max: 30 }),
    join: fc.integer({ min: 0, max: 12 }),
  });
  fc.assert(
    fc.property(cases, (one) => {
      let side = 1;
      while (stripsFrom(side, one) === undefined) side += 1;
      const found = biasSquare(marks(one.length), inches("60"), {
        width: marks(one.width),
        join: marks(one.join),
        tape: marks(1),
      });
      expect(found && { side: toInches(found.square).mul(16).valueOf(), strips: found.strips }).toEqual({
        side,
        strips: stripsFrom(side, one),
      });
    }),
    { numRuns: 300 },
  );
});

it("roots of the smallest numbers: 0 to 40 marks, up and down", () => {
  for (let side = 0; side <= 40; side += 1) {
    const cut = biasSquare(marks(side + 1), inches("60"), {
      width: marks(1),
      join: marks(0),
      tape: marks(1),
    });
    let smallest = 1;
    while (stripsFrom(smallest, { length: side + 1, width: 1, join: 0 }) === undefined) smallest += 1;
    expect(cut && toInches(cut.square).mul(16).valueOf(), `${side + 1}`).toBe(smallest);
  }
});
