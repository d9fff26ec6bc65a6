/**
 * The layout on the cloth: rectangles that keep their grain and are never turned, placed without overlap on one width,
 * as short as can be found. What is as wide as the cloth lies by itself: the breadths at the start, the rest at the
 * end. Between them the loose pieces are laid in the order of cutting, or in another where that is shorter.
 */
import { compare, fraction, less, mul, type Quantity, quantity, sub, sum } from "../quantity/quantity.ts";
import { type Laid, layLoose } from "./loose.ts";
import type { Layout } from "./plan.ts";
import { type Box, bareCloth, covered, larger, occupy, type Room, upTo } from "./rooms.ts";

export interface Wanted {
  readonly name: string;
  /** Across the cloth. */
  readonly width: Quantity;
  /** Along the cloth. */
  readonly length: Quantity;
  /** The piece starts on a whole multiple of this from the start of the cloth: the pattern's repeat. Default: anywhere. */
  readonly startsOn?: Quantity;
  /** How far inside the cloth's left edge the piece has to lie, or may lie: then it is laid first, as far up as it can be. */
  readonly at?: readonly Quantity[];
}

/** A piece in a unit of which every measure is a whole number, so that the search compares whole numbers. */
interface Item extends Box {
  readonly wanted: Wanted;
  readonly at: readonly bigint[];
}

/**
 * Places every piece (one at least, in the order of cutting), or says which is wider than the cloth. Pieces come back
 * from the cloth's start to its end. The length is within a twentieth of the shortest possible wherever that was
 * worked out (tests/solve/layouts.json), and is never less than the pieces' area over the width.
 */
export function layOnCloth(
  width: Quantity,
  wanted: readonly Wanted[],
): Layout | { readonly tooWide: Wanted } {
  const tooWide = wanted.find((want) => less(width, want.width));
  if (tooWide) return { tooWide };
  const measures = [
    width,
    ...wanted.flatMap((want) => [want.width, want.length, want.startsOn ?? width, ...(want.at ?? [])]),
  ];
  const parts = measures.reduce((lcm, { value }) => (lcm * value.d) / gcd(lcm, value.d), 1n);
  const whole = ({ value }: Quantity): bigint => (value.n * parts) / value.d;
  const length = (units: bigint): Quantity => quantity(fraction(units, parts), width.dim);

  const items = wanted.map((want): Item => {
    const step = want.startsOn ? whole(want.startsOn) : 1n;
    const at = (want.at ?? []).map(whole);
    return { wanted: want, width: whole(want.width), length: whole(want.length), step, at };
  });
  const full = whole(width);
  const held = layHeld(items.filter(({ at }) => at.length > 0));
  const free = items.filter(({ at }) => at.length === 0);
  const loose = free.filter((item) => item.width < full);
  const firstLoose = loose[0] ? items.indexOf(loose[0]) : items.length;
  const leads = (item: Item): boolean =>
    held.end === 0n && (item.step > 1n || items.indexOf(item) < firstLoose);
  const alone = free.filter((item) => item.width === full);
  const first = layAlone(0n, alone.filter(leads));
  const middle =
    held.end === 0n
      ? layLoose(full, first.end, loose)
      : layLoose(full, 0n, loose, roomsBeside(full, held, loose));
  const last = layAlone(
    middle.end,
    alone.filter((item) => !leads(item)),
  );

  const pieces = [held, first, middle, last]
    .flatMap((laid) => laid.pieces)
    .map(({ box: { wanted: want }, place }) => ({
      name: want.name,
      x: length(place.x),
      y: length(place.y),
      width: want.width,
      length: want.length,
    }))
    .sort((a, b) => compare(a.y, b.y) || compare(a.x, b.x));
  const end = length(last.end);
  const areas = pieces.map((piece) => mul(piece.width, piece.length));
  return {
    width,
    length: end,
    pieces,
    waste: sub(mul(width, end), sum(areas[0] as Quantity, ...areas.slice(1))),
  };
}

/** Pieces that have their place across the cloth, each as near its start as those before it let it. */
function layHeld(items: readonly Item[]): Laid<Item> {
  const pieces: { box: Item; place: { x: bigint; y: bigint } }[] = [];
  for (const box of items) {
    const places = box.at.map((x) => {
      const beside = pieces.filter(
        (other) => other.place.x < x + box.width && x < other.place.x + other.box.width,
      );
      return {
        x,
        y: upTo(
          beside.reduce((y, { place, box: { length } }) => larger(y, place.y + length), 0n),
          box.step,
        ),
      };
    });
    pieces.push({ box, place: places.reduce((best, place) => (place.y < best.y ? place : best)) });
  }
  return { pieces, end: pieces.reduce((end, { box, place }) => larger(end, place.y + box.length), 0n) };
}

/** The rooms that pieces already laid leave, and the end they reach. */
function roomsBeside(
  width: bigint,
  held: Laid<Item>,
  boxes: readonly Box[],
): { rooms: readonly Room[]; end: bigint } {
  const cloth = bareCloth(width, 0n, boxes).map((room) => ({ ...room, bottom: room.bottom + held.end }));
  const rooms = held.pieces.reduce<readonly Room[]>(
    (left, { box, place }) => occupy(left, covered(place, box)),
    cloth,
  );
  return { rooms, end: held.end };
}

/** Pieces as wide as the cloth, one below the other. */
function layAlone(start: bigint, items: readonly Item[]): Laid<Item> {
  let end = start;
  const pieces = items.map((box) => {
    const y = upTo(end, box.step);
    end = y + box.length;
    return { box, place: { x: 0n, y } };
  });
  return { pieces, end };
}

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? a : gcd(b, a % b));
