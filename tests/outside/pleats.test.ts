/** Published pleats (rows 3, 4, 5) and checks followed (row 10), held against whole plans; printed slips must not come out. */
import { describe, expect, it } from "vitest";
import {
  add,
  fraction,
  LENGTH,
  plain,
  type Quantity,
  quantity,
  toInches,
} from "../../src/quantity/quantity.ts";
import { wholePleats } from "../../src/solve/follow-repeat.ts";
import type { PleatedSection } from "../../src/solve/plan.ts";
import { clothOf, meetingDepth, type PleatSet } from "../../src/solve/pleat.ts";
import { exactOf, type Keys, planOf } from "../recipes.ts";

const cm = (text: string): Quantity => quantity(fraction(text).mul(10), LENGTH);
const inCm = (q: Quantity): string => q.value.div(10).toFraction();
const pleats = (keys: Keys): PleatedSection => {
  const [first] = planOf(keys).sections;
  if (!first || first.set === "flat" || first.set === "gauged") throw new Error("no pleats");
  return first;
};

describe("row 3: knife pleats [NIMI (Govt of India), Dress Making, Trade Practical, pp. 203-205; seen]", () => {
  // Half the round 4 x (121 - 3) / 2 = 236 cm, half the waist seam 92 cm.
  const section = pleats({
    show: "cm",
    wearer: { waist: "184 cm" },
    cloth: { width: "121 cm", selvedge: "0 cm", thickness: "0.2 mm" },
    skirt: { seam: "1.5 cm" },
    fullness: { zones: "[{set: knife, face: 5 cm, depth: 4 cm}]" },
  });
  it("92 cm, face 5, depth 4: 92 / 5 = 18.4, so 18 pleats of 5.1 cm, 236 cm flat (not the 2.34 m printed once)", () => {
    expect(section.count.value.toFraction()).toBe("18");
    expect(section.face.value.div(10).sub("5.1").abs().compare("0.05")).toBeLessThanOrEqual(0);
    expect(inCm(section.cloth)).toBe("236");
    expect(inCm(section.depth)).toBe("4");
  });
  it("strips of 90 cm cloth, 2 cm a seam, 15 cm deep: 3 strips, 45 cm of cloth", () => {
    // As a flounce: a round of 2 x 90 - 2 x 4 = 172 cm, 59/43 full, is 236 cm; 11 cm deep and a seam of 2 cm above and below.
    const plan = planOf({
      show: "cm",
      cloth: { width: "90 cm", selvedge: "0 cm" },
      skirt: {
        breadths: "2",
        seam: "2 cm",
        flounces: { count: "1", depth: "11 cm", fullness: "59/43" },
      },
    });
    expect(inCm(plan.values.get("flounces.round")?.quantity ?? cm("0"))).toBe("236");
    const strips = plan.layout.pieces.filter(({ name }) => name.startsWith("flounce strip"));
    expect(strips).toHaveLength(3);
    expect(inCm(strips.map(({ length }) => length).reduce(add))).toBe("45");
  });
  it("full knife: 50 cm, face 2.5: 20 pleats, 150 cm", () => {
    const full = pleats({
      show: "cm",
      wearer: { waist: "130 cm" },
      cloth: { width: "200 cm", selvedge: "0 cm", thickness: "0.2 mm" },
      fullness: { zones: "[{set: knife, waist: 50 cm, face: 2.5 cm}, {set: gauged}]" },
    });
    expect(full.count.value.toFraction()).toBe("20");
    expect(inCm(full.cloth)).toBe("150");
  });
  it("meeting half-inch plaits are notched every 1 1/2 in [O. C. Hapgood, School Needlework (1893); seen]", () => {
    const half = quantity("12.7", LENGTH);
    expect(toInches(clothOf("knife", half, plain(1n), meetingDepth("knife", half))).toFraction()).toBe("3/2");
  });
});

describe("row 4: box pleats [NIMI pp. 204-205; seen]", () => {
  it.each([
    ["box: 60 cm finished, depth 12", "60", "12", "108"],
    ["inverted: 66 cm, depth 6.5", "66", "6.5", "92"],
  ])("%s", (_, waist, depth, flat) => {
    expect(inCm(clothOf("box", cm(waist), plain(1n), cm(depth)))).toBe(flat);
  });
});

describe("row 5: meeting pleats [costume pages of J. and S. Kaye Post; a sewing teacher's page (2013); seen]", () => {
  const flat = (set: PleatSet, waist: string, count: bigint): string => {
    const all = quantity(fraction(waist).mul("25.4"), LENGTH);
    const face = quantity(all.value.div(count), LENGTH);
    return toInches(clothOf(set, all, plain(count), meetingDepth(set, face))).toFraction();
  };
  it.each([17n, 34n, 68n])(
    "34 in in %i meeting pleats of any width: 102 in (34 x 1.5 for half-inch pleats is wrong)",
    (count) => {
      expect(flat("box", "34", count)).toBe("102");
      expect(flat("knife", "34", count)).toBe("102");
      expect(flat("knife", "34", count)).not.toBe("51");
    },
  );
  it("double box pleats take five to one", () => {
    expect(flat("double-box", "34", 17n)).toBe("170");
  });
});

describe("row 10: cloth 179 in to 46 1/2 in, checks of 3/8 in [a practitioner's worked arithmetic (June 2010); seen / derived]", () => {
  const keys: Keys = {
    wearer: { waist: "46 1/2 in" },
    cloth: { width: "45 3/4 in", selvedge: "0 in", thickness: "0.2 mm", repeat: { across: "3/8 in" } },
    skirt: { breadths: "4" },
  };
  it("wished spacing 7/8: 53 pleats of 3.38 in, 9 checks, taken as the even 8: 3 in", () => {
    const free = fraction("46.5").div("7/8").round();
    expect(free.toFraction()).toBe("53");
    expect(fraction(179n).div(free).sub("3.38").abs().compare("0.005")).toBeLessThanOrEqual(0);
    const plan = planOf({
      ...keys,
      fullness: { "follow-repeat": "true", "deepest-pitch": "4 in", "pleats-per-inch": "1.1419" },
    });
    expect(exactOf(plan, "skirt.round")).toBe("179");
    expect(exactOf(plan, "section.lines")).toBe("8");
    expect(exactOf(plan, "section.pitch")).toBe("3");
  });
  it("with the pitch locked at 3 in the cloth holds 59 whole pleats and 2 in over", () => {
    const { whole, over } = wholePleats(
      quantity(fraction(179n).mul("25.4"), LENGTH),
      quantity("76.2", LENGTH),
    );
    expect(whole).toBe(59);
    expect(toInches(over).toFraction()).toBe("2");
  });
});
