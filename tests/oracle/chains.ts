/** Random chains without brackets, `a - b * c / d / e`: which sign is worked first is the schoolbook's rule. */
import fc from "fast-check";
import { minus, over, plus, type Rational, rational, times } from "./rational.ts";

export interface Chain {
  readonly text: string;
  readonly mathjs: string;
  /** Undefined where something is divided by 0. */
  readonly value: Rational | undefined;
}

const part = fc.oneof(
  fc.integer({ min: 0, max: 40 }).map((n) => ({ text: `${n}`, value: rational(BigInt(n)) })),
  fc
    .tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 1, max: 9 }))
    .map(([a, b]) => ({ text: `${a}.${b}`, value: rational(BigInt(a * 10 + b), 10n) })),
  fc.constant({ text: "n", value: rational(4n) }),
);

/** Products and quotients first, from left to right; then sums and differences, from left to right. */
function worked(values: readonly Rational[], signs: readonly string[]): Rational | undefined {
  let sum = rational(0n);
  let term = values[0] as Rational;
  let before = "+";
  const put = (): void => {
    sum = before === "+" ? plus(sum, term) : minus(sum, term);
  };
  for (const [i, sign] of signs.entries()) {
    const next = values[i + 1] as Rational;
    if (sign === "*") term = times(term, next);
    else if (sign === "/") {
      if (next.n === 0n) return undefined;
      term = over(term, next);
    } else {
      put();
      [before, term] = [sign, next];
    }
  }
  put();
  return sum;
}

export const randomChains: fc.Arbitrary<Chain> = fc
  .array(fc.tuple(fc.constantFrom("+", "-", "*", "/", "/"), part), { minLength: 1, maxLength: 8 })
  .chain((rest) =>
    part.map((first) => {
      const parts = [first, ...rest.map(([, next]) => next)];
      const written = (of: (p: typeof first) => string): string =>
        parts.map((p, i) => (i === 0 ? of(p) : `${rest[i - 1]?.[0]} ${of(p)}`)).join(" ");
      return {
        text: written(({ text }) => text),
        mathjs: written(({ value }) => `(${value.n}/${value.d})`),
        value: worked(
          parts.map(({ value }) => value),
          rest.map(([sign]) => sign),
        ),
      };
    }),
  );
