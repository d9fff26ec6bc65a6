/**
 * The curve of the balance against a second one, built as the numerical libraries build it: Hermite's four basis
 * polynomials over weights w1 = 2 h1 + h0 and w2 = h1 + 2 h0 (F. N. Fritsch and J. Butland 1984), level at both ends.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { fraction, plain } from "../../src/quantity/quantity.ts";
import { monotone } from "../../src/solve/monotone.ts";
import table from "./curve.json" with { type: "json" };
import { fromText, minus, order, over, plus, type Rational, rational, textOf, times } from "./rational.ts";

type Points = readonly (readonly [Rational, Rational])[];
const whole = (n: number): Rational => rational(BigInt(n));
const at = (points: Points, i: number): readonly [Rational, Rational] =>
  points[i] as readonly [Rational, Rational];

/** The slope at every point. */
function slopes(points: Points): Rational[] {
  const zero = whole(0);
  return points.map((_, i) => {
    if (i === 0 || i === points.length - 1) return zero;
    const [[x0, y0], [x1, y1], [x2, y2]] = [at(points, i - 1), at(points, i), at(points, i + 1)];
    const [h0, h1] = [minus(x1, x0), minus(x2, x1)];
    const [d0, d1] = [over(minus(y1, y0), h0), over(minus(y2, y1), h1)];
    if (order(times(d0, d1), zero) <= 0) return zero;
    const [w1, w2] = [plus(plus(h1, h1), h0), plus(plus(h0, h0), h1)];
    return over(plus(w1, w2), plus(over(w1, d0), over(w2, d1)));
  });
}

/** The height at x, which lies on the points' stretch. */
function second(points: Points, x: Rational): Rational {
  const i = Math.max(
    1,
    points.findIndex(([to]) => order(x, to) <= 0),
  );
  const m = slopes(points);
  const [[x0, y0], [x1, y1]] = [at(points, i - 1), at(points, i)];
  const h = minus(x1, x0);
  const t = over(minus(x, x0), h);
  const [t2, one, two, three] = [times(t, t), whole(1), whole(2), whole(3)];
  const rest = minus(one, t);
  const basis = [
    times(plus(one, times(two, t)), times(rest, rest)),
    times(t, times(rest, rest)),
    times(t2, minus(three, times(two, t))),
    times(t2, minus(t, one)),
  ] as [Rational, Rational, Rational, Rational];
  const out = times(basis[1], times(h, m[i - 1] as Rational));
  const into = times(basis[3], times(h, m[i] as Rational));
  return plus(plus(times(basis[0], y0), out), plus(times(basis[2], y1), into));
}

const ours = (points: Points, x: Rational): string =>
  monotone(points.map(([a, b]) => ({ at: plain(fraction(a.n, a.d)), height: plain(fraction(b.n, b.d)) })))(
    plain(fraction(x.n, x.d)),
  ).value.toFraction();

it.each(table.map((row) => [row.what, row] as const))("by hand: %s", (_, { points, heights }) => {
  const given: Points = points.map(([a, b]) => [fromText(a as string), fromText(b as string)]);
  for (const [x, height] of heights as [string, string][]) {
    expect(`${x}: ${ours(given, fromText(x))}`).toBe(`${x}: ${height}`);
    expect(`${x}: ${textOf(second(given, fromText(x)))}`).toBe(`${x}: ${height}`);
  }
});

it("anywhere on any points the two curves are the same, to the last fraction", () => {
  const step = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: -60, max: 60 }));
  const place = fc.tuple(fc.integer({ min: 0, max: 96 }), fc.constant(96));
  fc.assert(
    fc.property(fc.array(step, { minLength: 2, maxLength: 7 }), place, (steps, [n, of]) => {
      let [x, y] = [whole(0), whole(0)];
      const points: Points = steps.map(([right, up]) => {
        const here = [x, y] as const;
        x = plus(x, rational(BigInt(right), 8n));
        y = plus(y, rational(BigInt(up), 16n));
        return here;
      });
      const last = at(points, points.length - 1)[0];
      const where = times(last, rational(BigInt(n), BigInt(of)));
      expect(ours(points, where)).toBe(textOf(second(points, where)));
    }),
    { numRuns: 400 },
  );
});
