/** The long side of a right-angled triangle on whole steps: exact, by comparing whole numbers. */
import { wholeRoot } from "./enclosure.ts";
import { fraction, KindError, kindName, type Quantity, quantity } from "./quantity.ts";
import { steps } from "./tape.ts";

/**
 * The root of `a` squared and `b` squared, to the nearest whole number of `step`, ties to even: how long an edge is that
 * slants by `a` along `b`.
 *
 * @param a, b 0 or more, of one kind
 * @param step above 0, of the same kind
 */
export function hypotenuse(a: Quantity, b: Quantity, step: Quantity): Quantity {
  if (a.dim !== step.dim || b.dim !== step.dim)
    throw new KindError(
      `the step is ${kindName(step.dim)}, the sides ${kindName(a.dim)} and ${kindName(b.dim)}`,
    );
  if (step.value.compare(0) <= 0) throw new KindError("the step must be above 0");
  const [x, y] = [steps(a, step), steps(b, step)];
  const { n, d } = x.mul(x).add(y.mul(y));
  // Twice the root, rounded down: k <= 2 root(n/d) where k k d <= 4 n.
  const twice = wholeRoot((4n * n) / d);
  const tie = twice % 2n === 1n && twice * twice * d === 4n * n;
  const low = twice / 2n;
  const nearest = twice % 2n === 0n || (tie && low % 2n === 0n) ? low : low + 1n;
  return quantity(step.value.mul(fraction(nearest)), step.dim);
}
