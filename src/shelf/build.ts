/** Reads, solves and writes one project; the messages carry the path as the user gave it. */
import { makeBooklet } from "../booklet/booklet.ts";
import { type Message, messageText } from "../recipe/message.ts";
import { readRecipe } from "../recipe/read.ts";
import type { Plan } from "../solve/plan.ts";
import { solve } from "../solve/solve.ts";
import type { Project } from "./find.ts";
import { placeFolder } from "./place.ts";
import type { World } from "./world.ts";

export interface Outcome {
  readonly project: Project;
  readonly messages: readonly Message[];
  readonly plan?: Plan;
  /** The recipe's text, for showing lines. */
  readonly source: string;
}

/** Larger recipes are refused before they are read. */
export const LARGEST_RECIPE = 1024 * 1024;

function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

const refused = (project: Project, code: string, text: string, hint: string): Outcome => ({
  project,
  source: "",
  messages: [
    { code, level: "error", text, hint, place: { file: "recipe.md", line: 1, column: 1, length: 1 } },
  ],
});

/** Reads a recipe and works it out; writes nothing. */
export function checkProject(world: World, project: Project): Outcome {
  const bytes = world.read(project.recipe);
  if (bytes.length > LARGEST_RECIPE) {
    return refused(
      project,
      "too-large",
      `the recipe is ${bytes.length} bytes long; at most ${LARGEST_RECIPE}`,
      "keep pictures in photos/, not in the text",
    );
  }
  const source = decoded(bytes);
  if (source === undefined)
    return refused(project, "not-text", "the recipe is not UTF-8 text", "save it as UTF-8");
  const read = readRecipe("recipe.md", source);
  if (!read.recipe || read.messages.some(({ level }) => level === "error"))
    return { project, source, messages: read.messages };
  const solved = solve(read.recipe);
  const messages = [...read.messages, ...solved.messages];
  return solved.plan ? { project, source, messages, plan: solved.plan } : { project, source, messages };
}

/** Builds a project into `out`. With errors nothing is written and an older booklet stays as it was. */
export function buildProject(world: World, project: Project, out: string): Outcome {
  const outcome = checkProject(world, project);
  if (outcome.plan) placeFolder(world, out, project.name, makeBooklet(outcome.plan));
  return outcome;
}

/** An outcome's messages as text, each with its place by the path the user gave. */
export function outcomeText({ project, messages, source }: Outcome): string {
  return messages.map((message) => messageText(atPath(message, project), source)).join("\n");
}

/** A message whose place names the file as the user did. */
export function atPath(message: Message, project: Project): Message {
  return message.place ? { ...message, place: { ...message.place, file: project.shown } } : message;
}
