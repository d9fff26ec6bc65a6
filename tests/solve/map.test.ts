/** The map, worked by hand: four 44 in breadths (selvedge 1/4, seam 1/2) make 4 x 43 1/2 - 4 = 170 in; the waist seam is 27 1/2 in. */
import { describe, expect, it } from "vitest";
import { exact, planJson } from "../../src/solve/json.ts";
import { type Keys, planOf } from "../recipes.ts";

const SKIRT: Keys = {
  wearer: { waist: "27 in", ease: "1/2 in" },
  cloth: { width: "44 in", selvedge: "1/4 in" },
};
const places = (keys: Keys) =>
  planJson(planOf({ ...SKIRT, ...keys }), "0").map.map(({ place, waist, alongTop, turnDown, unsewn }) =>
    [place, waist, alongTop, turnDown, unsewn ?? "-"].join(" | "),
  );

describe("gauged all round, a seam in front and one behind", () => {
  // The cut length is 40 1/2 + 1/2 + 1 = 42 in, so that 42 - 1/2 - 38 = 3 1/2 in are turned down in front, 1 in behind.
  it("half-way on the waist is half-way along the top; the opening stays open 10 + 1 + 1/4 in", () => {
    const all = places({});
    expect(all).toContain("centre front: seam of breadth 4 and breadth 1 | 0 | 0 | 7/2 | -");
    expect(all).toContain("left side: seam of breadth 1 and breadth 2 | 55/8 | 85/2 | 5/2 | -");
    expect(all).toContain("centre back: opening, in the seam | 55/4 | 85 | 1 | 45/4");
    expect(all).toContain("right side: seam of breadth 3 and breadth 4 | 165/8 | 255/2 | 5/2 | -");
    expect(all.length).toBe(8);
  });
  it("a pocket takes the seam of the right side, and is open from 2 1/2 + 2 1/2 in to that and its slit", () => {
    const plan = planOf({ ...SKIRT, skirt: { pocket: "true" } });
    const pocket = plan.map.find(({ kinds }) => kinds.includes("pocket"));
    expect(pocket?.place).toBe("right side: pocket, in the seam");
    expect(pocket?.unsewn && [pocket.unsewn.from, pocket.unsewn.to].map(exact)).toEqual(["5", "11"]);
  });
});

describe("a flat front of 5 in, a breadth in front", () => {
  const keys: Keys = {
    skirt: { "centre-front": "breadth" },
    fullness: { method: "flat-front-gauged", "flat-front": "5 in" },
  };
  it("the first seam, 21 1/4 in along the top, comes to 5/2 + 75/4 x (45/4) / (165/2) = 445/88 in of waist", () => {
    expect(places(keys).filter((line) => line.startsWith("seam of breadth 1"))[0]).toMatch(
      /^seam of breadth 1 and breadth 2 \| 445\/88 \| 85\/4 \|/,
    );
  });
  it("the side, 6 7/8 in of waist, lies 5/2 + 35/8 x (165/2) / (45/4) = 415/12 in along the top", () => {
    expect(places(keys).some((line) => line.startsWith("left side | 55/8 | 415/12 | 5/2"))).toBe(true);
  });
  it("the flat part ends at 2 1/2 in of both", () => {
    expect(
      places(keys).some((line) => /^end of left flat part, start of .* \| 5\/2 \| 5\/2 \|/.test(line)),
    ).toBe(true);
  });
});

it("a slit at 5 in on the wearer's front left: 5 in of waist, 5 x 170 / 27 1/2 = 340/11 in along the top, a place of its own", () => {
  const plan = planOf({ ...SKIRT, attach: { opening: { at: "front-left", "from-centre": "5 in" } } });
  const open = plan.map.find(({ kinds }) => kinds.includes("opening"));
  expect(open?.place).toBe("opening, a slit");
  expect([open?.waist, open?.alongTop].map((q) => q && exact(q))).toEqual(["5", "340/11"]);
  expect(open?.unsewn?.to).toEqual(plan.values.get("placket.unsewn")?.quantity);
  expect(plan.values.get("placket.unsewn")?.shown).toBe("13 1/8 in");
});
