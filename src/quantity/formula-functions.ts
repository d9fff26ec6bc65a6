/** What a formula can calculate: arithmetic, comparisons, and the functions of the grammar. */
import { diagonal } from "./diagonal.ts";
import { FormulaError } from "./formula-error.ts";
import { MOST_BITS } from "./limits.ts";
import * as q from "./quantity.ts";
import { type Rounding, roundTo } from "./tape.ts";

export type Result = q.Quantity | boolean;

const TOO_LARGE = 1n << BigInt(MOST_BITS);

/** Refuses a result with too many digits. */
export function bounded(result: q.Quantity): q.Quantity {
  const { n, d } = result.value;
  if (n >= TOO_LARGE || d >= TOO_LARGE) {
    throw new FormulaError("the result has too many digits", 0);
  }
  return result;
}

export const ARITHMETIC: Record<string, (a: q.Quantity, b: q.Quantity) => Result> = {
  "+": q.add,
  "-": q.sub,
  "*": (a, b) => bounded(q.mul(a, b)),
  "/": (a, b) => bounded(q.div(a, b)),
  "<": q.less,
  ">": q.more,
  "<=": (a, b) => !q.more(a, b),
  ">=": (a, b) => !q.less(a, b),
  "==": q.equal,
  "!=": (a, b) => !q.equal(a, b),
};

const ONE = q.plain(1n);
const rounding =
  (way: Rounding) =>
  (args: readonly q.Quantity[]): q.Quantity => {
    const [x, step] = args as [q.Quantity, q.Quantity | undefined];
    if (!step && x.dim !== q.PLAIN)
      throw new q.KindError(`${q.kindName(x.dim)} needs a step to be put on, as in round(x, 1/8 in)`);
    const by = step ?? ONE;
    if (by.dim !== x.dim)
      throw new q.KindError(`the step is ${q.kindName(by.dim)}, but what is rounded is ${q.kindName(x.dim)}`);
    if (q.isZero(by) || q.isNegative(by)) throw new q.KindError("the step must be above 0");
    return roundTo(x, by, way);
  };

interface Fn {
  readonly least: number;
  readonly most: number;
  readonly run: (args: readonly q.Quantity[]) => q.Quantity;
}

/** The functions of the grammar: how many things they take, and what they do. */
export const FUNCTIONS: ReadonlyMap<string, Fn> = new Map<string, Fn>([
  ["min", { least: 1, most: 20, run: ([a, ...rest]) => q.min(a as q.Quantity, ...rest) }],
  ["max", { least: 1, most: 20, run: ([a, ...rest]) => q.max(a as q.Quantity, ...rest) }],
  ["abs", { least: 1, most: 1, run: ([a]) => q.abs(a as q.Quantity) }],
  ["floor", { least: 1, most: 2, run: rounding("down") }],
  ["ceil", { least: 1, most: 2, run: rounding("up") }],
  ["round", { least: 1, most: 2, run: rounding("nearest") }],
  ["diagonal", { least: 2, most: 2, run: ([x, step]) => diagonal(x as q.Quantity, step as q.Quantity) }],
]);
