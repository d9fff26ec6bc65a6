/** One half of the skirt lying flat on the page, right side up: its straight cut top, the fold, its two ends. */
import type { Drawing } from "./drawing.ts";
import type { Half } from "./half.ts";
import { PICTURE } from "./language.ts";
import { through } from "./svg.ts";

export const LEFT = 40;
export const WIDE = PICTURE.width - 2 * LEFT;
/** Width of the words at one place. */
export const NAME = 68;

/** Across the page: the wearer's left half has centre front at the left, the right half at the right, as they are seen. */
export function acrossOf({ side, round }: Half): (fromFront: number) => number {
  const scale = WIDE / round;
  return side === "left" ? (at) => LEFT + at * scale : (at) => LEFT + WIDE - at * scale;
}

/** Nearer to each other than this, stations have no room for measures beside them. */
const CROWDED = 40;

export function isCrowded(half: Half): boolean {
  const places = half.stations.map(({ fromFront }) => acrossOf(half)(fromFront));
  return places.some((x, i) => i > 0 && Math.abs(x - (places[i - 1] as number)) < CROWDED);
}

/** The cut top, the fold below it and the turn-down between them. `scale` is units to an inch down the page. */
export function drawTop(drawing: Drawing, half: Half, top: number, scale: number): void {
  const across = acrossOf(half);
  const fold = half.curve.map(({ fromFront, turnDown }) => ({
    x: across(fromFront),
    y: top + turnDown * scale,
  }));
  drawing.fill(
    "turn-down",
    through([{ x: across(0), y: top }, { x: across(half.round), y: top }, ...[...fold].reverse()], true),
  );
  levelLine(drawing, "cut", top);
  drawing.line("fold", fold);
}

/** A straight edge across the half. */
export function levelLine(drawing: Drawing, kind: "cut" | "finished", y: number): void {
  drawing.line(kind, [
    { x: LEFT, y },
    { x: LEFT + WIDE, y },
  ]);
}

/** Centre front and centre back. */
export function drawEnds(drawing: Drawing, top: number, foot: number): void {
  for (const x of [LEFT, LEFT + WIDE])
    drawing.line("station", [
      { x, y: top },
      { x, y: foot },
    ]);
}
