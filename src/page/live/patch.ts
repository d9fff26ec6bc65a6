/**
 * Changes a document from one booklet's nodes to another's, touching only what differs, so that focus, scroll and what
 * the page itself has put in stay. What the page put in carries `data-own` and is passed over.
 */
import type { ElementContent } from "hast";
import { attributeName, attributeText, create, type Node } from "./dom.ts";

const isOwn = (node: globalThis.Node): boolean => node instanceof Element && node.hasAttribute("data-own");

/** Changes `element`, which was made of `before`, into `after`. Returns the element that now stands there. */
export function patch(element: Element, before: Node, after: Node): Element {
  if (before === after) return element;
  if (before.tagName !== after.tagName) {
    const made = create(
      element.ownerDocument,
      after,
      element.namespaceURI?.endsWith("svg") ? SVG : "",
    ) as Element;
    element.replaceWith(made);
    return made;
  }
  attributes(element, before, after);
  children(element, before.children, after.children);
  return element;
}

const SVG = "http://www.w3.org/2000/svg";

function attributes(element: Element, before: Node, after: Node): void {
  for (const property of Object.keys(before.properties)) {
    if (attributeText(after.properties[property]) === undefined)
      element.removeAttribute(attributeName(property));
  }
  for (const [property, value] of Object.entries(after.properties)) {
    const text = attributeText(value);
    if (text === undefined || text === attributeText(before.properties[property])) continue;
    element.setAttribute(attributeName(property), text);
    if (property === "value" && element instanceof HTMLInputElement && element !== document.activeElement)
      element.value = text;
  }
}

/** Children side by side while their kinds agree; the rest is made anew. */
function children(
  element: Element,
  before: readonly ElementContent[],
  after: readonly ElementContent[],
): void {
  const there = [...element.childNodes].filter((node) => !isOwn(node));
  const space = element.namespaceURI === SVG ? SVG : "";
  if (there.length !== before.length) {
    for (const node of there) node.remove();
    insert(element, undefined, after, space);
    return;
  }
  let same = 0;
  while (same < before.length && same < after.length && alike(before[same], after[same])) {
    child(there[same] as globalThis.Node, before[same] as ElementContent, after[same] as ElementContent);
    same += 1;
  }
  // What is alike at the end is kept too: an item that goes from the middle of a list takes no other with it.
  let kept = 0;
  const rest = Math.min(before.length, after.length) - same;
  while (kept < rest && alike(before[before.length - 1 - kept], after[after.length - 1 - kept])) kept += 1;
  for (const node of there.slice(same, before.length - kept)) node.remove();
  const next = there[before.length - kept];
  for (let i = 0; i < kept; i += 1) {
    child(
      there[before.length - kept + i] as globalThis.Node,
      before[before.length - kept + i] as ElementContent,
      after[after.length - kept + i] as ElementContent,
    );
  }
  insert(element, next, after.slice(same, after.length - kept), space);
}

function insert(
  element: Element,
  next: globalThis.Node | undefined,
  nodes: readonly ElementContent[],
  space: string,
): void {
  const made = nodes.map((node) => create(element.ownerDocument, node, space));
  if (next?.parentNode === element) for (const node of made) element.insertBefore(node, next);
  else element.append(...made);
}

function alike(a: ElementContent | undefined, b: ElementContent | undefined): boolean {
  if (!a || !b || a.type !== b.type) return false;
  if (a.type !== "element" || b.type !== "element") return true;
  return a.tagName === b.tagName && a.properties.id === b.properties.id;
}

function child(node: globalThis.Node, before: ElementContent, after: ElementContent): void {
  if (after.type === "text") {
    if (before.type !== "text" || before.value !== after.value) node.nodeValue = after.value;
  } else if (after.type === "element" && before.type === "element") patch(node as Element, before, after);
}
