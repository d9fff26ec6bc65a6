/** The threads of the gauging figure, and the sizes of their bites. */
import { type Quantity, sub } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import { dimension, extension } from "./dimension.ts";
import type { Drawing } from "./drawing.ts";
import { pen, printer } from "./measure.ts";
import { across, besideLeft, LEFT, PAST, RIGHT, type Stretch } from "./stretch.ts";

/** Radius of a needle mark. */
const MARK = 1.5;

/** The threads through their marks, each row at its real distance, knot and tail at the right. */
export function drawRows(drawing: Drawing, plan: Plan, stretch: Stretch): void {
  const { section, pleats, scale, fold } = stretch;
  const { tape } = printer(plan);
  const marks = section.marks.slice(0, 2 * pleats + 1).map((mark) => across(stretch, mark));
  for (const [row, below] of plan.rows.entries()) {
    const y = fold + pen(below) * scale;
    for (let i = 0; i + 1 < marks.length; i += 1) {
      const [a, b] = [marks[i] as number, marks[i + 1] as number];
      drawing.line(i % 2 === 0 ? "under" : "over", [
        { x: a, y },
        { x: b, y },
      ]);
    }
    if (pleats < section.pleats)
      drawing.line("under", [
        { x: LEFT, y },
        { x: LEFT - PAST + 3, y },
      ]);
    for (const mark of marks) drawing.dot({ x: mark, y }, MARK);
    drawing.line("over", [
      { x: RIGHT, y },
      { x: RIGHT + 6, y: y + 1 },
      { x: RIGHT + 11, y: y - 1 },
    ]);
    drawing.dot({ x: RIGHT + 1, y }, 2.9);
    drawing.label(
      `row ${row + 1}: ${tape(below)}`,
      { x: LEFT - PAST, y },
      { stand: besideLeft(stretch, row), sides: ["left"], width: 50 },
    );
    if (row === 0) drawing.label("knot", { x: RIGHT + PAST, y }, { sides: ["right"], leader: "moved" });
  }
}

/** One bite on each side, one pleat: their sizes above the fold, carried up from the marks they lie between. */
export function drawBites(drawing: Drawing, plan: Plan, stretch: Stretch): void {
  const { section, pleats, scale, fold } = stretch;
  const { part } = printer(plan);
  const y = fold - 13;
  const row = fold + pen(plan.rows[0] as Quantity) * scale;
  const size = (from: number, to: number): Quantity =>
    sub(section.marks[to] as Quantity, section.marks[from] as Quantity);
  // Of a short section another bite is measured, so that its words stand clear of those of the pleat.
  const inside = pleats > 4 ? 5 : 2 * Math.ceil(pleats / 2) - 1;
  const measures: readonly (readonly [number, number, string])[] = [
    [0, 1, "outside"],
    [inside, inside + 1, "inside"],
    [2 * pleats - 2, 2 * pleats, "one pleat"],
  ];
  for (const [from, to, words] of measures) {
    if (to >= section.marks.length) continue;
    const ends = [from, to].map((i) => across(stretch, section.marks[i] as Quantity)) as [number, number];
    for (const end of ends) extension(drawing, { x: end, y: row }, { x: end, y: y - 3 });
    dimension(drawing, { x: ends[1], y }, { x: ends[0], y }, `${words} ${part(size(from, to))}`, {
      sides: ["above"],
      width: 74,
    });
  }
}
