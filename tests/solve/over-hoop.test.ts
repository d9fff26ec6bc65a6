/** Lengths estimated over a hoop. */
import { describe, expect, it } from "vitest";
import { messageText } from "../../src/recipe/message.ts";
import { exactOf, type Keys, planOf, recipeText, tried } from "../recipes.ts";

const hooped = (hoop: Keys, more: Keys = {}): Keys => ({
  ...more,
  wearer: {
    waist: "27 in",
    ease: "1/2 in",
    "waist-to-floor": null,
    "waist-height": "40 in",
    hoop: { round: "110 in", height: "9 in", ...hoop },
  },
});

describe("waist 27 1/2, its height 40, hoop 110 at 9 in (practice, worked by hand: reach 82.5 / (2 pi) = 13.130)", () => {
  it("on eighths: straight 42 5/8, domed 45 1/8, the range that is told", () => {
    const plan = planOf(hooped({}, { tape: "1/8 in" }));
    for (const station of ["front", "left", "right", "back"]) {
      expect(exactOf(plan, `straight.${station}`)).toBe("341/8");
      expect(exactOf(plan, `domed.${station}`)).toBe("361/8");
      expect(exactOf(plan, `finished.${station}`)).toBe("345/8");
    }
    const said = plan.messages.find(({ code }) => code === "estimated-lengths");
    expect(said?.text).toContain("42 5/8 in to 45 1/8 in all round");
    expect(said?.text).toContain("estimate: measure before cutting");
    expect(said?.place?.line).toBeGreaterThan(1);
  });
  it("on sixteenths: 42.666 is 42 11/16, 45.096 is 45 1/8; it is cut for the longer", () => {
    const plan = planOf(hooped({}));
    expect(exactOf(plan, "straight.front")).toBe("683/16");
    expect(exactOf(plan, "domed.front")).toBe("361/8");
    // 45 1/8 - 2 off the floor + 1/2 for the facing's seam + 1 least turn-down.
    expect(exactOf(plan, "breadths.cut")).toBe("357/8");
  });
  it("in centimetres: 108.37 and 114.55", () => {
    const plan = planOf(hooped({}, { show: "cm" }));
    expect(plan.values.get("straight.front")?.shown).toBe("108.4 cm");
    expect(plan.values.get("domed.front")?.shown).toBe("114.5 cm");
  });
});

describe("an ellipse set back", () => {
  it("row 25 in tens of inches: depth 42, width 70 has a girth of 178.689 (SciPy's ellipe documentation; seen)", () => {
    const plan = planOf(hooped({ round: "178.688992044 in", shape: "3/5" }, { skirt: { breadths: "5" } }));
    expect(plan.values.get("hoop.width")?.shown).toBe("70 in");
    expect(plan.values.get("hoop.depth")?.shown).toBe("42 in");
    // The waist's radius is 27.5 / (2 pi) = 4.377: 21 - 4.377 and 35 - 4.377.
    expect(plan.values.get("reach.front")?.shown).toBe("16 5/8 in");
    expect(plan.values.get("reach.left")?.shown).toBe("30 5/8 in");
  });
  it("is shorter in front and longer behind, by the offset in each reach; sides alike", () => {
    const plan = planOf(hooped({ offset: "3 in" }));
    // Radius 110 / (2 pi) = 17.507, waist 4.377: 10.130, 16.130; sides sqrt(17.507^2 - 9) - 4.377 = 12.871.
    expect(plan.values.get("reach.front")?.shown).toBe("10 1/8 in");
    expect(plan.values.get("reach.back")?.shown).toBe("16 1/8 in");
    expect(plan.values.get("reach.left")?.shown).toBe("12 7/8 in");
    // sqrt(10.130^2 + 31^2) + 9 = 41.613; sqrt(16.130^2 + 31^2) + 9 = 43.945.
    expect(plan.values.get("straight.front")?.shown).toBe("41 5/8 in");
    expect(plan.values.get("straight.back")?.shown).toBe("43 15/16 in");
    expect(exactOf(plan, "domed.left")).toBe(exactOf(plan, "domed.right"));
    expect(plan.messages.find(({ code }) => code === "estimated-lengths")?.text).toContain("sides");
  });
  it("so far that the waist stands before it is refused with a way out", () => {
    const source = recipeText(hooped({ offset: "20 in" }));
    const { plan, messages } = tried(source);
    expect(plan).toBeUndefined();
    const [error] = messages.filter(({ level }) => level === "error");
    expect(error && messageText(error, source)).toMatch(/hoop-behind.*\n.*offset: "20 in"/);
    expect(error?.hint).toContain("smaller offset");
  });
});

it("a hoop no wider than the waist hangs plumb: the height of the waist, and a warning", () => {
  const plan = planOf(hooped({ round: "20 in" }));
  expect(exactOf(plan, "straight.front")).toBe("40");
  expect(exactOf(plan, "domed.front")).toBe("40");
  expect(plan.messages.map(({ code }) => code)).toContain("hoop-inside-waist");
});

it("measured lengths are no estimate, hoop or not", () => {
  const plan = planOf({ wearer: { hoop: { round: "110 in", height: "9 in" } } });
  expect(plan.values.has("straight.front")).toBe(false);
  expect(plan.messages.map(({ code }) => code)).not.toContain("estimated-lengths");
});
