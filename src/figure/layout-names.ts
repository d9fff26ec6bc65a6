/** Names and sizes of the pieces on the layout. */
import { equal } from "../quantity/quantity.ts";
import type { Piece, Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING } from "./language.ts";
import { borderIn, hasLevels, isRoundPiece, NUMBERS } from "./layout-lines.ts";
import { linesOf, widestWord, widthOf } from "./lettering.ts";
import { pen, printer } from "./measure.ts";
import { type ColumnName, nameColumn } from "./name-column.ts";

/** From the cloth to the names beside it, and to where their leaders bend; how far within its edge a piece is pointed at. */
const AWAY = 24;
const BEND = 10;
const WITHIN = 3;

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
    if (stack && last && (follows(last, piece) || besides(stack, piece))) stack.push(piece);
    else small.push([piece]);
  }
  for (const piece of small.filter(({ length }) => length > 1).flat()) numberInside(drawing, piece);
  nameColumn(
    drawing,
    small.map((stack) => namedBeside(drawing, plan, stack)),
    { x: right + AWAY, bend: right + BEND, top: Math.min(...pieces.map(({ y }) => y)) },
  );
}

/** What is written beside the cloth of a stack of equal pieces, and where it points: a bracket holds several together. */
function namedBeside(drawing: Drawing, plan: Plan, stack: readonly Laid[]): ColumnName {
  const [first, last] = [stack[0], stack.at(-1)] as [Laid, Laid];
  const several = stack.length > 1;
  const name = several ? `${stem(first)}s ${number(first)} to ${number(last)}, each` : `${first.piece.name}:`;
  const foot = last.y + last.length;
  if (several && equal(first.piece.y, last.piece.y))
    return namedRow(drawing, first, last, `${name} ${sizeOf(plan, first.piece)}`);
  const x = first.x + first.width - WITHIN;
  if (several) {
    const ends = [
      { x: x - 3, y: first.y + 2 },
      { x, y: first.y + 2 },
      { x, y: foot - 2 },
      { x: x - 3, y: foot - 2 },
    ];
    drawing.line("leader", ends, { soft: true });
  }
  return { text: `${name} ${sizeOf(plan, first.piece)}`, at: { x, y: (first.y + foot) / 2 } };
}

/** A row of equal pieces side by side: a bracket under them holds them together. */
function namedRow(drawing: Drawing, first: Laid, last: Laid, text: string): ColumnName {
  const y = first.y + first.length - WITHIN - 2;
  const [from, to] = [first.x + 2, last.x + last.width - 2];
  const ends = [
    { x: from, y: y - 3 },
    { x: from, y },
    { x: to, y },
    { x: to, y: y - 3 },
  ];
  drawing.line("leader", ends, { soft: true });
  return { text, at: { x: (from + to) / 2, y } };
}

/** Of equal pieces that are named together each has its number, if there is room. */
function numberInside(drawing: Drawing, piece: Laid): void {
  const size = LETTERING.small;
  const [width, height] = [widthOf(number(piece), size), size * LETTERING.line];
  if (piece.width < 2 * width + 24 || piece.length < height + 1) return;
  const box = {
    x: piece.x + (piece.width - width) / 2,
    y: piece.y + (piece.length - height) / 2,
    width,
    height,
  };
  drawing.set([number(piece)], size, box);
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

/** Does a piece lie next to the right of a row of equal ones of its own kind? */
function besides(row: readonly Laid[], piece: Laid): boolean {
  const last = row.at(-1) as Laid;
  return (
    row.every(({ piece: { y } }) => equal(y, piece.piece.y)) &&
    stem(last) === stem(piece) &&
    number(piece) !== "" &&
    equal(last.piece.width, piece.piece.width) &&
    equal(last.piece.length, piece.piece.length) &&
    Math.abs(last.x + last.width - piece.x) < 0.01
  );
}

const sizeOf = (plan: Plan, { width, length }: Piece): string => {
  const { tape } = printer(plan);
  return `${tape(width)} × ${tape(length)}`;
};

/** Writes name and size into a piece if there is room, clear of its arrow. */
function nameInside(drawing: Drawing, plan: Plan, { piece, x, y, width, length }: Laid): boolean {
  const size = LETTERING.small;
  const beside = borderIn(plan, piece) * (width / pen(piece.width));
  const room = width - beside - 8 - (hasLevels(plan) && isRoundPiece(piece) ? 2 * NUMBERS : 0);
  const texts = [piece.name, sizeOf(plan, piece)];
  const words = texts.flatMap((text) => linesOf(text, room, size));
  const height = words.length * size * LETTERING.line;
  if (texts.some((text) => widestWord(text, size) > room) || height > length - 6 || words.length > 4)
    return false;
  const wide = Math.max(...words.map((line) => widthOf(line, size)));
  drawing.set(words, size, {
    x: x + beside + (width - beside - wide) / 2,
    y: y + (length - height) / 2,
    width: wide,
    height,
  });
  return true;
}
