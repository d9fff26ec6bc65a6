/**
 * Irrational numbers held between two rationals: pi, square roots, the girth of an ellipse. Every step rounds outward
 * to 1/10^40, so the true number always lies inside; a tape mark can then be decided without a float.
 */
import { type Fraction, fraction } from "./quantity.ts";
import { nearestWhole } from "./tape.ts";

/** How many parts of one the ends are counted in. */
export const PARTS = 10n ** 40n;

/** The number lies from `low` to `high`, both included and both counted in 1/10^40. */
export interface Enclosure {
  readonly low: bigint;
  readonly high: bigint;
}

/** A quotient of whole numbers rounded down; the divisor is above 0. */
const down = (n: bigint, d: bigint): bigint => (n < 0n ? -up(-n, d) : n / d);
/** And rounded up. */
const up = (n: bigint, d: bigint): bigint => (n < 0n ? -down(-n, d) : (n + d - 1n) / d);

/** A rational as an enclosure: exact when it is a decimal of 40 places at most. */
export function enclosed(f: Fraction): Enclosure {
  const n = f.s * f.n * PARTS;
  return { low: down(n, f.d), high: up(n, f.d) };
}

const whole = (n: bigint): Enclosure => ({ low: n * PARTS, high: n * PARTS });
const TWO = whole(2n);

/** Pi cut after 40 places, and one unit of the last more. */
export const PI: Enclosure = {
  low: 31415926535897932384626433832795028841971n,
  high: 31415926535897932384626433832795028841972n,
};

export const plus = (a: Enclosure, b: Enclosure): Enclosure => ({
  low: a.low + b.low,
  high: a.high + b.high,
});
export const minus = (a: Enclosure, b: Enclosure): Enclosure => ({
  low: a.low - b.high,
  high: a.high - b.low,
});

/** A product of numbers that are 0 or more. */
export const times = (a: Enclosure, b: Enclosure): Enclosure => ({
  low: down(a.low * b.low, PARTS),
  high: up(a.high * b.high, PARTS),
});

/** A quotient of numbers that are 0 or more; the divisor's lower end must be above 0. */
export const over = (a: Enclosure, b: Enclosure): Enclosure => ({
  low: down(a.low * PARTS, b.high),
  high: up(a.high * PARTS, b.low),
});

/** What is below 0 becomes 0. */
export const atLeastNothing = ({ low, high }: Enclosure): Enclosure => ({
  low: low < 0n ? 0n : low,
  high: high < 0n ? 0n : high,
});

/** The whole square root of a whole number, rounded down (Newton's rule on whole numbers). */
export function wholeRoot(n: bigint): bigint {
  if (n < 2n) return n;
  let x = 1n << BigInt((n.toString(2).length + 1) >> 1);
  for (;;) {
    const next = (x + n / x) >> 1n;
    if (next >= x) return x;
    x = next;
  }
}

/** The square root of a number that is 0 or more. */
export function root({ low, high }: Enclosure): Enclosure {
  const most = wholeRoot(high * PARTS);
  return { low: wholeRoot(low * PARTS), high: most * most === high * PARTS ? most : most + 1n };
}

/** Means close in on each other so fast that more rounds than this are never needed. */
const MOST_ROUNDS = 40;

/**
 * The girth of an ellipse by its semi-axes, both 0 or more: 2 pi (a^2 - sum of 2^(n-1) c_n^2) / M(a, b), where M is the
 * arithmetic-geometric mean and c_n half the difference of the n-th means (Gauss, Legendre). M lies between any two
 * means; what is left out of the sum is never more than its last term. The girth grows with both axes, so ends go with
 * ends.
 */
export function ellipseGirth(first: Enclosure, second: Enclosure): Enclosure {
  return { low: girthOf(first.low, second.low).low, high: girthOf(first.high, second.high).high };
}

const exactly = (n: bigint): Enclosure => ({ low: n, high: n });

function girthOf(one: bigint, other: bigint): Enclosure {
  const [long, short] = one < other ? [other, one] : [one, other];
  if (short === 0n) return exactly(long * 4n);
  let [a, b] = [exactly(long), exactly(short)];
  const square = times(a, a);
  let sum = over(minus(square, times(b, b)), TWO);
  let term = sum;
  for (let n = 0n; n < MOST_ROUNDS; n += 1n) {
    const c = over(atLeastNothing(minus(a, b)), TWO);
    [a, b] = [over(plus(a, b), TWO), root(times(a, b))];
    term = times(whole(1n << n), times(c, c));
    sum = plus(sum, term);
    if (term.high <= 1n << n) break;
  }
  const rest = { low: 0n, high: term.high };
  const squares = atLeastNothing(minus(square, plus(sum, rest)));
  const mean = { low: b.low, high: a.high };
  return over(times(times(TWO, PI), squares), mean);
}

/** The two ends as rationals. */
export const ends = ({ low, high }: Enclosure): readonly [Fraction, Fraction] => [
  fraction(low, PARTS),
  fraction(high, PARTS),
];

/**
 * The nearest whole number of steps. The steps' midpoint inside the enclosure counts as a tie, which goes to the even
 * one: it lies nearer than any tape could tell.
 */
export function nearestSteps(number: Enclosure, step: Fraction): Fraction {
  const [least, most] = ends(number).map((end) => nearestWhole(end.div(step))) as [bigint, bigint];
  return fraction(least === most || least % 2n === 0n ? least : most);
}

/** The middle of an enclosure on so many decimal places, for printing. */
export function middle({ low, high }: Enclosure, places: number): Fraction {
  const scale = 10n ** BigInt(places);
  return fraction(nearestWhole(fraction((low + high) * scale, PARTS * 2n)), scale);
}
