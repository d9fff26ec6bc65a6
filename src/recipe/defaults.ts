/** Fills in what a recipe leaves out, as text: a default is read by the same reader as what a maker writes. */
import { type AnySchema, type FieldMeta, shapeOf, type When } from "./meta.ts";
import { type Block, emptyBlock, type Node } from "./node.ts";

/** The text at a path of a tree; undefined when there is none, or a block. */
export function textAt(root: Block, path: string): string | undefined {
  const node = nodeAt(root, path);
  return typeof node === "string" ? node : undefined;
}

function nodeAt(root: Block, path: string): Node | undefined {
  let node: Node | undefined = root;
  for (const key of path.split(".")) {
    if (typeof node !== "object") return undefined;
    node = (node as Readonly<Record<string, Node>>)[key];
  }
  return node;
}

/** Does a condition hold in this tree? */
export const holds = (root: Block, { path, is }: When): boolean => is.includes(textAt(root, path)?.trim());

/**
 * A copy of the tree with every default that applies written in, in the order of the schema. `show: cm` takes the
 * metric ones. What the recipe gives stays as it is, whatever it is.
 *
 * @param given paths that are written but cannot be read: they get no default
 */
export function fillDefaults(root: Block, schema: AnySchema, given: (path: string) => boolean): Block {
  const unit = textAt(root, "show")?.trim() === "cm" ? "cm" : "in";
  const whole = emptyBlock();

  const standing = (meta: FieldMeta): string | undefined => {
    if (meta.unless !== undefined && given(meta.unless)) return undefined;
    if (meta.sameAs !== undefined) return textAt(whole, meta.sameAs);
    return meta.byDefault?.find((candidate) => !candidate.when || holds(whole, candidate.when))?.[unit];
  };

  const fill = (block: Block, schema: AnySchema, path: string, into: Block): Block => {
    const shape = shapeOf(schema);
    if (shape.is !== "block") return block;
    for (const [key, entry] of Object.entries(shape.entries)) {
      const inner = path === "" ? key : `${path}.${key}`;
      const filled = value(block[key], entry, inner, (made) => {
        into[key] = made;
      });
      if (filled !== undefined) into[key] = filled;
    }
    return into;
  };

  /** `put` places a block in the whole before it is filled, so that conditions see what is already there. */
  const value = (
    node: Node | undefined,
    schema: AnySchema,
    path: string,
    put: (made: Block) => void,
  ): Node | undefined => {
    const shape = shapeOf(schema);
    if (node === undefined && given(path)) return undefined;
    if (shape.is === "field") return node ?? standing(shape.meta);
    if (shape.is === "list") {
      if (!Array.isArray(node)) return undefined;
      return node.map((item: Node, i) => fill(item as Block, shape.item, `${path}.${i}`, emptyBlock()));
    }
    const { always, alwaysWhen } = shape.meta;
    if (node === undefined && !always && !(alwaysWhen && holds(whole, alwaysWhen))) return undefined;
    const made = emptyBlock();
    put(made);
    return fill((node ?? emptyBlock()) as Block, schema, path, made);
  };

  return fill(root, schema, "", whole);
}
