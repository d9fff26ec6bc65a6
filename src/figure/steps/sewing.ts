/** A row of gauging while it is sewn: knot, stitches laid so far, the needle on its way through two marks. */
import type { Drawing } from "../drawing.ts";
import { curve } from "../whip-stitches.ts";
import { level, needle, p, thinned } from "./parts.ts";

/** How far the needle's eye stands before the mark it enters, and its tip beyond the mark it comes back at. */
const BEFORE = 34;
const BEYOND = 18;

/**
 * Draws one row at height `y`, seen from the inside. `marks` stand across the page in the order of sewing, from the
 * right; the needle enters at the mark of the even index `enters` and comes back at the next.
 */
export function sewRow(drawing: Drawing, marks: readonly number[], y: number, enters: number): void {
  const x = (i: number): number => marks[i] as number;
  const laid = Array.from({ length: enters - 1 }, (_, i) => level(y, x(i), x(i + 1)));
  drawing.lines(
    "under",
    laid.filter((_, i) => i % 2 === 0),
    { soft: true },
  );
  drawing.lines(
    "over",
    laid.filter((_, i) => i % 2 === 1),
    { soft: true },
  );
  drawing.dot(p(x(0), y), 2.9);
  const [eye, tip] = [x(enters) + BEFORE, x(enters + 1) - BEYOND];
  const share = (i: number): number => (eye - x(i)) / (eye - tip);
  needle(drawing, p(eye, y), p(tip, y), [share(enters), share(enters + 1)]);
  const last = x(enters - 1);
  const slack = curve(p(last, y), p((last + eye) / 2 + 4, y + 22), p(eye, y));
  drawing.line("over", thinned(slack, 2), { soft: true });
}
