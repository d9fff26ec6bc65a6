/** A tile of a strip as it is cut out: its edge, its ends, the flap that the next tile is stuck on. */
import type { Element } from "hast";
import { widthOf } from "../figure/lettering.ts";
import { el, through, written } from "../figure/svg.ts";
import { equal, millimetres, type Quantity } from "../quantity/quantity.ts";
import { level, lines, mm, SHEET, TEXT, upright, words } from "./paper.ts";
import type { Tile } from "./tiles.ts";

/** Paper beyond the first and last place of a strip, and beyond a join. */
const END = 6;
const FLAP = 10;

/** The longest tile that the page holds. */
export const LONGEST: Quantity = millimetres(BigInt(SHEET.width - END - FLAP));

export interface StripTile {
  readonly tile: Tile;
  readonly index: number;
  readonly count: number;
  readonly letter: string;
  /** Which way the strip runs on the page. */
  readonly way: "left" | "right";
  readonly height: number;
}

/** A place of the strip as a coordinate on the page. */
export function across({ tile, way }: StripTile, at: Quantity): number {
  const along = mm(at) - mm(tile.from);
  return way === "left" ? SHEET.width - END - along : END + along;
}

/** Where the words of a tile begin. */
export const wordsFrom = (strip: StripTile): number => {
  const ends = [across(strip, strip.tile.from), across(strip, strip.tile.to)];
  return Math.max(2, Math.min(...ends) + 1);
};

/**
 * The outline: the heavy edge on top, thin lines to cut along. A true end has a line at the place itself and paper
 * beyond; a tile that follows another is cut at its join line and laid on the other's flap, so that both halves of the
 * ring make one.
 */
export function outline(strip: StripTile, top: number): Element[] {
  const { tile, index, count, way, height, letter } = strip;
  const sign = way === "left" ? 1 : -1;
  const start = across(strip, tile.from);
  const end = across(strip, tile.to);
  const [first, last] = [index === 0, index === count - 1];
  const paperStart = start + sign * (first ? END : 0);
  const paperEnd = end - sign * (last ? END : FLAP);
  const foot = top + height;
  const ring = top + height - 5;
  const drawn = [
    lines(level(top, paperStart, paperEnd), { width: "edge" }),
    lines(`${upright(paperStart, top, foot)}H${written(paperEnd)}V${written(top)}`, { width: "cut" }),
  ];
  if (first) drawn.push(...endLine(start, (start + paperStart) / 2, top, foot));
  if (last) drawn.push(...endLine(end, (end + paperEnd) / 2, top, foot));
  else drawn.push(lines(upright(end, top, foot), { dash: "2 1" }));
  const rings = [...(first ? [] : [start]), ...(last ? [] : [end])];
  for (const x of rings)
    drawn.push(
      el("circle", { cx: x, cy: ring, r: 2.2, fill: "none", stroke: "currentColor", strokeWidth: 0.3 }),
    );
  if (!last) {
    const middle = (end + paperEnd) / 2;
    drawn.push(
      words(middle, top + 3, "under", { size: TEXT.small, anchor: "middle" }),
      words(middle, top + 6, `${letter} ${index + 2}`, { size: TEXT.label, bold: true, anchor: "middle" }),
    );
  }
  return drawn;
}

/** The line at a true end of the strip, with its name on the paper beyond. */
const endLine = (x: number, beyond: number, top: number, foot: number): Element[] => [
  lines(upright(x, top, foot), { width: "cut", dash: "6 1" }),
  words(beyond, top + 3.4, "end", { size: TEXT.small, anchor: "middle" }),
];

/** Where the number of a mark stands: beneath it, but beside a line at the strip's end. */
export function numberAt(strip: StripTile, at: Quantity): number {
  const { tile, index, count, way } = strip;
  const x = across(strip, at);
  const inwards = way === "left" ? -2.6 : 2.6;
  if (index === 0 && equal(at, tile.from)) return x + inwards;
  if (index === count - 1 && equal(at, tile.to)) return x - inwards;
  return x;
}

/** A tile's name, and beside it the longest of some words that the tile has room for. */
export function named(strip: StripTile, top: number, said: readonly string[]): Element[] {
  const { index, count, letter, height } = strip;
  const which = count > 1 ? `${letter} ${index + 1} of ${count}` : letter;
  const x = wordsFrom(strip) + 3;
  const y = top + height - 4.4;
  const beside = widthOf(which, TEXT.heading, true) + 3;
  const length = Math.abs(across(strip, strip.tile.from) - across(strip, strip.tile.to));
  const fitting = said.find((text) => widthOf(text, TEXT.label) <= length - beside - 8);
  return [
    words(x, y, which, { size: TEXT.heading, bold: true }),
    ...(fitting ? [words(x + beside, y, fitting)] : []),
  ];
}

/** An arrow along the strip's way, from `x` on. */
export function wayArrow(x: number, y: number, way: "left" | "right"): Element[] {
  const tip = way === "left" ? x : x + 16;
  const tail = way === "left" ? x + 16 : x;
  const back = way === "left" ? 2.4 : -2.4;
  return [
    lines(level(y, tail, tip), { width: "cut" }),
    el("path", {
      d: through(
        [
          { x: tip, y },
          { x: tip + back, y: y - 1 },
          { x: tip + back, y: y + 1 },
        ],
        true,
      ),
      fill: "currentColor",
    }),
  ];
}
