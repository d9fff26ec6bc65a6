/**
 * Tape marks: what can be set off on cloth with a tape divided to one smallest mark.
 * Nearest always means ties to even, as a reading midway between graduations is taken (NIST Handbook 44, 10.3).
 */
import { add, type Fraction, fraction, plain, type Quantity, quantity, sub } from "./quantity.ts";

export type Rounding = "nearest" | "up" | "down";

/** The largest whole number that is not above n / d; d above 0. */
function below(n: bigint, d: bigint): bigint {
  const whole = n / d;
  return n < 0n && whole * d !== n ? whole - 1n : whole;
}

/** n / d put on a whole number; d above 0. */
const WHOLE: Record<Rounding, (n: bigint, d: bigint) => bigint> = {
  nearest: (n, d) => {
    const floor = below(n, d);
    const rest = 2n * (n - floor * d) - d;
    return rest > 0n || (rest === 0n && floor % 2n !== 0n) ? floor + 1n : floor;
  },
  up: (n, d) => -below(-n, d),
  down: below,
};

/** The nearest whole number, ties to even. */
export const nearestWhole = (f: Fraction): bigint => WHOLE.nearest(f.s * f.n, f.d);

/** How many steps of `step` a quantity is, as an exact number; both must be of one kind and step above 0. */
export function steps(q: Quantity, step: Quantity): Fraction {
  if (q.dim !== step.dim) throw new RangeError("a quantity and its step must be of one kind");
  if (step.value.s < 0n || step.value.n === 0n) throw new RangeError("a step must be above 0");
  return q.value.div(step.value);
}

/** A quantity put on whole steps: a length on tape marks, a plain number on wholes. */
export function roundTo(q: Quantity, step: Quantity, rounding: Rounding = "nearest"): Quantity {
  const { s, n, d } = steps(q, step);
  return quantity(step.value.mul(fraction(WHOLE[rounding](s * n, d))), q.dim);
}

/** Does this length lie on a tape mark exactly? */
export const onMark = (q: Quantity, mark: Quantity): boolean => steps(q, mark).d === 1n;

/** A length shared out: the parts in order, and the remainder finer than a mark that the last part holds (0 if none). */
export interface Shares {
  readonly parts: readonly Quantity[];
  readonly remainder: Quantity;
}

/**
 * Shares `total` out over `n` parts on tape marks.
 *
 * The parts differ by one mark at most, the larger ones lie as evenly as can be (any two runs of equally many parts
 * differ by one mark at most: a Euclidean rhythm), the last part is one of the smaller, and the sum is `total`
 * exactly: a remainder finer than a mark goes into the last part.
 *
 * @param total a length of 0 or more
 * @param n how many parts, 1 or more
 * @param mark the smallest mark of the tape
 */
export function share(total: Quantity, n: number, mark: Quantity): Shares {
  if (!Number.isSafeInteger(n) || n < 1) throw new RangeError(`share(): ${n} parts`);
  const marks = steps(total, mark).floor();
  const remainder = sub(total, quantity(marks.mul(mark.value), total.dim));
  const whole = marks.n;
  const count = BigInt(n);
  const ceil = (i: bigint): bigint => (i * whole + count - 1n) / count;
  const sized = (marks: bigint): Quantity => quantity(mark.value.mul(fraction(marks)), total.dim);
  const [small, large] = [sized(whole / count), sized(whole / count + 1n)];
  const parts: Quantity[] = [];
  let before = 0n;
  for (let i = 1n; i <= count; i += 1n) {
    const to = ceil(i);
    parts.push(to - before > whole / count ? large : small);
    before = to;
  }
  const last = parts[n - 1] as Quantity;
  parts[n - 1] = add(last, remainder);
  return { parts, remainder };
}

/** The sizes of a list of lengths with how many there are of each, largest first. */
export function tally(parts: readonly Quantity[]): { size: Quantity; count: number }[] {
  const found = new Map<string, { size: Quantity; count: number }>();
  for (const part of parts) {
    const key = part.value.toFraction();
    const seen = found.get(key);
    if (seen) seen.count += 1;
    else found.set(key, { size: part, count: 1 });
  }
  return [...found.values()].sort((a, b) => b.size.value.compare(a.size.value));
}

/** One, as a step for counts. */
export const ONE: Quantity = plain(1n);
