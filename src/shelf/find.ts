/** Finds the recipes that a command is about. */
import { basename, dirname, join } from "node:path";
import type { World } from "./world.ts";

/** A recipe to build: where it is, how to name it to the user, and the name of its booklet's folder. */
export interface Project {
  readonly recipe: string;
  readonly shown: string;
  readonly name: string;
}

/** What was wrong with an argument. */
export class UsageError extends Error {}

const RECIPE = "recipe.md";

function projectOf(recipe: string, shown: string): Project {
  const file = basename(recipe);
  return { recipe, shown, name: file === RECIPE ? basename(dirname(recipe)) : file.replace(/\.md$/i, "") };
}

function inFolder(world: World, folder: string, shown: string): Project[] {
  const recipe = join(folder, RECIPE);
  if (world.kind(recipe) === "file") return [projectOf(recipe, join(shown, RECIPE))];
  return world
    .list(folder)
    .filter((name) => !name.startsWith(".") && world.kind(join(folder, name, RECIPE)) === "file")
    .map((name) => projectOf(join(folder, name, RECIPE), join(shown, name, RECIPE)));
}

/** The projects that the arguments name: a recipe file, a project folder, or a folder of project folders. */
export function findProjects(world: World, paths: readonly string[]): Project[] {
  const projects = paths.flatMap((path): Project[] => {
    const full = world.resolve(path);
    const kind = world.kind(full);
    if (kind === undefined) throw new UsageError(`there is no "${path}"`);
    if (kind === "file") return [projectOf(full, path)];
    const found = inFolder(world, full, path);
    if (found.length === 0)
      throw new UsageError(`"${path}" has no ${RECIPE} in it, nor has any folder in it`);
    return found;
  });
  const unique = [...new Map(projects.map((project) => [project.recipe, project])).values()];
  const byName = new Map<string, Project>();
  for (const project of unique) {
    const other = byName.get(project.name);
    if (other)
      throw new UsageError(
        `${other.shown} and ${project.shown} would both build into "${project.name}": rename one folder`,
      );
    byName.set(project.name, project);
  }
  return unique;
}
