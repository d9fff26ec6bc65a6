/** A strip longer than the page, cut into tiles that are stuck together. Exact: no coordinate is made here. */
import {
  abs,
  add,
  div,
  isNegative,
  isZero,
  less,
  max,
  more,
  mul,
  plain,
  type Quantity,
  sub,
} from "../quantity/quantity.ts";

/** One tile: its part of the strip, and the marks on it, both counted from the strip's beginning. */
export interface Tile {
  readonly from: Quantity;
  readonly to: Quantity;
  readonly marks: readonly { readonly at: Quantity; readonly n: number }[];
}

/** The middle of the stretch between two neighbouring marks: where tiles may meet. */
interface Gap {
  readonly at: Quantity;
  readonly size: Quantity;
}

/**
 * Cuts a strip into the fewest tiles of about equal length, none longer than `longest`. Tiles meet half-way between two
 * marks, in the widest gap near the place wished for, so that no mark is cut and each stands on one tile only. Only
 * where the gaps themselves are longer than a tile are they cut elsewhere, beside any mark.
 *
 * @param marks in order, within the strip, numbered from 1 as they come
 * @param length of the whole strip, more than 0
 * @param longest more than 0
 */
export function tilesOf(marks: readonly Quantity[], length: Quantity, longest: Quantity): Tile[] {
  const gaps = gapsOf(marks, length);
  const least = Number(div(length, longest).value.ceil().n);
  for (let n = least; n <= 2 * least + 1; n += 1) {
    const joins = joinsNear(gaps, length, n);
    const ends = [...joins, length];
    const fits = ends.every((to, i) => {
      const size = sub(to, ends[i - 1] ?? sub(length, length));
      return !less(longest, size) && !isZero(size) && !isNegative(size);
    });
    if (fits) return between(joins, marks, length);
  }
  return between(everySoFar(marks, length, longest), marks, length);
}

function gapsOf(marks: readonly Quantity[], length: Quantity): Gap[] {
  const places = [sub(length, length), ...marks, length];
  return places.slice(1).flatMap((place, i): Gap[] => {
    const before = places[i] as Quantity;
    if (!less(before, place)) return [];
    return [{ at: div(add(before, place), plain(2n)), size: sub(place, before) }];
  });
}

/** For n tiles the n - 1 gaps near the equal parts: of those within one gap's width the widest, then the nearest. */
function joinsNear(gaps: readonly Gap[], length: Quantity, n: number): Quantity[] {
  const [first, ...others] = gaps.map(({ size }) => size);
  const reach = max(first as Quantity, ...others);
  return Array.from({ length: n - 1 }, (_, k) => {
    const wish = div(mul(length, plain(k + 1)), plain(n));
    const away = (gap: Gap): Quantity => abs(sub(gap.at, wish));
    const near = gaps.slice(firstFrom(gaps, sub(wish, reach)), firstFrom(gaps, add(wish, reach), more));
    return near.reduce((best, gap) =>
      more(gap.size, best.size) || (!less(gap.size, best.size) && less(away(gap), away(best))) ? gap : best,
    ).at;
  });
}

const notLess = (a: Quantity, b: Quantity): boolean => !less(a, b);

/** The first of the gaps, which come in order, that lies at a place or after it; with `more` only after it. */
function firstFrom(gaps: readonly Gap[], place: Quantity, is = notLess): number {
  let low = 0;
  let high = gaps.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (is((gaps[middle] as Gap).at, place)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** A cut at every full length; a hair before it, should a mark stand there. */
function everySoFar(marks: readonly Quantity[], length: Quantity, longest: Quantity): Quantity[] {
  const joins: Quantity[] = [];
  let limit = longest;
  while (less(limit, length)) {
    const at = limit;
    const hit = marks.some((mark) => !less(mark, at) && !less(at, mark));
    const join = hit ? sub(at, div(at, plain(1000n))) : at;
    joins.push(join);
    limit = add(join, longest);
  }
  return joins;
}

function between(joins: readonly Quantity[], marks: readonly Quantity[], length: Quantity): Tile[] {
  return [...joins, length].map((to, i) => {
    const from = joins[i - 1] ?? sub(length, length);
    const last = i === joins.length;
    const inside = (at: Quantity): boolean => !less(at, from) && (last || less(at, to));
    return { from, to, marks: marks.map((at, k) => ({ at, n: k + 1 })).filter(({ at }) => inside(at)) };
  });
}
