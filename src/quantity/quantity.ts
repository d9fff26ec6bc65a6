/**
 * Exact quantities: a rational number with a kind.
 *
 * A value is a `Fraction` of the base units: millimetre, gram, second, one unit of money. Nothing here rounds;
 * floats never enter, since a Fraction made from a float is silently an approximation.
 */
import Fraction from "fraction.js";

export { Fraction };

/** Powers of the base units. A length is `{length: 1}`, an area `{length: 2}`, cloth weight mass 1 per length 2. */
export interface Dim {
  readonly length: number;
  readonly mass: number;
  readonly time: number;
  readonly money: number;
}

/** An exact number of base units with its powers. Never changed in place. */
export interface Quantity {
  readonly value: Fraction;
  readonly dim: Dim;
}

const interned: Dim[] = [];

/** The one Dim object for these powers, so that dims compare by identity. There are few, and the commonest come first. */
export function dim(length = 0, mass = 0, time = 0, money = 0): Dim {
  const known = interned.find(
    (one) => one.length === length && one.mass === mass && one.time === time && one.money === money,
  );
  if (known) return known;
  const made: Dim = Object.freeze({ length, mass, time, money });
  interned.push(made);
  return made;
}

export const PLAIN: Dim = dim();
export const LENGTH: Dim = dim(1);
export const AREA: Dim = dim(2);
export const MASS: Dim = dim(0, 1);
export const TIME: Dim = dim(0, 0, 1);
export const AREAL: Dim = dim(-2, 1);
export const RATE: Dim = dim(0, 0, -1);
export const MONEY: Dim = dim(0, 0, 0, 1);

const KIND_NAMES = new Map<Dim, string>([
  [PLAIN, "a plain number"],
  [LENGTH, "a length"],
  [AREA, "an area"],
  [MASS, "a weight"],
  [TIME, "a time"],
  [AREAL, "a weight of cloth (g/m2)"],
  [RATE, "a rate (per min)"],
  [MONEY, "a sum of money"],
]);

/** The kind in a maker's words, for messages. */
export function kindName(d: Dim): string {
  const known = KIND_NAMES.get(d);
  if (known) return known;
  const parts = Object.entries(d).filter(([, power]) => power !== 0);
  return `a quantity of ${parts.map(([name, power]) => (power === 1 ? name : `${name}^${power}`)).join(" x ")}`;
}

/** Arithmetic between kinds that do not go together. The message is fit to show, and what to do where that is known. */
export class KindError extends Error {
  readonly hint: string | undefined;

  constructor(message: string, hint?: string) {
    super(message);
    this.hint = hint;
  }
}

/** A fraction from exact text ("53/2", "0.25") or a bigint. Never from a float. */
export function fraction(n: string | bigint, d: bigint = 1n): Fraction {
  return typeof n === "bigint" ? new Fraction(n, d) : new Fraction(n);
}

export function quantity(value: Fraction | string | bigint, d: Dim): Quantity {
  return { value: value instanceof Fraction ? value : fraction(value), dim: d };
}

/** A plain number from exact text, a bigint, or a whole JavaScript number. */
export function plain(n: Fraction | string | bigint | number): Quantity {
  const known =
    (typeof n === "bigint" || typeof n === "number") && n >= 0 && n <= 4 ? SMALL[Number(n)] : undefined;
  if (known) return known;
  if (typeof n !== "number") return quantity(n, PLAIN);
  if (!Number.isSafeInteger(n))
    throw new RangeError(`plain(${n}): only whole numbers may come in as a float`);
  return quantity(BigInt(n), PLAIN);
}

/** 0 to 4 are asked for everywhere: each is made once. */
const SMALL = [0n, 1n, 2n, 3n, 4n].map((n): Quantity => ({ value: new Fraction(n), dim: PLAIN }));

const INCH = fraction(127n, 5n);

/** A length of so many inches, exact: `inches("26 1/2")` is not read here, `inches("53/2")` is. */
export function inches(n: Fraction | string | bigint): Quantity {
  return quantity((n instanceof Fraction ? n : fraction(n)).mul(INCH), LENGTH);
}

/** A length of so many millimetres, exact. */
export function millimetres(n: Fraction | string | bigint): Quantity {
  return quantity(n, LENGTH);
}

/** How many inches a length is, exact. */
export function toInches(q: Quantity): Fraction {
  const { length } = q.dim;
  return q.value.div(length === 1 ? INCH : (INCH.pow(fraction(BigInt(length))) as Fraction));
}

function same(a: Quantity, b: Quantity, doing: string): void {
  if (a.dim === b.dim) return;
  const kinds = [a.dim, b.dim];
  const isBare = kinds.includes(LENGTH) && kinds.includes(PLAIN);
  throw new KindError(
    `cannot ${doing} ${kindName(a.dim)} and ${kindName(b.dim)}`,
    isBare ? "write the number with its unit, as 3 in" : undefined,
  );
}

export function add(a: Quantity, b: Quantity): Quantity {
  same(a, b, "add");
  return { value: a.value.add(b.value), dim: a.dim };
}

export function sub(a: Quantity, b: Quantity): Quantity {
  same(a, b, "subtract");
  return { value: a.value.sub(b.value), dim: a.dim };
}

function combine(a: Dim, b: Dim, sign: 1 | -1): Dim {
  if (b === PLAIN) return a;
  if (a === b && sign < 0) return PLAIN;
  if (a === PLAIN && sign > 0) return b;
  return dim(
    a.length + sign * b.length,
    a.mass + sign * b.mass,
    a.time + sign * b.time,
    a.money + sign * b.money,
  );
}

export function mul(a: Quantity, b: Quantity): Quantity {
  return { value: a.value.mul(b.value), dim: combine(a.dim, b.dim, 1) };
}

export function div(a: Quantity, b: Quantity): Quantity {
  if (b.value.n === 0n) throw new KindError("cannot divide by nothing (the divisor is 0)");
  return { value: a.value.div(b.value), dim: combine(a.dim, b.dim, -1) };
}

export function neg(a: Quantity): Quantity {
  return { value: a.value.neg(), dim: a.dim };
}

export function abs(a: Quantity): Quantity {
  return { value: a.value.abs(), dim: a.dim };
}

/** Below 0, 0 or above 0 as a is less than, equal to or more than b. */
export function compare(a: Quantity, b: Quantity): number {
  same(a, b, "compare");
  // The library's own looks at what it is given first, which takes longer than the comparison.
  const [f, g] = [a.value, b.value];
  const difference = f.s * f.n * g.d - g.s * g.n * f.d;
  return Number(0n < difference) - Number(difference < 0n);
}

export const equal = (a: Quantity, b: Quantity): boolean => compare(a, b) === 0;
export const less = (a: Quantity, b: Quantity): boolean => compare(a, b) < 0;
export const more = (a: Quantity, b: Quantity): boolean => compare(a, b) > 0;

export function min(first: Quantity, ...rest: Quantity[]): Quantity {
  return rest.reduce((a, b) => (less(b, a) ? b : a), first);
}

export function max(first: Quantity, ...rest: Quantity[]): Quantity {
  return rest.reduce((a, b) => (more(b, a) ? b : a), first);
}

export function sum(first: Quantity, ...rest: Quantity[]): Quantity {
  return rest.reduce(add, first);
}

export const isZero = (a: Quantity): boolean => a.value.n === 0n;
export const isNegative = (a: Quantity): boolean => a.value.s < 0n;
export const isWhole = (a: Quantity): boolean => a.value.d === 1n;

/** A whole plain number as a JavaScript number, for counting loops. Throws when it is not whole. */
export function toCount(q: Quantity): number {
  if (q.dim !== PLAIN || !isWhole(q)) throw new RangeError("a count must be a whole plain number");
  return Number(q.value.s * q.value.n);
}

/** The nearest float, for drawing only: nothing is calculated on from it. */
export function toFloat(f: Fraction): number {
  return f.valueOf();
}
