/** A note of the maker's own as a section of the page. */
import type { Element } from "hast";
import { textOf } from "../shape.ts";

/** A shaped section, marked as the maker's own; one without a heading is named in words, since nothing in it names it. */
export function asNote(section: Element): Element {
  const { ariaLabelledBy, ...rest } = section.properties;
  const titled = section.children.some((node) => node.type === "element" && node.tagName === "h2");
  const named = titled ? { ariaLabelledBy } : { ariaLabel: "A note" };
  return { ...section, properties: { ...rest, className: ["chapter", "note"], ...named } };
}

/** The title that a section is listed by; undefined for a note without a heading. */
export function titleOf(section: Element): string | undefined {
  const heading = section.children.find((node) => node.type === "element" && node.tagName === "h2");
  return heading ? textOf([heading]).trim() : undefined;
}
