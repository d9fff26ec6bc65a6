/** Reads, solves and writes one project, in all its sizes; the messages carry the path as the user gave it. */
import { dirname, join } from "node:path";
import { makeBooklet, type Own } from "../booklet/booklet.ts";
import { readPhotographs } from "../booklet/notebook/photographs.ts";
import { readNotebook } from "../booklet/notebook/read.ts";
import { frontMatter } from "../recipe/front-matter.ts";
import { Source } from "../recipe/lines.ts";
import { type Message, messageText } from "../recipe/message.ts";
import { readRecipe } from "../recipe/read.ts";
import { examinedSizes } from "./examine-sizes.ts";
import { type Project, UsageError } from "./find.ts";
import { failed, isBuilt, type Outcome } from "./outcome.ts";
import { placeFolder } from "./place.ts";
import { PrintError, type Printing, printBooklet } from "./print.ts";
import { findPhotograph, type ProjectFiles, RECIPE_FILE, readProjectFiles } from "./project-files.ts";
import { filesOfSet, keptFiles, SET_FILE } from "./sizes.ts";
import { workedOut } from "./worked-out.ts";
import type { World } from "./world.ts";

export type { Outcome } from "./outcome.ts";

/**
 * Reads a recipe and all that stands beside it and works it out; writes nothing. Every error is found, not only the first.
 *
 * @param only the name of the only size wanted; throws UsageError where the recipe has no such size
 */
export function checkProject(world: World, project: Project, only?: string): Outcome {
  const files = readProjectFiles(world, project);
  const { recipe, evidence, templates } = files;
  const sources = new Map(
    [recipe, evidence, ...templates].flatMap((file) => (file ? [[file.file, file.text]] : [])),
  );
  const found = recipe ? examined(world, project, recipe.text, files, only) : { messages: files.messages };
  return { project, sources, ...found };
}

type Examined = Pick<Outcome, "messages" | "plan" | "own" | "sizes" | "base">;

function examined(
  world: World,
  project: Project,
  text: string,
  files: ProjectFiles,
  only?: string,
): Examined {
  const read = readRecipe(RECIPE_FILE, text, files.evidence);
  const front = frontMatter(new Source(RECIPE_FILE, text));
  const body = "body" in front ? front.body : { text: "", line: 1 };
  const { notebook, messages: ofNotebook } = readNotebook(RECIPE_FILE, body, files.templates);
  const pictures = readPhotographs(notebook.photographs, (path) => findPhotograph(world, project, path));
  const beside = [...files.messages, ...ofNotebook, ...pictures.messages];
  const own: Own = { notebook, photographs: pictures.photographs };
  if (read.sizes) {
    const found = examinedSizes(read.sizes, read.messages, { own, beside, project, only });
    return read.recipe ? { ...found, base: read.recipe } : found;
  }

  if (read.recipe && only !== undefined) throw new UsageError(noSizes(project, only));
  const found = read.recipe ? workedOut(read.recipe, notebook) : { messages: [] };
  const messages = [
    ...files.messages,
    ...read.messages,
    ...ofNotebook,
    ...pictures.messages,
    ...found.messages,
  ];
  return "plan" in found && !failed(messages) ? { messages, plan: found.plan, own } : { messages };
}

const noSizes = ({ shown }: Project, only: string): string =>
  `${shown} has no sizes, so it cannot be built in size "${only}": leave --size out`;

/**
 * Builds a project into `out`, and prints it where a browser is given. With errors nothing is written and an older booklet
 * stays as it was; a booklet that could not be printed is whole without its PDF files. Sizes that do not work out keep the
 * booklets they had, and do not keep the others back.
 *
 * @param only the name of the only size to build; whatever else stands in the project's folder stays as it is
 */
export function buildProject(
  world: World,
  project: Project,
  out: string,
  printing?: Printing,
  only?: string,
): Outcome {
  const outcome = checkProject(world, project, only);
  const { plan, own } = outcome;
  if (!own || !isBuilt(outcome)) return outcome;
  const files = new Map<string, string | Uint8Array>();
  const put = (made: ReadonlyMap<string, string>, folder = ""): void => {
    for (const [file, text] of made) files.set(`${folder}${file}`, text);
    for (const { path, bytes } of own.photographs.values()) files.set(`${folder}${path}`, bytes);
  };
  if (plan) put(makeBooklet(plan, own));
  else {
    const folder = join(out, project.name);
    for (const [file, bytes] of keptFiles(world, folder, outcome, only)) files.set(file, bytes);
    for (const size of outcome.sizes ?? [])
      if (size.plan) put(makeBooklet(size.plan, own), `${size.folder}/`);
    const ofAll = filesOfSet(outcome, own);
    if (only === undefined) put(ofAll);
    else if (!files.has(SET_FILE)) files.set(SET_FILE, ofAll.get(SET_FILE) as string);
  }
  const printed = printing ? printAll(world, files, join(out, project.name), printing) : {};
  placeFolder(world, out, project.name, files);
  return { ...outcome, ...printed };
}

/** Prints every booklet that was made now, and puts the PDF files beside them. */
function printAll(
  world: World,
  files: Map<string, string | Uint8Array>,
  target: string,
  printing: Printing,
): Pick<Outcome, "printed" | "notPrinted"> {
  const printed: string[] = [];
  try {
    for (const [file, text] of [...files]) {
      if (typeof text !== "string" || !/(?:^|\/)booklet\.html$/.test(file)) continue;
      const pdfs = printBooklet(world, text, `${target}.printing-${world.unique}`, printing);
      for (const [pdf, bytes] of pdfs) {
        const path = file.replace(/booklet\.html$/, pdf);
        files.set(path, bytes);
        printed.push(path);
      }
    }
    return { printed };
  } catch (error) {
    if (!(error instanceof PrintError)) throw error;
    for (const path of printed) files.delete(path);
    return { notPrinted: error.message };
  }
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
