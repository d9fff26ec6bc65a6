/** Drawn-up pleats standing against the edge they are sewn to, seen from the inside and a little from above. */
import type { Drawing } from "./drawing.ts";
import { serpentine } from "./serpentine.ts";
import type { SewnEdge } from "./sewn-edge.ts";
import { type Point, rectangle } from "./svg.ts";
import { torn } from "./torn.ts";

/** How much of the depth is seen from this height. */
const TILT = 0.42;
/** The edge seen from above, plain or with cord and casing, and how far the pleats are drawn down. */
const BAND = 8;
const PIPED = 17;
/** The cord's middle and the far side of the cord, from the edge. */
export const CORD = { middle: 4.5, beyond: 8 } as const;
const DOWN = 44;

export interface Wanted {
  /** Where the section begins, at the right of the page. */
  readonly right: number;
  /** Height of the edge on the page. */
  readonly edge: number;
  readonly spacing: number;
  readonly bites: readonly number[];
  readonly wall: number;
  /** Rows of gauging to show, below the fold. */
  readonly rows: readonly number[];
  /** What the pleats stand against. */
  readonly sewnTo: SewnEdge;
}

export interface Ridges extends Wanted {
  /** Fold of the skirt seen from above, two outlines; band or bodice lies behind them. */
  readonly outlines: readonly (readonly Point[])[];
  /** The ridges against the edge, from the right. */
  readonly against: readonly Point[];
  /** The free folds towards the eye: their two sides, and the height on the page where their fronts begin. */
  readonly free: readonly {
    readonly left: number;
    readonly right: number;
    readonly y: number;
    readonly front: number;
  }[];
  readonly thread: number;
  readonly foot: number;
  readonly band: number;
}

/** Turns a serpentine round so that its inside faces the eye and its section begins at the right. */
export function standRidges(wanted: Wanted): Ridges {
  const { right, edge, spacing, wall, rows } = wanted;
  const outward = Math.max(...wanted.bites.filter((_, i) => i % 2 === 1)) / 2;
  // Drawn to the edge, every ridge lies against it, whatever one tape mark more or less in its bite.
  const bites = wanted.bites.map((bite, i) => (i % 2 === 1 ? 2 * outward : bite));
  const shape = serpentine({ left: 0, thread: 0, spacing, bites, wall });
  const back = outward + wall / 2;
  const turned = ({ x, y }: Point): Point => ({ x: right - x, y: edge + (back - y) * TILT });
  const wallAt = (i: number): number => right - (shape.walls[i] ?? 0);
  const lobes = bites.map((bite, i) => ({ bite, i, middle: (wallAt(i) + wallAt(i + 1)) / 2 }));
  const free = lobes
    .filter(({ i }) => i % 2 === 0)
    .map(({ bite, i }) => {
      const across = (wallAt(i) - wallAt(i + 1)) / 2;
      const straight = Math.max(0, bite / 2 - across);
      return {
        left: wallAt(i + 1) - wall / 2,
        right: wallAt(i) + wall / 2,
        y: edge + (back + straight) * TILT,
        front: edge + (back + bite / 2 + wall / 2) * TILT,
      };
    });
  const front = Math.max(...free.map((fold) => fold.front));
  const deepest = Math.max(0, ...rows);
  const thread = edge + back * TILT;
  return {
    ...wanted,
    outlines: [shape.upper.map(turned), shape.lower.map(turned)],
    against: lobes.filter(({ i }) => i % 2 === 1).map(({ middle }) => ({ x: middle, y: edge })),
    free,
    thread,
    foot: Math.max(front + 20, thread + deepest + 20, edge + DOWN),
    band: edge - (wanted.sewnTo.piped ? PIPED : BAND),
  };
}

/** Draws the edge, the folds, the fronts of the free folds and the gauging thread that shows between them. */
export function drawRidges(drawing: Drawing, ridges: Ridges): void {
  const { edge, band, foot, free, thread, rows, right, sewnTo } = ridges;
  const left = Math.min(...free.map((fold) => fold.left)) - 8;
  const end = right + 8;
  const across = (y: number): Point[] => [
    { x: left, y },
    { x: end, y },
  ];
  drawing.line("finished", across(band));
  if (sewnTo.piped) drawing.line("cord", across(edge - CORD.middle));
  else drawing.line("finished", across(edge - 1.5));
  for (const outline of ridges.outlines) drawing.line("body", outline);
  for (const fold of free) {
    for (const x of [fold.left, fold.right]) {
      drawing.line("body", [
        { x, y: fold.y },
        { x, y: foot },
      ]);
    }
  }
  drawHollows(drawing, ridges);
  for (const row of rows) drawRow(drawing, ridges, thread + row);
  drawing.line("break", torn({ x: left, y: foot }, { x: end, y: foot }));
  const beside = (text: string, y: number): void =>
    drawing.label(text, { x: left, y }, { sides: ["left", "above"], leader: "moved", width: 50 });
  if (sewnTo.piped) {
    beside("casing", band + 2);
    beside("cord", edge - CORD.middle + 6);
  } else beside(sewnTo.name, (band + edge) / 2);
}

/** A gauging row: seen in the hollows between the free folds, hidden behind them. */
function drawRow(drawing: Drawing, { free, foot }: Ridges, y: number): void {
  for (const [i, fold] of free.entries()) {
    drawing.line("under", [
      { x: fold.right, y },
      { x: fold.left, y },
    ]);
    const next = free[i + 1];
    if (next)
      drawing.line("over", [
        { x: fold.left, y },
        { x: next.right, y },
      ]);
  }
  const seen = free[0];
  if (seen)
    drawing.label(
      "gauging row: no stitch here",
      { x: seen.left - 3, y },
      { stand: { x: seen.left - 60, y: foot + 6 }, sides: ["below"], width: 200 },
    );
}

/** Between the fronts of the free folds one looks into hollows, down to the ridges against the edge. */
function drawHollows(drawing: Drawing, { free, foot }: Ridges): void {
  for (const [i, fold] of free.entries()) {
    const next = free[i + 1];
    if (!next || fold.left - next.right < 1) continue;
    const y = Math.max(fold.front, next.front);
    drawing.fill("hollow", rectangle(next.right, y, fold.left - next.right, foot - y));
  }
  const first = free.at(-1);
  if (first)
    drawing.label(
      "free fold",
      { x: (first.left + first.right) / 2, y: first.front + 8 },
      {
        stand: { x: first.left - 12, y: first.front + 20 },
        sides: ["left"],
        width: 34,
      },
    );
}
