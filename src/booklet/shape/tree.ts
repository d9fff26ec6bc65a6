/**
 * A chapter's shape: its Markdown parsed once, before anything is known of the garment, with the choices, lists and
 * values of its template at their places. Plain data. Filling it gives the HTML nodes that parsing the rendered Markdown
 * would give, without parsing.
 */
import type { Expression } from "../template/tree.ts";

/** Attributes as HTML nodes have them. */
export type Attributes = Readonly<Record<string, string | number | boolean | readonly (string | number)[]>>;

/** Drawings to look at, and pages at true size. */
export type Folder = "figures" | "guides";

export type ShapeNode =
  | string
  /** A value printed; `n` tells it from the chapter's other ones. */
  | { readonly print: Expression; readonly n: number }
  | { readonly if: Expression; readonly do: Shape; readonly else: Shape }
  | { readonly each: Expression; readonly do: Shape; readonly else: Shape }
  /** A drawing in the text, by the folder of its file and its name. */
  | { readonly drawing: Folder; readonly name: Expression }
  | { readonly tag: string; readonly with?: Attributes; readonly in: Shape };

export type Shape = readonly ShapeNode[];
