/** Once the edge is made nothing that is sewn or cut may move: spacing changes, bites do not. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../src/solve/json.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { randomRecipe } from "../random.ts";
import { type Keys, planOf, tried } from "../recipes.ts";

const bites = ({ gauged }: Plan): string[][] => gauged.map((section) => section.bites.map(exact));
/** What is cut or sewn before the edge is made. */
const SEWN = [
  "band.length",
  "piping.length",
  "placket.unsewn",
  "cloth.buy",
  "gauging.pleats",
  "breadths.cut",
  "pocket.from",
];
const sewn = ({ values }: Plan): Record<string, string | undefined> =>
  Object.fromEntries(SEWN.map((name) => [name, values.get(name)?.shown]));
const flat = ({ sections }: Plan): string[] =>
  sections.filter(({ set }) => set === "flat").map(({ cloth }) => exact(cloth));

describe("an edge made to 25 in for 25 1/2 moves no bite and no opening in the cloth", () => {
  it.each([
    [
      "pleats and a gauged back, whose cloth goes by the fullness as planned",
      { fullness: { method: "pleated-gauged-back" } },
    ],
    ["a slit inside a gauged section", { attach: { opening: { at: "front-left", "from-centre": "3 in" } } }],
    [
      "a slit on a part band, pleats in front of it",
      {
        fullness: { zones: "[{set: knife, waist: 4 in, towards: front}, {set: gauged}]" },
        attach: { to: "part-band", opening: { at: "front-right", "from-centre": "5 in" } },
      },
    ],
  ] as [string, Keys][])("%s", (_, keys) => {
    const before = planOf(keys);
    const after = planOf({ ...keys, attach: { ...(keys.attach as Keys | undefined), made: "25 in" } });
    expect(bites(after)).toEqual(bites(before));
    expect(sewn(after)).toEqual(sewn(before));
    expect(exact(after.opening.alongTop)).toBe(exact(before.opening.alongTop));
  });
  it("the slit at 3 in of 25 1/2 comes to 3 x 25 / 25 1/2 = 50/17 in on the made edge", () => {
    const keys: Keys = { attach: { made: "25 in", opening: { at: "front-left", "from-centre": "3 in" } } };
    expect(exact(planOf(keys).gauged[0]?.waist as never)).toBe("50/17");
  });
});

it("random recipes: the same without the made edge, but for trials, estimates and flat parts that follow it", () => {
  let compared = 0;
  fc.assert(
    fc.property(randomRecipe, (source) => {
      if (!/^ +made:/m.test(source) || /trial:|waist-height/.test(source)) return;
      const after = tried(source).plan;
      const before = tried(source.replace(/^ +made:.*\n/m, "")).plan;
      if (!before || !after || flat(before).join() !== flat(after).join()) return;
      compared += 1;
      expect(bites(after)).toEqual(bites(before));
      expect(sewn(after)).toEqual(sewn(before));
      expect(exact(after.opening.alongTop)).toBe(exact(before.opening.alongTop));
    }),
    { numRuns: 300, endOnFailure: true },
  );
  expect(compared).toBeGreaterThan(15);
});
