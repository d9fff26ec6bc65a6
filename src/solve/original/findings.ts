/** Named findings of an original, each with the formula it was worked out by: what is shown is what was evaluated. */
import type { Showing } from "../../quantity/print.ts";
import type { Quantity } from "../../quantity/quantity.ts";
import { formulaOf, inNumbers } from "../formulas.ts";
import type { Style } from "../plan.ts";
import { shown } from "../shown.ts";

export interface Finding {
  readonly name: string;
  readonly quantity: Quantity;
  readonly shown: string;
  /** Measured on the original, worked out from that, or assumed because it was not measured. */
  readonly source: "measured" | "derived" | "assumed";
  readonly about: string;
  readonly how: string;
  readonly inNumbers: string;
}

export class Findings {
  readonly values = new Map<string, Finding>();
  private readonly showing: Showing;

  constructor(showing: Showing) {
    this.showing = showing;
  }

  has(...names: string[]): boolean {
    return names.every((name) => this.values.has(name));
  }

  get(name: string): Quantity {
    const value = this.values.get(name);
    if (!value) throw new Error(`there is no finding "${name}"`);
    return value.quantity;
  }

  shown(name: string): string {
    return this.values.get(name)?.shown ?? "";
  }

  /** What stands on the sheet; nothing where it was not measured. */
  measure(name: string, quantity: Quantity | undefined, as: Style, about: string): void {
    if (quantity) this.put(name, quantity, as, "measured", about, "measured");
  }

  /** What was not measured and has to be something. */
  assume(name: string, quantity: Quantity, as: Style, about: string, why: string): void {
    this.put(name, quantity, as, "assumed", about, why);
  }

  /** Works a formula out over the findings so far. */
  set(name: string, formula: string, as: Style, about: string): Quantity {
    const result = this.evaluate(formula);
    const told = inNumbers(formula, (each) => this.values.get(each)?.shown);
    this.put(name, result, as, "derived", about, formula, told);
    return result;
  }

  evaluate(formula: string): Quantity {
    const result = formulaOf(formula).evaluate((name) => this.values.get(name)?.quantity);
    if (typeof result === "boolean") throw new Error(`"${formula}" is a comparison`);
    return result;
  }

  private put(
    name: string,
    quantity: Quantity,
    as: Style,
    source: Finding["source"],
    about: string,
    how: string,
    told = how,
  ): void {
    const text = shown(quantity, as, this.showing);
    this.values.set(name, { name, quantity, shown: text, source, about, how, inNumbers: told });
  }
}
