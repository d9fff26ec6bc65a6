/** Lays a size over the recipe it is a size of: one tree, in which every value keeps the place where it was written. */
import { type Block, emptyBlock, type Node, within } from "../node.ts";
import { LAID, SHORT } from "../schema/sizes.ts";
import type { Places, Tree } from "../tree-type.ts";

/** Of keys that exclude each other, one written in a size takes the recipe's other ones out. */
const INSTEAD: readonly (readonly [written: string, instead: readonly string[]])[] = [
  ["wearer.waist-to-floor", ["wearer.waist-height"]],
  ["wearer.waist-height", ["wearer.waist-to-floor"]],
  ["wearer.waist-to-floor.side", ["wearer.waist-to-floor.left", "wearer.waist-to-floor.right"]],
  ["wearer.waist-to-floor.left", ["wearer.waist-to-floor.side"]],
  ["wearer.waist-to-floor.right", ["wearer.waist-to-floor.side"]],
  ["cloth.thickness", ["cloth.ten-layers"]],
  ["cloth.ten-layers", ["cloth.thickness"]],
  ["skirt.breadths", ["skirt.round"]],
  ["skirt.round", ["skirt.breadths"]],
  ["fullness.method", ["fullness.zones"]],
  ["fullness.zones", ["fullness.method", "fullness.gauged-back", "fullness.flat-front"]],
  ["attach.opening.at", ["attach.opening.from-centre"]],
];

/** Where a size's key stands in the recipe: `waist` is `wearer.waist`. */
const homeOf = (key: string): string =>
  (SHORT as readonly string[]).includes(key) ? within("wearer", key) : key;

const isKey = (key: string): boolean => [...SHORT, ...LAID].some((known) => known === key);

/** The recipe without its sizes: what every size is laid over. */
export function baseOf(tree: Tree): Tree {
  if (!tree.root) return tree;
  const root = Object.assign(emptyBlock(), tree.root);
  delete root.sizes;
  const places = new Map([...tree.places].filter(([path]) => path !== "sizes" && !path.startsWith("sizes.")));
  return { ...tree, root, places };
}

/**
 * The recipe as it is in one size. Blocks are gone into key by key; texts and lists take the place of the recipe's.
 *
 * @param tree the whole front matter
 * @param at which entry of `sizes`, from 0; keys that are no size's are passed over
 */
export function laidOver(tree: Tree, at: number): Tree {
  const base = baseOf(tree);
  if (!base.root) return base;
  const from = `sizes.${at}`;
  const places = new Map(base.places);
  const entry = ((tree.root?.sizes ?? []) as readonly Node[])[at];
  const size = isBlock(entry) ? entry : emptyBlock();

  const written = new Map<string, Places>();
  for (const [path, place] of tree.places) {
    if (!path.startsWith(`${from}.`)) continue;
    const own = path.slice(from.length + 1);
    const [key = ""] = own.split(".");
    if (isKey(key)) written.set(homeOf(own.slice(0, key.length)) + own.slice(key.length), place);
  }
  let root: Block = base.root;
  for (const [path, instead] of INSTEAD) {
    if (!written.has(path)) continue;
    for (const other of instead) {
      if (written.has(other)) continue;
      root = without(root, other.split("."));
      for (const known of [...places.keys()])
        if (known === other || known.startsWith(`${other}.`)) places.delete(known);
    }
  }
  const short = emptyBlock();
  const over = emptyBlock();
  for (const [key, node] of Object.entries(size)) {
    if ((SHORT as readonly string[]).includes(key)) short[key] = node;
    else if (isKey(key)) over[key] = node;
  }
  if (Object.keys(short).length > 0) over.wearer = short;
  // The insides of a list or text that is replaced go with it.
  for (const path of replaced(root, over, ""))
    for (const known of [...places.keys()]) if (known.startsWith(`${path}.`)) places.delete(known);
  for (const [path, place] of written) places.set(path, place);
  const entryPlace = tree.places.get(from);
  // Only where the size has measures of hers: else the recipe has no wearer, and that is to be told.
  if (over.wearer !== undefined && !places.has("wearer") && entryPlace) places.set("wearer", entryPlace);
  return { ...base, root: merged(root, over), places };
}

const isBlock = (node: Node | undefined): node is Block =>
  typeof node === "object" && !Array.isArray(node) && node !== null;

function merged(base: Block, over: Block): Block {
  const out = Object.assign(emptyBlock(), base);
  for (const [key, node] of Object.entries(over)) {
    const there = out[key];
    out[key] = isBlock(node) && isBlock(there) ? merged(there, node) : node;
  }
  return out;
}

/** Everything of `base` that something of another kind, a text or a list takes the place of, by path. */
function* replaced(base: Block, over: Block, path: string): Generator<string> {
  for (const [key, node] of Object.entries(over)) {
    const inner = within(path, key);
    const there = base[key];
    if (isBlock(node) && isBlock(there)) yield* replaced(there, node, inner);
    else if (there !== undefined) yield inner;
  }
}

/** A block without what stands at a path. */
function without(block: Block, [step, ...rest]: readonly string[]): Block {
  if (step === undefined || block[step] === undefined) return block;
  const out = Object.assign(emptyBlock(), block);
  const inner = out[step];
  if (rest.length === 0) delete out[step];
  else if (isBlock(inner)) out[step] = without(inner, rest);
  return out;
}
