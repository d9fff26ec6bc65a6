/** A garment in sizes: what everything that is published of all of them together is made from. */
import type { Message } from "../../recipe/message.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { Plan } from "../../solve/plan.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Pictures } from "../notebook/picture.ts";

/** One size that works out. */
export interface SizePlan {
  readonly name: string;
  /** The folder of its own booklet, beside the booklet of all sizes. */
  readonly folder: string;
  readonly plan: Plan;
}

/** One size that does not work out, and why. */
export interface SizeFault {
  readonly name: string;
  readonly messages: readonly Message[];
}

export interface SizeSet {
  readonly title: string;
  /** In the recipe's order; one at least. */
  readonly sizes: readonly SizePlan[];
  readonly faults: readonly SizeFault[];
  /** The recipe that the sizes are laid over, where it is whole by itself; else the first size's. */
  readonly base: Recipe;
  readonly notebook: Notebook;
  readonly pictures: Pictures;
}

/** The names of some sizes out of all, in order: "A to D, F". */
export function namesOf(some: readonly number[], all: readonly { readonly name: string }[]): string {
  const runs: number[][] = [];
  for (const i of some) {
    const last = runs.at(-1);
    if (last?.at(-1) === i - 1) last.push(i);
    else runs.push([i]);
  }
  const name = (i: number | undefined): string => all[i ?? 0]?.name ?? "";
  return runs
    .flatMap((run) => (run.length > 2 ? [`${name(run[0])} to ${name(run.at(-1))}`] : run.map(name)))
    .join(", ");
}

/** "Size B", "Sizes A to D, F". */
export const sizesWord = (some: readonly number[], all: readonly { readonly name: string }[]): string =>
  `${some.length === 1 ? "Size" : "Sizes"} ${namesOf(some, all)}`;
