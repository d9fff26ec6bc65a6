/** Writes the catalogue of a folder from the plan.json files in it, so that it is right whoever built them, and when. */
import { join } from "node:path";
import { placeFile } from "../place.ts";
import type { World } from "../world.ts";
import { findEntries } from "./entry.ts";
import { catalogueMarkdown } from "./markdown.ts";
import { cataloguePage } from "./page.ts";

/** A folder that is built into without end is left after so many times. */
const TIMES = 20;

/**
 * Writes index.md and index.html. Several processes may build into one folder: after writing, each looks again and writes
 * anew if what it found has changed, so that whoever writes last has seen every booklet that was in place by then; who
 * places one later writes later. Returns the plans that cannot be read.
 */
export function writeCatalogue(world: World, out: string): readonly string[] {
  let [markdown, page] = ["", ""];
  for (let time = 0; ; time += 1) {
    const { entries, skipped } = findEntries(world, out);
    const [md, html] = [catalogueMarkdown(entries), cataloguePage(entries)];
    if ((md === markdown && html === page) || time === TIMES) return skipped;
    placeFile(world, join(out, "index.md"), md);
    placeFile(world, join(out, "index.html"), html);
    [markdown, page] = [md, html];
  }
}
