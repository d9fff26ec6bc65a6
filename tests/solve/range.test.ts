/**
 * Other waists and further hooks, worked by hand. Four 45 in breadths make 173 in, the waist seam is 25 1/2 in. Half a quarter,
 * 21 5/8 in of cloth in 24 pleats, was drawn tight to 3 in: 1/8 in a pleat. It had to reach 25 1/2 / 8 = 3 3/16 in and keeps its
 * bites: 8 x 24 = 192 pleats.
 */
import { describe, expect, it } from "vitest";
import { exact } from "../../src/solve/json.ts";
import { type Keys, planOf, recipeText, tried } from "../recipes.ts";

const TRIED: Keys = { fullness: { trial: '{cloth: "21 5/8 in", pleats: "24", closes-to: "3 in"}' } };
const shown = (keys: Keys, name: string): string | undefined => planOf(keys).values.get(name)?.shown;
const other = (waist: string) => {
  const { plan, messages } = tried(
    recipeText({ ...TRIED, attach: { "other-waists": `[{waist: ${waist}}]` } }),
  );
  const row = plan?.otherWaists.find(({ asked }) => asked);
  return { row, said: messages.find(({ code }) => code.startsWith("other-waist")) };
};

describe("how far 192 pleats go", () => {
  it("192 x 1/8 = 24 in at the tightest, 11/10 of it 26 2/5 in with ease, 173 / 3 = 57 2/3 in at the widest", () => {
    expect(shown(TRIED, "gauging.pleats")).toBe("192");
    expect(shown(TRIED, "gauging.waistPacked")).toBe("24 in");
    expect(shown(TRIED, "gauging.waistLeast")).toBe("26 7/16 in");
    expect(shown(TRIED, "gauging.waistMost")).toBe("57 5/8 in");
  });
  it("a flat front keeps its 5 in, whatever the waist", () => {
    const plan = planOf({ fullness: { method: "flat-front-gauged", "flat-front": "5 in" } });
    const row = plan.otherWaists.find(({ waist }) => exact(waist) === "53/2");
    const pleats = plan.gauged.reduce((sum, section) => sum + section.pleats, 0);
    expect(row?.spacing.value.mul(pleats).div("25.4").toFraction()).toBe("43/2");
  });
  it("untried, the least goes by easy spacing: 3 mm a pleat in cloth of 0.25 mm", () => {
    const plan = planOf();
    const least = plan.values.get("gauging.waistLeast")?.quantity.value;
    expect(least?.toFraction()).toBe(plan.values.get("gauging.pleats")?.quantity.value.mul(3).toFraction());
  });
});

describe("a waist that is asked for", () => {
  it("27 in serves: 27 / 192 = 9/64 in from pleat to pleat", () => {
    const { row, said } = other("27 in");
    expect(said).toBeUndefined();
    expect(row && [exact(row.spacing), exact(row.fullness), row.verdict]).toEqual([
      "9/64",
      "173/27",
      "serves",
    ]);
  });
  it("25 in goes, but tight; 58 in gapes: warnings", () => {
    expect(other("25 in").said).toMatchObject({ code: "other-waist-tight", level: "warning" });
    expect(other("58 in").said).toMatchObject({ code: "other-waist-gapes", level: "warning" });
  });
  it("23 in is refused with the numbers and what would serve: 23 / (11/80) / 25 1/2 = 6.56 pleats an inch", () => {
    const { said } = other("23 in");
    expect(said).toMatchObject({ code: "other-waist-too-small", level: "error" });
    expect(said?.text).toContain("192 pleats");
    expect(said?.text).toContain("24 in");
    expect(said?.hint).toContain("pleats-per-inch: 6.5 or fewer");
  });
  it("where laid pleats are all there is, it is refused", () => {
    const source = recipeText({
      fullness: { method: "pleated" },
      attach: { "other-waists": "[{waist: 27 in}]" },
    });
    expect(tried(source).messages.map(({ code }) => code)).toContain("other-waists-ungauged");
  });
  it("31 1/2 in: 6 in more, a quarter of it in each section, and 1 in to hold: tails of 2 1/2 in", () => {
    expect(shown({ ...TRIED, attach: { "other-waists": "[{waist: 31 1/2 in}]" } }, "gauging.tail")).toBe(
      "2 1/2 in",
    );
    expect(shown({ ...TRIED, attach: { "other-waists": "[{waist: 27 in}]" } }, "gauging.tail")).toBe(
      "1 3/8 in",
    );
    expect(shown(TRIED, "gauging.tail")).toBeUndefined();
  });
});

describe("further hooks on a band of 25 1/2 in with 1 in of lap", () => {
  const hooks = (waist: string, attach: Keys = {}) =>
    tried(recipeText({ attach: { ...attach, band: { "hook-sets": `[{waist: ${waist}}]` } } }));
  it.each([
    ["25 in", "1/2", "garment"],
    ["26 in", "1/2", "lap"],
    ["23 1/2 in", "2", "garment"],
  ])("to %s the eyes stand %s in away, on the %s", (waist, away, on) => {
    const [set] = hooks(waist).plan?.hookSets ?? [];
    expect(set && [exact(set.away), set.on]).toEqual([away, on]);
  });
  it("two more eyes for the two hooks of the band", () => {
    const { plan } = hooks("25 in");
    expect(plan?.values.get("hooks.band")?.shown).toBe("2");
    expect(plan?.values.get("hooks.count")?.shown).toBe("3");
    expect(plan?.values.get("hooks.eyes")?.shown).toBe("5");
  });
  it.each([
    ["26 1/4 in", "hook-set-off-lap", "error"],
    ["25 1/2 in", "hook-set-same", "error"],
    ["23 in", "hook-set-far", "warning"],
    ["19 in", "hook-set-too-far", "error"],
  ])("%s: %s, %s", (waist, code, level) => {
    expect(hooks(waist).messages).toContainEqual(expect.objectContaining({ code, level }));
  });
  it("a lap of 1 1/4 in is offered for 26 1/4 in, and serves", () => {
    const said = hooks("26 1/4 in").messages.find(({ code }) => code === "hook-set-off-lap");
    expect(said?.hint).toContain("make the lap 1 1/4 in or more");
    const longer = { band: { lap: "1 1/4 in", "hook-sets": "[{waist: 26 1/4 in}]" } };
    expect(planOf({ attach: longer }).hookSets).toHaveLength(1);
  });
  it("on a bodice edge they are refused", () => {
    expect(hooks("25 in", { to: "bodice-edge" }).messages.map(({ code }) => code)).toContain(
      "hook-sets-off-band",
    );
  });
});
