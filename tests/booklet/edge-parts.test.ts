/** The edge marked in parts, the stay as long as the flat cloth, and words that hang on where the gauging ends. */
import { describe, expect, it } from "vitest";
import { contextOf } from "../../src/booklet/context.ts";
import { edgeParts } from "../../src/booklet/edge-parts.ts";
import { writeChapters } from "../../src/booklet/markdown.ts";
import { escapedMarks } from "../../src/booklet/marks.ts";
import { FIGURE_NAMES } from "../../src/figure/figure.ts";
import type { Quantity } from "../../src/quantity/quantity.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { meaningOf } from "../../src/solve/sheet.ts";
import { type Keys, planOf } from "../recipes.ts";

const titles = Object.fromEntries(FIGURE_NAMES.map((name) => [name, `Title of ${name}`]));
const chapterOf = (plan: Plan, chapter: string): string =>
  escapedMarks(
    writeChapters(plan, { ...contextOf(plan), figures: titles }).find(({ name }) => name === chapter)
      ?.markdown ?? "",
  );
const waistOf = (plan: Plan): Quantity => plan.values.get("waist.seam")?.quantity as Quantity;

const inches = (text: string): number =>
  text
    .replace(" in", "")
    .split(" ")
    .reduce((sum, part) => {
      const [n, d] = part.split("/").map(Number);
      return sum + (n ?? 0) / (d ?? 1);
    }, 0);

const mixed = (side: "left" | "right"): Keys => ({
  fullness: { method: "pleated-gauged-back" },
  attach: { to: "part-band", opening: { at: `front-${side}`, "from-centre": "3 in" } },
});

describe("parts along the edge", () => {
  it.each(["left", "right"] as const)("go all the way round from an opening on the %s", (side) => {
    const plan = planOf(mixed(side));
    const parts = edgeParts(plan, waistOf(plan));
    expect(parts[0]?.fromWhere).toBe("the opening mark");
    expect(parts.at(-1)?.toWhere).toBe("the closing mark");
    for (const [i, part] of parts.slice(1).entries()) expect(part.fromWhere).toBe(parts[i]?.toWhere);
    expect(parts.filter(({ onPartBand }) => onPartBand)).toHaveLength(1);
    expect(parts.at(-1)).toMatchObject({ fromWhere: "centre front", onPartBand: true });
    expect(parts.at(-1)?.name).toContain(side);
    expect(parts.reduce((sum, { waist }) => sum + inches(waist), 0)).toBe(
      inches(plan.values.get("waist.seam")?.shown ?? ""),
    );
  });
  it("leave the marks in until the dog-leg is done", () => {
    const plan = planOf(mixed("left"));
    expect(chapterOf(plan, "closing")).not.toContain("Take out all tacking");
    expect(chapterOf(plan, "dog-leg")).toContain("Take out all tacking and every coloured mark.");
    expect(chapterOf(planOf(), "closing")).toContain("Take out all tacking and every coloured mark.");
  });
  it("the opening among pleats is no end of the gauging", () => {
    expect(chapterOf(planOf(mixed("left")), "marking")).not.toContain("At the opening");
    expect(chapterOf(planOf(), "marking")).toContain("At the opening put the end mark");
  });
});

it("a stay is bought for the cloth that is gauged, and laid in deeper than the last row", () => {
  const plan = planOf({ fullness: { stay: { name: "tarlatan", thickness: "0.2 mm" } } });
  const cloth = plan.values.get("gauging.cloth")?.shown;
  expect(chapterOf(plan, "cloth")).toContain(`| tarlatan | strips 7/8 in deep, ${cloth} and over in all`);
  expect(chapterOf(plan, "second-fitting")).toContain("7/8 in deep: it reaches a little below the last row");
});

describe("a recipe's measure in the workings", () => {
  it.each([
    ["wearer.waist", "waist, taken over everything worn beneath, closed as it will be worn"],
    ["wearer.hoop.round", "the hoop worn beneath: round of its lowest steel"],
    ["no.such.key", "no.such.key"],
  ])("%s", (path, words) => {
    expect(meaningOf(path)).toBe(words);
  });
  it("always has words, never its path again", () => {
    const given = [...planOf(mixed("left")).values.values()].filter(({ path }) => path !== undefined);
    expect(given.length).toBeGreaterThan(20);
    for (const { about, path } of given) expect(about, path).not.toBe(path);
  });
});
