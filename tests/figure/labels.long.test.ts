/** Five hundred garments: no label meets another or leaves its picture in any figure. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { figuresOf } from "../../src/figure/index.ts";
import { randomRecipe } from "../random.ts";
import { tried } from "../recipes.ts";
import { DRAWINGS } from "./drawings.ts";
import { faults } from "./faults.ts";

it("labels meet nowhere and stay in the picture: 500 garments that can be made", () => {
  let plans = 0;
  const recipes = fc.sample(randomRecipe, { numRuns: 2000, seed: 1862 });
  for (const source of recipes) {
    const { plan } = tried(source);
    if (!plan) continue;
    plans += 1;
    for (const figure of figuresOf(plan))
      expect(faults(DRAWINGS[figure](plan)), `${figure}\n${source}`).toEqual([]);
    if (plans === 500) break;
  }
  expect(plans).toBe(500);
});
