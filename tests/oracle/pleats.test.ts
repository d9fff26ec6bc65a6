/** The number of pleats against every other there could be, and shared bites against an integer program. */
import fc from "fast-check";
import loadHighs from "highs";
import { expect, it } from "vitest";
import { inches, toInches } from "../../src/quantity/quantity.ts";
import { share } from "../../src/quantity/tape.ts";
import { planOf } from "../recipes.ts";
import { holdCounts, missed } from "./counts.ts";

it("over random recipes every gauged section has the best count there is", () => {
  expect(holdCounts(60)).toBeGreaterThan(10);
});

it.each(["5", "9 1/2", "12"])("and so with %s pleats an inch wished", (wish) => {
  const plan = planOf({ fullness: { "pleats-per-inch": wish, "finest-bite": "1/8 in" } });
  expect(plan.gauged.length).toBeGreaterThan(0);
  expect(missed(plan)).toEqual([]);
});

it("no way of sharing marks over bites has a smaller spread", async () => {
  const highs = await loadHighs();
  const cases = fc.sample(fc.tuple(fc.integer({ min: 3, max: 400 }), fc.integer({ min: 2, max: 24 })), {
    numRuns: 12,
    seed: 1850,
  });
  for (const [marks, bites] of cases) {
    const names = Array.from({ length: bites }, (_, i) => `b${i}`);
    const solution = highs.solve(
      [
        "Minimize",
        " spread: high - low",
        "Subject To",
        ` all: ${names.join(" + ")} = ${marks}`,
        ...names.flatMap((name) => [` ${name}h: high - ${name} >= 0`, ` ${name}l: ${name} - low >= 0`]),
        "General",
        ` ${[...names, "high", "low"].join(" ")}`,
        "End",
      ].join("\n"),
      { mip_rel_gap: 0 },
    );
    expect(solution.Status).toBe("Optimal");
    const ours = share(inches(`${marks}/8`), bites, inches("1/8")).parts.map(
      (part) => toInches(part).mul(8).n,
    );
    const sizes = ours.map(Number);
    const spread = Math.max(...sizes) - Math.min(...sizes);
    expect(`${marks} over ${bites}: ${spread}`).toBe(
      `${marks} over ${bites}: ${Math.round(solution.ObjectiveValue)}`,
    );
    expect(ours.reduce((a, b) => a + b)).toBe(BigInt(marks));
  }
});
