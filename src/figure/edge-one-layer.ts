/** Section through a flat or pleated part that is set in one layer: its top goes up into the seam of the edge itself. */
import type { Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import type { DrawnEdge, Standing } from "./edge-parts.ts";
import { shownOf } from "./measure.ts";
import type { ColumnName } from "./name-column.ts";
import type { SewnEdge } from "./sewn-edge.ts";
import type { Point } from "./svg.ts";
import { torn } from "./torn.ts";

const p = (x: number, y: number): Point => ({ x, y });
/** Drawn at most; the rest is said. */
export const MOST_LAYERS = 5;

/** Draws the layers and their line of stitches; returns the names that go into the column. */
export function drawOneLayer(
  drawing: Drawing,
  plan: Plan,
  edge: SewnEdge,
  { x, seam }: Standing,
  above: DrawnEdge,
  layers: number,
): readonly ColumnName[] {
  const shown = Math.min(layers, MOST_LAYERS);
  const rise = 20;
  const foot = seam + 66;
  // Inside the outer turn; beside the cord inside its casing.
  const first = edge.piped ? above.at.x - 12 : x - 13;
  for (let i = 0; i < shown; i += 1) {
    const within = first - i * 3.4;
    drawing.line("cloth", [
      p(x + 1 - i * 9, foot),
      p(x + 1 - i * 9, seam + 20),
      p(within, seam - 1),
      p(within, seam - rise),
    ]);
  }
  drawing.line("break", torn(p(x - 9 * shown, foot), p(x + 10, foot)));
  const last = first - (shown - 1) * 3.4;
  const sewn = seam - 3;
  drawing.line("thread", [p(first + (edge.piped ? 4 : 6), sewn), p(last - 4, sewn)]);
  const line = edge.piped ? "through the cord's turnings" : "through the outer turn";
  return [
    {
      text: `the top, trimmed to ${shownOf(plan, "plain.above")} above the line`,
      at: p(first, seam - rise + 3),
      middle: seam + 4,
    },
    {
      text: `back stitches on the balance line, ${line} and all layers`,
      at: p(first + 4, sewn),
      middle: seam + 44,
    },
  ];
}
