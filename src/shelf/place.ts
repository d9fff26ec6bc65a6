/** Puts files and folders in their place whole: written beside it under another name, then renamed. */
import { basename, dirname, join } from "node:path";
import type { World } from "./world.ts";

/** The folder that should be replaced holds something that is not a booklet. */
export class NotOursError extends Error {}

/** Files by which a booklet's folder is known, or that of a garment in sizes. */
const OURS = ["plan.json", "sizes.json"];

/** Another run may take the place between two renames; so often it is tried anew. */
const TRIES = 100;

/** How a folder is put in its place. */
export interface Placing {
  /** Called when all files are written, with the folder they stand in; may put another one beside them. */
  readonly seal?: ((folder: string) => void) | undefined;
  /** What runs that are no more may have left in the folder above; without it that is looked for. */
  readonly leftovers?: Leftovers | undefined;
}

/**
 * Replaces `folder` by `files`. Until the new one is complete the old one stays as it was; a folder that is not a
 * booklet is never replaced. If an earlier run was stopped between its two renames, its old booklet is put back first;
 * what else it left behind is taken away. Two runs at once leave the whole booklet of one of them.
 */
export function placeFolder(
  world: World,
  parent: string,
  name: string,
  files: ReadonlyMap<string, string | Uint8Array>,
  { seal, leftovers }: Placing = {},
): void {
  const target = join(parent, name);
  const fresh = join(parent, `.${name}.new-${world.unique}`);
  const old = join(parent, `.${name}.old-${world.unique}`);
  world.makeFolder(parent);
  (leftovers ?? new Leftovers(world, parent)).tidy(name);
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
    for (const folder of new Set([...files.keys()].map((file) => dirname(join(fresh, file)))))
      world.makeFolder(folder);
    for (const [file, contents] of files) world.write(join(fresh, file), contents);
    seal?.(fresh);
    world.remove(old);
    takePlace(world, fresh, target, old);
  } catch (error) {
    world.remove(fresh);
    if (world.kind(target) === undefined && world.kind(old) === "folder") world.rename(old, target);
    throw error;
  }
  world.remove(old);
}

/** `fresh` becomes `target`, and what was there `old`. */
function takePlace(world: World, fresh: string, target: string, old: string): void {
  for (let tries = 1; ; tries += 1) {
    try {
      if (world.kind(target) !== undefined) {
        world.remove(old);
        world.rename(target, old);
      }
      world.rename(fresh, target);
      return;
    } catch (error) {
      const { code = "" } = error as NodeJS.ErrnoException;
      const another =
        ["ENOTEMPTY", "EEXIST", "EPERM"].includes(code) || (code === "ENOENT" && world.kind(fresh));
      if (!another || tries >= TRIES) throw error;
      world.pause(tries);
    }
  }
}

/** What runs that are no more left in a folder of booklets. It is listed once: a run of many garments asks for each of them. */
export class Leftovers {
  private readonly world: World;
  private readonly parent: string;
  private hidden: readonly string[] | undefined;

  constructor(world: World, parent: string) {
    this.world = world;
    this.parent = parent;
  }

  /** What is left of one booklet: the old one goes back where there is none, the rest goes. */
  tidy(name: string): void {
    const { world, parent } = this;
    this.hidden ??= world.list(parent).filter((file) => file.startsWith("."));
    const left = this.hidden.flatMap((file) => {
      if (file === `.${name}.old`) return [{ file, kind: "old" }];
      const [, kind, unique] =
        (file.startsWith(`.${name}.`) && /^(new|old)-(.+)$/.exec(file.slice(name.length + 2))) || [];
      return kind && unique && unique !== world.unique && world.isGone(unique) ? [{ file, kind }] : [];
    });
    for (const { file, kind } of left) {
      const path = join(parent, file);
      // Another run may have tidied since the folder was listed.
      if (world.kind(path) === undefined) continue;
      if (kind === "old" && world.kind(join(parent, name)) === undefined)
        world.rename(path, join(parent, name));
      else world.remove(path);
    }
  }
}

/** Takes away what this run itself has left unfinished in a folder, because it was stopped; an old booklet goes back where there is none. */
export function clearUnfinished(world: World, parent: string): void {
  if (world.kind(parent) !== "folder") return;
  for (const file of world.list(parent)) {
    const [, name = "", kind] = /^\.(.+)\.(new|old)-/.exec(file) ?? [];
    if (kind === undefined || file !== `.${name}.${kind}-${world.unique}`) continue;
    if (kind === "old" && world.kind(join(parent, name)) === undefined)
      world.rename(join(parent, file), join(parent, name));
    else world.remove(join(parent, file));
  }
}

/** Takes away what runs that are no more left of a file that they were replacing. */
export function tidyFile(world: World, path: string): void {
  const start = `${basename(path)}.new-`;
  for (const file of world.list(dirname(path)))
    if (file.startsWith(start) && world.isGone(file.slice(start.length)))
      world.remove(join(dirname(path), file));
}

/** Replaces one file whole; with `lasting` it would outlast a loss of power once this returns. */
export function placeFile(world: World, path: string, text: string, lasting = false): void {
  const fresh = `${path}.new-${world.unique}`;
  try {
    world.write(fresh, text);
    if (lasting) world.sync(fresh);
    world.rename(fresh, path);
    if (lasting) world.sync(dirname(path));
  } catch (error) {
    world.remove(fresh);
    throw error;
  }
}
