/** Reads a recipe and all that stands beside it and works it out: everything that a build would say. Not in a booklet's page. */
import { figuresOf } from "../figure/index.ts";
import { frontMatter } from "../recipe/front-matter.ts";
import { Source } from "../recipe/lines.ts";
import type { Message } from "../recipe/message.ts";
import { readRecipe } from "../recipe/read.ts";
import type { EvidenceText } from "../recipe/recipe.ts";
import type { Plan } from "../solve/plan.ts";
import { solve } from "../solve/solve.ts";
import type { Own } from "./booklet.ts";
import { writeSections } from "./notebook/compose.ts";
import { ownContext } from "./notebook/own-context.ts";
import { type FoundFile, readPhotographs } from "./notebook/photographs.ts";
import { type ProjectText, readNotebook } from "./notebook/read.ts";
import { work } from "./notebook/work.ts";

export interface Examined {
  readonly messages: readonly Message[];
  /** There when nothing is wrong. */
  readonly plan?: Plan;
  readonly own?: Own;
}

/** What stands beside a recipe. */
export interface Beside {
  readonly evidence?: EvidenceText;
  readonly templates: readonly ProjectText[];
  /** Files that cannot be read: with errors among them nothing is built. */
  readonly messages: readonly Message[];
}

const failed = (messages: readonly Message[]): boolean => messages.some(({ level }) => level === "error");

/**
 * Examines a recipe's text. Every error is found, not only the first; `beside`'s own messages are not told again.
 *
 * @param file the recipe's name in messages
 * @param find a photograph's bytes by its path beside the recipe
 */
export function examine(
  file: string,
  text: string,
  beside: Beside,
  find: (path: string) => FoundFile,
): Examined {
  const read = readRecipe(file, text, beside.evidence);
  const front = frontMatter(new Source(file, text));
  const body = "body" in front ? front.body : { text: "", line: 1 };
  const { notebook, messages: ofNotebook } = readNotebook(file, body, beside.templates);
  const pictures = readPhotographs(notebook.photographs, find);
  const messages = [...read.messages, ...ofNotebook, ...pictures.messages];
  if (!read.recipe || failed(read.messages)) return { messages };

  const solved = solve(read.recipe);
  messages.push(...solved.messages);
  if (!solved.plan) return { messages };
  const worked = work(solved.plan, notebook);
  messages.push(...worked.messages);
  if (failed(messages) || failed(beside.messages)) return { messages };

  const titles = Object.fromEntries(figuresOf(worked.plan).map((name) => [name, name]));
  messages.push(...writeSections(worked, notebook, ownContext(worked, titles)).messages);
  if (failed(messages)) return { messages };
  return { messages, plan: solved.plan, own: { notebook, photographs: pictures.photographs } };
}
