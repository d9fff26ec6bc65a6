/** The step pictures: small, true to the plan's proportions, and there for the garments that have the step. */
import type { Element } from "hast";
import { describe, expect, it } from "vitest";
import { figuresOf } from "../../src/figure/index.ts";
import { LINES, type LineKind } from "../../src/figure/language.ts";
import { chiefSection, pen, shownOf } from "../../src/figure/measure.ts";
import { svgFile } from "../../src/figure/serialize.ts";
import { STEPS, type StepName } from "../../src/figure/steps/index.ts";
import { stepFigure } from "../../src/figure/steps/step.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { all, type Outline, outlinesOf } from "./outlines.ts";
import { GARMENTS, garment } from "./plans.ts";

const NAMES = Object.keys(STEPS) as StepName[];
const stepsOf = (plan: Plan): StepName[] => NAMES.filter((name) => figuresOf(plan).includes(name));
const drawn = (plan: Plan, name: StepName): Element => stepFigure(STEPS[name], plan).svg;

/** Everything drawn in one kind of line. */
function linesOf(svg: Element, kind: LineKind): Outline[] {
  const { strokeWidth, strokeDashArray } = LINES[kind].attributes;
  return all(svg, "path")
    .filter(
      ({ properties }) =>
        Number(properties.strokeWidth) === strokeWidth && properties.strokeDashArray === strokeDashArray,
    )
    .flatMap(({ properties }) => outlinesOf(String(properties.d)));
}

const gaugedOnes = Object.keys(GARMENTS).filter((name) => garment(name).gauged.length > 0);

describe.each(Object.keys(GARMENTS))("the step pictures of %s", (name) => {
  const plan = garment(name);

  it("are small: 3.6 KB each, 35 KB together", () => {
    const sizes = stepsOf(plan).map((step) => svgFile(drawn(plan, step)).length);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(3600);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(35_000);
  });

  it("are low, so that a step and its picture are seen together", () => {
    for (const step of stepsOf(plan)) {
      const height = Number(String(drawn(plan, step).properties.viewBox).split(" ")[3]);
      expect(height, step).toBeLessThanOrEqual(250);
    }
  });

  it("turn the cut edge as far below the fold as it stood above the line", () => {
    const svg = drawn(plan, "step-turn");
    const [fold] = linesOf(svg, "fold");
    const [hidden] = linesOf(svg, "hidden");
    const top = Math.min(...(linesOf(svg, "cut")[0] ?? []).map(([, y]) => y));
    expect(fold?.length).toBe(hidden?.length);
    for (const [i, [x, y]] of (fold ?? []).entries()) {
      expect(hidden?.[i]?.[0]).toBeCloseTo(x, 1);
      expect(Math.abs((hidden?.[i]?.[1] ?? 0) - y - (y - top))).toBeLessThan(0.25);
    }
  });
});

describe.each(gaugedOnes)("the gauging steps of %s", (name) => {
  const plan = garment(name);
  const section = chiefSection(plan);

  it("have their marks and the row in one scale: the bites' own", () => {
    const svg = drawn(plan, "step-needle");
    const dots = linesOf(svg, "cloth").filter((outline) => outline.every(([x]) => x === outline[0]?.[0]));
    const xs = dots.map(([at]) => at?.[0] ?? 0);
    const row = dots[0]?.[0]?.[1] ?? 0;
    const fold = linesOf(svg, "fold")[0]?.[0]?.[1] ?? 0;
    const inches = section.marks.slice(0, 5).map(pen);
    const scale = ((xs[0] ?? 0) - (xs[4] ?? 0)) / (inches[4] ?? 1);
    for (const [i, x] of xs.entries())
      expect(Math.abs((xs[0] ?? 0) - x - (inches[i] ?? 0) * scale)).toBeLessThan(0.15);
    expect(Math.abs(row - fold - pen(plan.rows[0] ?? section.waist) * scale)).toBeLessThan(0.15);
  });

  it("lead every row through the same marks, plumb", () => {
    const svg = drawn(plan, "step-rows");
    const plumb = linesOf(svg, "leader").map(([at]) => at?.[0] ?? 0);
    expect(plumb.length).toBe(7);
    const crossed = 3;
    const over = linesOf(svg, "over").filter((line) => line.length === 2);
    const laid = [...over.slice(0, over.length - 2 * crossed), ...linesOf(svg, "under")];
    expect(laid.length).toBeGreaterThanOrEqual(plan.rows.length);
    for (const line of laid) for (const [x] of line) expect(plumb).toContainEqual(expect.closeTo(x, 1));
  });

  it("share out as many pleats as the section has, half of it or a quarter drawn", () => {
    const svg = drawn(plan, "step-even");
    const pinned = linesOf(svg, "cloth").length;
    const spaces = pinned / 2 - 1;
    const pleats = linesOf(svg, "body").length - pinned;
    expect([1, 2]).toContain(spaces);
    expect(Math.abs(pleats / 2 - (section.pleats * spaces) / 4)).toBeLessThanOrEqual(0.5);
  });

  it("double as many whip stitches as the plan", () => {
    expect(stepFigure(STEPS["step-whip"], plan).description).toContain(
      `${shownOf(plan, "whip.doubled")} of ${shownOf(plan, "whip.stitches")} stitches`,
    );
  });
});

describe("which steps there are", () => {
  it("no gauging steps where nothing is gauged", () => {
    expect(stepsOf(garment("pleats only"))).toEqual(["step-placket", "step-turn", "step-pins", "step-hooks"]);
  });
  it("a cord is rolled back only where there is one", () => {
    const has = (name: string): boolean => stepsOf(garment(name)).includes("step-cord");
    expect(has("a piped band, every other pleat whipped")).toBe(true);
    expect(has("a bodice edge, long and short, a stay, a braid")).toBe(true);
    expect(has("four breadths, even bites")).toBe(false);
  });
  it("the hooks of a band are drawn where it has them, those of a part band are not", () => {
    const described = (name: string): string => stepFigure(STEPS["step-hooks"], garment(name)).description;
    expect(described("four breadths, even bites")).toContain("2 hooks inside");
    expect(described("a part band, the opening at the wearer's front left")).not.toContain("band");
  });
});
