/** Do the drawings show what the plan says? */
import type { Element } from "hast";
import { describe, expect, it } from "vitest";
import { halfOf } from "../../src/figure/half.ts";
import { drawFigure, figuresOf } from "../../src/figure/index.ts";
import { chiefSection, pen, printer } from "../../src/figure/measure.ts";
import { serpentine } from "../../src/figure/serpentine.ts";
import type { Quantity } from "../../src/quantity/quantity.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { DRAWINGS } from "./drawings.ts";
import { GARMENTS, garment } from "./plans.ts";

const names = Object.keys(GARMENTS);

const circles = (tree: Element): Element[] =>
  tree.children.flatMap((child) =>
    child.type === "element" ? [...(child.tagName === "circle" ? [child] : []), ...circles(child)] : [],
  );

/** Every length the plan has, as it is printed. */
function lengthsOf(plan: Plan): Set<string> {
  const { tape, part, fine } = printer(plan);
  const { repeat } = plan.recipe.cloth;
  const round = (plan.values.get("skirt.round") as { quantity: Quantity }).quantity.value;
  const both = (["left", "right"] as const).map((side) => halfOf(plan, side));
  return new Set([
    ...[...plan.values.values()].map(({ shown }) => shown),
    ...plan.balance.flatMap((s) => [tape(s.finishedMark), tape(s.turnDownMark)]),
    ...both.flatMap((half) => half.stations.map((station) => tape(half.placeOf(station)))),
    ...plan.map.flatMap(({ waist, alongTop, turnDownMark }) => [
      tape(waist),
      tape(alongTop),
      tape(turnDownMark),
    ]),
    ...plan.curve.map(({ turnDown }) => tape(turnDown)),
    ...plan.gauged.flatMap(({ bites, spacing }) => [...bites.map(part), fine(spacing)]),
    ...plan.gauged
      .map(({ marks }) => marks)
      .flatMap((marks) =>
        marks.slice(2).map((mark, i) => part({ ...mark, value: mark.value.sub(marks[i]?.value ?? 0) })),
      ),
    ...plan.rows.map(tape),
    ...plan.hookSets.flatMap(({ waist, away }) => [part(waist), tape(away)]),
    ...plan.seams.flatMap(({ alongTop }) => [
      tape(alongTop),
      tape({ ...alongTop, value: round.sub(alongTop.value) }),
    ]),
    ...plan.sections.flatMap(({ waist, cloth, clothFrom, from }) => [
      part(waist),
      part(cloth).replace(/^about /, ""),
      tape(clothFrom),
      tape(from),
    ]),
    ...plan.sections.flatMap((section) =>
      section.set === "flat" || section.set === "gauged"
        ? []
        : [section.face, section.depth, ...section.faces, ...section.depths].map(tape),
    ),
    ...plan.layout.pieces.flatMap(({ width, length }) => [tape(width), tape(length)]),
    // A place under a fold may lie between two marks: it is printed as about the nearest.
    tape((plan.values.get("opening.fromFront") as { quantity: Quantity }).quantity),
    ...(repeat?.down ? [tape(repeat.down)] : []),
    // A bar for the scale, how deep a whip stitch goes, the roll of the hem, the braid below it: rules, not results.
    ...["20 in", "50 cm", "1/16 in", "1/8 in", "1.5 mm", "3 mm"],
    // How far a row is sewn ahead, the tacking below the fold, a slit's strip from its edge: rules too.
    ...["4 in", "10 cm", "3/8 in", "1 cm", "1/4 in", "6 mm"],
  ]);
}

describe.each(names)("the drawings of %s", (name) => {
  it.each(figuresOf(garment(name)))("print only the plan's own lengths: %s", (figure) => {
    const plan = garment(name);
    const known = lengthsOf(plan);
    const drawing = DRAWINGS[figure](plan);
    drawing.finish("title", "description");
    const texts = [
      ...drawing.labels.placed.map(({ wish }) => wish.text),
      drawFigure(figure, plan).description,
    ];
    const printed = texts.flatMap((text) => [
      ...text.matchAll(/(?:\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?) (?:in|cm|mm)\b/g),
    ]);
    // The chart of originals prints shares and years, no lengths.
    if (figure !== "evidence") expect(printed.length).toBeGreaterThan(0);
    expect(printed.map(([length]) => length).filter((length) => !known.has(length))).toEqual([]);
  });

  it.runIf(figuresOf(garment(name)).includes("gauging"))(
    "put every row of gauging through the same marks",
    () => {
      const plan = garment(name);
      const rows = new Map<string, string[]>();
      for (const { properties } of circles(drawFigure("gauging", plan).svg)) {
        if (properties.r !== "1.5") continue;
        const row = String(properties.cy);
        rows.set(row, [...(rows.get(row) ?? []), String(properties.cx)]);
      }
      const marks = [...rows.values()];
      expect(marks.length).toBe(plan.rows.length);
      for (const row of marks) expect(row).toEqual(marks[0]);
      expect((marks[0]?.length ?? 0) % 2).toBe(1);
    },
  );

  it.runIf(figuresOf(garment(name)).includes("drawn-up"))(
    "stand the pleats on the side away from the longer stitch",
    () => {
      const section = chiefSection(garment(name));
      const bites = section.bites.slice(0, 8).map(pen);
      const { upper, lower } = serpentine({
        left: 0,
        thread: 0,
        spacing: pen(section.spacing),
        bites,
        wall: 0,
      });
      const ys = [...upper, ...lower].map(({ y }) => y);
      const [inside, outside] = [-Math.min(...ys), Math.max(...ys)];
      expect(inside).toBeCloseTo(Math.max(...bites.filter((_, i) => i % 2 === 0)) / 2, 9);
      expect(outside).toBeCloseTo(Math.max(...bites.filter((_, i) => i % 2 === 1)) / 2, 9);
      if (section.longSide === "outside") expect(inside).toBeGreaterThan(outside);
    },
  );
});

describe("a half of the skirt", () => {
  it("counts the wearer's right from centre front too", () => {
    const plan = garment("metric wool, a slit, unlike sides, a stay");
    const [left, right] = [halfOf(plan, "left"), halfOf(plan, "right")];
    expect(left.stations.map(({ station }) => station)).toEqual([
      "centre front",
      "left front eighth",
      "left side",
      "left back eighth",
      "centre back",
    ]);
    expect(right.stations.map(({ station }) => station)).toEqual([
      "centre front",
      "right front eighth",
      "right side",
      "right back eighth",
      "centre back",
    ]);
    for (const [i, { fromFront }] of right.stations.entries())
      expect(fromFront).toBeCloseTo(left.stations[i]?.fromFront ?? -1, 9);
    expect(right.curve.length).toBe(left.curve.length);
    expect(left.seams.filter(({ kind }) => kind === "slit").length).toBe(1);
    expect(right.seams.some(({ kind }) => kind === "slit")).toBe(false);
  });
});
