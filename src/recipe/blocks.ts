/** Declarators for what holds fields: blocks of keys, lists, optional entries. */
import * as v from "valibot";
import type { BlockMeta } from "./meta.ts";

/** A block of keys. Keys not in `entries` are found by structure.ts, which can offer the nearest. */
export function block<const Entries extends v.ObjectEntries>(
  about: string,
  entries: Entries,
  options: Omit<BlockMeta, "about"> = {},
) {
  const meta: BlockMeta = { about, ...options };
  return v.pipe(v.object(entries), v.metadata({ block: meta }));
}

/** A list of entries of one shape, one at least. */
export function list<const Item extends v.GenericSchema>(
  about: string,
  item: Item,
  options: Omit<BlockMeta, "about"> & { readonly most: number },
) {
  const meta: BlockMeta = { about, ...options };
  return v.pipe(v.array(item), v.metadata({ block: meta }));
}

/** An entry that may be left out. */
export const optional = v.exactOptional;
