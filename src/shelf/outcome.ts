/** What comes of one project: its messages, and its plan, or the plan of each size. */
import type { Own } from "../booklet/booklet.ts";
import type { Message } from "../recipe/message.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Plan } from "../solve/plan.ts";
import type { Project } from "./find.ts";

export interface Outcome {
  readonly project: Project;
  readonly messages: readonly Message[];
  /** The plan of a recipe without sizes. */
  readonly plan?: Plan;
  /** The notebook and its photographs, once a plan is there. */
  readonly own?: Own;
  /** The sizes that were asked for, where the recipe has sizes and they could be told apart. */
  readonly sizes?: readonly SizeOutcome[];
  /** The recipe without its sizes, where it has some and is whole by itself. */
  readonly base?: Recipe;
  /** Texts of the project's files by their path beside the recipe, for showing lines. */
  readonly sources: ReadonlyMap<string, string>;
  /** The PDF files that were printed, when that was asked. */
  readonly printed?: readonly string[];
  /** Why they were not. */
  readonly notPrinted?: string;
}

/** One size; without a plan where it does not work out. */
export interface SizeOutcome {
  readonly name: string;
  /** Its booklet's folder, in the project's. */
  readonly folder: string;
  readonly plan?: Plan;
  readonly messages: readonly Message[];
  /** What its page carries so that it can be worked out again. */
  readonly source?: NonNullable<Own["source"]>;
}

/** Is everything there that was asked for? */
export const isWhole = ({ plan, sizes }: Outcome): boolean =>
  plan !== undefined || (sizes !== undefined && sizes.length > 0 && sizes.every((size) => size.plan));

/** Is anything there to be written? */
export const isBuilt = ({ plan, own, sizes }: Outcome): boolean =>
  own !== undefined && (plan !== undefined || (sizes ?? []).some((size) => size.plan));

export const failed = (messages: readonly Message[]): boolean =>
  messages.some(({ level }) => level === "error");
