/** Pleats as they lie, seen on their edge from above, the outside at the foot: both halves side by side, or one. */
import type { Drawing } from "./drawing.ts";
import { LETTERING } from "./language.ts";
import type { FoldMark, LaidPleat } from "./pleat-fold.ts";
import type { Point } from "./svg.ts";

export interface Row {
  readonly pleats: readonly LaidPleat[];
  /** Units to an inch of waist. */
  readonly scale: number;
  /** Where the row's first place stands on the page, and which way it runs: 1 to the right, -1 to the left. */
  readonly start: number;
  readonly way: 1 | -1;
  /** Height on the page of the faces, and how far behind them the backmost layer stands. */
  readonly face: number;
  readonly behind: number;
  /** Number of the first pleat; half a pleat astride a centre line is counted. */
  readonly first: number;
  readonly box: boolean;
}

/** A place of the folded cloth on the page. */
export const placeOf = (
  { scale, start, way, face, behind, pleats }: Row,
  mark: Pick<FoldMark, "waist" | "behind">,
): Point => ({
  x: start + way * (mark.waist - (pleats[0]?.marks[0]?.waist ?? 0)) * scale,
  y: face - mark.behind * behind,
});

/** How far the hidden folds reach beyond the row's two ends, in inches. */
export function overhang(pleats: readonly LaidPleat[]): { readonly before: number; readonly after: number } {
  const from = pleats[0]?.marks[0]?.waist ?? 0;
  const to = pleats.at(-1)?.marks.at(-1)?.waist ?? 0;
  const places = pleats.flatMap(({ marks }) => marks.map(({ waist }) => waist));
  return { before: Math.max(0, from - Math.min(...places)), after: Math.max(0, Math.max(...places) - to) };
}

/** The folds of one pleat of a row as they are drawn. */
export const drawnMarks = ({ box }: Pick<Row, "box">, pleat: LaidPleat): readonly FoldMark[] =>
  box && stacked(pleat) ? parted(pleat) : pleat.marks;

/** Draws one row: the cloth as one line from fold to fold, a number under each face. */
export function drawRow(drawing: Drawing, row: Row): void {
  const points = row.pleats.flatMap((pleat, i) => {
    const marks = drawnMarks(row, pleat);
    const straight = row.box ? marks : marks.filter(({ kind }, m) => kind !== "line" || m === 0);
    return i === 0 ? straight : straight.slice(row.box ? 0 : 1);
  });
  const last = row.pleats.at(-1)?.marks.at(-1);
  drawing.line(
    "cloth",
    [...points, ...(last && !row.box ? [last] : [])].map((mark) => placeOf(row, mark)),
  );
  for (const [i, { marks }] of row.pleats.entries()) {
    const [a, b] = [marks[0]?.waist ?? 0, marks.at(-1)?.waist ?? 0];
    const { x } = placeOf(row, { waist: (a + b) / 2, behind: 0 });
    drawing.label(
      String(row.first + i),
      { x, y: row.face },
      { sides: ["below"], gap: 4, leader: "never", bold: true, size: LETTERING.small },
    );
  }
}

/** Do the two sides of a box lie over each other? */
const stacked = ({ face, depth, half }: LaidPleat): boolean => !half && depth > face / 2 + 1e-9;

/** The second side of a box behind the first, so that both are seen. */
function parted({ marks }: LaidPleat): FoldMark[] {
  const middle = marks.findIndex(({ behind }, i) => behind === 0 && marks[i + 1]?.behind === 0);
  return marks.flatMap((mark, i) => {
    if (i <= middle) return [{ ...mark, behind: mark.behind * 0.45 }];
    const back = { ...mark, behind: 0.55 + mark.behind * 0.45 };
    return i === middle + 1 ? [mark, back] : [back];
  });
}
