/** A recipe with sizes: the recipe of every size, each with its own messages. */

import { block, optional } from "../blocks.ts";
import { textAt } from "../defaults.ts";
import { inFileOrder, type ReadRecipe, recipeFromTree } from "../from-tree.ts";
import type { Message, Place } from "../message.ts";
import { type Block, emptyBlock, type Node } from "../node.ts";
import { hasField, problemAt } from "../one-field.ts";
import { messageOf } from "../problem.ts";
import type { EvidenceText, Recipe } from "../recipe.ts";
import { SIZES } from "../schema/sizes.ts";
import { structure } from "../structure.ts";
import type { Tree } from "../tree-type.ts";
import { baseOf, laidOver } from "./lay.ts";
import { namesOf } from "./names.ts";
import { ofAllSizes, type SaidOfSize } from "./said.ts";

/** Only the list of sizes, whatever else is there. */
const LIST_ONLY = block("a recipe's sizes", { sizes: optional(SIZES) });

/** Are there sizes in this recipe? */
export const hasSizes = (tree: Tree): boolean => tree.places.has("sizes");

/** Reads every size. `recipe` is the recipe without its sizes, or the first of them where that is not whole by itself. */
export function readSizes(
  tree: Tree,
  start: Place,
  body: Recipe["body"],
  evidence?: EvidenceText,
): ReadRecipe {
  const base = recipeFromTree(baseOf(tree), start, body, evidence);
  const list = sizeList(tree, start);
  if (list.messages.length > 0 || list.sizes.length === 0) {
    return { messages: [...list.messages, ...base.messages].sort(inFileOrder) };
  }
  const read = list.sizes.map(({ name, at }) => {
    const found = recipeFromTree(laidOver(tree, at), start, body, evidence, name);
    const entry = tree.places.get(`sizes.${at}.name`)?.value ?? start;
    return { name, entry, ...found };
  });
  const ofSizes = ofAllSizes(ownPlaces(read));
  const messages = [...unreadable(base.messages, tree, ofSizes), ...ofSizes].sort(inFileOrder);
  const isWhole = messages.every(({ level }) => level !== "error");
  const recipe = isWhole ? (base.recipe ?? read[0]?.recipe) : undefined;
  return {
    ...(recipe ? { recipe } : {}),
    sizes: read.map(({ name, recipe: own }) => ({ name, ...(own ? { recipe: own } : {}) })),
    messages,
  };
}

/** Texts of the recipe that cannot be read, though every size has one of its own in their place. */
function unreadable(base: readonly Message[], { root }: Tree, said: readonly Message[]): Message[] {
  return base.filter(({ code, path }) => {
    const text = path === undefined ? undefined : textAt(root ?? emptyBlock(), path);
    if (path === undefined || text === undefined || said.some((other) => other.path === path)) return false;
    return hasField(path) && problemAt(path, text)?.code === code;
  });
}

interface Entry {
  readonly name: string;
  readonly at: number;
}

function sizeList(tree: Tree, start: Place): { sizes: readonly Entry[]; messages: readonly Message[] } {
  const sizes = tree.root?.sizes;
  // What is unsound in the file itself has been told with the rest.
  if (!tree.root || sizes === undefined) return { sizes: [], messages: [] };
  const shaped = structure({ sizes }, tree.places, start, LIST_ONLY);
  const entries = Array.isArray(sizes) ? (sizes as readonly Node[]) : [];
  const { names, problems } = namesOf(entries.map((entry) => (isBlock(entry) ? entry : undefined)));
  const messages = [
    ...shaped.messages,
    ...problems.map(({ path, problem }) => {
      const places = tree.places.get(path);
      const at = problem.at === undefined ? undefined : places?.from?.(problem.at);
      return messageOf(problem, path, at ?? places?.value ?? start);
    }),
  ];
  return {
    sizes: names.flatMap((name, at) => (name === undefined ? [] : [{ name, at }])),
    messages,
  };
}

const isBlock = (node: Node): node is Block => typeof node === "object" && !Array.isArray(node);

/** What only some sizes lack, and the recipe above them too, is told where the size stands. */
function ownPlaces(sizes: readonly (SaidOfSize & { entry: Place })[]): SaidOfSize[] {
  const isLack = ({ code, path }: Message): boolean =>
    (code === "missing" || code === "no-lengths") && (path ?? "").startsWith("wearer");
  const lacks = ({ messages }: SaidOfSize, { code, path }: Message): boolean =>
    messages.some((other) => other.code === code && other.path === path);
  return sizes.map(({ name, messages, entry }) => ({
    name,
    messages: messages.map((message) =>
      isLack(message) && !sizes.every((size) => lacks(size, message))
        ? { ...message, place: entry }
        : message,
    ),
  }));
}
