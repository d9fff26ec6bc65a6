/** A note of the maker's own as a section of the page. */
import type { Element } from "hast";

/** A shaped section, marked as the maker's own; one without a heading is named in words, since nothing in it names it. */
export function asNote(section: Element): Element {
  const { ariaLabelledBy, ...rest } = section.properties;
  const titled = section.children.some((node) => node.type === "element" && node.tagName === "h2");
  const named = titled ? { ariaLabelledBy } : { ariaLabel: "A note" };
  return { ...section, properties: { ...rest, className: ["chapter", "note"], ...named } };
}
