/**
 * Changes a document from one booklet's nodes to another's, touching only what differs, so that focus, scroll and what
 * the page itself has put in stay. What the page put in carries `data-own` and is passed over.
 */
import type { ElementContent } from "hast";
import { type Children, difference, type ElementChange } from "./difference.ts";
import { attributeName, create, type Node } from "./dom.ts";

const SVG = "http://www.w3.org/2000/svg";

const isOwn = (node: globalThis.Node): boolean => node instanceof Element && node.hasAttribute("data-own");

/** Changes `element`, which was made of `before`, into `after`. Returns the element that now stands there. */
export function patch(element: Element, before: Node, after: Node): Element {
  if (before.tagName !== after.tagName) {
    const made = create(
      element.ownerDocument,
      after,
      element.namespaceURI?.endsWith("svg") ? SVG : "",
    ) as Element;
    element.replaceWith(made);
    return made;
  }
  const change = difference(before, after);
  if (change) apply(element, change);
  return element;
}

function apply(element: Element, { attributes, children }: ElementChange): void {
  for (const [property, text] of attributes) {
    if (text === undefined) {
      element.removeAttribute(attributeName(property));
      continue;
    }
    element.setAttribute(attributeName(property), text);
    if (property === "value" && element instanceof HTMLInputElement && element !== document.activeElement)
      element.value = text;
  }
  if (children) applyChildren(element, children);
}

function applyChildren(element: Element, { before, after, head, tail, changed }: Children): void {
  const there = [...element.childNodes].filter((node) => !isOwn(node));
  const space = element.namespaceURI === SVG ? SVG : "";
  // Something else than the page has been at it: it is made anew.
  if (there.length !== before.length) {
    for (const node of there) node.remove();
    insert(element, undefined, after, space);
    return;
  }
  for (const [place, change] of changed) {
    const node = there[place] as globalThis.Node;
    if ("text" in change) node.nodeValue = change.text;
    else if ("anew" in change)
      (node as ChildNode).replaceWith(create(element.ownerDocument, change.anew, space));
    else apply(node as Element, change);
  }
  if (head + tail === before.length && head + tail === after.length) return;
  for (const node of there.slice(head, before.length - tail)) node.remove();
  insert(element, there[before.length - tail], after.slice(head, after.length - tail), space);
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
