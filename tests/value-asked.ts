/** What the rules of value-laws.ts are written with: exact arithmetic, and the few lengths that many rules begin from. */
import Fraction from "fraction.js";
import type { planJson } from "../src/solve/json.ts";
import type { Plan } from "../src/solve/plan.ts";

export type Json = ReturnType<typeof planJson>;

/** What a rule may ask of the plan. Lengths in inches. */
export interface Asked {
  readonly plan: Plan;
  readonly json: Json;
  /** A value by name. */
  v(name: string): Fraction;
  has(name: string): boolean;
  /** A value, or nothing where the garment has none. */
  or0(name: string): Fraction;
}

/** What the value is; undefined where another law holds it. */
export type Rule = (asked: Asked) => Fraction | undefined;

export const F = (n: number | string): Fraction => new Fraction(typeof n === "number" ? BigInt(n) : n);
export const most = (...all: readonly Fraction[]): Fraction =>
  all.reduce((a, b) => (b.compare(a) > 0 ? b : a));
export const least = (...all: readonly Fraction[]): Fraction =>
  all.reduce((a, b) => (b.compare(a) < 0 ? b : a));
export const sum = (all: readonly Fraction[]): Fraction => all.reduce((a, b) => a.add(b), F(0));
/** The whole number of steps that reaches `x`, and the one that does not pass it. */
export const upTo = (x: Fraction, step: Fraction): Fraction => x.div(step).ceil().mul(step);
export const downTo = (x: Fraction, step: Fraction): Fraction => x.div(step).floor().mul(step);
/** The nearest whole number; of two as near the even one. */
export function nearest(x: Fraction): Fraction {
  const low = x.floor();
  const over = x.sub(low).compare("1/2");
  if (over === 0) return low.mod(2).equals(0) ? low : low.add(1);
  return over < 0 ? low : low.add(1);
}

/** Both allowances of a seam, or what the pattern asks for. */
export const lostInSeam = ({ v, has }: Asked): Fraction =>
  has("seam.lost") ? v("seam.lost") : v("skirt.seam").mul(2);
/** Where the top is turned down from: the hem to the cut top, tucks taken. */
export const topOf = ({ v, or0 }: Asked): Fraction =>
  v("breadths.cut").sub(v("hem.allowance")).sub(or0("tucks.takeUp"));
/** Does the cloth's length go round the body, its width from hem to top? */
export const along = ({ plan }: Pick<Asked, "plan">): boolean => plan.recipe.skirt.run === "along";
/** The repeat that goes round with the cloth. */
export const roundRepeat = (of: Asked): Fraction => of.v(`cloth.repeat.${along(of) ? "down" : "across"}`);
