/** The schema as a flat list: every key of a recipe with what it means, for lookups and for a reference. */
import { type AnySchema, isOpen, isRequired, MEASURES, type Shape, shapeOf } from "./meta.ts";
import { FRONT_MATTER } from "./schema/recipe.ts";

export interface Key {
  /** The recipe's path; an entry of a list is `*`: `fullness.zones.*.set`. */
  readonly path: string;
  readonly name: string;
  readonly shape: Shape;
  /** Must it be written when its block is? */
  readonly required: boolean;
}

function* keysOf(schema: AnySchema, path: string, fixedToo = false): Generator<Key> {
  const shape = shapeOf(schema);
  if (shape.is === "list") yield* keysOf(shape.item, `${path}.*`, fixedToo);
  if (shape.is !== "block") return;
  for (const [name, entry] of Object.entries(shape.entries)) {
    const inner = path === "" ? name : `${path}.${name}`;
    const found = shapeOf(entry);
    if (!fixedToo && !isOpen(found)) continue;
    yield { path: inner, name, shape: found, required: isRequired(found) };
    yield* keysOf(entry, inner, fixedToo);
  }
}

/** Every key that a recipe may set, in the order of the reference. */
export const KEYS: readonly Key[] = [...keysOf(FRONT_MATTER, "")];

/** What each key and each fixed measure of the program's own means in words, by its path. */
export const MEANINGS: ReadonlyMap<string, string> = new Map(
  [...keysOf(FRONT_MATTER, "", true)].map(({ path, shape }) => [path, shape.meta.about]),
);

/** Every measure that a plan may know, fixed ones too, by its path. Measures of other sizes are not the garment's own. */
export const MEASURE_PATHS: readonly string[] = [...keysOf(FRONT_MATTER, "", true)]
  .filter(
    ({ path, shape }) => shape.is === "field" && MEASURES.has(shape.meta.kind) && !path.startsWith("sizes."),
  )
  .map(({ path }) => path);

/** Blocks other than `besides` that hold a key of this name, for one that stands in the wrong block. */
export function homesOf(name: string, besides: string): readonly string[] {
  const at = (path: string): string => (path.includes(".") ? path.slice(0, path.lastIndexOf(".")) : "");
  return KEYS.filter((key) => key.name === name && at(key.path) !== besides && !key.path.startsWith("sizes"))
    .map((key) => at(key.path))
    .filter((home) => !home.includes("*"));
}
