/**
 * The layout held against an exact integer program on twenty small cuttings (invented, with the pieces of real skirts):
 * never shorter than the proved shortest, and never more than a twentieth longer. Also what the order of cutting asks.
 */
import fc from "fast-check";
import loadHighs from "highs";
import { describe, expect, it } from "vitest";
import { fraction, inches, toInches } from "../../src/quantity/quantity.ts";
import { layOnCloth, type Wanted } from "../../src/solve/layout.ts";
import type { Layout } from "../../src/solve/plan.ts";
import { exactOf, planOf } from "../recipes.ts";
import { type Rectangle, shortestLength } from "./exact-layout.ts";
import cuttings from "./layouts.json" with { type: "json" };

interface Cutting {
  readonly what: string;
  readonly width: number;
  readonly pieces: readonly {
    name: string;
    count: number;
    across: number;
    along: number;
    startsOn?: number;
  }[];
}

const exact = (n: number) => inches(fraction(String(n)));

const rectangles = ({ pieces }: Cutting): (Rectangle & { name: string })[] =>
  pieces.flatMap(({ name, count, across, along, startsOn }) =>
    Array.from({ length: count }, () => ({
      name,
      width: across,
      length: along,
      ...(startsOn ? { startsOn } : {}),
    })),
  );

function laid(cutting: Cutting): Layout {
  const layout = layOnCloth(
    exact(cutting.width),
    rectangles(cutting).map(
      ({ name, width, length, startsOn }): Wanted => ({
        name,
        width: exact(width),
        length: exact(length),
        ...(startsOn ? { startsOn: exact(startsOn) } : {}),
      }),
    ),
  );
  if ("tooWide" in layout) throw new Error(`${layout.tooWide.name} is too wide`);
  return layout;
}

describe("twenty cuttings against an exact integer program", async () => {
  const highs = await loadHighs();
  it.each((cuttings as readonly Cutting[]).map((cutting) => [cutting.what, cutting] as const))(
    "%s",
    (_, cutting) => {
      const ours = toInches(laid(cutting).length).valueOf();
      const best = shortestLength(highs, cutting.width, rectangles(cutting), ours);
      expect(best).toBeLessThanOrEqual(ours + 1e-6);
      expect(ours).toBeLessThanOrEqual(best * 1.05 + 1e-6);
    },
  );
});

const placesOf = ({ pieces }: Layout): string[] =>
  pieces.map(({ name, x, y }) => `${name} ${toInches(x).toFraction()} ${toInches(y).toFraction()}`);

describe("the order of cutting", () => {
  it("breadths from the start of the cloth, then band and placket strip side by side", () => {
    // 42 in each; the band is 2 x 1 1/4 + 2 x 1/2 deep.
    expect(placesOf(planOf({ skirt: { hem: { cloth: "other" } } }).layout)).toEqual([
      "breadth 1 0 0",
      "breadth 2 0 42",
      "breadth 3 0 84",
      "breadth 4 0 126",
      "waistband 0 168",
      "placket strip 7/2 168",
    ]);
  });
  it("a facing of the same cloth is cut beside the band, with one join more than the fewest", () => {
    const plan = planOf();
    // Four strips would lie below the band, 20 in more; five of 173/5 + 1 up to 35 5/8, and a selvedge of 3/8, lie beside it.
    expect(placesOf(plan.layout).slice(4)).toEqual([
      "waistband 0 168",
      "facing strip 1 7/2 168",
      "placket strip 79/2 168",
      "facing strip 2 7/2 173",
      "facing strip 3 7/2 178",
      "facing strip 4 7/2 183",
      "facing strip 5 7/2 188",
    ]);
    expect(["strips", "length", "pieces", "joined"].map((name) => exactOf(plan, `facing.${name}`))).toEqual([
      "4",
      "177",
      "5",
      "178",
    ]);
    expect(toInches(plan.layout.length).toFraction()).toBe("391/2");
  });
  it("but not where two joins more leave no room beside the band", () => {
    const plan = planOf({ wearer: { waist: "36 in" }, cloth: { width: "22 in" }, skirt: { breadths: "12" } });
    expect([exactOf(plan, "facing.strips"), exactOf(plan, "facing.pieces")]).toEqual(["12", "12"]);
    expect(exactOf(plan, "facing.joined")).toBe(exactOf(plan, "facing.length"));
  });
  it("two joins more than the fewest, but never three, where that saves an eighth of a yard", () => {
    const plan = planOf({
      skirt: { pocket: "true", hem: { kind: "faced", cloth: "own", depth: "5 in" } },
    });
    expect([exactOf(plan, "facing.strips"), exactOf(plan, "facing.pieces")]).toEqual(["4", "6"]);
  });
  it("beside a half breadth lie band, placket strip and the last, half strip of facing", () => {
    const { layout } = planOf({ skirt: { breadths: "3 1/2" } });
    // Three breadths and the half, 42 in each, and three whole strips of facing of 5 in.
    expect(toInches(layout.length).toFraction()).toBe("183");
    expect(placesOf(layout).slice(3, 7)).toEqual([
      "half breadth 0 126",
      "waistband 45/2 126",
      "placket strip 26 126",
      "facing strip 4 45/2 307/2",
    ]);
  });
  it("with a repeat down the cloth every breadth starts on it, whatever lies before", () => {
    const { layout } = planOf({ skirt: { breadths: "3 1/2" }, cloth: { repeat: { down: "9 in" } } });
    expect(placesOf(layout).slice(0, 4)).toEqual([
      "breadth 1 0 0",
      "breadth 2 0 45",
      "breadth 3 0 90",
      "half breadth 0 135",
    ]);
  });
});

describe("any pieces", () => {
  const eighths = (most: number) => fc.integer({ min: 1, max: most * 8 });
  const piece = fc.record({
    width: eighths(40),
    length: eighths(50),
    startsOn: fc.option(fc.integer({ min: 8, max: 90 }), { nil: undefined, freq: 3 }),
  });
  it("lie on the cloth, over nothing else, on their repeat, no longer than one under the other, and the same every time", () => {
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 9 }), (pieces) => {
        const eighth = (n: number) => inches(fraction(BigInt(n), 8n));
        const wanted = pieces.map(({ width, length, startsOn }, i): Wanted => {
          const on = startsOn === undefined ? {} : { startsOn: eighth(startsOn) };
          return { name: String(i), width: eighth(width), length: eighth(length), ...on };
        });
        const layout = layOnCloth(eighth(320), wanted);
        if ("tooWide" in layout) throw new Error("nothing is wider than the cloth");
        expect(layOnCloth(eighth(320), wanted)).toEqual(layout);
        const boxes = layout.pieces.map(({ name, x, y }) => {
          const { width, length, startsOn } = pieces[Number(name)] as (typeof pieces)[0];
          const [left, top] = [x, y].map((q) => toInches(q).mul(8).valueOf()) as [number, number];
          return { name, left, top, right: left + width, bottom: top + length, on: startsOn ?? 1 };
        });
        const end = toInches(layout.length).mul(8).valueOf();
        expect(boxes.map(({ name }) => name).sort()).toEqual(wanted.map(({ name }) => name).sort());
        expect(Math.max(...boxes.map(({ bottom }) => bottom))).toBe(end);
        const gaps = pieces.reduce((sum, { length, startsOn }) => sum + length + (startsOn ?? 1) - 1, 0);
        expect(end).toBeLessThanOrEqual(gaps);
        for (const a of boxes) {
          expect(a.left >= 0 && a.top >= 0 && a.right <= 320).toBe(true);
          expect(a.top % a.on).toBe(0);
          for (const b of boxes)
            if (a !== b)
              expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(
                true,
              );
        }
      }),
      { numRuns: 60 },
    );
  });
  it("a piece wider than the cloth is named", () => {
    const wide: Wanted = { name: "band", width: inches("45"), length: inches("3") };
    expect(layOnCloth(inches("44"), [wide])).toEqual({ tooWide: wide });
  });
});
