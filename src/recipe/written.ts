/** A recipe's tree without a file: as a page carries it, with measures that its reader changes. */
import type { Place } from "./message.ts";
import { type Block, emptyBlock, type Node, within } from "./node.ts";
import type { Places, Tree } from "./tree-type.ts";

/** A tree as plain data: JSON of the front matter, every value a text. */
export type Data = string | readonly Data[] | { readonly [key: string]: Data };

/** Texts by path; null takes a key out. */
export type Changes = Readonly<Record<string, string | null>>;

/** The place of everything that stands in no file. */
export const NOWHERE: Place = { file: "recipe.md", line: 1, column: 1, length: 1 };

function nodeOf(data: Data): Node {
  if (typeof data === "string") return data;
  if (Array.isArray(data)) return data.map(nodeOf);
  const block = emptyBlock();
  for (const [key, value] of Object.entries(data)) block[key] = nodeOf(value);
  return block;
}

/** `data` with texts changed, put in or taken out; blocks that are left empty go too. Paths as in a recipe: `fullness.zones.1.face`. */
export function changed(data: Data, changes: Changes): Data {
  let now = data;
  for (const [path, text] of Object.entries(changes)) now = put(now, path.split("."), text) ?? {};
  return now;
}

function put(
  data: Data | undefined,
  [step, ...rest]: readonly string[],
  text: string | null,
): Data | undefined {
  if (step === undefined) return text ?? undefined;
  if (Array.isArray(data)) {
    return data.map((item: Data, i) => (String(i) === step ? (put(item, rest, text) ?? {}) : item));
  }
  const block: Record<string, Data> = typeof data === "object" ? { ...(data as Record<string, Data>) } : {};
  const inner = put(Object.hasOwn(block, step) ? block[step] : undefined, rest, text);
  if (inner === undefined) delete block[step];
  else block[step] = inner;
  return Object.keys(block).length === 0 ? undefined : block;
}

/** A tree to read a recipe from; every written path has a place, though not one in a file. */
export function treeOf(data: Data): Tree {
  const places = new Map<string, Places>();
  const note = (node: Node, path: string): void => {
    if (path !== "")
      places.set(path, {
        key: NOWHERE,
        value: NOWHERE,
        ...(typeof node === "string" ? { from: () => NOWHERE } : {}),
      });
    if (typeof node === "string") return;
    if (Array.isArray(node)) for (const [i, item] of node.entries()) note(item, within(path, i));
    else for (const [key, inner] of Object.entries(node)) note(inner, within(path, key));
  };
  const root = nodeOf(data);
  note(root, "");
  return { root: root as Block, places, messages: [], brokenFrom: undefined };
}
