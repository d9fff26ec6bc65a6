/** Photographs in the page: an image with the project's own bytes, in a frame of its own where it stands alone. */
import type { Element } from "hast";
import type { Photographs } from "./photographs.ts";

/** A picture node as the page shows it; undefined for nodes that are none. Pictures that are not the project's own are left out. */
export function pictureOf(node: Element, photographs: Photographs): Element | undefined {
  if (node.tagName === "img") return imageOf(node, photographs);
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
    children: [imageOf(image, photographs), ...(title ? [caption] : [])],
  };
}

function imageOf({ properties }: Element, photographs: Photographs): Element {
  const alt = String(properties.alt ?? "");
  const photograph = photographs.get(String(properties.src));
  if (!photograph) {
    return { type: "element", tagName: "em", properties: {}, children: [{ type: "text", value: alt }] };
  }
  return {
    type: "element",
    tagName: "img",
    properties: { src: photograph.data, alt, dataPhotograph: photograph.path },
    children: [],
  };
}
