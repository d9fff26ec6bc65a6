/** Takes a key out with its line; blocks that are left empty go too. */

import type { Edit, Entry, Step } from "./entry.ts";
import { endOfEntry, lineEnd, lineStart, startOf } from "./lines.ts";

/** `way` ends at the key. */
export function removal(text: string, way: readonly Step[]): Edit | undefined {
  const last = way.at(-1);
  if (!last?.entry) return undefined;
  const above = way.at(-2);
  if (last.map.items.length === 1 && above?.entry?.value === last.map) return removal(text, way.slice(0, -1));
  const entries = last.map.items as Entry[];
  return last.map.flow ? inFlow(entries, last.entry) : inBlock(text, entries, last.entry);
}

function inFlow(entries: readonly Entry[], entry: Entry): Edit {
  const i = entries.indexOf(entry);
  const next = entries[i + 1];
  const before = entries[i - 1];
  const from = !next && before ? endOfEntry(before) : startOf(entry);
  return { from, to: next ? startOf(next) : endOfEntry(entry), insert: "" };
}

function inBlock(text: string, entries: readonly Entry[], entry: Entry): Edit | undefined {
  const start = lineStart(text, startOf(entry));
  const end = lineEnd(text, endOfEntry(entry));
  if (text.slice(start, startOf(entry)).trim() === "") {
    const after = /^\r?\n/.exec(text.slice(end))?.[0].length ?? 0;
    return { from: start, to: end + after, insert: "" };
  }
  // It stands behind the dash of a list's entry.
  const next = entries[entries.indexOf(entry) + 1];
  return next && { from: startOf(entry), to: startOf(next), insert: "" };
}
