/** The bites of one section: on tape marks, differing by one mark at most, summing to the cloth exactly. */
import { add, less, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import { share, steps } from "../quantity/tape.ts";

export interface BiteRules {
  readonly tape: Quantity;
  /** Up to this mean bite the style is even; above it long-and-short. */
  readonly comfortable: Quantity;
  readonly short: Quantity;
}

export interface Bites {
  readonly style: "even" | "long-and-short";
  /** In sewing order; the first bite lies outside. */
  readonly bites: readonly Quantity[];
  readonly remainder: Quantity;
}

/** Is the mean bite of `pleats` in `cloth` above the comfortable one? */
export function isLong(cloth: Quantity, pleats: number, { comfortable }: BiteRules): boolean {
  return less(mul(comfortable, plain(2 * pleats)), cloth);
}

/** How many sizes of bite a count gives, a remainder finer than a mark not counted. Cheap: nothing is laid out. */
export function sizesOf(cloth: Quantity, pleats: number, rules: BiteRules): number {
  const long = isLong(cloth, pleats, rules);
  const parts = BigInt(long ? pleats : 2 * pleats);
  const even = steps(cloth, rules.tape).floor().n % parts === 0n;
  return (long ? 2 : 1) + (even ? 0 : 1);
}

/**
 * Lays out 2N bites. Even: the cloth shared over 2N. Long-and-short: the pitches are shared on tape marks, the short
 * bite lies inside, the long one outside is the rest of its pitch.
 */
export function layBites(cloth: Quantity, pleats: number, rules: BiteRules): Bites {
  if (!isLong(cloth, pleats, rules)) {
    const { parts, remainder } = share(cloth, 2 * pleats, rules.tape);
    return { style: "even", bites: parts, remainder };
  }
  const pitches = share(cloth, pleats, rules.tape);
  const last = pitches.parts.length - 1;
  const bites = pitches.parts.flatMap((pitch, i) => {
    const rest = i === last ? pitches.remainder : mul(pitch, plain(0n));
    const onTape = sub(pitch, rest);
    return [sub(onTape, rules.short), add(rules.short, rest)];
  });
  return { style: "long-and-short", bites, remainder: pitches.remainder };
}

/** The 2N + 1 places where the needle goes through. */
export function marksOf(bites: readonly Quantity[]): readonly Quantity[] {
  let at = mul(bites[0] as Quantity, plain(0n));
  return [
    at,
    ...bites.map((bite) => {
      at = add(at, bite);
      return at;
    }),
  ];
}
