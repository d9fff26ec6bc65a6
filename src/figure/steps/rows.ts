/** Rows pierced alike: every needle goes through the marks of the first row; a row half a bite along is crossed out. */
import type { Plan } from "../../solve/plan.ts";
import { Drawing } from "../drawing.ts";
import { chiefSection, pen, printer } from "../measure.ts";
import { goesOn, level, p, say, upright } from "./parts.ts";
import { sewRow } from "./sewing.ts";
import { isGauged, type Step } from "./step.ts";

const [LEFT, RIGHT] = [56, 300];
const FOLD = 34;
/** The last row may lie this far below the fold on the page. */
const DEEPEST = 58;
const BITES = 6;
/** Room for one number. */
const ROOM = 16;
/** Marks at which the needles enter, row by row: each row a little behind the one above it. */
const ENTERS = [4, 2] as const;

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-rows");
  const inches = chiefSection(plan)
    .marks.slice(0, BITES + 1)
    .map(pen);
  const rows = plan.rows.map(pen);
  const scale = Math.min((RIGHT - LEFT) / (inches.at(-1) as number), DEEPEST / (rows.at(-1) as number));
  const marks = inches.map((mark) => RIGHT - mark * scale);
  const last = FOLD + (rows.at(-1) as number) * scale;
  const [left, foot] = [Math.min(...marks) - 24, last + 28];
  drawing.note("The inside towards you, the fold upwards:");
  drawing.line("fold", level(FOLD, left, RIGHT + 12), { soft: true });
  goesOn(drawing, [[p(left, foot), p(RIGHT + 12, foot)]]);
  drawing.lines(
    "leader",
    marks.map((x) => upright(x, FOLD + 5, last + 6)),
    { soft: true },
  );
  for (const [row, below] of rows.entries()) {
    const y = FOLD + below * scale;
    sewRow(drawing, marks, y, ENTERS[Math.min(row, 1) as 0 | 1]);
    // Rows that stand close have their numbers side by side, each still level with its own.
    const aside = row % 2 === 1 && (rows[1] as number) - (rows[0] as number) < ROOM / scale ? ROOM : 0;
    say(drawing, String(row + 1), p(RIGHT + 16 + aside, y), { sides: ["right"], bold: true });
  }
  drawing.settle();
  drawing.note(words(plan));
  drawWrong(drawing, drawing.bottom + 16);
  return drawing;
}

/** The order of work, with the depth of every row. */
function words(plan: Plan): string {
  const { tape } = printer(plan);
  const [first, ...others] = plan.rows.map((row, i) => `${i + 1}, ${tape(row)} below the fold`);
  const along = plan.recipe.fullness.thread === "drawn-along";
  const hand = plan.recipe.show === "cm" ? "about 10 cm" : "about 4 in";
  const rest = others.map((row) => `row ${row}`).join(", then ");
  return `Row ${first}${along ? `, ${hand} ahead` : ""}; then ${rest}, ${along ? "as far, " : ""}through the same marks.`;
}

/** Two rows half a bite apart, crossed out. */
function drawWrong(drawing: Drawing, y: number): void {
  const dashes = (from: number, at: number) =>
    [0, 1, 2].map((i) => level(at, from + 22 * i, from + 22 * i + 11));
  drawing.lines("over", [...dashes(26, y), ...dashes(32, y + 14)], { soft: true });
  drawing.lines("body", [
    [p(20, y - 7), p(92, y + 21)],
    [p(20, y + 21), p(92, y - 7)],
  ]);
  say(drawing, "not so: a row half a bite along makes the heads of the pleats zigzag", p(102, y + 7), {
    sides: ["right"],
    width: 244,
  });
}

export const stepRows: Step = {
  title: "Step: the rows pierced alike",
  applies: isGauged,
  draw,
  describe(plan) {
    const { pleats, marks } = chiefSection(plan);
    return `${words(plan)} The ${marks.length} marks of one row stand exactly under those of the other, for ${pleats} pleats in this section. Small and crossed out: a lower row half a bite along.`;
  },
};
