/** Builds HTML nodes. */
import type { Element, ElementContent, Properties } from "hast";

/** One element; texts among the children are made text nodes, empty ones are left out. */
export function html(
  tagName: string,
  properties: Properties = {},
  children: readonly (ElementContent | string)[] = [],
): Element {
  return {
    type: "element",
    tagName,
    properties,
    children: children
      .filter((child) => child !== "")
      .map((child) => (typeof child === "string" ? { type: "text" as const, value: child } : child)),
  };
}
