/** The folder of a garment in sizes: what is made of all of them, and what of an older folder stays. */
import { join } from "node:path";
import type { Own } from "../booklet/booklet.ts";
import { makeSet } from "../booklet/sizes/make.ts";
import type { SizeSet } from "../booklet/sizes/set.ts";
import type { Outcome } from "./outcome.ts";
import { isWithin } from "./project-files.ts";
import type { World } from "./world.ts";

/** The file by which a folder of sizes is known. */
export const SET_FILE = "sizes.json";

type Sized = Pick<Outcome, "sizes" | "base">;

/** The files of all sizes together. One size at least must have a plan. */
export function filesOfSet(
  { sizes = [], base }: Sized,
  { notebook, photographs }: Own,
): ReadonlyMap<string, string> {
  const recipe = base ?? sizes.find(({ plan }) => plan)?.plan?.recipe;
  if (!recipe) throw new Error("there is no size to make a set of");
  const set: SizeSet = {
    title: recipe.title,
    base: recipe,
    sizes: sizes.flatMap(({ name, folder, plan }) => (plan ? [{ name, folder, plan }] : [])),
    faults: sizes.filter(({ plan }) => !plan).map(({ name, messages }) => ({ name, messages })),
    notebook,
    pictures: new Map([...photographs].map(([path, { data }]) => [path, data])),
  };
  return makeSet(set);
}

/**
 * Files of the project's older folder that stay as they are: with one size alone built all the others, else the booklets
 * of sizes that do not work out now.
 */
export function keptFiles(
  world: World,
  folder: string,
  { sizes = [] }: Sized,
  only: string | undefined,
): ReadonlyMap<string, Uint8Array> {
  if (world.kind(join(folder, SET_FILE)) !== "file") return new Map();
  const built = new Set(sizes.filter(({ plan }) => plan).map((size) => size.folder));
  const missing = new Set(sizes.filter(({ plan }) => !plan).map((size) => size.folder));
  const stays = (name: string): boolean => (only === undefined ? missing.has(name) : !built.has(name));
  const files = new Map<string, Uint8Array>();
  const walk = (path: string): void => {
    const full = join(folder, path);
    if (!isWithin(world, folder, full)) return;
    if (world.kind(full) === "folder") for (const name of world.list(full)) walk(`${path}/${name}`);
    else files.set(path, world.read(full));
  };
  for (const name of world.list(folder).filter(stays)) walk(name);
  return files;
}
