/** A recipe that can be read, worked out and its notebook tried: everything that only solving finds. */
import { writeSections } from "../booklet/notebook/compose.ts";
import type { Notebook } from "../booklet/notebook/notebook.ts";
import { ownContext } from "../booklet/notebook/own-context.ts";
import { work } from "../booklet/notebook/work.ts";
import { figuresOf } from "../figure/index.ts";
import type { Message } from "../recipe/message.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Plan } from "../solve/plan.ts";
import { solve } from "../solve/solve.ts";
import { failed } from "./outcome.ts";

/** One recipe solved, its notebook worked out and tried; with an error there is no plan. */
export function workedOut(recipe: Recipe, notebook: Notebook): { plan?: Plan; messages: readonly Message[] } {
  const solved = solve(recipe);
  if (!solved.plan) return { messages: solved.messages };
  const worked = work(solved.plan, notebook);
  const messages = [...solved.messages, ...worked.messages];
  if (failed(messages)) return { messages };
  const titles = Object.fromEntries(figuresOf(worked.plan).map((name) => [name, name]));
  messages.push(...writeSections(worked, notebook, ownContext(worked, titles)).messages);
  return failed(messages) ? { messages } : { messages, plan: solved.plan };
}
