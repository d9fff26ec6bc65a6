/** The lines of a picture, sorted into cells, so that a label asks only those near it. */
import { type Box, inside, type Segment } from "./box.ts";

/** Side of a cell, in units: about two lines of lettering. */
const CELL = 32;
/** More cells in a row than a picture is wide; what lies outside is counted to the nearest cell. */
const ROW = 16;

const cellOf = (at: number): number => Math.floor(at / CELL);
const columnOf = (x: number): number => Math.min(ROW - 1, Math.max(0, cellOf(x)));

export class LineIndex {
  private readonly cells = new Map<number, Segment[]>();

  add(line: Segment): void {
    const { from, to } = line;
    const [left, right] = [columnOf(Math.min(from.x, to.x)), columnOf(Math.max(from.x, to.x))];
    const [top, foot] = [cellOf(Math.min(from.y, to.y)), cellOf(Math.max(from.y, to.y))];
    for (let row = top; row <= foot; row += 1)
      for (let column = left; column <= right; column += 1) this.put(row * ROW + column, line);
  }

  /** Does any line lie in the box, if only in part? */
  meets(box: Box): boolean {
    const [left, right] = [columnOf(box.x), columnOf(box.x + box.width)];
    for (let row = cellOf(box.y); row <= cellOf(box.y + box.height); row += 1) {
      for (let column = left; column <= right; column += 1) {
        for (const line of this.cells.get(row * ROW + column) ?? [])
          if (inside(line, box) !== undefined) return true;
      }
    }
    return false;
  }

  private put(cell: number, line: Segment): void {
    const lines = this.cells.get(cell);
    if (lines) lines.push(line);
    else this.cells.set(cell, [line]);
  }
}
