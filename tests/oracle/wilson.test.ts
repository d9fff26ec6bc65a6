/**
 * The interval of the evidence by its meaning: at its ends the share that was seen lies just as far from the supposed one as
 * chance allows at 95 in 100. Found by halving, in floats; the program has it in closed form.
 */
import { expect, it } from "vitest";
import { readRecipe } from "../../src/recipe/read.ts";
import { solve } from "../../src/solve/solve.ts";
import { recipeText } from "../recipes.ts";

const Z = 1.959963984540054;

/** The supposed share between `sure` and `other` at which the seen one is just not surprising. */
function end(seen: number, items: number, other: number): number {
  const surprising = (p: number): boolean => Math.abs(seen - p) > Z * Math.sqrt((p * (1 - p)) / items);
  let [sure, far] = [seen, other];
  for (let i = 0; i < 100; i += 1) {
    const middle = (sure + far) / 2;
    if (surprising(middle)) far = middle;
    else sure = middle;
  }
  return sure;
}

it.each([
  [1, 1],
  [0, 7],
  [3, 8],
  [17, 40],
  [29, 30],
  [61, 100],
])("%i of %i", (gauged, items) => {
  const rows = Array.from({ length: items }, (_, i) => `1850,cotton,${i < gauged ? "gauged" : "pleated"}`);
  const { recipe } = readRecipe("recipe.md", recipeText(), {
    file: "evidence.csv",
    text: `year,fibre,set\n${rows.join("\n")}\n`,
  });
  const values = recipe && solve(recipe).plan?.values;
  const value = (name: string): number => values?.get(name)?.quantity.value.valueOf() ?? Number.NaN;
  expect(value("evidence.share")).toBeCloseTo(gauged / items, 12);
  const low = gauged === 0 ? 0 : end(gauged / items, items, 0);
  const high = gauged === items ? 1 : end(gauged / items, items, 1);
  expect(Math.abs(value("evidence.low") - low)).toBeLessThan(0.000051);
  expect(Math.abs(value("evidence.high") - high)).toBeLessThan(0.000051);
});
