/** Reads every text of a filled tree into its value, by the schema. */
import * as v from "valibot";
import type { Quantity } from "../quantity/quantity.ts";
import { problemOf } from "./fields.ts";
import { type Block, within } from "./node.ts";
import type { Problem } from "./problem.ts";
import { type Filled, FRONT_MATTER } from "./schema/recipe.ts";

/** The same with every part possibly missing, since what cannot be read is left out. */
export type Partly<T> = T extends Quantity
  ? T
  : T extends readonly (infer Item)[]
    ? readonly Partly<Item>[]
    : T extends object
      ? { readonly [Key in keyof T]?: Partly<T[Key]> | undefined }
      : T;

export interface Values<T = Filled> {
  /** Present only when every text could be read. */
  readonly filled?: T;
  /** What could be read, for rules between keys. */
  readonly partly: Partly<T>;
  readonly problems: readonly { readonly path: string; readonly problem: Problem }[];
}

/** Reads a tree that structure.ts has cleaned; what it found missing is not told again. */
export const readValues = (root: Block): Values => readValuesBy(FRONT_MATTER, root);

/** The same by another schema. */
export function readValuesBy<T>(schema: v.GenericSchema<unknown, T>, root: Block): Values<T> {
  const result = v.safeParse(schema, root);
  if (result.success) return { filled: result.output, partly: result.output as Partly<T>, problems: [] };
  const problems: { path: string; problem: Problem }[] = [];
  for (const issue of result.issues) {
    const keys = (issue.path ?? []).map((step) => step.key as string | number);
    const problem = problemOf(issue);
    if (problem) problems.push({ path: keys.reduce<string>(within, ""), problem });
    drop(result.output, keys);
  }
  return { partly: result.output as Partly<T>, problems };
}

/** Takes an unreadable value out: valibot leaves the text there. */
function drop(from: unknown, keys: readonly (string | number)[]): void {
  let holder = from as Record<string | number, unknown> | undefined;
  for (const key of keys.slice(0, -1)) holder = holder?.[key] as typeof holder;
  const last = keys.at(-1);
  if (holder && last !== undefined) delete holder[last];
}
