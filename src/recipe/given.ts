/** What a recipe gives and what defaults fill in: the measures, and the choices. */
import { div, plain, type Quantity } from "../quantity/quantity.ts";
import { holds, textAt } from "./defaults.ts";
import { type AnySchema, type FieldMeta, MEASURES, shapeOf } from "./meta.ts";
import { type Block, type Node, within } from "./node.ts";
import type { Field, Given, Recipe } from "./recipe.ts";
import { type Filled, FRONT_MATTER } from "./schema/recipe.ts";

export interface GivenAndChosen {
  readonly given: readonly Given[];
  readonly fields: Recipe["fields"];
  readonly chosenByDefault: Recipe["chosenByDefault"];
}

interface Leaf {
  readonly path: string;
  readonly text: string;
  readonly value: unknown;
  readonly meta: FieldMeta;
}

/** Every field of the filled tree with its value, in the order of the reference. */
function* leaves(schema: AnySchema, node: Node | undefined, value: unknown, path: string): Generator<Leaf> {
  const shape = shapeOf(schema);
  if (node === undefined || (shape.is !== "field" && shape.meta.apart)) return;
  if (shape.is === "field") yield { path, text: (node as string).trim(), value, meta: shape.meta };
  else if (shape.is === "list") {
    for (const [i, item] of (node as readonly Node[]).entries()) {
      yield* leaves(shape.item, item, (value as readonly unknown[])[i], within(path, i));
    }
  } else {
    for (const [key, entry] of Object.entries(shape.entries)) {
      const inner = (value as Readonly<Record<string, unknown>>)[key];
      yield* leaves(entry, (node as Block)[key], inner, within(path, key));
    }
  }
}

/**
 * Lists the measures (defaults included, in the order of the reference) and the choices that were made by default.
 *
 * A default is listed where it has an effect: no gauged back for a skirt gauged all round. One length for both sides is
 * listed as left and right; a thickness measured over ten layers is listed for one layer too.
 */
export function listGiven(root: Block, filled: Filled, written: (path: string) => boolean): GivenAndChosen {
  const given: Given[] = [];
  const chosen: { path: string; text: string }[] = [];
  const fields: Field[] = [];
  for (const { path, text, value, meta } of leaves(FRONT_MATTER, root, filled, "")) {
    const source = written(path) ? "recipe" : "default";
    if (source === "default" && meta.when && !holds(root, meta.when)) continue;
    if (MEASURES.has(meta.kind) && source === "recipe") fields.push({ path, text });
    if (MEASURES.has(meta.kind)) given.push(...asGiven(path, value as Quantity, source, text));
    else if (source === "default") chosen.push({ path, text: textAt(root, path) ?? text });
  }
  return { given, chosenByDefault: chosen, fields };
}

export const SIDE = "wearer.waist-to-floor.side";
export const SIDES = ["wearer.waist-to-floor.left", "wearer.waist-to-floor.right"] as const;
const TEN_LAYERS = "cloth.ten-layers";

/** One layer out of ten. */
export const aTenth = (q: Quantity): Quantity => div(q, plain(10n));

function asGiven(path: string, quantity: Quantity, source: Given["source"], text: string): Given[] {
  if (path === SIDE) return SIDES.map((side) => ({ path: side, quantity, source, text }));
  const one: Given = { path, quantity, source, text };
  if (path !== TEN_LAYERS) return [one];
  return [one, { path: "cloth.thickness", quantity: aTenth(quantity), source, text: `a tenth of ${text}` }];
}
