/** Dimension lines: a thin line with arrow heads between two points, with one printed measure. */
import { grown, outside } from "./box.ts";
import type { Drawing } from "./drawing.ts";
import type { Side } from "./labels.ts";
import { LETTERING } from "./language.ts";
import { widthOf } from "./lettering.ts";
import type { Point } from "./svg.ts";

const HEAD = 5;

/** An arrow's head whose tip is at `tip`, pointing away from `from`. */
export function head(drawing: Drawing, from: Point, tip: Point, size = HEAD): void {
  const length = Math.hypot(tip.x - from.x, tip.y - from.y) || 1;
  const x = (tip.x - from.x) / length;
  const y = (tip.y - from.y) / length;
  drawing.solid([
    tip,
    { x: tip.x - size * x - size * 0.38 * y, y: tip.y - size * y + size * 0.38 * x },
    { x: tip.x - size * x + size * 0.38 * y, y: tip.y - size * y - size * 0.38 * x },
  ]);
}

/** A line with a head at its end: a way of sewing, a direction of the cloth. */
export function arrow(drawing: Drawing, from: Point, to: Point, both = false): void {
  drawing.line("dimension", [from, to]);
  head(drawing, from, to, 6);
  if (both) head(drawing, to, from, 6);
}

export interface DimensionWish {
  /** Where the words stand if they do not fit into the line. */
  readonly sides?: readonly Side[];
  /** Widest line of the words; default 110. */
  readonly width?: number;
  /** Where along the line the words stand, 0 to 1; default half-way. */
  readonly at?: number;
}

/**
 * A measure between two points. The words stand in a gap of the line if there is room, else beside it; where the
 * points are too close for arrow heads between them, the heads point at them from outside.
 */
export function dimension(
  drawing: Drawing,
  from: Point,
  to: Point,
  text: string,
  { sides, width = 110, at = 0.5 }: DimensionWish = {},
): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const upright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
  const words = Math.min(widthOf(text, LETTERING.label), width);
  const room = upright ? length > LETTERING.label * 1.3 + 4 * HEAD : length > words + 4 * HEAD;
  const middle = { x: from.x + (to.x - from.x) * at, y: from.y + (to.y - from.y) * at };
  const beside: readonly Side[] = sides ?? (upright ? ["right", "left"] : ["above", "below"]);
  if (length < 3 * HEAD) {
    const way = { x: (to.x - from.x) / (length || 1), y: (to.y - from.y) / (length || 1) };
    const tail = 2.2 * HEAD;
    const before = { x: from.x - way.x * tail, y: from.y - way.y * tail };
    const after = { x: to.x + way.x * tail, y: to.y + way.y * tail };
    drawing.line("dimension", [before, from]);
    drawing.line("dimension", [after, to]);
    head(drawing, before, from);
    head(drawing, after, to);
    drawing.label(text, middle, { sides: beside, gap: 8, width });
    return;
  }
  head(drawing, middle, from);
  head(drawing, middle, to);
  drawing.label(text, middle, { sides: room ? ["on", ...beside] : beside, width }, (box) => {
    for (const piece of outside({ from, to }, grown(box, 1))) {
      drawing.line("dimension", [piece.from, piece.to]);
    }
  });
}

/** A thin line from the thing measured out to its dimension line. */
export function extension(drawing: Drawing, from: Point, to: Point): void {
  drawing.line("leader", [from, to], { soft: true });
}
