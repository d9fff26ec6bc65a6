/** Nothing that stands in a file makes the reader throw or take long. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { messageText } from "../../src/recipe/message.ts";
import { readRecipe } from "../../src/recipe/read.ts";

const EVERY_KEY = readFileSync(join(import.meta.dirname, "cases", "every-key.md"), "utf8");

/** Reads, and holds every message to what it promises: an error or a recipe, and a place within the file. */
function held(source: string): ReturnType<typeof readRecipe> {
  const read = readRecipe("recipe.md", source);
  const errors = read.messages.filter((message) => message.level === "error");
  expect(read.recipe === undefined).toBe(errors.length > 0);
  const lines = source.split("\n");
  for (const message of read.messages) {
    const { place } = message;
    if (!place) throw new Error(`${message.code} has no place`);
    expect(place.line).toBeGreaterThanOrEqual(1);
    expect(place.line).toBeLessThanOrEqual(lines.length);
    expect(place.column).toBeGreaterThanOrEqual(1);
    expect(place.column).toBeLessThanOrEqual((lines[place.line - 1] ?? "").length + 1);
    expect(place.length).toBeGreaterThanOrEqual(1);
    expect(message.text).not.toMatch(/[\p{Cc}\p{Cs}]|undefined|\[object/u);
    expect(messageText(message, source).length).toBeLessThan(2000);
  }
  return read;
}

describe("any text", () => {
  test("is read or refused", () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => void held(text)));
  });

  test("as front matter is read or refused", () => {
    const piece = fc.oneof(
      fc.constantFrom(
        ..."\n:-[]{}#&*!|>'\"%@`,? \t<=~\\".split(""),
        ": ",
        "\n  ",
        "\n- ",
        "---\n",
        "...\n",
        "<<: ",
      ),
      fc.constantFrom(
        "wearer",
        "waist",
        "recipe: 1\n",
        "26 1/2 in",
        "__proto__",
        "toString",
        "zones",
        "sizes",
      ),
      fc.string({ maxLength: 3 }),
    );
    fc.assert(
      fc.property(
        fc.array(piece, { maxLength: 60 }),
        (pieces) => void held(`---\n${pieces.join("")}\n---\n`),
      ),
      { numRuns: 300 },
    );
  });
});

describe("a good recipe, spoilt", () => {
  const end = EVERY_KEY.indexOf("\n---\n");

  test("by a piece put in or taken out", () => {
    const change = fc.record({
      at: fc.nat({ max: end + 4 }),
      drop: fc.nat({ max: 12 }),
      put: fc.oneof(
        fc.string({ unit: "binary", maxLength: 4 }),
        fc.constantFrom("", "\n", ": ", "  ", "{", "}", "[", '"', "-", "1/0", "é", "\r", "# ", "*a ", "&a "),
      ),
    });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
        let text = EVERY_KEY;
        for (const { at, drop, put } of changes) text = text.slice(0, at) + put + text.slice(at + drop);
        held(text);
      }),
      { numRuns: 500 },
    );
  });

  test("by lines that change places, or are lost", () => {
    const lines = EVERY_KEY.slice(0, end).split("\n").slice(1);
    const some = fc.shuffledSubarray(lines, { minLength: lines.length - 8 });
    fc.assert(
      fc.property(some, (kept) => void held(`---\n${kept.join("\n")}\n---\n`)),
      { numRuns: 100 },
    );
  });

  test("by another value of any kind in any place", () => {
    const spots = [...EVERY_KEY.slice(0, end).matchAll(/: (?=[^{|\s])([^,}#\n]*)/g)];
    const value = fc.oneof(
      fc.constantFrom(
        "0",
        "-1",
        "1/2 in",
        "1000 in",
        "0 in",
        "1 m",
        "true",
        "x",
        "{}",
        "[]",
        "[1]",
        "{a: 1}",
        "''",
        "40 1/2",
      ),
      fc.integer({ min: -9, max: 99 }).map((n) => `${n} in`),
      fc.string({ unit: "grapheme-ascii", maxLength: 8 }).map((text) => JSON.stringify(text)),
    );
    fc.assert(
      fc.property(fc.constantFrom(...spots), value, (spot, put) => {
        const from = spot.index + 2;
        held(EVERY_KEY.slice(0, from) + put + EVERY_KEY.slice(from + (spot[1] ?? "").length));
      }),
      { numRuns: 300 },
    );
  });
});

describe("hostile front matter", () => {
  const wide = (text: string): string => `---\n${text}\n---\n`;
  const cases: Record<string, string> = {
    "brackets in brackets": wide("[".repeat(60_000)),
    "braces in braces": wide("{a: ".repeat(15_000)),
    "question marks": wide("? ".repeat(30_000)),
    dashes: wide("- ".repeat(30_000)),
    "aliases of aliases": wide(
      `a: &a [x, x]\n${Array.from({ length: 20 }, (_, i) => `b${i}: &b${i} [*a, *a, *a]`).join("\n")}`,
    ),
    "many keys": wide(Array.from({ length: 6000 }, (_, i) => `k${i}: 1`).join("\n")),
    "one long value": wide(`title: ${"1/".repeat(30_000)}`),
    "one long waist": wide(`wearer: {waist: "${"1 ".repeat(30_000)}"}`),
    "one long key": wide(`${"a".repeat(1000)}: 1`),
    quotes: wide(`title: "${'\\"'.repeat(30_000)}`),
    "more than is read": wide(`# ${"x".repeat(70_000)}`),
    fences: "---\n".repeat(20_000),
    "no end": `---\n${"a: 1\n".repeat(100_000)}`,
  };

  test.each(Object.entries(cases))("%s", (_, source) => {
    const start = performance.now();
    expect(held(source).messages.length).toBeGreaterThan(0);
    expect(performance.now() - start).toBeLessThan(2000);
  });

  test("more than is read, and too many keys, say the limit", () => {
    expect(readRecipe("r", cases["more than is read"] ?? "").messages).toMatchObject([{ code: "too-long" }]);
    expect(readRecipe("r", cases["many keys"] ?? "").messages).toMatchObject([{ code: "too-many" }]);
  });
});
