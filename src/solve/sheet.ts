/**
 * The working sheet: every named value of one garment, with the formula it was calculated by.
 * A value's formula is the only way to set it, so what is shown is what was evaluated.
 */
import type { Showing } from "../quantity/print.ts";
import { AREAL, LENGTH, PLAIN, type Quantity, RATE } from "../quantity/quantity.ts";
import { MEANINGS } from "../recipe/keys.ts";
import type { Given, Recipe } from "../recipe/recipe.ts";
import { formulaOf, inNumbers } from "./formulas.ts";
import { NAMES, type Name } from "./names.ts";
import type { Style, Value } from "./plan.ts";
import { shown } from "./shown.ts";

/** Paths whose plain name is taken by a result. */
const RENAMED: Readonly<Record<string, string>> = { "skirt.round": "skirt.roundWished" };

/** The recipe's path as a name for formulas: `wearer.waist-to-floor.front` -> `wearer.waistToFloor.front`. */
export function nameOfPath(path: string): string {
  return RENAMED[path] ?? path.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
}

/** What a recipe's key means in words, with that of the block it stands in where blocks are nested; the path itself where nothing is said. */
export function meaningOf(path: string): string {
  const key = path.replace(/\.\d+(?=\.|$)/g, ".*");
  const own = MEANINGS.get(key);
  if (own === undefined) return path;
  const block = key.slice(0, Math.max(0, key.lastIndexOf("."))).replace(/\.\*$/, "");
  const about = block.includes(".") ? MEANINGS.get(block) : undefined;
  return about === undefined ? own : `${about}: ${own}`;
}

/** Units to print in for a reader, other than the recipe's; nothing is worked out otherwise for them. */
export type Reading = Pick<Showing, "show" | "tape">;

/** Values known only while one formula is calculated, such as one section's cloth. */
export type Scope = Readonly<Record<string, Quantity>>;

export class Sheet {
  readonly values = new Map<string, Value>();
  /** The recipe's own units and tape: what is worked to. */
  readonly showing: Showing;
  /** What is printed in: the recipe's own, or what a reader chose. */
  private readonly printing: Showing;

  constructor(recipe: Recipe, reading?: Reading) {
    this.showing = { show: recipe.show, tape: recipe.tape, currency: recipe.work.price?.currency };
    this.printing = { ...this.showing, ...reading };
    for (const given of recipe.given) this.give(given);
  }

  has(...names: string[]): boolean {
    return names.every((name) => this.values.has(name));
  }

  /** A value that must be there; a missing one is a fault of the program, not of the recipe. */
  get(name: string): Quantity {
    const value = this.values.get(name);
    if (!value) throw new Error(`the sheet has no value "${name}"`);
    return value.quantity;
  }

  shown(name: string): string {
    const value = this.values.get(name);
    if (!value) throw new Error(`the sheet has no value "${name}"`);
    return value.shown;
  }

  /** Calculates a formula of the program's own; `scope` adds names for this once. */
  evaluate(formula: string, scope: Scope = {}): Quantity {
    const result = formulaOf(formula).evaluate((name) => scope[name] ?? this.values.get(name)?.quantity);
    if (typeof result === "boolean") throw new Error(`"${formula}" is a comparison`);
    return result;
  }

  /** Sets a value by its formula. */
  set(name: Name, formula: string, scope: Scope = {}): Quantity {
    const quantity = this.evaluate(formula, scope);
    this.put(name, quantity, formula, this.inNumbers(formula, scope), "formula");
    return quantity;
  }

  /** Sets a value that was searched for, with the rule of the search in words. */
  choose(name: Name, quantity: Quantity, rule: string): Quantity {
    this.put(name, quantity, rule, rule, "choice");
    return quantity;
  }

  /** Puts in an assumption that is no key of the recipe, such as a rate of work. */
  assume(name: string, quantity: Quantity, as: Style, about: string, rule: string): void {
    const text = shown(quantity, as, this.printing);
    this.values.set(name, {
      name,
      quantity,
      shown: text,
      how: "assumed",
      inNumbers: text,
      source: "default",
      about,
      rule,
    });
  }

  private put(name: Name, quantity: Quantity, how: string, inNumbers: string, source: Value["source"]): void {
    const entry = NAMES[name];
    const text = shown(quantity, entry.as, this.printing);
    const value: Value = { name, quantity, shown: text, how, inNumbers, source, about: entry.about };
    this.values.set(name, "rule" in entry && entry.rule ? { ...value, rule: entry.rule } : value);
  }

  private give(given: Given): void {
    const name = nameOfPath(given.path);
    const text = shown(given.quantity, styleOf(given), this.printing);
    this.values.set(name, {
      name,
      quantity: given.quantity,
      shown: text,
      how: given.source === "recipe" ? `given in the recipe: ${given.path}` : `default for ${given.path}`,
      inNumbers: given.text,
      source: given.source,
      about: meaningOf(given.path),
      path: given.path,
    });
  }

  private inNumbers(formula: string, scope: Scope): string {
    return inNumbers(formula, (name) => {
      const local = scope[name];
      return local ? shown(local, plainStyle(local), this.printing) : this.values.get(name)?.shown;
    });
  }
}

function plainStyle(q: Quantity): Style {
  if (q.dim === LENGTH) return "part";
  if (q.dim === RATE) return "rate";
  if (q.dim === AREAL) return "areal";
  if (q.dim.money !== 0) return q.dim.length === 0 ? (q.dim.time === 0 ? "money" : "hourly") : "price";
  return "count";
}

function styleOf({ path, quantity }: Given): Style {
  if (path.endsWith("thickness") || path.endsWith("ten-layers")) return "thick";
  if (path.endsWith("closest-easy")) return "fine";
  if (path.endsWith("bought-by")) return "cloth";
  if (path.endsWith("shrinkage") || path.endsWith("back-share")) return "share";
  if (quantity.dim === PLAIN) return "count";
  return plainStyle(quantity);
}
