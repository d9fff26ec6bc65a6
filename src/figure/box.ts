/** Boxes and straight lines on the page: do they meet? */
import type { Point } from "./svg.ts";

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** Do two boxes share any area? Touching edges do not. */
export function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** A box made larger on every side. */
export function grown(box: Box, by: number): Box {
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

/** Less than this share of a segment is a touch, not a crossing. */
const TOUCH = 1e-6;

/**
 * The share of a segment that lies inside a box, from and to as parts of its length; undefined if none does. Most
 * segments lie wholly to one side of the box and are turned away first.
 */
export function inside({ from, to }: Segment, box: Box): readonly [number, number] | undefined {
  const { x, y, width, height } = box;
  if ((from.x <= x && to.x <= x) || (from.y <= y && to.y <= y)) return undefined;
  if ((from.x >= x + width && to.x >= x + width) || (from.y >= y + height && to.y >= y + height))
    return undefined;
  const [left, right] = between(from.x, to.x, x, x + width);
  const [top, foot] = between(from.y, to.y, y, y + height);
  const start = Math.max(0, left, top);
  const end = Math.min(1, right, foot);
  return end - start > TOUCH ? [start, end] : undefined;
}

/** The share of the way from one number to another that lies between two bounds. A standing number is between them by now. */
function between(from: number, to: number, low: number, high: number): readonly [number, number] {
  if (from === to) return [0, 1];
  const a = (low - from) / (to - from);
  const b = (high - from) / (to - from);
  return a < b ? [a, b] : [b, a];
}

/** What is left of a segment outside a box: none, one or two pieces. */
export function outside(segment: Segment, box: Box): Segment[] {
  const hidden = inside(segment, box);
  if (!hidden) return [segment];
  const at = (t: number): Point => ({
    x: segment.from.x + (segment.to.x - segment.from.x) * t,
    y: segment.from.y + (segment.to.y - segment.from.y) * t,
  });
  const pieces: Segment[] = [];
  if (hidden[0] > 0) pieces.push({ from: segment.from, to: at(hidden[0]) });
  if (hidden[1] < 1) pieces.push({ from: at(hidden[1]), to: segment.to });
  return pieces;
}

/** The point of a box nearest to a point outside it. */
export function nearestOn(box: Box, { x, y }: Point): Point {
  return {
    x: Math.min(Math.max(x, box.x), box.x + box.width),
    y: Math.min(Math.max(y, box.y), box.y + box.height),
  };
}
