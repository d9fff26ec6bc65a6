/** Reads, solves and writes one project; the messages carry the path as the user gave it. */
import { dirname, join } from "node:path";
import { makeBooklet, type Own } from "../booklet/booklet.ts";
import { examine } from "../booklet/examine.ts";
import { type Message, messageText } from "../recipe/message.ts";
import type { Plan } from "../solve/plan.ts";
import type { Project } from "./find.ts";
import { placeFolder } from "./place.ts";
import { PrintError, type Printing, printBooklet } from "./print.ts";
import { findPhotograph, RECIPE_FILE, readProjectFiles } from "./project-files.ts";
import type { World } from "./world.ts";

export interface Outcome {
  readonly project: Project;
  readonly messages: readonly Message[];
  readonly plan?: Plan;
  /** The notebook and its photographs, once the plan is there. */
  readonly own?: Own;
  /** Texts of the project's files by their path beside the recipe, for showing lines. */
  readonly sources: ReadonlyMap<string, string>;
  /** The PDF files that were printed, when that was asked. */
  readonly printed?: readonly string[];
  /** Why they were not. */
  readonly notPrinted?: string;
}

/** Reads a recipe and all that stands beside it and works it out; writes nothing. Every error is found, not only the first. */
export function checkProject(world: World, project: Project): Outcome {
  const files = readProjectFiles(world, project);
  const { recipe, evidence, templates } = files;
  const sources = new Map(
    [recipe, evidence, ...templates].flatMap((file) => (file ? [[file.file, file.text]] : [])),
  );
  if (!recipe) return { project, sources, messages: files.messages };
  const found = examine(RECIPE_FILE, recipe.text, files, (path) => findPhotograph(world, project, path));
  return { project, sources, ...found, messages: [...files.messages, ...found.messages] };
}

/**
 * Builds a project into `out`, and prints it where a browser is given. With errors nothing is written and an older booklet
 * stays as it was; a booklet that could not be printed is whole without its PDF files.
 */
export function buildProject(world: World, project: Project, out: string, printing?: Printing): Outcome {
  const outcome = checkProject(world, project);
  const { plan, own } = outcome;
  if (!plan || !own) return outcome;
  const booklet = makeBooklet(plan, own);
  const files = new Map<string, string | Uint8Array>(booklet);
  for (const { path, bytes } of own.photographs.values()) files.set(path, bytes);
  let printed: Pick<Outcome, "printed" | "notPrinted"> = {};
  if (printing) {
    try {
      const folder = join(out, `${project.name}.printing-${world.unique}`);
      const pdfs = printBooklet(world, booklet.get("booklet.html") as string, folder, printing);
      for (const [file, bytes] of pdfs) files.set(file, bytes);
      printed = { printed: [...pdfs.keys()] };
    } catch (error) {
      if (!(error instanceof PrintError)) throw error;
      printed = { notPrinted: error.message };
    }
  }
  placeFolder(world, out, project.name, files);
  return { ...outcome, ...printed };
}

/** An outcome's messages as text, each with its place by the path the user gave. */
export function outcomeText({ project, messages, sources }: Outcome): string {
  return messages
    .map((message) => messageText(atPath(message, project), sources.get(message.place?.file ?? "")))
    .join("\n");
}

/** A message whose place names the file as the user did. */
export function atPath(message: Message, project: Project): Message {
  if (!message.place) return message;
  const { file } = message.place;
  const path = file === RECIPE_FILE ? project.shown : join(dirname(project.shown), file);
  return { ...message, place: { ...message.place, file: path } };
}
