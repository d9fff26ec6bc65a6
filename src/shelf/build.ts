/** Reads, solves and writes one project; the messages carry the path as the user gave it. */
import { dirname, join } from "node:path";
import { makeBooklet } from "../booklet/booklet.ts";
import { EVIDENCE_FILE } from "../recipe/evidence.ts";
import { type Message, messageText } from "../recipe/message.ts";
import { type EvidenceText, readRecipe } from "../recipe/read.ts";
import type { Plan } from "../solve/plan.ts";
import { solve } from "../solve/solve.ts";
import type { Project } from "./find.ts";
import { placeFolder } from "./place.ts";
import { PrintError, type Printing, printBooklet } from "./print.ts";
import type { World } from "./world.ts";

export interface Outcome {
  readonly project: Project;
  readonly messages: readonly Message[];
  readonly plan?: Plan;
  /** The recipe's text, for showing lines. */
  readonly source: string;
  /** The PDF files that were printed, when that was asked. */
  readonly printed?: readonly string[];
  /** Why they were not. */
  readonly notPrinted?: string;
  /** The text of evidence.csv, where there is one. */
  readonly evidence?: string;
}

/** Larger recipes and lists are refused before they are read. */
export const LARGEST_RECIPE = 1024 * 1024;

function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

const refused = (
  project: Project,
  code: string,
  text: string,
  hint: string,
  file = "recipe.md",
): Outcome => ({
  project,
  source: "",
  messages: [{ code, level: "error", text, hint, place: { file, line: 1, column: 1, length: 1 } }],
});

/** The list of originals beside a recipe: its text, nothing, or why it cannot be read. */
function evidenceOf(world: World, project: Project): EvidenceText | Outcome | undefined {
  const path = join(dirname(project.recipe), EVIDENCE_FILE);
  if (world.kind(path) !== "file") return undefined;
  const bytes = world.read(path);
  if (bytes.length > LARGEST_RECIPE) {
    return refused(
      project,
      "too-large",
      `the list is ${bytes.length} bytes long; at most ${LARGEST_RECIPE}`,
      "keep one line for each original",
      EVIDENCE_FILE,
    );
  }
  const text = decoded(bytes);
  return text === undefined
    ? refused(project, "not-text", "the list is not UTF-8 text", "save it as UTF-8", EVIDENCE_FILE)
    : { file: EVIDENCE_FILE, text };
}

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
  const evidence = evidenceOf(world, project);
  if (evidence && "messages" in evidence) return evidence;
  const known = evidence ? { project, source, evidence: evidence.text } : { project, source };
  const read = readRecipe("recipe.md", source, evidence);
  if (!read.recipe || read.messages.some(({ level }) => level === "error"))
    return { ...known, messages: read.messages };
  const solved = solve(read.recipe);
  const messages = [...read.messages, ...solved.messages];
  return solved.plan ? { ...known, messages, plan: solved.plan } : { ...known, messages };
}

/**
 * Builds a project into `out`, and prints it where a browser is given. With errors nothing is written and an older booklet
 * stays as it was; a booklet that could not be printed is whole without its PDF files.
 */
export function buildProject(world: World, project: Project, out: string, printing?: Printing): Outcome {
  const outcome = checkProject(world, project);
  if (!outcome.plan) return outcome;
  const booklet = makeBooklet(outcome.plan);
  const files = new Map<string, string | Uint8Array>(booklet);
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
export function outcomeText({ project, messages, source, evidence }: Outcome): string {
  return messages
    .map((message) => messageText(atPath(message, project), inList(message) ? evidence : source))
    .join("\n");
}

const inList = ({ place }: Message): boolean => place?.file === EVIDENCE_FILE;

/** A message whose place names the file as the user did. */
export function atPath(message: Message, project: Project): Message {
  if (!message.place) return message;
  const file = inList(message) ? join(dirname(project.shown), EVIDENCE_FILE) : project.shown;
  return { ...message, place: { ...message.place, file } };
}
