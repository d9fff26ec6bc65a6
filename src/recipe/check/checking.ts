/** What a rule is handed: the values that could be read, and where to put what it finds. */
import type { Level } from "../message.ts";
import type { Problem } from "../problem.ts";
import type { Filled } from "../schema/recipe.ts";
import type { Partly } from "../values.ts";

export interface Checking {
  readonly values: Partly<Filled>;
  /** Is this key in the recipe, readable or not? What is there but cannot be read has been told already. */
  written(path: string): boolean;
  /** Says that a value is wrong. */
  say(path: string, problem: Problem, level?: Level): void;
  /** Says that a key is wrong where it stands, whatever its value. */
  sayOfKey(path: string, problem: Problem): void;
}
