/**
 * Rationals over whole numbers, written for the oracles alone: Euclid's rule and schoolbook sums, no library. What the
 * program works out with fraction.js is worked out once more with these.
 */
export interface Rational {
  readonly n: bigint;
  /** Above 0, and nothing in common with `n`. */
  readonly d: bigint;
}

const common = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : common(b, a % b));

/** n / d in lowest terms; throws where d is 0. */
export function rational(n: bigint, d = 1n): Rational {
  if (d === 0n) throw new RangeError("divided by 0");
  const by = common(n, d) * (d < 0n ? -1n : 1n);
  return { n: n / by, d: d / by };
}

/** "127/5", "0.25", "-3". */
export function fromText(text: string): Rational {
  const [, sign, whole, decimals, d] = /^(-?)(\d+)(?:\.(\d+))?(?:\/(\d+))?$/.exec(text) ?? [];
  if (whole === undefined) throw new RangeError(`"${text}" is no number`);
  const scale = 10n ** BigInt(decimals?.length ?? 0);
  return rational(BigInt(`${whole}${decimals ?? ""}`) * (sign ? -1n : 1n), scale * BigInt(d ?? "1"));
}

export const plus = (a: Rational, b: Rational): Rational => rational(a.n * b.d + b.n * a.d, a.d * b.d);
export const minus = (a: Rational, b: Rational): Rational => rational(a.n * b.d - b.n * a.d, a.d * b.d);
export const times = (a: Rational, b: Rational): Rational => rational(a.n * b.n, a.d * b.d);
export const over = (a: Rational, b: Rational): Rational => rational(a.n * b.d, a.d * b.n);
/** Below 0, 0, above 0. */
export const order = (a: Rational, b: Rational): number => {
  const difference = a.n * b.d - b.n * a.d;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
};

/** The largest whole number that is not more. */
export const below = ({ n, d }: Rational): bigint => (n - (((n % d) + d) % d)) / d;
/** The smallest that is not less. */
export const above = ({ n, d }: Rational): bigint => -below({ n: -n, d });
/** The nearest, and of two as near the even one. */
export function near({ n, d }: Rational): bigint {
  const low = below({ n, d });
  const twice = 2n * (n - low * d);
  if (twice !== d) return twice < d ? low : low + 1n;
  return low % 2n === 0n ? low : low + 1n;
}

/** As fraction.js writes it: "7", "-3/4". */
export const textOf = ({ n, d }: Rational): string => (d === 1n ? `${n}` : `${n}/${d}`);
/** The nearest float, near enough for drawing a line under a sum. */
export const floatOf = ({ n, d }: Rational): number => {
  const whole = n / d;
  return Number(whole) + Number(((n - whole * d) * 10n ** 18n) / d) / 1e18;
};
