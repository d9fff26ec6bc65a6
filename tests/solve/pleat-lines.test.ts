/** Where pleats are marked and folded: worked by hand, and folded up from first principles for random zones. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { add, compare, plain, type Quantity, sub } from "../../src/quantity/quantity.ts";
import { exact } from "../../src/solve/json.ts";
import type { Plan, PleatedSection } from "../../src/solve/plan.ts";
import { placeInPleats, pleatLines } from "../../src/solve/pleat-lines.ts";
import { randomRecipe } from "../random.ts";
import { exactOf, type Keys, merged, planOf, tried } from "../recipes.ts";

/** Round 170 (half 85), waist seam 27 1/2 (half 13 3/4), thin cloth. */
const SKIRT: Keys = {
  wearer: { waist: "27 1/2 in" },
  cloth: { width: "44 in", selvedge: "1/4 in", thickness: "0.15 mm" },
};
const zones = (text: string, keys: Keys = {}): Plan =>
  planOf(merged(merged(SKIRT, keys), { fullness: { zones: text } }));
const pleated = (plan: Plan): PleatedSection[] =>
  plan.sections.filter(
    (section): section is PleatedSection =>
      section.half === "left" && section.set !== "flat" && section.set !== "gauged",
  );
const folds = (plan: Plan): string[] =>
  pleatLines(pleated(plan)[0] as PleatedSection).map((line) =>
    line.folds.map(({ at, to }) => `${exact(at)} to ${exact(to)}`).join(", "),
  );

describe("lines of a zone, from its end nearer centre front", () => {
  it("a knife towards the back: face, then twice the depth; its fold is laid on to the next face", () => {
    expect(folds(zones("[{set: knife, waist: 2 in, face: 1 in, depth: 3/4 in}, {set: gauged}]"))).toEqual([
      "1 to 5/2",
      "7/2 to 5",
    ]);
  });
  it("towards the front: twice the depth, then the face", () => {
    expect(
      folds(zones("[{set: knife, waist: 2 in, face: 1 in, depth: 3/4 in, towards: front}, {set: gauged}]")),
    ).toEqual(["3/2 to 0", "4 to 5/2"]);
  });
  it("a box turns both its edges under", () => {
    expect(folds(zones("[{set: box, waist: 2 in, face: 2 in, depth: 1 in}, {set: gauged}]"))).toEqual([
      "2 to 0, 4 to 6",
    ]);
  });
  it("a double box has two folds under each edge, one on the other", () => {
    expect(
      folds(zones("[{set: double-box, waist: 1 in, face: 1 in, depth: 1/2 in}, {set: gauged}]")),
    ).toEqual(["1 to 0, 2 to 0, 3 to 5, 4 to 5"]);
  });
  it("half a box astride centre front shows half a face and hides the whole of one side", () => {
    const plan = zones("[{set: box, waist: 3 in, count: 1 1/2, depth: 1 in}, {set: gauged}]");
    // face 2, so the half shows 1 and hides 2 x 1; the whole one: 2 hidden, 2 shown, 2 hidden
    expect(folds(plan)).toEqual(["1 to 3", "5 to 3, 7 to 9"]);
    expect(pleatLines(pleated(plan)[0] as PleatedSection).map(({ half }) => half)).toEqual([true, false]);
  });
  it("half a box astride centre back stands last", () => {
    const plan = zones("[{set: gauged}, {set: box, waist: 3 in, count: 1 1/2, depth: 1 in}]");
    expect(folds(plan)).toEqual(["2 to 0, 4 to 6", "8 to 6"]);
  });
});

describe("where a place on the cloth comes to lie", () => {
  it("under a fold, at one, on a face, or in the depth", () => {
    const plan = zones("[{set: knife, waist: 2 in, face: 1 in, depth: 3/4 in}, {set: gauged}]");
    const lines = pleatLines(pleated(plan)[0] as PleatedSection);
    const at = (inches: string): string => {
      const place = placeInPleats(lines, {
        ...lines[0]?.face,
        value: plain(inches).value.mul("25.4"),
      } as Quantity);
      return place ? `${place.where} ${place.pleat}` : "outside";
    };
    expect(["0", "1/2", "1", "2", "5/2", "3", "9/2", "5", "6"].map(at)).toEqual([
      "face 1",
      "face 1",
      "edge 1",
      "hidden 1",
      "covered 1",
      "face 2",
      "hidden 2",
      "covered 2",
      "outside",
    ]);
  });
  it("an opening on a face is warned of, with the edges of that face; under a fold it is not", () => {
    const codes = (at: Keys): Plan["messages"] =>
      zones("[{set: knife, waist: 4 in, face: 1 in}, {set: gauged}]", { attach: { opening: at } }).messages;
    // knives 3 : 1, towards the back: the second shows 3 to 4 along the top, 1 to 2 on the waist; 1 1/6 is 3 1/2
    const found = codes({ at: "front-left", "from-centre": "1 1/6 in", "under-fold": "false" }).find(
      ({ code }) => code === "opening-on-face",
    );
    expect(found?.text).toContain("pleat 2");
    expect(found?.hint).toContain("1 in to 2 in");
    // Left to itself the slit goes half an inch along the top to the end of pleat 1, 3 in of cloth and 1 in of waist.
    const moved = codes({ at: "front-left", "from-centre": "1 1/6 in" });
    expect(moved.map(({ code }) => code)).not.toContain("opening-on-face");
    const said = moved.find(({ code }) => code === "opening-under-fold")?.text;
    expect(said).toContain("1/2 in along the cut top to the fold of pleat 1 of the knife pleats");
    expect(said).toContain("1 in to the left of centre front");
    expect(codes({ at: "centre-back" }).map(({ code }) => code)).not.toContain("opening-on-face");
  });
});

it("pleats laid are counted on both halves, halves made whole, with two pins for each", () => {
  const plan = zones("[{set: box, waist: 3 in, count: 1 1/2, depth: 1 in}, {set: gauged}]");
  expect(exactOf(plan, "pleating.count")).toBe("3");
  // gauged 10 3/4 a half, over a quarter of 6 7/8: two sections a half; 12 + 4 x 8 + 2 x 3
  expect(exactOf(plan, "pins.count")).toBe("50");
});

describe("random zones, folded up", () => {
  /** Walks along the flat cloth and turns round at every crease; where the walk is at `until`. */
  const walk = (creases: readonly Quantity[], from: Quantity, until: Quantity): Quantity => {
    const stops = [...creases.filter((crease) => compare(crease, until) < 0), until].toSorted(compare);
    let at = from;
    let place = sub(from, from);
    let onward = true;
    for (const stop of stops) {
      const step = sub(stop, at);
      place = onward ? add(place, step) : sub(place, step);
      onward = !onward;
      at = stop;
    }
    return place;
  };

  it("every face begins where the one before ended, and the zone ends on its waist", () => {
    let seen = 0;
    fc.assert(
      fc.property(randomRecipe, (source) => {
        const { plan } = tried(source);
        for (const section of plan ? pleated(plan) : []) {
          seen += 1;
          const lines = pleatLines(section);
          const zero = sub(section.waist, section.waist);
          // Each fold is a crease, and a depth nearer its line lies the crease behind it.
          const creases = lines.flatMap(({ folds: all, depth }) =>
            all.flatMap(({ at, to }) => [at, compare(at, to) < 0 ? add(at, depth) : sub(at, depth)]),
          );
          let shown = zero;
          for (const { faceFrom, faceTo, face } of lines) {
            expect(exact(walk(creases, zero, faceFrom))).toBe(exact(shown));
            shown = add(shown, face);
            expect(exact(walk(creases, zero, faceTo))).toBe(exact(shown));
          }
          expect(exact(shown)).toBe(exact(section.waist));
          expect(exact(walk(creases, zero, section.cloth))).toBe(exact(section.waist));
          expect(exact(lines.at(-1)?.end ?? zero)).toBe(exact(section.cloth));
        }
      }),
      { numRuns: 120 },
    );
    expect(seen).toBeGreaterThan(15);
  });
});
