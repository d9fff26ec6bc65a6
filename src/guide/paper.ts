/** The part of a page that A4 and Letter have in common, and what is written on it. All lengths in millimetres. */
import type { Element } from "hast";
import { linesOf } from "../figure/lettering.ts";
import { type Attributes, el, written } from "../figure/svg.ts";
import { type Quantity, toFloat } from "../quantity/quantity.ts";

/** A4 (210 x 297) and Letter (215.9 x 279.4) both hold this within margins of 12 mm: one drawing prints on either. */
export const SHEET = { width: 186, height: 254 } as const;

/** Sizes of lettering: 8 point and more on paper. */
export const TEXT = { title: 4.6, heading: 3.6, label: 2.8, small: 2.3, line: 1.3 } as const;

/** A length as a coordinate. Everything before it is exact. */
export const mm = (q: Quantity): number => toFloat(q.value);

/** Widths of lines on a guide; the middle of a line is the place. */
const WIDTHS = { cut: 0.2, edge: 0.7, fine: 0.15, row: 0.1 } as const;

export interface Stroke {
  readonly dash?: string;
  readonly width?: keyof typeof WIDTHS;
}

/** Lines as one path. */
export function lines(d: string, { dash, width = "fine" }: Stroke = {}): Element {
  return el("path", {
    d,
    fill: "none",
    stroke: "currentColor",
    strokeWidth: WIDTHS[width],
    ...(dash ? { strokeDashArray: dash } : {}),
  });
}

/** Dots as one path: no length, round ends. */
export const dots = (d: string, size: number): Element =>
  el("path", { d, fill: "none", stroke: "currentColor", strokeWidth: size, strokeLineCap: "round" });

export const upright = (x: number, from: number, to: number): string =>
  `M${written(x)} ${written(from)}V${written(to)}`;

export const level = (y: number, from: number, to: number): string =>
  `M${written(from)} ${written(y)}H${written(to)}`;

export interface Words {
  readonly size?: number;
  readonly bold?: boolean;
  readonly anchor?: "start" | "middle" | "end";
}

/** One line of lettering; `y` is the foot of its letters. */
export function words(x: number, y: number, text: string, { size, bold, anchor }: Words = {}): Element {
  const attributes: Attributes = {
    x,
    y,
    ...(size === undefined ? {} : { fontSize: size }),
    ...(bold ? { fontWeight: "bold" } : {}),
    ...(anchor === undefined || anchor === "start" ? {} : { textAnchor: anchor }),
  };
  return el("text", attributes, [text]);
}

/** A paragraph: its height before it is drawn, and its lines. */
export function paragraph(
  text: string,
  width: number,
  { size = TEXT.label, bold = false }: { readonly size?: number; readonly bold?: boolean } = {},
) {
  const broken = linesOf(text, width, size, bold);
  const step = size * TEXT.line;
  return {
    height: broken.length * step,
    draw: (x: number, top: number): Element[] =>
      broken.map((line, i) => words(x, top + (i + 0.8) * step, line, { size, bold })),
  };
}
