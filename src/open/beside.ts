/** What stands beside the recipe, for the page: the list of originals, wordings, photographs. Nothing outside the project's folder. */
import { realpathSync } from "node:fs";
import { dirname, join, sep } from "node:path";
import type { Beside } from "../booklet/examine.ts";
import type { FoundFile } from "../booklet/notebook/photographs.ts";
import type { Project } from "../shelf/find.ts";
import { Neighbours } from "../shelf/neighbours.ts";
import { findPhotograph, readProjectFiles } from "../shelf/project-files.ts";
import type { World } from "../shelf/world.ts";

/** Plain files of photos/, as a recipe may ask for them. */
const PHOTOGRAPH = /^photos\/[A-Za-z0-9][\w-]*(?:\.[\w-]+)*\.(?:png|jpe?g|webp)$/i;

/** Does a path lead to something inside the folder, links followed? */
export function isInside(folder: string, path: string): boolean {
  try {
    return realpathSync(path).startsWith(realpathSync(folder) + sep);
  } catch {
    return false;
  }
}

/** The texts beside a recipe; one that is a link out of the folder is left out. */
export function readBeside(world: World, project: Project): Beside {
  const folder = dirname(project.recipe);
  const { evidence, asMade, templates, messages } = readProjectFiles(world, project);
  const { paces, messages: ofPaces } = new Neighbours(world).pacesFor(project);
  const own = ({ file }: { file: string }): boolean => isInside(folder, join(folder, file));
  return {
    ...(evidence && own(evidence) ? { evidence } : {}),
    ...(asMade && own(asMade) ? { asMade } : {}),
    paces,
    templates: templates.filter(own),
    messages: [...messages.filter(({ place }) => place?.file !== "recipe.md"), ...ofPaces],
  };
}

/** A photograph's bytes; "missing" for anything else. */
export function readPhotograph(world: World, project: Project, path: string): FoundFile {
  const folder = dirname(project.recipe);
  if (!PHOTOGRAPH.test(path) || !isInside(folder, join(folder, path))) return "missing";
  return findPhotograph(world, project, path);
}
