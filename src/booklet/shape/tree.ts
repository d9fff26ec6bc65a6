/**
 * A chapter's shape: its Markdown parsed once, before anything is known of the garment, with the choices, lists and
 * values of its template at their places. Plain data. Filling it gives the HTML nodes that parsing the rendered Markdown
 * would give, without parsing.
 */
import type { Expression } from "../template/tree.ts";

/** Attributes as HTML nodes have them. */
export type Attributes = Readonly<Record<string, string | number | boolean | readonly (string | number)[]>>;

export type ShapeNode =
  | string
  /** A value printed; `n` tells it from the chapter's other ones. */
  | { readonly print: Expression; readonly n: number }
  | { readonly if: Expression; readonly do: Shape; readonly else: Shape }
  | { readonly each: Expression; readonly do: Shape; readonly else: Shape }
  /** A drawing in the text. */
  | { readonly figure: string }
  | { readonly tag: string; readonly with?: Attributes; readonly in: Shape };

export type Shape = readonly ShapeNode[];
