/** The broken edge of a drawing that shows only part of a thing. */
import type { Point } from "./svg.ts";

const WAVE = 9;
const DEEP = 2;

/** Points of a waved line between two points: here the cloth goes on. `wave`: half the length of one wave. */
export function torn(from: Point, to: Point, wave: number = WAVE): Point[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const parts = Math.max(4, 2 * Math.round(length / wave));
  const way = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  return Array.from({ length: parts + 1 }, (_, i) => {
    const off = i === 0 || i === parts ? 0 : i % 2 === 0 ? -DEEP : DEEP;
    const along = (length * i) / parts;
    return { x: from.x + way.x * along - way.y * off, y: from.y + way.y * along + way.x * off };
  });
}
