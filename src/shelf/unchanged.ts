/**
 * A booklet whose makings are all as they were is not made again. What it was made from stands in its own folder, in a file
 * written with it: checksums of every text and photograph, of the program and of the records beside it that give the maker's
 * pace; and how large and how old each of its files was, so that a booklet that was changed by hand is made anew.
 */
import { createHash } from "node:crypto";
import { dirname, join } from "node:path";
import type { Project } from "./find.ts";
import type { Neighbours } from "./neighbours.ts";
import type { Outcome } from "./outcome.ts";
import { readProjectFiles } from "./project-files.ts";
import type { Report } from "./report.ts";
import { readText } from "./texts.ts";
import type { World } from "./world.ts";

/** The file that says what a booklet was made from. */
export const STAMP = ".made.json";

interface Stamp {
  readonly stamp: 1;
  readonly key: string;
  /** Photographs by their path beside the recipe. */
  readonly photographs: Readonly<Record<string, string>>;
  /** How large each file of the booklet is, and when it was written. */
  readonly files: Readonly<Record<string, readonly [size: number, changed: number]>>;
  readonly report: Report;
}

const LARGEST_STAMP = 4 * 1024 * 1024;

const checksum = (data: string | Uint8Array): string => createHash("sha256").update(data).digest("hex");

/**
 * A checksum of all that a booklet is made from but its photographs; undefined where the world keeps no account of files.
 *
 * @param asked how it was asked for: the folder as the user named it, printing, paper
 */
export function keyOf(
  world: World,
  project: Project,
  neighbours: Neighbours,
  asked: readonly (string | undefined)[],
): string | undefined {
  if (!world.account) return undefined;
  const { recipe, evidence, asMade, templates, messages } = readProjectFiles(world, project);
  const texts = [recipe, evidence, asMade, ...templates].map((file) => file && [file.file, file.text]);
  return checksum(
    JSON.stringify([
      world.account.program(),
      project.shown,
      project.name,
      asked,
      texts,
      messages,
      neighbours.textsFor(project),
    ]),
  );
}

/** What was told of a booklet when it was made, if it stands as it was made and from the same; else undefined. */
export function madeBefore(world: World, project: Project, folder: string, key: string): Report | undefined {
  const stamp = stampIn(world, folder);
  if (!stamp || stamp.key !== key) return undefined;
  try {
    for (const [file, [size, changed]] of Object.entries(stamp.files)) {
      const path = join(folder, file);
      if (world.size(path) !== size || world.account?.changed(path) !== changed) return undefined;
    }
    for (const [path, sum] of Object.entries(stamp.photographs))
      if (checksum(world.read(join(dirname(project.recipe), path))) !== sum) return undefined;
  } catch {
    // A file that is not there, or cannot be read: whatever is wrong with it, making the booklet says so.
    return undefined;
  }
  return stamp.report;
}

function stampIn(world: World, folder: string): Stamp | undefined {
  try {
    const text = readText(world, join(folder, STAMP), "stamp", "", LARGEST_STAMP);
    const stamp = typeof text === "string" ? (JSON.parse(text) as Partial<Stamp>) : {};
    return stamp.stamp === 1 && stamp.files && stamp.photographs && stamp.report
      ? (stamp as Stamp)
      : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Writes a booklet's stamp beside its files, before they take their place.
 *
 * @param folder where the files stand now
 * @param names their names in it
 */
export function putStamp(
  world: World,
  folder: string,
  names: Iterable<string>,
  { key, outcome, report }: { key: string; outcome: Outcome; report: Report },
): void {
  const files = [...names].map((name): [string, [number, number]] => {
    const path = join(folder, name);
    return [name, [world.size(path), world.account?.changed(path) ?? 0]];
  });
  const photographs = [...(outcome.own?.photographs.values() ?? [])].map(
    ({ path, bytes }): [string, string] => [path, checksum(bytes)],
  );
  const stamp: Stamp = {
    stamp: 1,
    key,
    photographs: Object.fromEntries(photographs),
    files: Object.fromEntries(files),
    report,
  };
  world.write(join(folder, STAMP), JSON.stringify(stamp));
}
