/** The key under a drawing: a sample of every kind of line and filling that it uses, in words. */
import type { Box } from "./box.ts";
import { FILLINGS, type Filling, LETTERING, LINES, type LineKind, PICTURE } from "./language.ts";
import { linesOf, widthOf } from "./lettering.ts";
import { type Point, rectangle } from "./svg.ts";

const SAMPLE = 30;
const GAP = 6;
const COLUMN = (PICTURE.width - 2 * PICTURE.margin) / 2;

/** What the key needs of the picture that it is drawn in. */
export interface Sheet {
  readonly bottom: number;
  fill(filling: Filling, outline: string): void;
  line(kind: LineKind, points: readonly Point[], how?: { soft?: boolean; closed?: boolean }): void;
  set(lines: string[], size: number, box: Box): void;
}

/** Draws the key in two columns below everything so far. */
export function drawKey(drawing: Sheet, lines: ReadonlySet<LineKind>, fillings: ReadonlySet<Filling>): void {
  const entries = [
    ...(Object.keys(LINES) as LineKind[])
      .filter((kind) => lines.has(kind))
      .map((kind) => ({ words: LINES[kind].words, line: kind })),
    ...(Object.keys(FILLINGS) as Filling[])
      .filter((kind) => fillings.has(kind))
      .map((kind) => ({ words: FILLINGS[kind].words, filling: kind })),
  ].flatMap((entry) => (entry.words ? [{ ...entry, words: entry.words }] : []));
  const size = LETTERING.note;
  let y = drawing.bottom + 10;
  for (let i = 0; i < entries.length; i += 2) {
    const row = entries.slice(i, i + 2).map((entry) => ({
      ...entry,
      broken: linesOf(entry.words, COLUMN - SAMPLE - 2 * GAP, size),
    }));
    const height = Math.max(...row.map(({ broken }) => broken.length)) * size * LETTERING.line;
    for (const [column, entry] of row.entries()) {
      const x = PICTURE.margin + column * COLUMN;
      sample(drawing, entry, x, y);
      const width = Math.max(...entry.broken.map((words) => widthOf(words, size)));
      const own = entry.broken.length * size * LETTERING.line;
      drawing.set(entry.broken, size, { x: x + SAMPLE + GAP, y, width, height: own });
    }
    y += height + 3;
  }
}

function sample(
  drawing: Sheet,
  { line, filling }: { line?: LineKind; filling?: Filling },
  x: number,
  y: number,
): void {
  const middle = y + (LETTERING.note * LETTERING.line) / 2;
  if (filling) drawing.fill(filling, rectangle(x, middle - 5.5, SAMPLE, 11));
  if (!line) return;
  const offsets = line === "selvedge" ? [-1.5, 1.5] : [0];
  for (const offset of offsets) {
    drawing.line(
      line,
      [
        { x, y: middle + offset },
        { x: x + SAMPLE, y: middle + offset },
      ],
      { soft: true },
    );
  }
}
