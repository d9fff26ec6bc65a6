/** Gives a chapter its shape: a section with its name, cautions as notes with their signal word, steps as steps. */
import type { Element, ElementContent } from "hast";

/** Plain text of nodes. */
export function textOf(nodes: readonly ElementContent[]): string {
  return nodes
    .map((node) => (node.type === "text" ? node.value : node.type === "element" ? textOf(node.children) : ""))
    .join("");
}

const SIGNALS = /^\s*(WARNING|CAUTION|NOTICE)\b/;

function caution(node: Element): Element | undefined {
  const signal = node.tagName === "blockquote" ? SIGNALS.exec(textOf(node.children))?.[1] : undefined;
  if (!signal) return undefined;
  return {
    ...node,
    tagName: "div",
    properties: { className: ["caution", `caution-${signal.toLowerCase()}`], role: "note" },
  };
}

/** A wide table scrolls inside its own frame, reachable by keyboard. */
function framed(table: Element, label: string): Element {
  return {
    type: "element",
    tagName: "section",
    properties: { className: ["table"], ariaLabel: label, tabIndex: 0 },
    children: [scoped(table)],
  };
}

/** Head cells of a table say that they head their column. */
function scoped(node: Element): Element {
  const children = node.children.map((child) => (child.type === "element" ? scoped(child) : child));
  if (node.tagName !== "th") return { ...node, children };
  if (textOf(node.children).trim() === "") return { ...node, tagName: "td", children };
  return { ...node, properties: { ...node.properties, scope: "col" }, children };
}

const PART_CLASSES: Record<string, string> = {
  Steps: "steps",
  "Now you should see": "result",
  "If not": "remedy",
};

/** Wraps a chapter's nodes in its section. Headings get ids from the chapter and their place in it. */
export function shapeChapter(name: string, nodes: readonly ElementContent[]): Element {
  let part = "";
  let parts = 0;
  let tables = 0;
  const title = textOf(nodes.filter((node) => node.type === "element" && node.tagName === "h2"));
  const children = nodes.map((node): ElementContent => {
    if (node.type !== "element") return node;
    const note = caution(node);
    if (note) return note;
    if (node.tagName === "h2") return { ...node, properties: { ...node.properties, id: `${name}-title` } };
    if (node.tagName === "h3") {
      part = textOf(node.children).trim();
      parts += 1;
      return { ...node, properties: { ...node.properties, id: `${name}-${parts}` } };
    }
    if (node.tagName === "table") {
      tables += 1;
      return framed(node, `${title || name}, table ${tables}`);
    }
    const className = PART_CLASSES[part];
    if (className && (node.tagName === "ol" || node.tagName === "ul")) {
      return { ...node, properties: { ...node.properties, className: [className] } };
    }
    return node;
  });
  return {
    type: "element",
    tagName: "section",
    properties: { id: name, className: ["chapter"], ariaLabelledBy: [`${name}-title`] },
    children,
  };
}
