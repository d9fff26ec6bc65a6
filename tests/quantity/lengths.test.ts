import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { printOnTape, printPart } from "../../src/quantity/print.ts";
import {
  fraction,
  inches,
  LENGTH,
  millimetres,
  plain,
  quantity,
  toInches,
} from "../../src/quantity/quantity.ts";
import { readLength, readQuantity } from "../../src/quantity/read.ts";
import cases from "./lengths.json" with { type: "json" };

const sixteenth = inches("1/16");
const showIn = { show: "in", tape: sixteenth } as const;
const showCm = { show: "cm", tape: millimetres(1n) } as const;

describe("lengths as a maker writes them", () => {
  it.each(cases.read as [string, string][])("%j is %s in", (text, inchesWanted) => {
    const reading = readLength(text);
    expect(reading.ok && toInches(reading.value).toFraction()).toBe(inchesWanted);
  });

  it.each(cases.refuse as [string, string, number][])("%j is refused: %s", (text, why, at) => {
    const reading = readLength(text);
    if (reading.ok) throw new Error(`read as ${toInches(reading.value).toFraction()} in`);
    expect(reading.error).toContain(why);
    expect(reading.at).toBe(at);
    expect(`${reading.error} ${reading.hint}`).not.toContain("undefined");
  });

  it("a decimal comma comes with the length to write instead", () => {
    expect(readLength("67,3 cm")).toMatchObject({ hint: "write 67.3 cm with a point" });
  });

  it("reads plain numbers and refuses a unit on them", () => {
    const value = readQuantity("3 1/2", plain(1n).dim);
    expect(value.ok && value.value.value.toFraction()).toBe("7/2");
    expect(readQuantity("3 in", plain(1n).dim).ok).toBe(false);
    expect(readQuantity("3 4", plain(1n).dim).ok).toBe(false);
    expect(readQuantity("3 % 4", plain(1n).dim)).toMatchObject({
      error: "two numbers stand side by side",
      at: 4,
    });
  });
});

describe("lengths as they are printed", () => {
  it.each(cases.printInches)("%s in -> %s", (value, wanted) => {
    expect(printOnTape(inches(value), showIn)).toBe(wanted);
  });
  it.each(cases.printCentimetres)("%s cm -> %s", (value, wanted) => {
    expect(printOnTape(quantity(fraction(value).mul(10), LENGTH), showCm)).toBe(wanted);
  });
  it("parts are printed exactly where that can be read, else said to be about", () => {
    expect(printPart(inches("345/8"), showIn)).toBe("43 1/8 in");
    expect(printPart(inches("1/64"), showIn)).toBe("1/64 in");
    expect(printPart(inches("1/3"), showIn)).toBe("about 5/16 in");
    expect(printPart(millimetres("425.75"), showCm)).toBe("42.575 cm");
    expect(printPart(millimetres("1/3"), showCm)).toBe("about 0 cm");
  });

  it("a printed length on the tape reads back as the same length", () => {
    fc.assert(
      fc.property(fc.bigInt({ min: -100000n, max: 100000n }), (marks) => {
        const length = inches(fraction(marks, 16n));
        const reading = readLength(printOnTape(length, showIn));
        return reading.ok && reading.value.value.equals(length.value);
      }),
    );
  });

  it("reading never throws", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."0123456789 /.,-½¾\"'incmftyd%⁄e+") }), (text) => {
        readLength(text);
      }),
      { numRuns: 2000 },
    );
  });
});
