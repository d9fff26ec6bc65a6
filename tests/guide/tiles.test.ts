/** Tiles hold every mark once; guides hold the plan's own marks, whatever the garment. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { guidesOf } from "../../src/guide/index.ts";
import { stripKinds } from "../../src/guide/marking-strip.ts";
import { SHEET } from "../../src/guide/paper.ts";
import { pleatedParts } from "../../src/guide/pleat-gauge.ts";
import { pleatMarks } from "../../src/guide/pleat-strip.ts";
import { LONGEST } from "../../src/guide/strip.ts";
import { type Tile, tilesOf } from "../../src/guide/tiles.ts";
import {
  add,
  compare,
  equal,
  fraction,
  less,
  millimetres,
  type Quantity,
  sub,
} from "../../src/quantity/quantity.ts";
import { randomRecipe } from "../random.ts";
import { tried } from "../recipes.ts";
import { lowest } from "./lowest.ts";

const mm = (text: string): Quantity => millimetres(fraction(text));

/** What must hold of any strip's tiles. */
function wholeStrip(
  tiles: readonly Tile[],
  marks: readonly Quantity[],
  length: Quantity,
  longest: Quantity,
): void {
  const zero = sub(length, length);
  let at = zero;
  for (const { from, to, marks: held } of tiles) {
    expect(equal(from, at)).toBe(true);
    expect(less(from, to)).toBe(true);
    expect(less(longest, sub(to, from))).toBe(false);
    for (const mark of held) expect(compare(from, mark.at) <= 0 && compare(mark.at, to) <= 0).toBe(true);
    at = to;
  }
  expect(equal(at, length)).toBe(true);
  const joins = tiles.slice(1).map(({ from }) => from);
  for (const join of joins) expect(marks.some((mark) => equal(mark, join))).toBe(false);
  const held = tiles.flatMap((tile) => tile.marks);
  expect(held.map(({ n }) => n)).toEqual(marks.map((_, i) => i + 1));
  held.forEach(({ at: place }, i) => {
    expect(equal(place, marks[i] as Quantity)).toBe(true);
  });
}

describe("tiles", () => {
  it.each([
    ["one tile", ["0", "10", "20"], "20", 1],
    ["two tiles, parted between marks", ["0", "80", "110", "200"], "200", 2],
    ["a gap longer than a tile", ["0", "500"], "500", 3],
    ["a mark just where a long gap would be cut", ["0", "170", "900"], "900", 6],
  ] as const)("%s", (_, marks, length, count) => {
    const places = marks.map((mark) => mm(mark));
    const tiles = tilesOf(places, mm(length), LONGEST);
    wholeStrip(tiles, places, mm(length), LONGEST);
    expect(tiles).toHaveLength(count);
  });

  it("meet in the long bite, never in the short one beside it", () => {
    const bites = Array.from({ length: 20 }, (_, i) => mm(i % 2 === 0 ? "28.575" : "3.175"));
    let at = mm("0");
    const marks = [at, ...bites.map((bite) => (at = add(at, bite)))];
    const tiles = tilesOf(marks, at, LONGEST);
    wholeStrip(tiles, marks, at, LONGEST);
    for (const { from } of tiles.slice(1)) {
      const before = marks.findLast((mark) => less(mark, from)) as Quantity;
      const after = marks.find((mark) => less(from, mark)) as Quantity;
      expect(equal(sub(after, before), mm("28.575"))).toBe(true);
    }
  });

  it("cover any marks once, in as many tiles as asked for", () => {
    const gap = fc.integer({ min: 1, max: 4000 }).map((n) => millimetres(fraction(BigInt(n), 16n)));
    fc.assert(
      fc.property(
        fc.array(gap, { minLength: 1, maxLength: 60 }),
        fc.integer({ min: 30, max: 300 }),
        (gaps, most) => {
          let at = mm("0");
          const marks = [at, ...gaps.map((size) => (at = add(at, size)))];
          wholeStrip(tilesOf(marks, at, mm(String(most))), marks, at, mm(String(most)));
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("guides of random garments", () => {
  it("carry every mark and fold once, and stay on the sheet", () => {
    let strips = 0;
    fc.assert(
      fc.property(randomRecipe, (source) => {
        const { plan } = tried(source);
        if (!plan) return;
        for (const { marks, sections } of stripKinds(plan)) {
          strips += 1;
          for (const section of sections) {
            const tiles = tilesOf(marks, section.cloth, LONGEST);
            wholeStrip(tiles, section.marks, section.cloth, LONGEST);
          }
        }
        const served = stripKinds(plan).flatMap(({ sections }) => sections.map(({ name }) => name));
        const ruled = plan.gauged.filter(({ lines }) => lines === undefined).map(({ name }) => name);
        expect(served.toSorted()).toEqual(ruled.toSorted());
        for (const section of pleatedParts(plan)) {
          const marks = pleatMarks(section).map(({ at }) => at);
          wholeStrip(tilesOf(marks, section.cloth, LONGEST), marks, section.cloth, LONGEST);
        }
        for (const guide of guidesOf(plan)) {
          const text = JSON.stringify(guide.draw());
          expect(lowest(text)).toBeLessThanOrEqual(SHEET.height);
          expect(text).not.toMatch(/NaN|Infinity|undefined/);
        }
      }),
      { numRuns: 60 },
    );
    expect(strips).toBeGreaterThan(12);
  });
});
