/** How many changes turn one word into another, by the definition itself, word by word from the end; and which word is meant. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { distance, nearest } from "../../src/quantity/nearest.ts";

/** The fewest of: leave out, put in, change or keep, swap two neighbours and go on before them. */
function changes(a: string, b: string): number {
  if (a === "" || b === "") return a.length + b.length;
  const [s, t] = [a.slice(0, -1), b.slice(0, -1)];
  const swapped = a.length > 1 && a.slice(-2) === `${b.at(-1)}${b.at(-2)}`;
  return Math.min(
    changes(s, b) + 1,
    changes(a, t) + 1,
    changes(s, t) + (a.at(-1) === b.at(-1) ? 0 : 1),
    ...(swapped && b.length > 1 ? [changes(a.slice(0, -2), b.slice(0, -2)) + 1] : []),
  );
}

it.each([
  ["", "", 0],
  ["ab", "ba", 1],
  ["abc", "acb", 1],
  ["abc", "bac", 1],
  ["ca", "abc", 3],
  ["front", "fornt", 1],
  ["waist", "wiast", 1],
  ["hem", "hems", 1],
] as const)("%s to %s: %i", (a, b, wanted) => {
  expect(distance(a, b)).toBe(wanted);
  expect(distance(b, a)).toBe(wanted);
});

it("any two short words, by the definition", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 6 });
  fc.assert(
    fc.property(word, word, (a, b) => {
      expect(distance(a, b)).toBe(changes(a, b));
    }),
    { numRuns: 300 },
  );
});

const LONG = "a".repeat(60);

/** What was written, what is known, what is meant, why. */
const MEANT: readonly (readonly [string, readonly string[], string | undefined, string])[] = [
  ["hemming", ["setting", "hem"], "hem", "another form of the word, though setting has fewer changes"],
  ["gauged", ["gauging"], "gauging", "no such form, so the nearest"],
  ["hem.depth", ["hoop.depth", "skirt.hem.depth"], "skirt.hem.depth", "its first word is left out"],
  ["hem.depth", ["skirt.hem.depth", "other.hem.depth"], undefined, "which of two is not known"],
  ["breaxyz", ["breadth"], "breadth", "three changes in seven letters: two whole threes and a part of one"],
  ["brewxyz", ["breadth"], undefined, "four are too many"],
  ["brexyh", ["breath"], "breath", "two in six"],
  ["brxxyh", ["breath"], undefined, "not three"],
  ["seaxy", ["seams"], "seams", "two in five"],
  ["rowx", ["rows"], "rows", "one in four"],
  ["roxx", ["rows"], undefined, "not two"],
  ["hen", ["hem"], "hem", "one in three"],
  ["tp", ["to"], undefined, "none in two"],
  ["To", ["to"], "to", "but for the case of a letter"],
  ["waistToFloor", ["waist-to-floor"], "waist-to-floor", "a hump is a hyphen"],
  ["waist_to floor", ["waist-to-floor"], "waist-to-floor", "and so are a line and a space"],
  ["wast", ["west", "wasp"], "wasp", "of two as near the one that begins alike for longer"],
  ["cat", ["bat", "rat"], "bat", "else the first"],
  ["hems", ["hams", "hem", "hems"], "hems", "the nearest"],
  [LONG, [LONG], LONG, "sixty letters are compared"],
  [`${LONG}a`, [`${LONG}a`], undefined, "no more"],
];

it.each(MEANT)("%s among %j: %s, %s", (name, known, found) => {
  expect(nearest(name, known)).toBe(found);
});

const PLACES = ["centre-front", "centre-back", "side-left", "side-right", "front-left", "front-right"];
it.each([
  ["back", "centre-back"],
  ["back-centre", "centre-back"],
  ["Centre Back", "centre-back"],
  ["left side", "side-left"],
  ["left", undefined],
  ["front", undefined],
  ["at", undefined],
] as const)("a name by its parts, where only one has them: %s is %s", (wanted, meant) => {
  expect(nearest(wanted, PLACES)).toBe(meant);
});
