/** Reads a recipe and all that stands beside it and works it out: everything that a build would say. Not in a booklet's page. */
import { figuresOf } from "../figure/index.ts";
import { readAsMadeFile } from "../recipe/as-made/file.ts";
import type { Paces } from "../recipe/as-made/pace.ts";
import { frontMatter } from "../recipe/front-matter.ts";
import { Source } from "../recipe/lines.ts";
import type { Message } from "../recipe/message.ts";
import { type ReadRecipe, readRecipe } from "../recipe/read.ts";
import type { EvidenceText, Recipe } from "../recipe/recipe.ts";
import type { Plan } from "../solve/plan.ts";
import { solve } from "../solve/solve.ts";
import type { Own } from "./booklet.ts";
import { writeSections } from "./notebook/compose.ts";
import type { Notebook } from "./notebook/notebook.ts";
import { ownContext } from "./notebook/own-context.ts";
import { type FoundFile, readPhotographs } from "./notebook/photographs.ts";
import { type ProjectText, readNotebook } from "./notebook/read.ts";
import { work } from "./notebook/work.ts";

export interface Examined {
  readonly messages: readonly Message[];
  /** There when nothing is wrong. */
  readonly plan?: Plan;
  readonly own?: Own;
  /** The plan's values with the notebook's workings among them. */
  readonly values?: Plan["values"];
}

/** What stands beside a recipe. */
export interface Beside {
  readonly evidence?: EvidenceText;
  /** What was recorded of the work. */
  readonly asMade?: ProjectText;
  /** The maker's pace, from her other garments' records. */
  readonly paces?: Paces;
  readonly templates: readonly ProjectText[];
  /** Files that cannot be read: with errors among them nothing is built. */
  readonly messages: readonly Message[];
}

const failed = (messages: readonly Message[]): boolean => messages.some(({ level }) => level === "error");

/**
 * Examines a recipe's text. Every error is found, not only the first; `beside`'s own messages are not told again. Of a recipe
 * with sizes the recipe without them is examined.
 *
 * @param file the recipe's name in messages
 * @param find a photograph's bytes by its path beside the recipe; without it photographs are passed over
 */
export const examine = (
  file: string,
  text: string,
  beside: Beside,
  find?: (path: string) => FoundFile,
): Examined => examineRead(readAll(file, text, beside, find), beside.messages);

/** A recipe and all that stands beside it, read and not yet worked out. */
export interface ReadAll {
  readonly read: ReadRecipe;
  readonly recorded: NonNullable<Recipe["recorded"]>;
  readonly own: Own;
  /** What is wrong beside the recipe: in records, notebook and photographs. */
  readonly messages: readonly Message[];
}

/** Reads everything. See `examine`. */
export function readAll(
  file: string,
  text: string,
  beside: Beside,
  find?: (path: string) => FoundFile,
): ReadAll {
  const read = readRecipe(file, text, beside.evidence);
  const record = recordedBeside(beside);
  const front = frontMatter(new Source(file, text));
  const body = "body" in front ? front.body : { text: "", line: 1 };
  const { notebook, messages: ofNotebook } = readNotebook(file, body, beside.templates);
  const pictures = find
    ? readPhotographs(notebook.photographs, find)
    : { photographs: new Map(), messages: [] };
  return {
    read,
    recorded: record.recorded,
    own: { notebook, photographs: pictures.photographs },
    messages: [...record.messages, ...ofNotebook, ...pictures.messages],
  };
}

/** Works out what was read. @param besides further messages: with errors among them nothing is built */
export function examineRead(
  { read, recorded, own, messages: ofOthers }: ReadAll,
  besides: readonly Message[],
): Examined {
  const before = [...read.messages, ...ofOthers];
  if (!read.recipe || failed(read.messages)) return { messages: before };
  const worked = workedOut({ ...read.recipe, recorded }, own.notebook, !failed([...before, ...besides]));
  const messages = [...before, ...worked.messages];
  const { plan, values } = worked;
  return plan && values ? { messages, plan, own, values } : { messages };
}

/** One recipe worked out, its notebook with it, and its text tried. @param sound is nothing wrong so far? Else there is no plan */
export function workedOut(
  recipe: Recipe,
  notebook: Notebook,
  sound: boolean,
): Pick<Examined, "messages" | "plan" | "values"> {
  const solved = solve(recipe);
  if (!solved.plan) return { messages: solved.messages };
  const worked = work(solved.plan, notebook);
  const messages = [...solved.messages, ...worked.messages];
  if (!sound || failed(messages)) return { messages };
  const titles = Object.fromEntries(figuresOf(worked.plan).map((name) => [name, name]));
  messages.push(...writeSections(worked, notebook, ownContext(worked, titles)).messages);
  return failed(messages) ? { messages } : { messages, plan: solved.plan, values: worked.plan.values };
}

/** What was recorded, as a recipe carries it. */
export function recordedBeside({ asMade, paces = {} }: Beside): {
  readonly recorded: NonNullable<Recipe["recorded"]>;
  readonly messages: readonly Message[];
} {
  const read = asMade ? readAsMadeFile(asMade.file, asMade.text) : undefined;
  return {
    recorded: { ...(read?.asMade ? { asMade: read.asMade } : {}), paces },
    messages: read?.messages ?? [],
  };
}
