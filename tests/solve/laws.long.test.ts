import fc from "fast-check";
import { expect, it } from "vitest";
import { brokenLaws } from "../laws.ts";
import { randomRecipe } from "../random.ts";
import { tried } from "../recipes.ts";

it("20 000 random recipes keep every law", () => {
  fc.assert(
    fc.property(randomRecipe, (source) => {
      const { plan, messages } = tried(source);
      if (plan) expect(brokenLaws(plan)).toEqual([]);
      else expect(messages.some(({ level }) => level === "error")).toBe(true);
    }),
    { numRuns: 20_000 },
  );
});
