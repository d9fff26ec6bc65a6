/**
 * The order in which loose pieces are laid down, searched for the shortest layout: a bounded number of tries from each
 * of four orders, the order of cutting first. What is no shorter never takes the place of what was found before.
 */
import {
  type Box,
  bareCloth,
  covered,
  larger,
  leastLength,
  occupy,
  type Place,
  placeFor,
  type Room,
} from "./rooms.ts";

/** How many times a piece is laid down at most, from each of the four orders: a few hundredths of a second in all. */
const TRIES = 600;

export interface Laid<B extends Box> {
  /** In the order they were laid down, each with its place. */
  readonly pieces: readonly { readonly box: B; readonly place: Place }[];
  readonly end: bigint;
}

type Order = (a: Box, b: Box) => number;
const more = (a: bigint, b: bigint): number => (a > b ? -1 : a < b ? 1 : 0);
const longest: Order = (a, b) => more(a.length, b.length);
const widest: Order = (a, b) => more(a.width, b.width);
const ORDERS: readonly Order[] = [
  () => 0,
  (a, b) => longest(a, b) || widest(a, b),
  (a, b) => widest(a, b) || longest(a, b),
  (a, b) => more(a.width * a.length, b.width * b.length) || longest(a, b),
];

const alike = (a: Box, b: Box): boolean => a.width === b.width && a.length === b.length && a.step === b.step;

/**
 * Lays the boxes on cloth of this width from `start`; none may be wider than it. Stops where nothing shorter can be.
 *
 * @param beside the rooms left by pieces that lie already, and where those end; default: the bare cloth
 */
export function layLoose<B extends Box>(
  width: bigint,
  start: bigint,
  boxes: readonly B[],
  beside?: { readonly rooms: readonly Room[]; readonly end: bigint },
): Laid<B> {
  const begin = beside?.end ?? start;
  const least = beside ? begin : start + leastLength(width, boxes);
  let best: Laid<B> | undefined;
  let tries = 0;
  const search = (rooms: readonly Room[], laid: Laid<B>, rest: readonly B[]): void => {
    if (rest.length === 0) best = laid;
    rest.forEach((box, i) => {
      if (best?.end === least || (best && tries >= TRIES)) return;
      if (rest.findIndex((other) => alike(other, box)) < i) return;
      tries += 1;
      const place = placeFor(rooms, box);
      const bottom = place.y + box.length;
      if (best && bottom >= best.end) return;
      search(
        occupy(rooms, covered(place, box)),
        { pieces: [...laid.pieces, { box, place }], end: larger(laid.end, bottom) },
        rest.toSpliced(i, 1),
      );
    });
  };
  for (const order of ORDERS) {
    tries = 0;
    const rooms = beside?.rooms ?? bareCloth(width, start, boxes);
    search(rooms, { pieces: [], end: begin }, boxes.toSorted(order));
  }
  return best as unknown as Laid<B>;
}
