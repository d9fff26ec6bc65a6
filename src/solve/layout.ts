/**
 * The layout on the cloth: rectangles that keep their grain, placed without overlap on one width, as short as can be
 * found. Free room is kept as the largest empty rectangles; each piece goes where it ends nearest the start. Several
 * orders are tried and the shortest kept.
 */
import { add, compare, less, max, mul, plain, type Quantity, sub, sum } from "../quantity/quantity.ts";
import type { Layout, Piece } from "./plan.ts";

export interface Wanted {
  readonly name: string;
  /** Across the cloth. */
  readonly width: Quantity;
  /** Along the cloth. */
  readonly length: Quantity;
}

interface Room {
  readonly x: Quantity;
  readonly y: Quantity;
  readonly right: Quantity;
  /** Undefined: open, to the end of the bolt. */
  readonly bottom: Quantity | undefined;
}

const within = (a: Quantity, b: Quantity | undefined): boolean => b === undefined || compare(a, b) <= 0;

function holds(outer: Room, inner: Room): boolean {
  return (
    compare(outer.x, inner.x) <= 0 &&
    compare(outer.y, inner.y) <= 0 &&
    compare(outer.right, inner.right) >= 0 &&
    (outer.bottom === undefined || (inner.bottom !== undefined && compare(outer.bottom, inner.bottom) >= 0))
  );
}

/** What is left of a room round a piece: up to four largest rooms. */
function cutRoom(room: Room, piece: Piece): Room[] {
  const right = add(piece.x, piece.width);
  const bottom = add(piece.y, piece.length);
  const apart =
    compare(right, room.x) <= 0 ||
    compare(piece.x, room.right) >= 0 ||
    compare(bottom, room.y) <= 0 ||
    (room.bottom !== undefined && compare(piece.y, room.bottom) >= 0);
  if (apart) return [room];
  const rooms: Room[] = [];
  if (less(room.x, piece.x)) rooms.push({ ...room, right: piece.x });
  if (less(right, room.right)) rooms.push({ ...room, x: right });
  if (less(room.y, piece.y)) rooms.push({ ...room, bottom: piece.y });
  if (room.bottom === undefined || less(bottom, room.bottom)) rooms.push({ ...room, y: bottom });
  return rooms;
}

function placeAll(width: Quantity, wanted: readonly Wanted[]): Piece[] | undefined {
  const zero = mul(width, plain(0n));
  let rooms: Room[] = [{ x: zero, y: zero, right: width, bottom: undefined }];
  const placed: Piece[] = [];
  for (const want of wanted) {
    let best: Room | undefined;
    for (const room of rooms) {
      if (!within(want.width, sub(room.right, room.x)) || !within(add(room.y, want.length), room.bottom))
        continue;
      const nearer = best && (compare(room.y, best.y) || compare(room.x, best.x));
      if (nearer === undefined || nearer < 0) best = room;
    }
    if (!best) return undefined;
    const piece: Piece = { ...want, x: best.x, y: best.y };
    placed.push(piece);
    const cut = rooms.flatMap((room) => cutRoom(room, piece));
    rooms = cut.filter(
      (room, i) => !cut.some((other, j) => i !== j && holds(other, room) && (j < i || !holds(room, other))),
    );
  }
  return placed;
}

type Order = (a: Wanted, b: Wanted) => number;
const longest: Order = (a, b) => compare(b.length, a.length);
const widest: Order = (a, b) => compare(b.width, a.width);
const ORDERS: readonly Order[] = [
  (a, b) => widest(a, b) || longest(a, b),
  (a, b) => longest(a, b) || widest(a, b),
  (a, b) => compare(mul(b.width, b.length), mul(a.width, a.length)) || longest(a, b),
];

/** Places every piece, or says which is wider than the cloth. Pieces come back from the cloth's start to its end. */
export function layOnCloth(
  width: Quantity,
  wanted: readonly Wanted[],
): Layout | { readonly tooWide: Wanted } {
  const tooWide = wanted.find((want) => less(width, want.width));
  if (tooWide) return { tooWide };
  let best: { pieces: Piece[]; length: Quantity } | undefined;
  for (const order of ORDERS) {
    const pieces = placeAll(width, [...wanted].sort(order));
    if (!pieces) continue;
    const ends = pieces.map((piece) => add(piece.y, piece.length));
    const length = max(ends[0] as Quantity, ...ends);
    if (!best || less(length, best.length)) best = { pieces, length };
  }
  const { pieces, length } = best as { pieces: Piece[]; length: Quantity };
  const areas = pieces.map((piece) => mul(piece.width, piece.length));
  const used = sum(areas[0] as Quantity, ...areas.slice(1));
  return {
    width,
    length,
    pieces: [...pieces].sort((a, b) => compare(a.y, b.y) || compare(a.x, b.x)),
    waste: sub(mul(width, length), used),
  };
}
