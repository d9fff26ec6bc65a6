/** A guide: one page drawn at true size, to be printed, measured and cut out. */
import type { Element } from "hast";

export interface Guide {
  /** `guide-1`, `guide-2` …: its file's name and, in the page, its anchor. */
  readonly name: string;
  /** What is on the page. */
  readonly title: string;
  /** What is on it and in which size, in words. */
  readonly description: string;
  /** Draws the page: an `svg` element of `SHEET` millimetres, one unit of the drawing a millimetre. */
  draw(): Element;
}

/** Something that is cut out of a page, or stands on it to be read. Lengths in millimetres of the page. */
export interface Cut {
  /** What it belongs to, as the page's title names it. */
  readonly group: string;
  readonly height: number;
  /** Never stands alone at the foot of a page: the next piece belongs to it. */
  readonly leads?: boolean;
  /** What it shows, for the page's description. */
  readonly words: string;
  /** Draws it with its upper edge at `top`. */
  draw(top: number): readonly Element[];
}
