/** The laws over all demos and a few random recipes: the quick part of a mutation run. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { DEMOS, demo } from "../demos.ts";
import { brokenLaws } from "../laws.ts";
import { randomRecipe } from "../random.ts";
import { tried } from "../recipes.ts";

it.each(DEMOS)("%s keeps every law", (name) => {
  expect(brokenLaws(demo(name))).toEqual([]);
});

it("sixty random recipes keep every law", () => {
  fc.assert(
    fc.property(randomRecipe, (source) => {
      const { plan, messages } = tried(source);
      if (plan) expect(brokenLaws(plan)).toEqual([]);
      else expect(messages.some(({ level }) => level === "error")).toBe(true);
    }),
    { numRuns: 60 },
  );
});
