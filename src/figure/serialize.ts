/** A figure's svg as the text of an SVG file. */
import type { Element, ElementContent } from "hast";
import { ATTRIBUTES, type Attributes, el } from "./svg.ts";

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
/** Characters XML 1.0 cannot hold at all; put aside, so that no title can break the file. */
const FORBIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters looked for
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const escaped = (text: string): string =>
  text.replace(FORBIDDEN, "\ufffd").replace(/[&<>"]/g, (letter) => ESCAPES[letter] as string);

function write(node: ElementContent): string {
  if (node.type === "text") return escaped(node.value);
  if (node.type !== "element") return "";
  const attributes = Object.entries(node.properties).map(([name, value]) => {
    const text = Array.isArray(value) ? value.join(" ") : String(value);
    return ` ${ATTRIBUTES[name as keyof Attributes] ?? name}="${escaped(text)}"`;
  });
  const inner = node.children.map(write).join("");
  const open = `<${node.tagName}${attributes.join("")}`;
  return inner === "" ? `${open}/>` : `${open}>${inner}</${node.tagName}>`;
}

/**
 * A whole SVG file. It stands alone: black on white paper, at the size it was drawn for, since outside a page there is
 * no colour of text to take.
 */
export function svgFile(svg: Element): string {
  const [, , width = "100", height = "100"] = String(svg.properties.viewBox).split(" ");
  const paper = el("path", { d: `M0 0H${width}V${height}H0Z`, fill: "#fff" });
  const heads = ["title", "desc"];
  const at = svg.children.findIndex((child) => child.type === "element" && !heads.includes(child.tagName));
  const root: Element = {
    ...svg,
    properties: { xmlns: "http://www.w3.org/2000/svg", width, height, color: "#000", ...svg.properties },
    children: [...svg.children.slice(0, at), paper, ...svg.children.slice(at)],
  };
  return `<?xml version="1.0" encoding="UTF-8"?>\n${write(root)}\n`;
}
