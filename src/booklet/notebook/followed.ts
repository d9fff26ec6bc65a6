/** Is a text's part of the page what parsing its Markdown gives? Held against each other whenever a notebook is checked. */
import type { ElementContent, Root, RootContent } from "hast";
import { escapedMarks, withoutMarks } from "../marks.ts";
import { html } from "../nodes.ts";
import { parseToHtml } from "../parse.ts";
import { fillShape, type Maker } from "../shape/fill.ts";
import type { Shape } from "../shape/tree.ts";
import { nodesToHtml } from "../stringify.ts";
import type { Context } from "../template/evaluate.ts";

/** Compares the filled shape with the parsed Markdown, marks taken off. */
export function isFollowed(shape: Shape, markdown: string, context: Context): boolean {
  const maker: Maker = {
    printed: (text) => [{ type: "text", value: withoutMarks(text) }],
    drawing: (folder, name) => [html("p", {}, [html("img", { src: `${folder}/${name}.svg`, alt: "" })])],
  };
  const parsed: Root = parseToHtml(escapedMarks(markdown));
  return (
    settled(nodesToHtml(fillShape(shape, context, maker))) ===
    settled(nodesToHtml(parsed.children.flatMap(bare)))
  );
}

/** White space between blocks says nothing. */
const settled = (text: string): string =>
  text
    .replace(/\s+/g, " ")
    .replace(/ ?(<[^>]+>) ?/g, "$1")
    .trim();

/** Without the places that the parser notes, without remarks, and drawings without their titles. */
function bare(node: RootContent): ElementContent[] {
  if (node.type === "text") return [node];
  if (node.type !== "element") return [];
  const { tagName, properties, children } = node;
  const isDrawing = tagName === "img" && /^(?:figures|guides)\//.test(String(properties.src));
  const own = isDrawing ? { src: properties.src, alt: "" } : properties;
  return [{ type: "element", tagName, properties: own, children: children.flatMap(bare) }];
}
