/** The shape of drawn-up pleats seen from above: a serpentine with round backs, as thick as the cloth is. */
import { arc, type Point } from "./svg.ts";

export interface Pleats {
  /** Where the first wall stands across, and the thread's height; the thread runs level. */
  readonly left: number;
  readonly thread: number;
  /** From one pleat to the next: two walls. */
  readonly spacing: number;
  /** Bites in sewing order: the first bulges up the page (inside), the next down (outside), by turns. */
  readonly bites: readonly number[];
  readonly wall: number;
}

export interface Serpentine {
  readonly upper: readonly Point[];
  readonly lower: readonly Point[];
  readonly left: number;
  readonly right: number;
  /** Middles of the walls across, one more than there are bites. */
  readonly walls: readonly number[];
}

/** A fold cannot be wider than a half circle of its own cloth lets it. */
const WIDEST = 2 / Math.PI;

/** From wall to wall, by turns inside and outside: half a space each, unless a short bite's fold is too small for that. */
function stepsOf({ spacing, bites, wall }: Pleats): readonly [number, number] {
  const mean = (from: number): number => {
    const own = bites.filter((_, i) => i % 2 === from);
    return own.reduce((sum, bite) => sum + bite, 0) / Math.max(1, own.length);
  };
  const [inside, outside] = [mean(0), mean(1)].map((bite) =>
    Math.min(spacing / 2, Math.max(wall, WIDEST * bite)),
  ) as [number, number];
  return inside < outside ? [inside, spacing - inside] : [spacing - outside, outside];
}

/**
 * The outlines of the pleats. A bite is a fold half as deep as it is long, its back a half circle (flatter where the
 * bite is too short for one); both outlines lie half a wall's thickness off its middle line.
 */
export function serpentine(pleats: Pleats): Serpentine {
  const { left, thread, bites, wall } = pleats;
  const steps = stepsOf(pleats);
  const walls = [left];
  for (const i of bites.keys()) walls.push((walls[i] as number) + (steps[i % 2] as number));
  const half = wall / 2;
  const outline = (side: 1 | -1): Point[] => {
    const points: Point[] = [{ x: left - side * half, y: thread }];
    for (const [i, bite] of bites.entries()) {
      const up = i % 2 === 0;
      const [from, to] = [walls[i] as number, walls[i + 1] as number];
      const across = (to - from) / 2;
      const along = Math.min(across, bite / 2);
      const middle = { x: (from + to) / 2, y: thread + (up ? -1 : 1) * (bite / 2 - along) };
      const off = up === (side === 1) ? half : -half;
      const turn = up ? 360 : 0;
      points.push(...arc(middle, Math.max(0, across + off), Math.max(0, along + off), 180, turn));
    }
    const even = bites.length % 2 === 0;
    points.push({ x: (walls.at(-1) as number) + (even ? -1 : 1) * side * half, y: thread });
    return points;
  };
  return {
    upper: outline(1),
    lower: outline(-1),
    left: left - half,
    right: (walls.at(-1) as number) + half,
    walls,
  };
}
