/** The whip stitches over the edge (of a piped one they take the casing beside the cord, never the cord), and the needle on its way through the next ridge. */
import type { Drawing } from "./drawing.ts";
import { CORD, type Ridges } from "./ridges.ts";
import type { Point } from "./svg.ts";

export interface Stitches {
  readonly ridges: Ridges;
  /** Below the fold, in units. */
  readonly depth: number;
  /** 1: every ridge; 2: every other. */
  readonly stride: 1 | 2;
}

/** Stitches are sewn up to the one before this. */
const NEEDLE = { 1: 6, 2: 5 } as const;
const DOUBLED = 4;
/** A stitch slants to the next ridge; half of that is seen, the other half lies behind. */
const SLANT = 0.3;

interface Stitch {
  readonly hole: Point;
  /** Where it goes over a band's edge to the back; on a piped edge, where it takes the casing on the cord's far side. */
  readonly over: Point;
  readonly doubled: boolean;
  readonly number: number;
}

function stitchesOf({ ridges, depth, stride }: Stitches): Stitch[] {
  const far = ridges.sewnTo.piped ? ridges.edge - CORD.beyond - 2 : ridges.band;
  return ridges.against
    .filter((_, i) => i % stride === 0)
    .map((ridge, i) => ({
      hole: { x: ridge.x, y: ridge.y + depth },
      over: { x: ridge.x - SLANT * ridges.spacing * stride, y: far },
      number: i + 1,
      doubled: (i + 1) % DOUBLED === 0,
    }));
}

/** The stitches already sewn, numbered; every fourth is two threads in one place. */
export function drawStitches(drawing: Drawing, wanted: Stitches): void {
  for (const { hole, over, number, doubled } of stitchesOf(wanted)) {
    if (number >= NEEDLE[wanted.stride]) {
      drawing.dot(hole, 1.4);
      continue;
    }
    for (const shift of doubled ? [-1.8, 1.8] : [0]) {
      drawing.line("over", [
        { x: hole.x + shift, y: hole.y },
        { x: over.x + shift, y: over.y },
      ]);
    }
    if (wanted.ridges.sewnTo.piped) drawing.dot(over, 1.4);
    drawing.label(
      doubled ? `${number}, twice` : String(number),
      { x: hole.x, y: wanted.ridges.band },
      {
        stand: { x: (hole.x + over.x) / 2, y: wanted.ridges.band - 3 },
        sides: ["above"],
        gap: 0,
        width: 60,
        leader: "never",
        bold: doubled,
      },
    );
  }
}

/** The needle through edge and ridge, its thread coming over the edge from the last stitch. */
export function drawNeedle(drawing: Drawing, wanted: Stitches, words: string): void {
  const stitches = stitchesOf(wanted);
  const next = stitches[NEEDLE[wanted.stride] - 1];
  const last = stitches[NEEDLE[wanted.stride] - 2];
  if (!next || !last) return;
  const { band, edge, sewnTo } = wanted.ridges;
  // Into the band's far side; of a piped edge only into the casing, between its far fold and the cord.
  const into = sewnTo.piped ? edge - CORD.beyond - 4 : band;
  const eye = { x: next.hole.x - 6, y: band - 40 };
  const tip = { x: next.hole.x + 2, y: next.hole.y + 22 };
  drawing.solid([
    { x: eye.x - 1.3, y: eye.y },
    { x: eye.x + 1.3, y: eye.y },
    { x: next.hole.x, y: into },
    { x: next.hole.x - 2, y: into },
  ]);
  drawing.line("hidden", [{ x: next.hole.x - 1, y: into }, next.hole]);
  drawing.solid([{ x: next.hole.x - 1.2, y: next.hole.y }, { x: next.hole.x + 1.2, y: next.hole.y }, tip]);
  drawing.avoid([eye, tip]);
  drawing.line(
    "over",
    curve(last.over, { x: last.over.x - 8, y: band - 34 }, { x: eye.x + 1, y: eye.y + 3 }),
  );
  drawing.label(
    words,
    { x: eye.x + 1, y: eye.y + 8 },
    wanted.stride === 1
      ? { stand: { x: 70, y: band - (sewnTo.piped ? 54 : 46) }, sides: ["on", "left"], width: 128 }
      : { stand: { x: eye.x + 124, y: band - 58 }, sides: ["on"], width: 200 },
  );
}

/** A slack thread: points from one end to the other, drawn towards a third. */
export function curve(from: Point, towards: Point, to: Point): Point[] {
  return Array.from({ length: 11 }, (_, i) => {
    const [a, b, c] = [(1 - i / 10) ** 2, (2 * i * (10 - i)) / 100, (i / 10) ** 2];
    return { x: a * from.x + b * towards.x + c * to.x, y: a * from.y + b * towards.y + c * to.y };
  });
}
