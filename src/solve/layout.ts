/**
 * The layout on the cloth: rectangles that keep their grain and are never turned, placed without overlap on one width,
 * as short as can be found. What is as wide as the cloth lies by itself: the breadths at the start, the rest at the
 * end. Between them the loose pieces are laid in the order of cutting, or in another where that is shorter.
 */
import { compare, fraction, less, mul, type Quantity, quantity, sub, sum } from "../quantity/quantity.ts";
import { type Laid, layLoose } from "./loose.ts";
import type { Layout } from "./plan.ts";
import { type Box, upTo } from "./rooms.ts";

export interface Wanted {
  readonly name: string;
  /** Across the cloth. */
  readonly width: Quantity;
  /** Along the cloth. */
  readonly length: Quantity;
  /** The piece starts on a whole multiple of this from the start of the cloth: the pattern's repeat. Default: anywhere. */
  readonly startsOn?: Quantity;
}

/** A piece in a unit of which every measure is a whole number, so that the search compares whole numbers. */
interface Item extends Box {
  readonly wanted: Wanted;
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
  const measures = [width, ...wanted.flatMap((want) => [want.width, want.length, want.startsOn ?? width])];
  const parts = measures.reduce((lcm, { value }) => (lcm * value.d) / gcd(lcm, value.d), 1n);
  const whole = ({ value }: Quantity): bigint => (value.n * parts) / value.d;
  const length = (units: bigint): Quantity => quantity(fraction(units, parts), width.dim);

  const items = wanted.map((want): Item => {
    const step = want.startsOn ? whole(want.startsOn) : 1n;
    return { wanted: want, width: whole(want.width), length: whole(want.length), step };
  });
  const full = whole(width);
  const loose = items.filter((item) => item.width < full);
  const firstLoose = loose[0] ? items.indexOf(loose[0]) : items.length;
  const leads = (item: Item): boolean => item.step > 1n || items.indexOf(item) < firstLoose;
  const alone = items.filter((item) => item.width === full);
  const first = layAlone(0n, alone.filter(leads));
  const middle = layLoose(full, first.end, loose);
  const last = layAlone(
    middle.end,
    alone.filter((item) => !leads(item)),
  );

  const pieces = [first, middle, last]
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
