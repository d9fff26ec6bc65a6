/** Reads, solves and writes one project; the messages carry the path as the user gave it. */
import { dirname, join } from "node:path";
import version from "plainwork:version";
import { makeBooklet, type Own } from "../booklet/booklet.ts";
import { writeSections } from "../booklet/notebook/compose.ts";
import { ownContext } from "../booklet/notebook/own-context.ts";
import { type FoundFile, readPhotographs } from "../booklet/notebook/photographs.ts";
import { readNotebook } from "../booklet/notebook/read.ts";
import { work } from "../booklet/notebook/work.ts";
import { figuresOf } from "../figure/index.ts";
import { readAsMadeFile } from "../recipe/as-made/file.ts";
import type { Paces } from "../recipe/as-made/pace.ts";
import { frontMatter } from "../recipe/front-matter.ts";
import { Source } from "../recipe/lines.ts";
import { type Message, messageText } from "../recipe/message.ts";
import { readRecipe } from "../recipe/read.ts";
import type { Plan } from "../solve/plan.ts";
import { solve } from "../solve/solve.ts";
import { carried, sealed } from "./carried.ts";
import type { Project } from "./find.ts";
import { Neighbours } from "./neighbours.ts";
import { placeFolder } from "./place.ts";
import { PrintError, type Printing, printBooklet } from "./print.ts";
import { findPhotograph, type ProjectFiles, RECIPE_FILE, readProjectFiles } from "./project-files.ts";
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

/**
 * Reads a recipe and all that stands beside it and works it out; writes nothing. Every error is found, not only the first.
 *
 * @param neighbours the garments beside it, whose records give the maker's pace; one for all projects of a run
 */
export function checkProject(world: World, project: Project, neighbours = new Neighbours(world)): Outcome {
  const files = readProjectFiles(world, project);
  const { recipe, evidence, asMade, templates } = files;
  const sources = new Map(
    [recipe, evidence, asMade, ...templates].flatMap((file) => (file ? [[file.file, file.text]] : [])),
  );
  const { paces, messages } = neighbours.pacesFor(project);
  const all = { ...files, messages: [...files.messages, ...messages] };
  const find = (path: string): FoundFile => findPhotograph(world, project, path);
  const found = recipe ? examined(recipe.text, all, paces, find) : { messages: files.messages };
  return { project, sources, ...found };
}

type Examined = Pick<Outcome, "messages" | "plan" | "own">;

/** What files come to; photographs are found by their path, or passed over. */
export function examined(
  text: string,
  files: ProjectFiles,
  paces: Paces,
  find?: (path: string) => FoundFile,
): Examined {
  const read = readRecipe(RECIPE_FILE, text, files.evidence);
  const record = files.asMade ? readAsMadeFile(files.asMade.file, files.asMade.text) : undefined;
  const front = frontMatter(new Source(RECIPE_FILE, text));
  const body = "body" in front ? front.body : { text: "", line: 1 };
  const { notebook, messages: ofNotebook } = readNotebook(RECIPE_FILE, body, files.templates);
  const pictures = find
    ? readPhotographs(notebook.photographs, find)
    : { photographs: new Map(), messages: [] };
  const messages = [
    ...files.messages,
    ...read.messages,
    ...(record?.messages ?? []),
    ...ofNotebook,
    ...pictures.messages,
  ];
  if (!read.recipe || failed(read.messages)) return { messages };

  const recorded = { ...(record?.asMade ? { asMade: record.asMade } : {}), paces };
  const solved = solve({ ...read.recipe, recorded });
  messages.push(...solved.messages);
  if (!solved.plan) return { messages };
  const worked = work(solved.plan, notebook);
  messages.push(...worked.messages);
  if (failed(messages)) return { messages };

  const titles = Object.fromEntries(figuresOf(worked.plan).map((name) => [name, name]));
  messages.push(...writeSections(worked, notebook, ownContext(worked, titles)).messages);
  if (failed(messages)) return { messages };
  const source = carried({ files, paces, values: worked.plan.values, version });
  return { messages, plan: solved.plan, own: { notebook, photographs: pictures.photographs, source } };
}

const failed = (messages: readonly Message[]): boolean => messages.some(({ level }) => level === "error");

/**
 * Builds a project into `out`, and prints it where a browser is given. With errors nothing is written and an older booklet
 * stays as it was; a booklet that could not be printed is whole without its PDF files.
 */
export function buildProject(
  world: World,
  project: Project,
  out: string,
  printing?: Printing,
  neighbours?: Neighbours,
): Outcome {
  const outcome = checkProject(world, project, neighbours);
  const { plan, own } = outcome;
  if (!plan || !own) return outcome;
  const booklet = makeBooklet(plan, own);
  const page = sealed(booklet.get("booklet.html") as string);
  const files = new Map<string, string | Uint8Array>(booklet).set("booklet.html", page);
  for (const { path, bytes } of own.photographs.values()) files.set(path, bytes);
  let printed: Pick<Outcome, "printed" | "notPrinted"> = {};
  if (printing) {
    try {
      const folder = join(out, `${project.name}.printing-${world.unique}`);
      const pdfs = printBooklet(world, page, folder, printing);
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
