/** The small parts: nearest names, lines, and where the characters of a scalar stand. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseDocument, type Scalar } from "yaml";
import { distance, nearest } from "../../src/quantity/nearest.ts";
import { Source } from "../../src/recipe/lines.ts";
import { offsetsIn } from "../../src/recipe/scalar.ts";

describe("nearest", () => {
  const known = ["waist", "ease", "waist-to-floor", "waist-height", "hoop", "over", "in", "cm"];

  test.each([
    ["wiast", "waist"],
    ["Waist", "waist"],
    ["waste", "waist"],
    ["waist_to_floor", "waist-to-floor"],
    ["waistToFloor", "waist-to-floor"],
    ["waist-floor", "waist-to-floor"],
    ["hop", "hoop"],
    ["CM", "cm"],
    ["colour", undefined],
    ["mm", undefined],
    ["", undefined],
    ["w".repeat(100_000), undefined],
  ])("%s", (name, expected) => {
    expect(nearest(name, known)).toBe(expected);
  });

  test("takes the first of equally near ones", () => {
    expect(nearest("face", ["fact", "lace"])).toBe("fact");
  });

  test("counts changes the same both ways, none for the same word, one for a swap", () => {
    const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 6 });
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(distance(a, b)).toBe(distance(b, a));
        expect(distance(a, b) === 0).toBe(a === b);
        expect(distance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
    );
    expect(distance("hem", "hme")).toBe(1);
    expect(distance("", "hem")).toBe(3);
  });
});

describe("places", () => {
  test("agree with splitting the text into lines", () => {
    const text = fc.string({ unit: fc.constantFrom("a", "é", "\n", "\r\n", "\r", " "), maxLength: 40 });
    fc.assert(
      fc.property(text, fc.nat({ max: 45 }), (source, offset) => {
        const { line, column, length } = new Source("f", source).place(offset, offset + 3);
        const before = source.slice(0, offset).split("\n");
        expect([line, column]).toEqual([before.length, (before.at(-1) ?? "").length + 1]);
        expect(length).toBeGreaterThanOrEqual(1);
        expect(length).toBeLessThanOrEqual(3);
      }),
    );
  });

  test("stay within their line", () => {
    expect(new Source("f", "ab\r\ncd").place(1, 6)).toEqual({ file: "f", line: 1, column: 2, length: 1 });
  });
});

describe("a scalar's characters", () => {
  test.each([
    ["26 1/2", [0, 1, 2, 3, 4, 5, 6]],
    ["'it''s'", [1, 2, 3, 5, 6]],
    ['"a\\"b"', [1, 2, 4, 5]],
    ['"\\u00bd in"', [1, 7, 8, 9, 10]],
    ['"\\U0001F9F5!"', [1, 1, 11, 12]],
  ])("%s", (raw, offsets) => {
    const { value } = parseDocument(raw, { schema: "failsafe" }).contents as Scalar<string>;
    expect(offsetsIn(raw, value)).toEqual(offsets);
  });

  test("are not guessed where lines are folded", () => {
    expect(offsetsIn('"a\n  b"', "a b")).toBeUndefined();
    expect(offsetsIn("|\n  a", "a\n")).toBeUndefined();
  });

  test("of plain and quoted text stand where they are read from", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme-ascii", maxLength: 20 }), (text) => {
        const raw = `'${text.replaceAll("'", "''")}'`;
        const { value } = parseDocument(raw, { schema: "failsafe" }).contents as Scalar<string>;
        const offsets = offsetsIn(raw, value) ?? [];
        expect([...value].map((_, i) => raw[offsets[i] as number]).join("")).toBe(value);
        expect(offsets).toHaveLength(value.length + 1);
      }),
    );
  });
});
