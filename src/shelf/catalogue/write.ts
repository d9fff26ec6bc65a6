/** Writes the catalogue of a folder from the plan.json files in it, so that it is right whoever built them, and when. */
import { join } from "node:path";
import { placeFile, tidyFile } from "../place.ts";
import { readText } from "../texts.ts";
import type { World } from "../world.ts";
import { type Entry, findEntries, PICTURE } from "./entry.ts";
import { catalogueMarkdown } from "./markdown.ts";
import { cataloguePage, FIRST } from "./page.ts";
import { sketchOf } from "./sketch.ts";

/** A folder that is built into without end is left after so many times. */
const TIMES = 20;

/**
 * Writes index.md and index.html. Several processes may build into one folder: after writing, each looks again and writes
 * anew if what it found has changed, so that whoever writes last has seen every booklet that was in place by then; who
 * places one later writes later. Returns the plans that cannot be read.
 */
export function writeCatalogue(world: World, out: string): readonly string[] {
  for (const name of ["index.md", "index.html"]) tidyFile(world, join(out, name));
  let [markdown, page] = ["", ""];
  for (let time = 0; ; time += 1) {
    const { entries, skipped } = findEntries(world, out);
    const [md, html] = [catalogueMarkdown(entries), cataloguePage(entries, sketches(world, out, entries))];
    if ((md === markdown && html === page) || time === TIMES) return skipped;
    placeFile(world, join(out, "index.md"), md);
    placeFile(world, join(out, "index.html"), html);
    [markdown, page] = [md, html];
  }
}

/** A picture for a list is a few kilobytes. */
const LARGEST_PICTURE = 64 * 1024;

/** The pictures of those garments that the page opens with, as lines, by folder. */
function sketches(world: World, out: string, entries: readonly Entry[]): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { folder, picture } of entries.slice(0, FIRST)) {
    if (picture !== PICTURE) continue;
    const text = readText(world, join(out, folder, picture), "picture", "", LARGEST_PICTURE);
    const sketch = typeof text === "string" ? sketchOf(text) : undefined;
    if (sketch !== undefined) found.set(folder, sketch);
  }
  return found;
}
