/**
 * A monotone cubic through points: level at both ends, between two points never outside them. Slopes are the weighted
 * harmonic mean of the rises on either side where these have one sign, else 0 (F. N. Fritsch and J. Butland 1984; with
 * equal steps 2ab / (a + b)). Exact.
 */
import {
  add,
  compare,
  div,
  isNegative,
  isZero,
  mul,
  plain,
  type Quantity,
  sub,
} from "../quantity/quantity.ts";

/** A point of the curve: `at` along it (plain), and its height of any kind. */
export interface Point {
  readonly at: Quantity;
  readonly height: Quantity;
}

const ONE = plain(1n);
const TWO = plain(2n);
const THREE = plain(3n);

/** The slope at b, between a before it and c after it. */
function slopeAt(a: Point, b: Point, c: Point): Quantity {
  const before = sub(b.at, a.at);
  const after = sub(c.at, b.at);
  const rise = div(sub(b.height, a.height), before);
  const next = div(sub(c.height, b.height), after);
  if (isZero(rise) || isZero(next) || isNegative(rise) !== isNegative(next)) return mul(rise, plain(0n));
  const share = div(add(before, mul(TWO, after)), mul(THREE, add(before, after)));
  return div(mul(rise, next), add(mul(share, next), mul(sub(ONE, share), rise)));
}

/** Between two points: ((c3 t + c2) t + c1) t + c0, with t from 0 to 1 over the step. */
interface Piece {
  readonly from: Quantity;
  readonly to: Quantity;
  readonly step: Quantity;
  readonly coefficients: readonly [c3: Quantity, c2: Quantity, c1: Quantity, c0: Quantity];
}

function pieceOf([o, p, q, r]: readonly [Point | undefined, Point, Point, Point | undefined]): Piece {
  const step = sub(q.at, p.at);
  const rise = sub(q.height, p.height);
  const flat = mul(rise, plain(0n));
  const m = o ? mul(slopeAt(o, p, q), step) : flat;
  const n = r ? mul(slopeAt(p, q, r), step) : flat;
  const c3 = sub(add(m, n), mul(TWO, rise));
  const c2 = sub(mul(THREE, rise), add(mul(TWO, m), n));
  return { from: p.at, to: q.at, step, coefficients: [c3, c2, m, p.height] };
}

/**
 * The curve through these points (two at least, in order): the height at any place from the first to the last. What all
 * places share is worked out once, so that many may be asked for.
 */
export function monotone(points: readonly Point[]): (at: Quantity) => Quantity {
  const pieces = points
    .slice(1)
    .map((q, i) => pieceOf([points[i - 1], points[i] as Point, q, points[i + 2]]));
  return (at) => {
    const piece = pieces.find(({ to }) => compare(at, to) <= 0) ?? (pieces.at(-1) as Piece);
    const { from, step, coefficients } = piece;
    const t = div(sub(at, from), step);
    return coefficients.reduce((sum, c) => add(mul(sum, t), c));
  };
}
