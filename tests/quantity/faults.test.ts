/** What the quantities refuse of the program itself: a wrong kind, a step of nothing, a part where a whole must be. */
import { expect, it } from "vitest";
import { hypotenuse } from "../../src/quantity/hypotenuse.ts";
import { inches, plain, toCount } from "../../src/quantity/quantity.ts";

it.each([
  [
    "a side that is no length",
    () => hypotenuse(plain(3n), inches("4"), inches("1")),
    "the sides a plain number",
  ],
  ["another side", () => hypotenuse(inches("3"), plain(4n), inches("1")), "and a plain number"],
  ["a step of nothing", () => hypotenuse(inches("3"), inches("4"), inches("0")), "above 0"],
  ["a float", () => plain(0.5), "0.5"],
  ["half of a count", () => toCount(plain("1/2")), "whole plain number"],
  ["a length for a count", () => toCount(inches("1")), "whole plain number"],
] as const)("%s", (_, run, words) => {
  expect(run).toThrow(words);
});
