/** A figure: a drawing with a title and a description in words. */
import type { Element } from "hast";

/** In the order of the booklet. */
export const FIGURE_NAMES = [
  "finished",
  "evidence",
  "layout",
  "layout-lining",
  "layout-interlining",
  "breadths",
  "map",
  "step-pocket",
  "step-placket",
  "lining",
  "hem",
  "balance",
  "step-turn",
  "edge",
  "step-point",
  "gauging",
  "step-needle",
  "step-rows",
  "pleats",
  "drawn-up",
  "waist-ring",
  "step-pins",
  "step-draw",
  "step-even",
  "whipping",
  "step-whip",
  "step-cord",
  "step-hooks",
  "dog-leg",
  "faults",
  "range",
] as const;

export type FigureName = (typeof FIGURE_NAMES)[number];

export interface Figure {
  readonly name: string;
  readonly title: string;
  /** What the drawing shows, in words and in this garment's numbers. */
  readonly description: string;
  /** An `svg` element with a title and a desc; it stands alone or inside a page, in the colour of the text round it. */
  readonly svg: Element;
}
