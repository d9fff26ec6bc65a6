/** Tucks, flounces, pocket, petticoat: worked by hand from four 45 in breadths, round 173 in, lengths 38 / 39 / 40 1/2. */
import { describe, expect, it } from "vitest";
import { toInches } from "../../src/quantity/quantity.ts";
import { exact } from "../../src/solve/json.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { brokenLaws } from "../laws.ts";
import { exactOf, type Keys, planOf, recipeText, tried } from "../recipes.ts";

const skirt = (keys: Keys): Keys => ({ skirt: keys });
const values = (plan: Plan, ...names: string[]) => names.map((name) => exactOf(plan, name));
const messageOf = (keys: Keys, code: string) => {
  const found = tried(recipeText(keys)).messages.find((message) => message.code === code);
  if (!found) throw new Error(`no message ${code}`);
  return found;
};

describe("three tucks of 1/2 in over a 4 in facing", () => {
  const plan = planOf(skirt({ tucks: { count: "3", depth: "1/2 in" } }));
  it("take 3 in, and the turn-down stays what it was", () => {
    expect(values(plan, "tucks.takeUp", "breadths.cut", "breadths.hemmed", "tucks.left")).toEqual([
      "3",
      "45",
      "89/2",
      "83/2",
    ]);
    expect(values(plan, "turnDown.front", "turnDown.back")).toEqual(["7/2", "1"]);
  });
  it("seams 5, 6, 7 in above the hem; creases on the flat cloth 2 in apart", () => {
    expect(plan.tucks.map(({ seam, edge, crease }) => [seam, edge, crease].map(exact).join(" "))).toEqual([
      "5 9/2 11/2",
      "6 11/2 15/2",
      "7 13/2 19/2",
    ]);
  });
  it("clear the opening, whose foot is 30 1/4 in above the hem", () => {
    expect(values(plan, "placket.foot", "tucks.crossing", "placket.unsewn")).toEqual(["121/4", "0", "45/4"]);
    expect(plan.messages).toEqual([]);
  });
  it("are sewn before the top is gauged, and counted as work of their own", () => {
    expect(plan.stages.map(({ name }) => name)).toEqual([
      "seams",
      "hem",
      "tucks",
      "marking",
      "gauging",
      "whipping",
    ]);
    expect(exactOf(plan, "stitches.tucks")).toBe("4152");
  });
});

describe("tucks and the opening", () => {
  const of = (count: string, depth = "1 in"): Keys => skirt({ tucks: { count, depth } });
  it("13 of 1 in come within an inch of it: said, and nothing crosses", () => {
    const plan = planOf(of("13"));
    expect(values(plan, "tucks.top", "tucks.crossing", "placket.unsewn")).toEqual(["30", "0", "45/4"]);
    expect(messageOf(of("13"), "tucks-over-opening").level).toBe("warning");
  });
  it("14 cross it once: it is left unsewn 2 in longer, so that 10 in stay open", () => {
    expect(values(planOf(of("14")), "tucks.top", "tucks.crossing", "placket.unsewn")).toEqual([
      "32",
      "1",
      "53/4",
    ]);
  });
  it("16 fit the front, 17 do not, and the way out is in the hint", () => {
    expect(planOf(of("16")).tucks).toHaveLength(16);
    const said = messageOf(of("17"), "tucks-too-high");
    expect(said.level).toBe("error");
    expect(said.text).toContain("38 in");
    expect(said.text).toContain("room to 37 in");
    expect(said.hint).toBe("take at most 16 of this depth, or make them at most 15/16 in deep");
    expect(planOf(of("17", "15/16 in")).tucks).toHaveLength(17);
  });
  it("a single one too deep to fit has no count that would do", () => {
    expect(messageOf(of("1", "17 in"), "tucks-too-high").hint).toBe("make them at most 16 1/2 in deep");
  });
});

describe("two flounces 11 in deep, a third fuller than the skirt", () => {
  const keys = (cut: string): Keys => ({
    cloth: { weight: "100 g/m2" },
    skirt: { flounces: { count: "2", depth: "11 in", cut } },
  });
  const straight = planOf(keys("straight"));
  const cross = planOf(keys("cross"));
  it("straight: 230 2/3 in of round takes 6 strips of 43 1/4; 12 in deep as cut", () => {
    expect(values(straight, "flounces.round", "flounces.strips", "flounces.pieces", "flounces.cut")).toEqual([
      "692/3",
      "6",
      "12",
      "12",
    ]);
    expect(values(straight, "flounces.ring", "flounces.fullness")).toEqual(["519/2", "3/2"]);
    expect(straight.layout.pieces.filter(({ name }) => name.startsWith("flounce strip"))).toHaveLength(12);
  });
  it("on the cross: 4 strips of 62 5/8; each takes 17 in of the cloth; 181 in with the corners", () => {
    expect(values(cross, "flounces.strips", "flounces.strip", "flounces.along", "flounces.block")).toEqual([
      "4",
      "501/8",
      "17",
      "181",
    ]);
  });
  it("the lowest ends 1/2 in above the hem; the next laps 1 1/4 in over its heading", () => {
    expect(straight.flounces.map(({ edge, heading }) => `${exact(edge)} ${exact(heading)}`)).toEqual([
      "1/2 23/2",
      "41/4 85/4",
    ]);
  });
  it("weigh 12 x 45 x 12 square inches more: 418.06368 g at 100 g/m2", () => {
    const plain = planOf({ cloth: { weight: "100 g/m2" } });
    const more = straight.values
      .get("skirt.weight")
      ?.quantity.value.sub(plain.values.get("skirt.weight")?.quantity.value ?? "0");
    expect(more?.equals("418.06368")).toBe(true);
  });
  it("four do not fit the front; three do, or four of 10 1/16", () => {
    const four = skirt({ flounces: { count: "4", depth: "11 in" } });
    expect(messageOf(four, "flounces-too-high").hint).toBe(
      "take at most 3 of this depth, or make them at most 10 1/16 in deep",
    );
    expect(planOf(skirt({ flounces: { count: "4", depth: "10 1/16 in" } })).flounces).toHaveLength(4);
  });
  it("a depth that is no more than the lap is refused, for one flounce it is not", () => {
    expect(messageOf(skirt({ flounces: { count: "2", depth: "1 in" } }), "flounce-too-shallow").level).toBe(
      "error",
    );
    expect(planOf(skirt({ flounces: { count: "1", depth: "1 in" } })).flounces).toHaveLength(1);
  });
  it("tucks stand above them: 21 1/4 and twice the depth", () => {
    const plan = planOf(
      skirt({ flounces: { count: "2", depth: "11 in" }, tucks: { count: "1", depth: "1/2 in" } }),
    );
    expect(exactOf(plan, "tucks.lowest")).toBe("89/4");
  });
});

it("tucks stand above a border: 1 in above the hem and 8 in deep to 9, and twice 1/2 in; the fold hangs to 9 1/2", () => {
  const plan = planOf({
    cloth: { width: "60 in", border: { depth: "8 in", "from-edge": "3 in", "above-hem": "1 in" } },
    skirt: { run: "along", breadths: null, round: "160 in", tucks: { count: "2", depth: "1/2 in" } },
  });
  expect(exactOf(plan, "border.head")).toBe("9");
  expect(exactOf(plan, "tucks.lowest")).toBe("10");
  expect(plan.tucks.map(({ edge }) => toInches(edge).toFraction())).toEqual(["19/2", "21/2"]);
});

describe("a pocket", () => {
  it("goes into the seam at the right side: slit 5 to 11 in from the cut top, since the turn-down takes 2 1/2", () => {
    const plan = planOf(skirt({ pocket: "true" }));
    expect(plan.pocket?.station).toBe("the right side");
    expect(values(plan, "pocket.fromFront", "turnDown.pocket", "pocket.from", "pocket.to")).toEqual([
      "173/4",
      "5/2",
      "5",
      "11",
    ]);
    expect(values(plan, "pocket.bagLength", "pocket.bagWidth", "pocket.facingLength")).toEqual([
      "13",
      "7",
      "8",
    ]);
  });
  it("goes to the left where the opening has the right side", () => {
    const plan = planOf({ skirt: { pocket: "true" }, attach: { opening: { at: "side-right" } } });
    expect(plan.pocket?.side).toBe("left");
    expect(exact(plan.pocket?.share ?? plan.recipe.tape)).toBe("1/4");
  });
  it("of two seams equally near a side takes the one nearer the front", () => {
    const plan = planOf(skirt({ pocket: "true", "centre-front": "breadth" }));
    expect(exact(plan.pocket?.share ?? plan.recipe.tape)).toBe("7/8");
  });
  it("without a seam near a side is refused, with ways out", () => {
    const said = messageOf(skirt({ pocket: "true", breadths: "2" }), "no-pocket-seam");
    expect(said.level).toBe("error");
    expect(said.hint).toContain("centre-front");
    expect(planOf(skirt({ pocket: "true", breadths: "2", "centre-front": "breadth" })).pocket?.side).toBe(
      "right",
    );
  });
  it("no tuck may sew up its slit; a flounce over it is said", () => {
    const tucks = skirt({ pocket: "true", tucks: { count: "14", depth: "1 in" } });
    expect(messageOf(tucks, "tucks-over-pocket").level).toBe("error");
    const flounces = skirt({ pocket: "true", flounces: { count: "3", depth: "11 in" } });
    expect(messageOf(flounces, "flounces-over-pocket").level).toBe("warning");
  });
});

describe("a petticoat", () => {
  it("hangs 1 1/2 in higher than a skirt unless it says otherwise", () => {
    expect(exactOf(planOf({ garment: "petticoat" }), "skirt.offFloor")).toBe("7/2");
    expect(planOf({ garment: "petticoat", show: "cm" }).values.get("skirt.offFloor")?.shown).toBe("9 cm");
    expect(exactOf(planOf({ garment: "petticoat", skirt: { "off-floor": "4 in" } }), "skirt.offFloor")).toBe(
      "4",
    );
    expect(exactOf(planOf(), "skirt.offFloor")).toBe("2");
  });
});

it("all together keep the laws, in inches and in centimetres", () => {
  for (const show of ["in", "cm"]) {
    const plan = planOf({
      show,
      garment: "petticoat",
      cloth: { weight: "90 g/m2" },
      skirt: {
        pocket: "true",
        tucks: { count: "4", depth: "3/8 in" },
        flounces: { count: "2", depth: "6 in", fullness: "3/2", cut: "cross" },
      },
    });
    expect(brokenLaws(plan)).toEqual([]);
  }
});
