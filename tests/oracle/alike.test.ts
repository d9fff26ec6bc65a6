/** Random skirts whose fullness is thrown to the back, against the rule in words. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { type Keys, recipeText, tried } from "../recipes.ts";
import { unlike } from "./alike.ts";

const skirts: fc.Arbitrary<Keys> = fc
  .record({
    share: fc.integer({ min: 51, max: 75 }),
    breadths: fc.integer({ min: 5, max: 12 }),
    waist: fc.integer({ min: 180, max: 300 }),
    thickness: fc.integer({ min: 12, max: 50 }),
    wish: fc.constantFrom(null, null, "4", "7", "11"),
    flat: fc.boolean(),
    opening: fc.constantFrom<Keys>(
      { at: "centre-back" },
      { at: "front-left", "from-centre": "3 in" },
      { at: "side-right" },
      { at: "front-right", "from-centre": "7 1/4 in" },
    ),
  })
  .map(({ share, breadths, waist, thickness, wish, flat, opening }) => ({
    wearer: { waist: `${waist}/8 in` },
    cloth: { thickness: `${thickness}/100 mm` },
    skirt: { breadths: breadths % 2 ? `${(breadths - 1) / 2} 1/2` : `${breadths / 2}` },
    fullness: {
      "back-share": `${share} %`,
      "pleats-per-inch": wish,
      ...(flat ? { method: "flat-front-gauged" } : {}),
    },
    attach: { opening },
  }));

it("the pleats of every section are those of the rule, and a step is said where it finds no even way", () => {
  let plans = 0;
  fc.assert(
    fc.property(skirts, (keys) => {
      const { plan } = tried(recipeText(keys));
      if (!plan) return;
      plans += 1;
      const { wrong, steps } = unlike(plan);
      expect(wrong).toEqual([]);
      expect(plan.messages.some(({ code }) => code === "back-share-step")).toBe(steps);
    }),
    { numRuns: 60 },
  );
  expect(plans).toBeGreaterThan(30);
});
