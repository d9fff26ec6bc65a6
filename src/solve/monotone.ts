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

/** The height at `at`, which lies between the first and the last of the points (two at least, in order). */
export function monotoneAt(points: readonly Point[], at: Quantity): Quantity {
  const found = points.findIndex((point, i) => i > 0 && compare(at, point.at) <= 0);
  const i = found < 0 ? points.length - 1 : found;
  const [p, q] = [points[i - 1], points[i]] as [Point, Point];
  const [o, r] = [points[i - 2], points[i + 1]];
  const step = sub(q.at, p.at);
  const t = div(sub(at, p.at), step);
  const flat = mul(sub(q.height, p.height), plain(0n));
  const m = o ? mul(slopeAt(o, p, q), step) : flat;
  const n = r ? mul(slopeAt(p, q, r), step) : flat;
  const t2 = mul(t, t);
  const t3 = mul(t2, t);
  const rise = mul(sub(q.height, p.height), sub(mul(THREE, t2), mul(TWO, t3)));
  const out = mul(m, add(sub(t3, mul(TWO, t2)), t));
  const into = mul(n, sub(t3, t2));
  return add(add(p.height, rise), add(out, into));
}
