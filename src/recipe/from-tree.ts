/** A recipe's tree -> the typed recipe, and everything that is wrong with it. The same for a file and for a page's fields. */
import { buildRecipe } from "./build.ts";
import { checkRules } from "./check/check.ts";
import { fillDefaults } from "./defaults.ts";
import { type ReadEvidence, readEvidence } from "./evidence.ts";
import { listGiven, SIDE, SIDES } from "./given.ts";
import type { Message, Place } from "./message.ts";
import { migrated } from "./migrate/migrate.ts";
import { type Block, emptyBlock } from "./node.ts";
import { messageOf, type Problem } from "./problem.ts";
import type { EvidenceText, Recipe } from "./recipe.ts";
import { type Filled, FRONT_MATTER } from "./schema/recipe.ts";
import { structure } from "./structure.ts";
import type { Places, Tree } from "./tree-type.ts";
import { readValues } from "./values.ts";

export interface ReadRecipe {
  /** Absent when there is an error. */
  readonly recipe?: Recipe;
  /** The sizes, where the recipe has a list of them; `recipe` is then the recipe without them, or the first where that is not whole by itself. */
  readonly sizes?: readonly { readonly name: string; readonly recipe?: Recipe }[];
  /** In the order of the file. Every error that can be found without solving is found, not only the first. */
  readonly messages: readonly Message[];
}

/**
 * Makes a recipe of a tree.
 *
 * @param given the front matter, of this format or an older one: texts, lists, blocks, with the places of what is written
 * @param start the place of what is missing from the top
 * @param body what stands below the front matter
 * @param evidence the list of dated originals beside the recipe, if there is one
 * @param size the size's name, where the tree is a recipe with one of its sizes laid over it
 */
export function recipeFromTree(
  given: Tree,
  start: Place,
  body: Recipe["body"],
  evidence?: EvidenceText,
  size?: string,
): ReadRecipe {
  const tree = migrated(given);
  if (!tree.root) return { messages: [...tree.messages].sort(inFileOrder) };
  const shaped = structure(tree.root, tree.places, start);
  const written = (path: string): boolean => tree.places.has(path) || shaped.meant.has(path);
  const base: Block =
    evidence && !written("evidence")
      ? Object.assign(emptyBlock(), shaped.root, { evidence: emptyBlock() })
      : shaped.root;
  const root = fillDefaults(base, FRONT_MATTER, written);
  const values = readValues(root);

  const messages = [...shaped.messages];
  for (const { path, problem } of values.problems) {
    messages.push(messageOf(problem, path, placeOf(tree, path, start, problem)));
  }
  for (const { path, problem, level, atKey } of checkRules(values.partly, written)) {
    const place = atKey ? keyOf(tree, path, start) : placeOf(tree, path, start, problem);
    messages.push(messageOf(problem, path, place, level));
  }
  const keys = values.partly.evidence;
  const list = evidence && readEvidence(evidence.file, evidence.text, keys?.["skip-bad-rows"]);
  const all = [...[...tree.messages, ...sound(messages, tree)].sort(inFileOrder), ...(list?.messages ?? [])];
  if (!values.filled || all.some((message) => message.level === "error")) return { messages: all };
  return {
    recipe: {
      ...buildRecipe(values.filled),
      ...(size === undefined ? {} : { size }),
      ...evidenceOf(values.filled, list),
      ...listGiven(root, values.filled, (path) => tree.places.has(path)),
      written: tree.root,
      ...(evidence ? { list: evidence } : {}),
      places: placesOf(tree),
      body,
    },
    messages: all,
  };
}

function evidenceOf({ evidence }: Filled, list: ReadEvidence | undefined): Pick<Recipe, "evidence"> {
  if (!evidence) return {};
  const { window, "skip-bad-rows": skipBadRows } = evidence;
  return {
    evidence: { window, skipBadRows, skipped: list?.skipped ?? 0, ...(list ? { rows: list.rows } : {}) },
  };
}

/** The nearest written key above a path. */
function nearestWritten(tree: Tree, path: string): { places: Places; isItself: boolean } | undefined {
  for (let at = path; at !== ""; at = at.slice(0, Math.max(0, at.lastIndexOf(".")))) {
    const places = tree.places.get(at);
    if (places) return { places, isItself: at === path };
  }
  return undefined;
}

function placeOf(tree: Tree, path: string, start: Place, { at }: Problem): Place {
  const found = nearestWritten(tree, path);
  if (!found) return start;
  if (!found.isItself) return found.places.key;
  return (at === undefined ? undefined : found.places.from?.(at)) ?? found.places.value;
}

const keyOf = (tree: Tree, path: string, start: Place): Place =>
  nearestWritten(tree, path)?.places.key ?? start;

/** Where the YAML breaks off, only what stands above it can be judged. */
function sound(messages: readonly Message[], { brokenFrom }: Tree): readonly Message[] {
  if (brokenFrom === undefined) return messages;
  return messages.filter(
    ({ code, place }) => !UNCERTAIN.has(code) && place !== undefined && place.line < brokenFrom,
  );
}

/** Codes that say something is not there: below the break it may be. */
const UNCERTAIN = new Set([
  "missing",
  "empty",
  "no-lengths",
  "no-breadths",
  "no-thickness",
  "no-hoop",
  "no-from-centre",
  "no-repeat",
]);

export function inFileOrder(a: Message, b: Message): number {
  const [x, y] = [a.place, b.place];
  return (x?.line ?? 0) - (y?.line ?? 0) || (x?.column ?? 0) - (y?.column ?? 0);
}

/** The recipe's own paths to where they stand: a value's text, a block's key. One length for both sides is both. */
function placesOf(tree: Tree): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>();
  for (const [path, { key, value, from }] of tree.places) places.set(path, from ? value : key);
  const side = places.get(SIDE);
  if (side) for (const path of SIDES) places.set(path, side);
  return places;
}
