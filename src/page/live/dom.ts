/** HTML nodes as the document's own elements. */
import type { ElementContent, Element as Node, Properties } from "hast";
import { ATTRIBUTES } from "../../figure/svg.ts";

const SVG = "http://www.w3.org/2000/svg";

const HTML_NAMES: Readonly<Record<string, string>> = {
  className: "class",
  htmlFor: "for",
  spellCheck: "spellcheck",
};

/** An attribute's name in a document: `className` is class, `dataName` is data-name, `ariaLabel` is aria-label. */
export function attributeName(property: string): string {
  const known = HTML_NAMES[property] ?? (ATTRIBUTES as Readonly<Record<string, string>>)[property];
  if (known !== undefined) return known;
  if (/^aria[A-Z]/.test(property)) return `aria-${property.slice(4).toLowerCase()}`;
  if (/^data[A-Z]/.test(property)) return property.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  return property === "viewBox" || property.startsWith("pattern") ? property : property.toLowerCase();
}

/** An attribute's text; undefined where it is not there. */
export function attributeText(value: Properties[string]): string | undefined {
  if (value === undefined || value === null || value === false) return undefined;
  if (value === true) return "";
  return Array.isArray(value) ? value.join(" ") : String(value);
}

/** Makes what a node describes. */
export function create(document: Document, node: ElementContent, within = ""): globalThis.Node {
  if (node.type === "text") return document.createTextNode(node.value);
  if (node.type !== "element") return document.createTextNode("");
  const space = node.tagName === "svg" ? SVG : within;
  const made =
    space === "" ? document.createElement(node.tagName) : document.createElementNS(space, node.tagName);
  for (const [property, value] of Object.entries(node.properties)) {
    const text = attributeText(value);
    if (text !== undefined) made.setAttribute(attributeName(property), text);
  }
  made.append(...node.children.map((child) => create(document, child, space)));
  return made;
}

export type { Node };
