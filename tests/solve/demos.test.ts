/** What the demos of zones, checks and a failed trial are there to show. Their numbers are worked by hand. */
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { exact } from "../../src/solve/json.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { exactOf, tried } from "../recipes.ts";

function demo(name: string): Plan {
  const file = new URL(`../../demo-projects/${name}/recipe.md`, import.meta.url);
  const { plan } = tried(readFileSync(file, "utf8"));
  if (!plan) throw new Error(`${name} does not build`);
  return plan;
}
const codes = (plan: Plan): string[] => plan.messages.map(({ code }) => code);

it("green silk: 8 x 21 = 168 in 25; 9 1/2 of a half pleated, 3 gauged; the opening goes to the second seam, under a fold", () => {
  const plan = demo("green-silk-1862");
  expect(exactOf(plan, "skirt.round")).toBe("168");
  // 9 1/2 / (3/4) = 12 2/3 -> 13 a half; cloth in proportion, 9 1/2 x 168 / 25
  expect(exactOf(plan, "pleating.count")).toBe("26");
  expect(exact(plan.sections[0]?.cloth as never)).toBe("1596/25");
  expect(exact(plan.opening.alongTop)).toBe("42");
  expect(codes(plan)).toContain("opening-moved");
  expect(codes(plan)).not.toContain("opening-on-face");
});

it("checked wool: 53 checks of 1/2 in between two seams; 2 lines a pleat, 33 in a quarter of 33 1/8, the last 1 1/8", () => {
  const plan = demo("checked-walking-wool");
  expect(exactOf(plan, "breadths.finished")).toBe("53/2");
  expect(exactOf(plan, "section.lines")).toBe("2");
  expect(exactOf(plan, "section.pleats")).toBe("33");
  expect(plan.gauged[0]?.bites.slice(-3).map(exact)).toEqual(["1/2", "9/16", "9/16"]);
  expect(codes(plan)).not.toContain("seams-miss-repeat");
});

it("brown twill: 3 7/8 for 3 7/16 cannot close; packed 31/192 in, a tenth more is easy, 38 fit a quarter of 6 7/8", () => {
  const plan = demo("brown-twill-retried");
  expect(exactOf(plan, "trial.reaches")).toBe("55/16");
  expect(exactOf(plan, "gauging.packed")).toBe("31/192");
  expect(codes(plan)).toContain("trial-too-wide");
  // 6 7/8 / (341/1920) = 38.7; from 34 up to 38, 34 pitches of 1 1/4 in make 42 1/2 in one size
  expect(exactOf(plan, "section.wanted")).toBe("38");
  expect(exactOf(plan, "section.pleats")).toBe("34");
});
