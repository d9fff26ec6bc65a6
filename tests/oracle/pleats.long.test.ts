import { expect, it } from "vitest";
import { holdCounts } from "./counts.ts";

it("over 3 000 random recipes every gauged section has the best count there is", () => {
  expect(holdCounts(3_000)).toBeGreaterThan(1_000);
});
