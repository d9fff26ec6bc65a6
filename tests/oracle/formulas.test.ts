/** Five hundred random formulas against two oracles; the long run takes 20 000. */
import { expect, it } from "vitest";
import { holdChains, holdComparisons, holdSums } from "./held.ts";

it("500 random formulas with units come out as full mathjs and as whole-number rationals have them", () => {
  const { refused, mathjs } = holdSums(500);
  expect(mathjs).toBeGreaterThan(300);
  expect(refused).toBeGreaterThan(0);
});
it("200 random comparisons say the same", () => {
  holdComparisons(200);
});
it("300 random chains without brackets are worked in the schoolbook's order", () => {
  holdChains(300);
});
