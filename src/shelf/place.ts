/** Puts a folder of files in its place whole: written beside it under another name, then renamed. */
import { dirname, join } from "node:path";
import type { World } from "./world.ts";

/** The folder that should be replaced holds something that is not a booklet. */
export class NotOursError extends Error {}

/** Files by which a booklet's folder is known, or that of a garment in sizes. */
const OURS = ["plan.json", "sizes.json"];

/**
 * Replaces `folder` by `files`. Until the new one is complete the old one stays as it was; a folder that is not a
 * booklet is never replaced. If an earlier run was stopped between its two renames, its old booklet is put back first.
 */
export function placeFolder(
  world: World,
  parent: string,
  name: string,
  files: ReadonlyMap<string, string | Uint8Array>,
): void {
  const target = join(parent, name);
  const fresh = join(parent, `.${name}.new-${world.unique}`);
  const old = join(parent, `.${name}.old`);
  world.makeFolder(parent);
  if (world.kind(target) === undefined && world.kind(old) === "folder") world.rename(old, target);
  if (
    world.kind(target) === "file" ||
    (world.kind(target) === "folder" &&
      world.list(target).length > 0 &&
      OURS.every((file) => world.kind(join(target, file)) === undefined))
  ) {
    throw new NotOursError(
      `"${target}" holds something that is not a booklet: move it away, or build with another --out`,
    );
  }
  try {
    world.remove(fresh);
    for (const [file, contents] of files) {
      const path = join(fresh, file);
      world.makeFolder(dirname(path));
      world.write(path, contents);
    }
    world.remove(old);
    if (world.kind(target) !== undefined) world.rename(target, old);
    world.rename(fresh, target);
  } catch (error) {
    world.remove(fresh);
    if (world.kind(target) === undefined && world.kind(old) === "folder") world.rename(old, target);
    throw error;
  }
  world.remove(old);
}

/** Replaces one file whole. */
export function placeFile(world: World, path: string, text: string): void {
  const fresh = `${path}.new-${world.unique}`;
  try {
    world.write(fresh, text);
    world.rename(fresh, path);
  } catch (error) {
    world.remove(fresh);
    throw error;
  }
}
