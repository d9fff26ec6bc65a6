/** Brings the measures of an older recipe to the format that this program reads; the file stays as it is. */
import { FORMAT } from "../measures.ts";
import type { Message } from "../message.ts";
import { type Block, emptyBlock, type Node } from "../node.ts";
import { messageOf, type Problem } from "../problem.ts";
import type { Places, Tree } from "../tree-type.ts";
import { STEPS, type Step } from "./steps.ts";

/**
 * The tree of an older format, changed step by step, with a note that says so. A tree of this format, of a newer one, or
 * without a number, comes back as it is: what is wrong with its number is told where numbers are read.
 */
export function migrated(tree: Tree, steps: readonly Step[] = STEPS, format = Number(FORMAT)): Tree {
  const written = tree.root?.recipe;
  if (!tree.root || typeof written !== "string" || !/^[1-9]\d{0,3}$/.test(written.trim())) return tree;
  const from = Number(written);
  const needed = steps.filter((step) => step.from >= from && step.from < format);
  if (from >= format || needed.length !== format - from) return tree;
  const root = copied(tree.root) as Block;
  let { places } = tree;
  for (const step of needed) {
    step.change(root, (before, after) => {
      places = movedPlaces(places, before, after);
    });
  }
  root.recipe = String(format);
  return { ...tree, root, places, messages: [...tree.messages, note(tree, from, format, needed)] };
}

/** The step changes a copy: what was read stays as it was read. */
function copied(node: Node): Node {
  if (typeof node === "string") return node;
  if (Array.isArray(node)) return node.map(copied);
  const block = emptyBlock();
  for (const [key, inner] of Object.entries(node)) block[key] = copied(inner);
  return block;
}

function movedPlaces(
  places: ReadonlyMap<string, Places>,
  before: string,
  after: string,
): ReadonlyMap<string, Places> {
  const moved = new Map<string, Places>();
  for (const [path, place] of places) {
    const goes = path === before || path.startsWith(`${before}.`);
    moved.set(goes ? after + path.slice(before.length) : path, place);
  }
  return moved;
}

function note({ places }: Tree, from: number, format: number, steps: readonly Step[]): Message {
  const place = places.get("recipe")?.value ?? { file: "recipe.md", line: 1, column: 1, length: 1 };
  const problem: Problem = {
    code: "older-format",
    text: `this recipe is of format ${from} and was read as format ${format}: ${steps.map(({ about }) => about).join("; ")}`,
    hint: `write it so, with recipe: ${format}, when you next change it`,
  };
  return messageOf(problem, "recipe", place, "note");
}
