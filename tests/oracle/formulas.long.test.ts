import { expect, it } from "vitest";
import { holdChains, holdComparisons, holdSums } from "./held.ts";

it("20 000 random formulas with units come out as full mathjs and as whole-number rationals have them", () => {
  const { refused, mathjs } = holdSums(20_000);
  expect(mathjs).toBeGreaterThan(15_000);
  expect(refused).toBeGreaterThan(100);
});
it("5 000 random comparisons say the same", () => {
  holdComparisons(5_000);
});
it("5 000 random chains without brackets are worked in the schoolbook's order", () => {
  holdChains(5_000);
});
