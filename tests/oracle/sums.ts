/**
 * Random formulas as a maker could write them, with units, names, comparisons and every function: each a tree that can be
 * written for the program, written for mathjs in base units, and worked out here, exactly, with `rational.ts`.
 */
import fc from "fast-check";
import {
  above,
  below,
  fromText,
  minus,
  near,
  order,
  over,
  plus,
  type Rational,
  rational,
  times,
} from "./rational.ts";

/** A power of the millimetre; formulas of random weights and times would show nothing else. */
export interface Sum {
  readonly power: number;
  /** As the program reads it. */
  readonly ours: string;
  /** As mathjs reads it: millimetres, brackets everywhere, `evenly` for the nearest with ties to even. */
  readonly mathjs: string;
  /** Worked out; undefined where something is divided by 0 or rounded to a step that is not above 0. */
  readonly value: Rational | undefined;
}

/** Values by name, with their millimetres. */
export const NAMED: Readonly<Record<string, { power: number; value: string }>> = {
  "waist.seam": { power: 1, value: "6731/10" },
  "skirt.round": { power: 1, value: "21971/5" },
  tape: { power: 1, value: "127/80" },
  n: { power: 0, value: "4" },
  share: { power: 0, value: "7/9" },
  "cloth.area": { power: 2, value: "6451.6" },
};

/** Millimetres in one unit: the international yard and pound (1959); nail and ell, J. Ray, Practical Arithmetic (1859). */
const UNITS: readonly [string, string][] = [
  ["in", "25.4"],
  ["ft", "304.8"],
  ["yd", "914.4"],
  ["nails", "57.15"],
  ["mm", "1"],
  ["cm", "10"],
  ["m", "1000"],
];

const leafOf = (power: number, ours: string, value: Rational): Sum => ({
  power,
  ours,
  mathjs: `(${value.n}/${value.d})`,
  value,
});

const numbers: fc.Arbitrary<[string, Rational]> = fc.oneof(
  fc.integer({ min: 0, max: 120 }).map((n): [string, Rational] => [`${n}`, rational(BigInt(n))]),
  fc
    .tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 15 }), fc.constantFrom(3, 7, 8, 16))
    .map(([whole, n, d]): [string, Rational] => [
      `${whole} ${n}/${d}`,
      plus(rational(BigInt(whole)), rational(BigInt(n), BigInt(d))),
    ]),
  fc
    .tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 99 }))
    .map(([a, b]): [string, Rational] => [`${a}.${b}`, fromText(`${a}.${b}`)]),
);

const leaf = (power: number): fc.Arbitrary<Sum> => {
  const names = Object.entries(NAMED).filter(([, { power: own }]) => own === power);
  const named = fc.constantFrom(...names).map(([name, { value }]) => leafOf(power, name, fromText(value)));
  if (power === 0)
    return fc.oneof(
      numbers.map(([text, value]) => leafOf(0, text, value)),
      named,
    );
  if (power !== 1) return named;
  return fc.oneof(
    fc
      .tuple(numbers, fc.constantFrom(...UNITS))
      .map(([[text, value], [unit, size]]) => leafOf(1, `${text} ${unit}`, times(value, fromText(size)))),
    named,
  );
};

type Both = (a: Rational, b: Rational) => Rational | undefined;

function joined(power: number, ours: string, mathjs: string, a: Sum, b: Sum, run: Both): Sum {
  const value = a.value && b.value ? run(a.value, b.value) : undefined;
  return { power, ours, mathjs, value };
}

const ZERO = rational(0n);
const lesser: Both = (a, b) => (order(b, a) < 0 ? b : a);
const greater: Both = (a, b) => (order(b, a) > 0 ? b : a);
const divided: Both = (a, b) => (b.n === 0n ? undefined : over(a, b));

/** On whole steps, by one of the three ways of rounding. */
const stepped =
  (whole: (q: Rational) => bigint): Both =>
  (x, step) =>
    order(step, ZERO) > 0 ? times(rational(whole(over(x, step))), step) : undefined;

const signed = (op: string, a: Sum, b: Sum, power: number, run: Both): Sum =>
  joined(power, `(${a.ours} ${op} ${b.ours})`, `(${a.mathjs} ${op} ${b.mathjs})`, a, b, run);

const called = (name: string, a: Sum, b: Sum, run: Both): Sum =>
  joined(a.power, `${name}(${a.ours}, ${b.ours})`, `${name}(${a.mathjs}, ${b.mathjs})`, a, b, run);

const put = (name: "floor" | "ceil" | "round", x: Sum, step: Sum): Sum => {
  const whole = { floor: below, ceil: above, round: near }[name];
  const theirs = name === "round" ? "evenly" : name;
  return joined(
    x.power,
    `${name}(${x.ours}, ${step.ours})`,
    `(${theirs}(${x.mathjs} / ${step.mathjs}) * ${step.mathjs})`,
    x,
    step,
    stepped(whole),
  );
};

const made = new Map<string, fc.Arbitrary<Sum>>();

/** A sum of this power, so deep at most; made once, since each holds all shallower ones. */
function sum(power: number, depth: number): fc.Arbitrary<Sum> {
  const key = `${power} ${depth}`;
  const known = made.get(key) ?? (depth === 0 ? leaf(power) : deeper(power, depth));
  made.set(key, known);
  return known;
}

function deeper(power: number, depth: number): fc.Arbitrary<Sum> {
  const of = (p: number): fc.Arbitrary<Sum> => sum(p, depth - 1);
  const two = fc.tuple(of(power), of(power));
  const product =
    power === 0
      ? fc.tuple(of(0), of(0))
      : fc.oneof(fc.tuple(of(0), of(power)), fc.tuple(of(power - 1), of(1)), fc.tuple(of(power), of(0)));
  const quotient =
    power === 0
      ? fc.oneof(fc.tuple(of(0), of(0)), fc.tuple(of(1), of(1)))
      : fc.oneof(fc.tuple(of(power), of(0)), ...(power === 1 ? [fc.tuple(of(2), of(1))] : []));
  return fc.oneof(
    leaf(power),
    two.map(([a, b]) => signed("+", a, b, power, plus)),
    two.map(([a, b]) => signed("-", a, b, power, minus)),
    product.map(([a, b]) => signed("*", a, b, power, times)),
    quotient.map(([a, b]) => signed("/", a, b, power, divided)),
    two.map(([a, b]) => called("min", a, b, lesser)),
    two.map(([a, b]) => called("max", a, b, greater)),
    of(power).map((a): Sum => {
      const value = a.value && { n: a.value.n < 0n ? -a.value.n : a.value.n, d: a.value.d };
      return { power, ours: `abs(${a.ours})`, mathjs: `abs(${a.mathjs})`, value };
    }),
    of(power).map((a): Sum => {
      const value = a.value && minus(ZERO, a.value);
      return { power, ours: `(-${a.ours})`, mathjs: `(-${a.mathjs})`, value };
    }),
    fc
      .tuple(fc.constantFrom("floor" as const, "ceil" as const, "round" as const), of(power), leaf(power))
      .map(([name, x, step]) => put(name, x, step)),
  );
}

/** Longer formulas are refused by the program. */
const LONGEST = 500;

/** Formulas of lengths, plain numbers and areas, one to four deep. */
export const randomSums: fc.Arbitrary<Sum> = fc
  .tuple(fc.constantFrom(0, 1, 1, 2), fc.integer({ min: 1, max: 4 }))
  .chain(([power, depth]) => sum(power, depth))
  .filter(({ ours }) => ours.length <= LONGEST);

/** Two sums of one kind and a comparison of them. */
export const randomComparisons: fc.Arbitrary<{ a: Sum; b: Sum; sign: string }> = fc
  .constantFrom(0, 1, 2)
  .chain((power) =>
    fc.record({
      a: sum(power, 2),
      b: sum(power, 2),
      sign: fc.constantFrom("<", ">", "<=", ">=", "==", "!="),
    }),
  );
