/** The turn-down by itself in the balance figure, deep enough to be read. */
import type { Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import { acrossOf, drawEnds, drawTop, NAME, WIDE } from "./flat-half.ts";
import type { Half } from "./half.ts";
import { pen, printer } from "./measure.ts";

/** The deepest turn-down in the strip, and how many times it may be enlarged. */
const STRIP = 84;
const MOST_TIMES = 8;

/** The turn-down alone, its depth enlarged by a whole number that is said. */
export function drawStrip(drawing: Drawing, plan: Plan, half: Half): void {
  const across = acrossOf(half);
  const flat = WIDE / half.round;
  const deepest = Math.max(...half.curve.map(({ turnDown }) => turnDown));
  const times = Math.max(1, Math.min(MOST_TIMES, Math.floor(STRIP / (deepest * flat))));
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
  for (const station of half.stations) {
    const x = across(station.fromFront);
    const y = top + pen(station.turnDown) * scale;
    drawing.dot({ x, y }, 2.6);
    drawing.label(
      `${printer(plan).tape(station.turnDownMark)}`,
      { x, y },
      {
        sides: ["below"],
        gap: 6,
        width: NAME,
      },
    );
  }
  drawing.settle();
}
