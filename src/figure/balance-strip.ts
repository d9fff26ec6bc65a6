/** The turn-down by itself in the balance figure, deep enough to be read. */
import type { Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import { acrossOf, drawEnds, drawTop, isCrowded, NAME, WIDE } from "./flat-half.ts";
import type { Half } from "./half.ts";
import { pen, printer } from "./measure.ts";
import { nameRow } from "./row.ts";

/** How many times the turn-down may be enlarged. */
const MOST_TIMES = 8;

/** The turn-down alone, no deeper on the page than `deep`, its depth enlarged by a whole number that is said. */
export function drawStrip(drawing: Drawing, plan: Plan, half: Half, deep: number): void {
  const across = acrossOf(half);
  const flat = WIDE / half.round;
  const deepest = Math.max(...half.curve.map(({ turnDown }) => turnDown));
  const times = Math.max(1, Math.min(MOST_TIMES, Math.floor(deep / (deepest * flat))));
  const scale = flat * times;
  drawing.note(
    times === 1
      ? `The turn-down of the ${half.side} half:`
      : `The turn-down of the ${half.side} half. Here depths are drawn ${times} times too large:`,
    { above: 12 },
  );
  const top = drawing.bottom + 12;
  const foot = top + deepest * scale + 14;
  drawTop(drawing, half, top, scale);
  drawEnds(drawing, top, foot);
  const names = half.stations.map((station) => ({
    text: printer(plan).tape(station.turnDownMark),
    at: { x: across(station.fromFront), y: top + pen(station.turnDown) * scale },
  }));
  for (const { at } of names) drawing.dot(at, 2.6);
  if (isCrowded(half)) nameRow(drawing, names, foot + 8, NAME);
  else for (const { text, at } of names) drawing.label(text, at, { sides: ["below"], gap: 6, width: NAME });
  drawing.settle();
}
