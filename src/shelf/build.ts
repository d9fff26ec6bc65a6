/** Reads, solves and writes one project, in all its sizes; the messages carry the path as the user gave it. */
import { dirname, join } from "node:path";
import version from "plainwork:version";
import { makeBooklet, type Own } from "../booklet/booklet.ts";
import { examineRead, readAll } from "../booklet/examine.ts";
import type { FoundFile } from "../booklet/notebook/photographs.ts";
import type { Paces } from "../recipe/as-made/pace.ts";
import type { Message } from "../recipe/message.ts";
import type { Plan } from "../solve/plan.ts";
import { carried, sealed } from "./carried.ts";
import { examinedSizes } from "./examine-sizes.ts";
import { type Project, UsageError } from "./find.ts";
import { Neighbours } from "./neighbours.ts";
import { isBuilt, type Outcome } from "./outcome.ts";
import { type Leftovers, placeFolder } from "./place.ts";
import { PrintError, type Printing, printBooklet } from "./print.ts";
import { findPhotograph, type ProjectFiles, RECIPE_FILE, readProjectFiles } from "./project-files.ts";
import { filesOfSet, keptFiles, SET_FILE } from "./sizes.ts";
import type { World } from "./world.ts";

export type { Outcome } from "./outcome.ts";

/**
 * Reads a recipe and all that stands beside it and works it out; writes nothing. Every error is found, not only the first.
 *
 * @param neighbours the garments beside it, whose records give the maker's pace; one for all projects of a run
 * @param only the name of the only size wanted; throws UsageError where the recipe has no such size
 */
export function checkProject(
  world: World,
  project: Project,
  neighbours = new Neighbours(world),
  only?: string,
): Outcome {
  const files = readProjectFiles(world, project);
  const { recipe, evidence, asMade, templates } = files;
  const sources = new Map(
    [recipe, evidence, asMade, ...templates].flatMap((file) => (file ? [[file.file, file.text]] : [])),
  );
  const { paces, messages } = neighbours.pacesFor(project);
  const all = { ...files, messages: [...files.messages, ...messages] };
  const find = (path: string): FoundFile => findPhotograph(world, project, path);
  const found = recipe
    ? examined(recipe.text, all, paces, find, only, project.shown)
    : { messages: files.messages };
  return { project, sources, ...found };
}

type Examined = Pick<Outcome, "messages" | "plan" | "own" | "sizes" | "base">;

/** What files come to, in all sizes or in one; photographs are found by their path, or passed over. */
export function examined(
  text: string,
  files: ProjectFiles,
  paces: Paces,
  find?: (path: string) => FoundFile,
  only?: string,
  shown = RECIPE_FILE,
): Examined {
  const all = readAll(RECIPE_FILE, text, { ...files, paces }, find);
  const source = (values: Plan["values"], size?: string): NonNullable<Own["source"]> =>
    carried({ files, paces, values, version, ...(size === undefined ? {} : { size }) });
  if (all.read.sizes) {
    const found = examinedSizes(all, all.read.sizes, { besides: files.messages, shown, only, source, paces });
    return all.read.recipe ? { ...found, base: all.read.recipe } : found;
  }
  if (all.read.recipe && only !== undefined) throw new UsageError(noSizes(shown, only));
  const found = examineRead(all, files.messages);
  const messages = [...files.messages, ...found.messages];
  const { plan, own, values } = found;
  return plan && own && values ? { messages, plan, own: { ...own, source: source(values) } } : { messages };
}

const noSizes = (shown: string, only: string): string =>
  `${shown} has no sizes, so it cannot be built in size "${only}": leave --size out`;

/** How a project is built. */
export interface Building {
  /** What prints it; without, nothing is printed. */
  readonly printing?: Printing | undefined;
  /** The garments beside it; one for all projects of a run. */
  readonly neighbours?: Neighbours | undefined;
  /** The name of the only size to build; whatever else stands in the project's folder stays as it is. */
  readonly only?: string | undefined;
  /** Called when all files are written, before they take their place: in which folder, and their names in it. */
  readonly seal?: (folder: string, names: Iterable<string>, outcome: Outcome) => void;
  /** What earlier runs left in the folder of the booklets; one for all projects of a run. */
  readonly leftovers?: Leftovers | undefined;
}

/**
 * Builds a project into `out`, and prints it where a browser is given. With errors nothing is written and an older booklet
 * stays as it was; a booklet that could not be printed is whole without its PDF files. Sizes that do not work out keep the
 * booklets they had, and do not keep the others back.
 *
 */
export function buildProject(
  world: World,
  project: Project,
  out: string,
  { printing, neighbours, only, seal, leftovers }: Building = {},
): Outcome {
  const outcome = checkProject(world, project, neighbours, only);
  const { plan, own } = outcome;
  if (!own || !isBuilt(outcome)) return outcome;
  const files = new Map<string, string | Uint8Array>();
  const put = (made: ReadonlyMap<string, string>, folder = ""): void => {
    for (const [file, text] of made)
      files.set(`${folder}${file}`, file === "booklet.html" ? sealed(text) : text);
    for (const { path, bytes } of own.photographs.values()) files.set(`${folder}${path}`, bytes);
  };
  if (plan) put(makeBooklet(plan, own));
  else {
    const folder = join(out, project.name);
    for (const [file, bytes] of keptFiles(world, folder, outcome, only)) files.set(file, bytes);
    for (const size of outcome.sizes ?? [])
      if (size.plan)
        put(
          makeBooklet(size.plan, { ...own, ...(size.source ? { source: size.source } : {}) }),
          `${size.folder}/`,
        );
    const ofAll = filesOfSet(outcome, own);
    if (only === undefined) put(ofAll);
    else if (!files.has(SET_FILE)) files.set(SET_FILE, ofAll.get(SET_FILE) as string);
  }
  const printed = printing ? printAll(world, files, join(out, project.name), printing) : {};
  const done = { ...outcome, ...printed };
  placeFolder(world, out, project.name, files, {
    seal: (folder) => seal?.(folder, files.keys(), done),
    leftovers,
  });
  return done;
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

/** A message whose place names the file as the user did. */
export function atPath(message: Message, project: Project): Message {
  if (!message.place) return message;
  const { file } = message.place;
  const path = file === RECIPE_FILE ? project.shown : join(dirname(project.shown), file);
  return { ...message, place: { ...message.place, file: path } };
}
