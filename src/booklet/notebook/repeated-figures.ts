/** A drawing that stands in the page more than once keeps its ids only the first time. */
import type { Element, ElementContent } from "hast";

/** Sections in which every drawing after its first has ids of its own, and so does what refers to them. What needs no change stays the same object. */
export function apart(sections: readonly Element[]): readonly Element[] {
  const drawings = sections.flatMap(drawingsIn);
  return new Set(drawings).size === drawings.length ? sections : parted(sections);
}

/** Ids of the drawings of each section, looked for once. */
const known = new WeakMap<Element, readonly string[]>();

function drawingsIn(section: Element): readonly string[] {
  const before = known.get(section);
  if (before) return before;
  const found: string[] = [];
  const walk = (node: ElementContent): void => {
    if (node.type !== "element") return;
    const id = node.tagName === "figure" ? node.properties.id : undefined;
    if (typeof id === "string") found.push(id);
    else node.children.forEach(walk);
  };
  walk(section);
  known.set(section, found);
  return found;
}

function parted(sections: readonly Element[]): readonly Element[] {
  const seen = new Map<string, number>();
  const walk = <T extends ElementContent>(node: T): T => {
    if (node.type !== "element") return node;
    const id = node.tagName === "figure" ? node.properties.id : undefined;
    if (typeof id !== "string") {
      const children = node.children.map(walk);
      return children.every((child, i) => child === node.children[i]) ? node : { ...node, children };
    }
    const times = (seen.get(id) ?? 0) + 1;
    seen.set(id, times);
    return times === 1 ? node : (renamed(node, idsIn(node), `-${times}`) as T);
  };
  return sections.map(walk);
}

function idsIn(node: ElementContent): Set<string> {
  const ids = new Set<string>();
  const walk = (at: ElementContent): void => {
    if (at.type !== "element") return;
    if (typeof at.properties.id === "string") ids.add(at.properties.id);
    at.children.forEach(walk);
  };
  walk(node);
  return ids;
}

/** References are whole words of an attribute, `#id`, or `url(#id)`. */
function renamed(node: ElementContent, ids: ReadonlySet<string>, tail: string): ElementContent {
  if (node.type !== "element") return node;
  const one = (text: string): string =>
    text.replace(/[^\s#()]+/g, (word) => (ids.has(word) ? `${word}${tail}` : word));
  const properties = Object.fromEntries(
    Object.entries(node.properties).map(([name, value]) => {
      if (Array.isArray(value))
        return [name, value.map((part) => (typeof part === "string" ? one(part) : part))];
      return [name, typeof value === "string" ? one(value) : value];
    }),
  );
  return {
    ...node,
    properties,
    children: node.children.map((child) => renamed(child, ids, tail)) as Element["children"],
  };
}
