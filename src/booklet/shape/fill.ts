/** A shape and a context -> HTML nodes: what parsing the rendered Markdown would give, without parsing it. */
import type { Element, ElementContent } from "hast";
import { answer, type Context, holds, itemsOf, outermost, type Scope } from "../template/evaluate.ts";
import { printed } from "../template/printing.ts";
import type { Folder, Shape, ShapeNode } from "./tree.ts";

/** Makes the nodes of what a shape only names. */
export interface Maker {
  /** A printed text with number marks; `key` tells the place, list items included. */
  printed(text: string, key: string): ElementContent[];
  /** A drawing of the garment by its name. Throws TemplateError where it has none. */
  drawing(folder: Folder, name: string): ElementContent[];
}

/** Fills a shape. Throws TemplateError where a value that is not there is to be printed. */
export function fillShape(shape: Shape, context: Context, maker: Maker): ElementContent[] {
  const nodes = block(new Filling(context, maker).nodes(shape, outermost(context), ""));
  while (nodes.length > 0 && isSpace(nodes.at(-1) as ElementContent)) nodes.pop();
  while (nodes.length > 0 && isSpace(nodes[0] as ElementContent)) nodes.shift();
  return nodes;
}

class Filling {
  private readonly context: Context;
  private readonly maker: Maker;

  constructor(context: Context, maker: Maker) {
    this.context = context;
    this.maker = maker;
  }

  nodes(shape: Shape, scope: Scope, key: string, out: ElementContent[] = []): ElementContent[] {
    for (const node of shape) {
      if (typeof node === "string") out.push({ type: "text", value: node });
      else if ("tag" in node) {
        const made = this.element(node, scope, key);
        if (made) out.push(made);
      } else if ("print" in node)
        out.push(...this.maker.printed(printed(node.print, scope, this.context), `${node.n}${key}`));
      else if ("if" in node)
        this.nodes(holds(answer(node.if, scope, this.context)) ? node.do : node.else, scope, key, out);
      else if ("drawing" in node)
        out.push(...this.maker.drawing(node.drawing, String(answer(node.name, scope, this.context))));
      else {
        const items = itemsOf(answer(node.each, scope, this.context), scope);
        if (items.length === 0) this.nodes(node.else, scope, key, out);
        for (const item of items) this.nodes(node.do, item, `${key}.${item.index}`, out);
      }
    }
    return out;
  }

  private element(shape: ElementShape, scope: Scope, key: string): Element | undefined {
    if (!isFixed(shape)) return made(shape, this.nodes(shape.in, scope, key));
    // What prints nothing is the same every time: it is made once, and is the same node in every booklet.
    const known = FIXED.get(shape);
    if (known) return known;
    const element = made(shape, this.nodes(shape.in, scope, key));
    if (element) FIXED.set(shape, element);
    return element;
  }
}

/** Undefined where an element would be empty that then is not there. */
function made(
  { tag, with: attributes }: ElementShape,
  inside: readonly ElementContent[],
): Element | undefined {
  const children = CONTAINERS.has(tag) ? block(inside) : inline(inside, TRIMMED.has(tag));
  if (GOES_EMPTY.has(tag) && children.every(isSpace)) return undefined;
  return { type: "element", tagName: tag, properties: { ...attributes } as Element["properties"], children };
}

type ElementShape = Extract<ShapeNode, { readonly tag: string }>;

const FIXED = new WeakMap<ElementShape, Element>();
const KNOWN_FIXED = new WeakMap<ElementShape, boolean>();

/** Is a part of a shape the same whatever the garment? */
function isFixed(shape: ElementShape): boolean {
  const known = KNOWN_FIXED.get(shape);
  if (known !== undefined) return known;
  const is = shape.in.every((node) => typeof node === "string" || ("tag" in node && isFixed(node)));
  KNOWN_FIXED.set(shape, is);
  return is;
}

/** Elements that hold blocks: the texts between are line ends only. An item may hold either. */
const CONTAINERS = new Set(["ul", "ol", "table", "thead", "tbody", "tr", "blockquote"]);
/** Elements that are not there when nothing is in them. */
const GOES_EMPTY = new Set(["p", "ul", "ol", "table", "tbody", "blockquote", "strong", "em"]);
/** Elements whose text neither begins nor ends with a space. */
const TRIMMED = new Set(["p", "h1", "h2", "h3", "h4", "h5", "h6", "td", "th", "li"]);
const BLOCKS = new Set([
  "p",
  "ul",
  "ol",
  "table",
  "blockquote",
  "pre",
  "figure",
  "h1",
  "h2",
  "h3",
  "h4",
  "h5",
  "h6",
  "hr",
  "section",
  "div",
]);

const isSpace = (node: ElementContent): boolean => node.type === "text" && !/\S/.test(node.value);
const isBlock = (node: ElementContent): boolean => node.type === "element" && BLOCKS.has(node.tagName);

/** Lists side by side are one list, as Markdown has it; so are the bodies of a table. */
const MERGES = new Set(["ul", "ol", "tbody"]);

/** Blocks with one line end between, as a parser puts them. */
function block(nodes: readonly ElementContent[]): ElementContent[] {
  const out: ElementContent[] = [];
  for (const node of nodes) {
    const last = out.at(-1);
    const before = last && isSpace(last) ? out.at(-2) : last;
    if (
      node.type === "element" &&
      before?.type === "element" &&
      before.tagName === node.tagName &&
      MERGES.has(node.tagName)
    ) {
      if (before !== last) out.pop();
      out[out.length - 1] = { ...before, children: block([...before.children, ...node.children]) };
    } else if (!isSpace(node)) {
      if (last?.type === "element") out.push({ type: "text", value: "\n" });
      out.push(node);
    } else if (!last || !isSpace(last)) out.push({ type: "text", value: "\n" });
  }
  return out;
}

/** Drawings behind a step's text follow it at once; other blocks keep their lines. */
function pictures(nodes: readonly ElementContent[]): ElementContent[] {
  const kept = nodes.filter((node) => !isSpace(node));
  const only = kept.every(
    (node) => node.type === "element" && (node.tagName === "figure" || node.tagName === "p"),
  );
  return only ? kept : [{ type: "text", value: "\n" }, ...block(nodes)];
}

/** Texts side by side are one; a line's end takes the spaces round it, and the ends of the whole have none. */
function inline(nodes: readonly ElementContent[], trimmed: boolean): ElementContent[] {
  const first = nodes.findIndex(isBlock);
  if (first >= 0) {
    const before = nodes.slice(0, first);
    return before.every(isSpace)
      ? block(nodes)
      : [...inline(before, trimmed), ...pictures(nodes.slice(first))];
  }
  const out: ElementContent[] = [];
  for (let i = 0; i < nodes.length; ) {
    const node = nodes[i] as ElementContent;
    if (node.type !== "text") {
      out.push(node);
      i += 1;
      continue;
    }
    const isFirst = i === 0;
    let value = "";
    for (let next = nodes[i]; next?.type === "text"; next = nodes[i]) {
      value += next.value;
      i += 1;
    }
    if (value.includes("\n")) value = value.replace(/[ \t]*\n[ \t\n]*/g, "\n");
    if (trimmed && isFirst) value = value.trimStart();
    if (trimmed && i === nodes.length) value = value.trimEnd();
    if (value !== "") out.push({ type: "text", value });
  }
  return out;
}
