/** What stands beside a recipe: the list of originals, wordings of chapters, photographs. */
import { dirname, join, sep } from "node:path";
import type { FoundFile } from "../booklet/notebook/photographs.ts";
import { AS_MADE_FILE } from "../recipe/as-made/as-made.ts";
import { EVIDENCE_FILE } from "../recipe/evidence.ts";
import {
  LARGEST_AS_MADE,
  LARGEST_PHOTOGRAPH,
  LARGEST_RECIPE,
  LARGEST_TEXT,
  MOST_TEMPLATES,
} from "../recipe/limits.ts";
import type { Message } from "../recipe/message.ts";
import type { Project } from "./find.ts";
import { readText, type Unreadable } from "./texts.ts";
import type { World } from "./world.ts";

export interface ProjectFile {
  /** Its path beside the recipe. */
  readonly file: string;
  readonly text: string;
}

export interface ProjectFiles {
  readonly recipe?: ProjectFile;
  readonly evidence?: ProjectFile;
  /** What was recorded of the work. */
  readonly asMade?: ProjectFile;
  readonly templates: readonly ProjectFile[];
  /** Files that cannot be read. */
  readonly messages: readonly Message[];
}

/** The name a recipe has in messages until they are shown. */
export const RECIPE_FILE = "recipe.md";
const TEMPLATES = "templates";

/** Reads a project's texts. Photographs are read once it is known which are asked for. */
export function readProjectFiles(world: World, project: Project): ProjectFiles {
  const messages: Message[] = [];
  const folder = dirname(project.recipe);
  const read = (
    file: string,
    path: string,
    what: string,
    smaller: string,
    most = LARGEST_TEXT,
  ): ProjectFile | undefined => {
    const text = isWithin(world, folder, path) ? readText(world, path, what, smaller, most) : OUTSIDE;
    if (typeof text === "string") return { file, text };
    messages.push({ ...text, level: "error", place: { file, line: 1, column: 1, length: 1 } });
    return undefined;
  };
  const smaller = "keep pictures in photos/, not in the text";
  const recipe = read(RECIPE_FILE, project.recipe, "recipe", smaller, LARGEST_RECIPE);
  const beside = (file: string, what: string, smaller: string, most?: number): ProjectFile | undefined =>
    world.kind(join(folder, file)) === "file"
      ? read(file, join(folder, file), what, smaller, most)
      : undefined;
  const evidence = beside(EVIDENCE_FILE, "list", "keep one line for each original");
  const asMade = beside(AS_MADE_FILE, "record", "keep long texts elsewhere", LARGEST_AS_MADE);
  const templates = templatesIn(world, join(folder, TEMPLATES)).flatMap(
    (name) =>
      read(`${TEMPLATES}/${name}`, join(folder, TEMPLATES, name), "wording", "keep one chapter in it") ?? [],
  );
  return {
    ...(recipe ? { recipe } : {}),
    ...(evidence ? { evidence } : {}),
    ...(asMade ? { asMade } : {}),
    templates,
    messages,
  };
}

/** Does a path lead to something in the folder, links followed? */
export const isWithin = (world: World, folder: string, path: string): boolean =>
  world.real(path).startsWith(join(world.real(folder), sep));

const OUTSIDE: Unreadable = {
  code: "outside",
  text: "this is a link that leads out of the project's folder",
  hint: "put the file itself there",
};

function templatesIn(world: World, folder: string): string[] {
  if (world.kind(folder) !== "folder") return [];
  return world
    .list(folder)
    .filter((name) => name.endsWith(".md") && name !== "README.md" && !name.startsWith("."))
    .filter((name) => world.kind(join(folder, name)) === "file")
    .slice(0, MOST_TEMPLATES);
}

/** A photograph's bytes by its path beside the recipe. */
export function findPhotograph(world: World, project: Project, path: string): FoundFile {
  const full = join(dirname(project.recipe), path);
  if (world.kind(full) !== "file" || !isWithin(world, dirname(project.recipe), full)) return "missing";
  const size = world.size(full);
  return size > LARGEST_PHOTOGRAPH ? { tooLarge: size } : world.read(full);
}
