/** Names and sizes of the pieces on the layout. */
import { equal } from "../quantity/quantity.ts";
import type { Piece, Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING } from "./language.ts";
import { linesOf, widthOf } from "./lettering.ts";
import { printer } from "./measure.ts";

/** Widest line of a name beside the cloth. */
const NAMES = 104;

/** A piece where it lies on the page. */
export interface Laid {
  readonly piece: Piece;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
}

/** Names and sizes: inside the piece where they fit, else at the right; a stack of equal small pieces is named once. */
export function namePieces(drawing: Drawing, plan: Plan, pieces: readonly Laid[], right: number): void {
  const small: Laid[][] = [];
  for (const piece of pieces) {
    if (nameInside(drawing, plan, piece)) continue;
    const stack = small.at(-1);
    const last = stack?.at(-1);
    if (stack && last && follows(last, piece)) stack.push(piece);
    else small.push([piece]);
  }
  for (const stack of small) {
    const [first, last] = [stack[0], stack.at(-1)] as [Laid, Laid];
    const y = (first.y + last.y + last.length) / 2;
    const name =
      stack.length === 1 ? first.piece.name : `${stem(first)}s ${number(first)} to ${number(last)}, each`;
    const x = first.x + first.width;
    if (stack.length > 1) {
      drawing.line("leader", [
        { x: x - 6, y: first.y + 2 },
        { x: x - 3, y: first.y + 2 },
        { x: x - 3, y: last.y + last.length - 2 },
        { x: x - 6, y: last.y + last.length - 2 },
      ]);
    }
    drawing.label(
      `${name}${stack.length === 1 ? ":" : ""} ${sizeOf(plan, first.piece)}`,
      { x: x - 3, y },
      { stand: { x: right + 6, y }, sides: ["right"], width: NAMES },
    );
  }
}

const stem = ({ piece }: Laid): string => piece.name.replace(/ \d+$/, "");
const number = ({ piece }: Laid): string => / (\d+)$/.exec(piece.name)?.[1] ?? "";

/** Does a piece lie next below an equal one of its own kind? */
function follows(above: Laid, below: Laid): boolean {
  return (
    stem(above) === stem(below) &&
    number(below) !== "" &&
    equal(above.piece.x, below.piece.x) &&
    equal(above.piece.width, below.piece.width) &&
    equal(above.piece.length, below.piece.length) &&
    Math.abs(above.y + above.length - below.y) < 0.01
  );
}

const sizeOf = (plan: Plan, { width, length }: Piece): string => {
  const { tape } = printer(plan);
  return `${tape(width)} × ${tape(length)}`;
};

/** Writes name and size into a piece if there is room, clear of its arrow. */
function nameInside(drawing: Drawing, plan: Plan, { piece, x, y, width, length }: Laid): boolean {
  const size = LETTERING.small;
  const room = width - 8;
  const words = [piece.name, sizeOf(plan, piece)].flatMap((text) => linesOf(text, room, size));
  const whole = [piece.name, ...sizeOf(plan, piece).split(" × ")].every((text) =>
    text.split(" ").every((word) => widthOf(word, size) <= room),
  );
  const height = words.length * size * LETTERING.line;
  if (!whole || height > length - 6 || words.length > 4) return false;
  const wide = Math.max(...words.map((line) => widthOf(line, size)));
  drawing.set(words, size, { x: x + (width - wide) / 2, y: y + (length - height) / 2, width: wide, height });
  return true;
}
