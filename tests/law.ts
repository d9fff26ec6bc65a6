/** What the laws of a part of the plan are written with: the plan's values as fractions, and how a law is held. */
import Fraction from "fraction.js";
import type { Plan } from "../src/solve/plan.ts";

export interface Laws {
  readonly plan: Plan;
  value(name: string): Fraction;
  has(name: string): boolean;
  law(holds: boolean, words: string): void;
  same(a: Fraction, b: Fraction, words: string): void;
  notLess(a: Fraction, b: Fraction, words: string): void;
}

/** A number exactly. */
export const F = (n: number | string): Fraction => new Fraction(typeof n === "number" ? BigInt(n) : n);
/** A length in inches. */
export const inches = (q: { readonly value: Fraction }): Fraction => F(q.value.toFraction()).div("25.4");
export const whole = (f: Fraction): boolean => f.d === 1n;
