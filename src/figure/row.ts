/** Names in a row below a drawing, each led up to its place; no search is needed and none of them meet. */
import { spread } from "./column.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { linesOf, widthOf } from "./lettering.ts";
import type { Point } from "./svg.ts";

export interface Name {
  readonly text: string;
  readonly at: Point;
}

/** Letters stand in a crowded drawing for what a list below it says: a to z, then numbers. */
export const letterOf = (i: number): string => (i < 26 ? String.fromCharCode(97 + i) : String(i - 25));

/** Air between two names of a row. */
const GAP = 4;

/** Writes names in a row whose lettering begins at `top`, in lines no wider than `widest`. Nothing may stand between the row and its places but lines. */
export function nameRow(drawing: Drawing, names: readonly Name[], top: number, widest: number): void {
  const letter = LETTERING.small;
  const entries = names.map(({ text, at }) => {
    const lines = linesOf(text, widest, letter);
    return { lines, size: Math.max(...lines.map((line) => widthOf(line, letter))), middle: at.x };
  });
  const middles = spread(entries, GAP, PICTURE.margin, PICTURE.width - PICTURE.margin);
  for (const [i, { lines, size }] of entries.entries()) {
    const x = middles[i] as number;
    const box = { x: x - size / 2, y: top, width: size, height: lines.length * letter * LETTERING.line };
    drawing.set(lines, letter, box, { anchor: "middle" });
    const { at } = names[i] as Name;
    drawing.line("leader", [{ x, y: top - 1 }, at]);
  }
}
