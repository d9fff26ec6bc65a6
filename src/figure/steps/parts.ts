/** What the step pictures are made of: needle, pin, words on the spot, cloth that goes on. */
import { head } from "../dimension.ts";
import type { Drawing } from "../drawing.ts";
import type { Wish } from "../labels.ts";
import { LETTERING } from "../language.ts";
import type { Point } from "../svg.ts";
import { torn } from "../torn.ts";

/** A point, to a tenth of a unit: finer is not seen, and costs room in the booklet. */
export const p = (x: number, y: number): Point => ({ x: tenth(x), y: tenth(y) });
const tenth = (n: number): number => Math.round(n * 10) / 10;

const EYE = 7;
const THICK = 1.6;
/** Waves of a broken edge, coarser than in the large figures. */
const COARSE = 40;

/**
 * A needle from its eye to its tip. The stretch between two shares of its length lies behind cloth and is dashed; the
 * thread leaves from the eye.
 */
export function needle(drawing: Drawing, eye: Point, tip: Point, behind?: readonly [number, number]): void {
  const [dx, dy] = [tip.x - eye.x, tip.y - eye.y];
  const length = Math.hypot(dx, dy);
  const at = (share: number, off: number): Point =>
    p(eye.x + dx * share - (dy / length) * off, eye.y + dy * share + (dx / length) * off);
  const thick = (share: number): number => THICK * (1 - share) ** 0.35;
  const shaft = (from: number, to: number): Point[] => [
    at(from, thick(from)),
    at(to, thick(to)),
    at(to, -thick(to)),
    at(from, -thick(from)),
  ];
  const neck = EYE / length;
  const outline = [at(0, 0), at(neck / 2, 2.2), at(neck, THICK), at(neck, -THICK), at(neck / 2, -2.2)];
  // It turns the other way round than the outline, and so is left open.
  const hole = [at(neck * 0.2, 0), at(neck * 0.5, -0.8), at(neck * 0.8, 0), at(neck * 0.5, 0.8)];
  for (const shape of [outline, hole, shaft(neck, behind?.[0] ?? 1)]) drawing.solid(shape);
  if (behind) {
    drawing.solid(shaft(behind[1], 1));
    drawing.line("hidden", [at(behind[0], 0), at(behind[1], 0)], { soft: true });
  }
  drawing.avoid([eye, tip]);
}

/** Small dots, as needle marks: one path for all. */
export function marksAt(drawing: Drawing, marks: readonly Point[]): void {
  drawing.lines(
    "cloth",
    marks.map((mark) => [mark, mark]),
    { soft: true },
  );
}

/** Upright pins through an edge, their heads above it. */
export function pins(drawing: Drawing, heads: readonly Point[], length: number): void {
  drawing.lines(
    "body",
    heads.map(({ x, y }) => [p(x, y), p(x, y + length)]),
    { soft: true },
  );
  marksAt(drawing, heads);
}

/** Words that name a thing where it stands, and move no further than they must. */
export function say(drawing: Drawing, text: string, at: Point, wish: Omit<Wish, "text" | "at"> = {}): void {
  drawing.label(text, at, { size: LETTERING.small, leader: "never", sides: ["on"], width: 170, ...wish });
}

/** Words at one place about a thing at another, joined by a line. */
export function point(
  drawing: Drawing,
  text: string,
  at: Point,
  stand: Point,
  wish: Omit<Wish, "text" | "at"> = {},
): void {
  say(drawing, text, at, { stand, leader: "always", ...wish });
}

/** The cloth goes on past these ends. */
export function goesOn(drawing: Drawing, ends: readonly (readonly [Point, Point])[]): void {
  drawing.lines(
    "break",
    ends.map(([from, to]) => torn(from, to, COARSE).map(({ x, y }) => p(x, y))),
  );
}

/** An arrow that does not push labels aside. */
export function way(drawing: Drawing, from: Point, to: Point): void {
  drawing.lines("dimension", [[from, to]], { soft: true });
  head(drawing, from, to, 6);
}

/** Every so many of a curve's points: a small drawing needs no more. */
export const thinned = (points: readonly Point[], every: number): Point[] =>
  points.filter((_, i) => i % every === 0).map(({ x, y }) => p(x, y));

/** A thin level line between two places across the page. */
export const level = (y: number, from: number, to: number): Point[] => [p(from, y), p(to, y)];
/** The same, upright. */
export const upright = (x: number, from: number, to: number): Point[] => [p(x, from), p(x, to)];
