/** The diagonal of a square, x times the root of 2, put on whole steps: exact, by comparing whole numbers. */
import { wholeRoot } from "./enclosure.ts";
import { KindError, kindName, type Quantity, quantity } from "./quantity.ts";
import { steps } from "./tape.ts";

/**
 * `x` times the root of 2, up (or down) to a whole number of `step`: what a bias strip of width x takes along the
 * selvedge, how long the diagonal of a square of side x is.
 *
 * @param x 0 or more
 * @param step above 0, of the same kind
 */
export function diagonal(x: Quantity, step: Quantity, way: "up" | "down" = "up"): Quantity {
  if (step.dim !== x.dim)
    throw new KindError(`the step is ${kindName(step.dim)}, but the side is ${kindName(x.dim)}`);
  if (step.value.compare(0) <= 0) throw new KindError("the step must be above 0");
  if (x.value.compare(0) < 0) throw new KindError("a diagonal needs a side of 0 or more");
  const { n, d } = steps(x, step);
  // The whole k with k <= root(2) n/d: k d <= root(2 n n), and k d is whole.
  const down = wholeRoot(2n * n * n) / d;
  const count = way === "down" || n === 0n ? down : down + 1n;
  return quantity(step.value.mul(count), x.dim);
}
