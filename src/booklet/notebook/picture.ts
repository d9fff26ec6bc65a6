/** Photographs in the page: an image with the project's own bytes, in a frame of its own where it stands alone. */
import type { Element, ElementContent } from "hast";

/** What stands in a page for a photograph's path: `data:image/png;base64,…`. */
export type Pictures = ReadonlyMap<string, string>;

/** A picture node as the page shows it; undefined for nodes that are none. Pictures that are not the project's own are left out. */
export function photographOf(node: Element, pictures: Pictures): Element | undefined {
  if (node.tagName === "img") return imageOf(node, pictures);
  if (node.tagName !== "p" || node.children.length !== 1) return undefined;
  const [image] = node.children;
  if (image?.type !== "element" || image.tagName !== "img") return undefined;
  const { title } = image.properties;
  const caption: Element = {
    type: "element",
    tagName: "figcaption",
    properties: {},
    children: [{ type: "text", value: String(title ?? "") }],
  };
  return {
    type: "element",
    tagName: "figure",
    properties: { className: ["photograph"] },
    children: [imageOf(image, pictures), ...(title ? [caption] : [])],
  };
}

function imageOf({ properties }: Element, pictures: Pictures): Element {
  const alt = String(properties.alt ?? "");
  const path = String(properties.src);
  const data = pictures.get(path);
  if (data === undefined) {
    return { type: "element", tagName: "em", properties: {}, children: [{ type: "text", value: alt }] };
  }
  return {
    type: "element",
    tagName: "img",
    properties: { src: data, alt, dataPhotograph: path },
    children: [],
  };
}

/** Nodes with every picture of theirs as the page shows it. */
export function withPhotographs(nodes: readonly ElementContent[], pictures: Pictures): ElementContent[] {
  return nodes.map((node) => {
    if (node.type !== "element" || node.tagName === "svg") return node;
    return photographOf(node, pictures) ?? { ...node, children: withPhotographs(node.children, pictures) };
  });
}
