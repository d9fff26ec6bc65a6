/** Names in a column beside a drawing, each with a bent leader to what it names; none of them meet, and no search is needed. */
import { spread } from "./column.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { linesOf, widthOf } from "./lettering.ts";
import type { Point } from "./svg.ts";

export interface ColumnName {
  readonly text: string;
  readonly at: Point;
  /** The height on the page where the middle of the words would best stand; default that of its point. */
  readonly middle?: number;
}

export interface Column {
  /** The left edge of the words, and where the leaders bend on their way to the left. */
  readonly x: number;
  readonly bend: number;
  /** No name stands higher than this. */
  readonly top: number;
}

const GAP = 5;

/** Writes the names from a left edge, as wide as the picture has room. */
export function nameColumn(drawing: Drawing, names: readonly ColumnName[], { x, bend, top }: Column): void {
  const letter = LETTERING.small;
  const entries = names.map(({ text, at, middle = at.y }) => {
    const lines = linesOf(text, PICTURE.width - PICTURE.margin - x, letter);
    return { lines, size: lines.length * letter * LETTERING.line, middle };
  });
  const middles = spread(entries, GAP, top);
  for (const [i, { lines, size }] of entries.entries()) {
    const y = middles[i] as number;
    const width = Math.max(...lines.map((line) => widthOf(line, letter)));
    drawing.set(lines, letter, { x, y: y - size / 2, width, height: size });
    const { at } = names[i] as ColumnName;
    drawing.line("leader", [{ x: x - 3, y }, { x: bend, y }, at], { soft: true });
    drawing.dot(at, 1.3);
  }
}
