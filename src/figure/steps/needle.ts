/** Entering the needle at the marks: the first stitches from the knot, flat and cut along the row. */
import type { Quantity } from "../../quantity/quantity.ts";
import type { Plan } from "../../solve/plan.ts";
import { dimension } from "../dimension.ts";
import { Drawing } from "../drawing.ts";
import { chiefSection, pen, printer } from "../measure.ts";
import { goesOn, level, marksAt, p, say, way } from "./parts.ts";
import { sewRow } from "./sewing.ts";
import { isGauged, type Step } from "./step.ts";

const [LEFT, RIGHT] = [46, 286];
const FOLD = 48;
/** Marks have their numbers beside them where there is room below the fold, else above it. */
const ROOM = 20;
/** The first row may lie this far below the fold on the page; then the picture is drawn smaller. */
const ROW = 34;
const BITES = 4;
/** Room for one number. */
const NUMBER = 12;
/** Between the two layers cut through. */
const LAYER = 11;

/** Where the first marks stand on the page, from the right, and the row below the fold: one scale for both. */
function placeMarks(plan: Plan): { readonly marks: readonly number[]; readonly row: number } {
  const marks = chiefSection(plan)
    .marks.slice(0, BITES + 1)
    .map(pen);
  const below = pen(plan.rows[0] as Quantity);
  const scale = Math.min((RIGHT - LEFT) / (marks.at(-1) as number), ROW / below);
  return { marks: marks.map((mark) => RIGHT - mark * scale), row: FOLD + below * scale };
}

/** Places of the marks' numbers: those of a short bite stand a little further apart than its marks. */
function apart(marks: readonly number[]): number[] {
  return marks.map((x, i) => {
    const other = marks[i % 2 === 1 ? i + 1 : i - 1];
    const crowded = other === undefined || i === 0 ? 0 : Math.max(0, (NUMBER - Math.abs(x - other)) / 2);
    return i % 2 === 1 ? x + crowded : x - crowded;
  });
}

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-needle");
  const { tape } = printer(plan);
  const { marks, row } = placeMarks(plan);
  drawing.note("The inside towards you, the fold upwards:");
  const [left, foot] = [(marks.at(-1) as number) - 22, row + 26];
  drawing.line("fold", level(FOLD, left, RIGHT + 22), { soft: true });
  goesOn(drawing, [[p(left, foot), p(RIGHT + 22, foot)]]);
  marksAt(
    drawing,
    marks.map((mark) => p(mark, row)),
  );
  sewRow(drawing, marks, row, 2);
  way(drawing, p(RIGHT + 8, row + 15), p(RIGHT - 26, row + 15));
  const numbers = row - FOLD < ROOM ? FOLD : row;
  for (const [i, x] of apart(marks).entries())
    say(drawing, String(i + 1), p(x, numbers - 3), { sides: ["above"], gap: 2, bold: true });
  dimension(drawing, p(RIGHT + 14, FOLD), p(RIGHT + 14, row), tape(plan.rows[0] as Quantity), {
    sides: ["right"],
    width: 56,
  });
  drawing.settle();
  drawing.note("Cut along the row, the inside upwards:", { above: 8 });
  drawCut(drawing, plan, marks, drawing.bottom + 28);
  return drawing;
}

/** Both layers on their edge, the stay between them, and the thread that goes through them by turns. */
function drawCut(drawing: Drawing, plan: Plan, marks: readonly number[], upper: number): void {
  const { part } = printer(plan);
  const [outside, inside] = chiefSection(plan).bites as [Quantity, Quantity];
  const { stay } = plan.recipe.fullness;
  const [one, two, three] = marks as [number, number, number];
  const end = marks.at(-1) as number;
  const lower = upper + LAYER;
  drawing.lines("cloth", [level(upper, end - 22, one + 22), level(lower, end - 22, one + 22)]);
  if (stay) drawing.line("hidden", level(upper + LAYER / 2, end - 22, one + 22), { soft: true });
  const [above, below] = [upper - 5, lower + 5];
  const thread = marks.flatMap((x, i) =>
    i % 2 === 0 ? [p(x, above), p(x, below)] : [p(x, below), p(x, above)],
  );
  drawing.line("over", [p(one + 12, above - 1), ...thread.slice(0, -1)]);
  drawing.dot(p(one + 12, above - 1), 2.9);
  say(drawing, `outside ${part(outside)}`, p((one + two) / 2, below), { sides: ["below"], gap: 3 });
  say(drawing, `inside ${part(inside)}`, p((two + three) / 2, above), { sides: ["above"], gap: 3 });
  say(drawing, "knot", p(one + 20, above), { sides: ["above"], gap: 3 });
  say(drawing, stay ? "2 layers, stay" : "2 layers", p(end - 26, (upper + lower) / 2), {
    sides: ["left", "below"],
    width: 62,
  });
}

export const stepNeedle: Step = {
  title: "Step: the needle enters at the marks",
  applies: isGauged,
  draw,
  describe(plan) {
    const { tape, part } = printer(plan);
    const [outside, inside] = chiefSection(plan).bites as [Quantity, Quantity];
    return `Row 1 runs ${tape(plan.rows[0] as Quantity)} below the fold, from the right. From the knot at mark 1 the thread lies outside for ${part(outside)} to mark 2, inside for ${part(inside)} to mark 3; there the needle goes in through both layers and comes back at mark 4.`;
  },
};
