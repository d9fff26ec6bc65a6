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
  transform: "transform",
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

/** Every coordinate is cut here, to hundredths of a unit: an eighth of a hair's breadth where a picture is printed a hand wide. */
const PARTS = 100;
const cut = (n: number): number => Math.round(n * PARTS);

/** Coordinates as they are written, by their hundredths: pages of figures have tens of thousands, and few different ones. */
const LONGEST = 40_000;
const SHORT: (string | undefined)[] = new Array(LONGEST);

/** Hundredths as a decimal fraction: no nought before the point, none at the end. */
function short(parts: number): string {
  if (parts < 0) return `-${short(-parts)}`;
  if (parts >= LONGEST) return spelt(parts);
  let text = SHORT[parts];
  if (text === undefined) {
    text = spelt(parts);
    SHORT[parts] = text;
  }
  return text;
}

function spelt(parts: number): string {
  const rest = parts % PARTS;
  const whole = (parts - rest) / PARTS;
  if (rest === 0) return String(whole);
  const digits = rest % 10 === 0 ? String(rest / 10) : rest < 10 ? `0${rest}` : String(rest);
  return `${whole === 0 ? "" : whole}.${digits}`;
}

/** A coordinate as it is written: two decimals at most, no nought before the point, never -0. */
export const written = (n: number): string => short(cut(n));

/** One element; numbers among its attributes are written as coordinates. Text children are escaped by whoever writes it out. */
export function el(
  tagName: string,
  attributes: Attributes = {},
  children: readonly (ElementContent | string)[] = [],
): Element {
  const properties: Record<string, string | string[]> = {};
  for (const name in attributes) {
    const value = attributes[name as keyof Attributes];
    if (value !== undefined) properties[name] = typeof value === "number" ? written(value) : value;
  }
  return {
    type: "element",
    tagName,
    properties,
    children: children.map((child) =>
      typeof child === "string" ? { type: "text" as const, value: child } : child,
    ),
  };
}

/**
 * Path data through points, closed if wished: from the first point on as steps, each the difference of two cut
 * coordinates, so that no error adds up. Level and upright steps are written as such.
 */
export function through(points: readonly Point[], closed = false): string {
  let path = "";
  let [x, y] = [0, 0];
  for (const [i, point] of points.entries()) {
    const [right, down] = [cut(point.x) - x, cut(point.y) - y];
    if (i === 0) path += `M${pair(right, down)}`;
    else if (down === 0) path += `h${short(right)}`;
    else if (right === 0) path += `v${short(down)}`;
    else path += `l${pair(right, down)}`;
    x += right;
    y += down;
  }
  return closed ? `${path}z` : path;
}

const pair = (right: number, down: number): string => `${short(right)}${down < 0 ? "" : " "}${short(down)}`;

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
