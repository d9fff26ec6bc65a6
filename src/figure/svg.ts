/** Builds SVG as hast elements. Coordinates are floats and are written in one place: `written`. */
import type { Element, ElementContent } from "hast";

/** Presentation attributes in use, by their hast name, with the name they have in a file. */
export const ATTRIBUTES = {
  ariaLabelledBy: "aria-labelledby",
  clipPath: "clip-path",
  clipRule: "clip-rule",
  cx: "cx",
  cy: "cy",
  d: "d",
  fill: "fill",
  fillOpacity: "fill-opacity",
  fillRule: "fill-rule",
  fontFamily: "font-family",
  fontSize: "font-size",
  fontWeight: "font-weight",
  height: "height",
  id: "id",
  patternUnits: "patternUnits",
  patternTransform: "patternTransform",
  r: "r",
  role: "role",
  stroke: "stroke",
  strokeDashArray: "stroke-dasharray",
  strokeLineCap: "stroke-linecap",
  strokeLineJoin: "stroke-linejoin",
  strokeWidth: "stroke-width",
  textAnchor: "text-anchor",
  viewBox: "viewBox",
  width: "width",
  x: "x",
  y: "y",
} as const;

export type Attributes = Partial<Record<keyof typeof ATTRIBUTES, string | number | string[]>>;

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A coordinate as it is written: two decimals at most, never -0. */
export function written(n: number): string {
  const cut = Math.round(n * 100) / 100;
  return String(cut === 0 ? 0 : cut);
}

/** One element; numbers among its attributes are written as coordinates. Text children are escaped by whoever writes it out. */
export function el(
  tagName: string,
  attributes: Attributes = {},
  children: readonly (ElementContent | string)[] = [],
): Element {
  const properties = Object.fromEntries(
    Object.entries(attributes).map(([name, value]) => [
      name,
      typeof value === "number" ? written(value) : value,
    ]),
  );
  return {
    type: "element",
    tagName,
    properties,
    children: children.map((child) =>
      typeof child === "string" ? { type: "text" as const, value: child } : child,
    ),
  };
}

/** Path data through points, closed if wished. */
export function through(points: readonly Point[], closed = false): string {
  const steps = points.map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${written(x)} ${written(y)}`);
  return `${steps.join("")}${closed ? "Z" : ""}`;
}

/** Path data of a rectangle. */
export function rectangle(x: number, y: number, width: number, height: number): string {
  return through(
    [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ],
    true,
  );
}

/** Points along an arc of an ellipse, degrees counted clockwise on the page from the right; ends included. */
export function arc(centre: Point, across: number, along: number, from: number, to: number): Point[] {
  const parts = 12;
  return Array.from({ length: parts + 1 }, (_, i) => {
    const angle = ((from + ((to - from) * i) / parts) * Math.PI) / 180;
    return { x: centre.x + across * Math.cos(angle), y: centre.y + along * Math.sin(angle) };
  });
}
