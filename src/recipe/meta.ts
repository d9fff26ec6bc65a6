/**
 * What the schema says of each key beside how to read it: its meaning, kind, default, limits and an example.
 * The reference for makers and a JSON Schema can be generated from this alone.
 */
import * as v from "valibot";

export type Kind =
  | "length"
  | "number"
  | "share"
  | "weight"
  | "rate"
  | "version"
  | "year"
  | "text"
  | "choice"
  | "flag"
  | "money"
  | "price"
  | "currency";

/** Kinds whose values are quantities: these are the measures of a recipe. */
export const MEASURES: ReadonlySet<Kind> = new Set<Kind>([
  "length",
  "number",
  "share",
  "weight",
  "rate",
  "money",
  "price",
]);

/** Holds when the value at `path`, as text, is one of these; undefined stands for "not given". */
export interface When {
  readonly path: string;
  readonly is: readonly (string | undefined)[];
}

/** A default as it would be written, with `show: in` and with `show: cm`. */
export interface Default {
  readonly in: string;
  readonly cm: string;
  readonly when?: When;
}

/** Limits as they would be written, in the field's own kind. */
export interface Limits {
  /** The value must be more than this. */
  readonly above?: string;
  readonly least?: string;
  readonly most?: string;
  /** Only wholes, or only wholes and halves. */
  readonly step?: "whole" | "half";
}

export interface FieldMeta extends Limits {
  readonly kind: Kind;
  /** The key's meaning in words. */
  readonly about: string;
  readonly example: string;
  /** The first whose `when` holds is used. */
  readonly byDefault?: readonly Default[];
  /** The default is whatever stands at this path. */
  readonly sameAs?: string;
  /** There is no default when this path is given. */
  readonly unless?: string;
  /** The value has an effect only then; a default is listed only then. */
  readonly when?: When;
  /** No key of the recipe: a measure of the program's own that is listed with the defaults. */
  readonly fixed?: true;
  readonly options?: readonly string[];
}

export interface BlockMeta {
  readonly about: string;
  /** Its defaults hold even when the block is not written. */
  readonly always?: true;
  /** Its defaults hold, even when it is not written, where this does. */
  readonly alwaysWhen?: When;
  /** Its measures are not the garment's own (other sizes), so they are not listed as given. */
  readonly apart?: true;
  /** Of a list: how many entries at most. */
  readonly most?: number;
  /** Only these keys are the block's own; the others are laid over the recipe, and what is under them is read there. */
  readonly own?: readonly string[];
  /** Any keys of that block of the recipe may stand here. */
  readonly anyOf?: string;
}

export type AnySchema = v.GenericSchema<unknown, unknown>;

/** One schema, seen for what it is: a block of keys, a list, or a field that is one text. */
export type Shape =
  | {
      readonly is: "block";
      readonly entries: Readonly<Record<string, AnySchema>>;
      readonly meta: BlockMeta;
      readonly optional: boolean;
    }
  | { readonly is: "list"; readonly item: AnySchema; readonly meta: BlockMeta; readonly optional: boolean }
  | { readonly is: "field"; readonly meta: FieldMeta; readonly optional: boolean };

/** What valibot's schema objects hold, as far as it is used here. */
interface Inside {
  readonly type: string;
  readonly wrapped?: AnySchema;
  readonly entries?: Readonly<Record<string, AnySchema>>;
  readonly item?: AnySchema;
}

/** Looks at a schema made by the declarators of fields.ts and blocks.ts. */
export function shapeOf(schema: AnySchema): Shape {
  const outer = schema as unknown as Inside;
  const optional = outer.type === "exact_optional";
  const inner = (optional ? outer.wrapped : schema) as AnySchema;
  const { entries, item } = inner as unknown as Inside;
  const { field, block } = v.getMetadata(inner) as { field?: FieldMeta; block?: BlockMeta };
  if (block && entries) return { is: "block", entries, meta: block, optional };
  if (block && item) return { is: "list", item, meta: block, optional };
  if (field) return { is: "field", meta: field, optional };
  throw new Error(`a schema of type "${outer.type}" carries no meaning`);
}

/** Must the maker write this key? */
export function isRequired(shape: Shape): boolean {
  if (shape.optional) return false;
  if (shape.is === "field") return !shape.meta.byDefault && !shape.meta.sameAs && !shape.meta.fixed;
  return !shape.meta.always;
}

/** Is this a key that a recipe may set? */
export const isOpen = (shape: Shape): boolean => shape.is !== "field" || !shape.meta.fixed;
