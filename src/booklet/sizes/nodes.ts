/** A chapter of all sizes as HTML nodes: letters with the numbers they stand for, columns of sizes, drawings at their places. */
import type { Element, ElementContent, Properties, RootContent } from "hast";
import type { Figure } from "../../figure/figure.ts";
import { unbroken } from "../../figure/lettering.ts";
import { exact } from "../../solve/json.ts";
import { shapeChapter, textOf } from "../chapter-shape.ts";
import { MARKED, withoutMarks } from "../marks.ts";
import { html } from "../nodes.ts";
import { withPhotographs } from "../notebook/picture.ts";
import { parseToHtml } from "../parse.ts";
import { isWord, Words } from "../words.ts";
import { COLUMN, type KeyRow, OF, ONLY, ROW } from "./keys.ts";
import type { Print } from "./mask.ts";
import type { SizeSet } from "./set.ts";

export interface Drawings {
  /** A drawing by the folder of its size and its path there. */
  find(folder: string, path: string): Figure | undefined;
}

/** One chapter's section. */
export function setChapterNodes(
  { name, markdown, rows }: { name: string; markdown: string; rows: readonly KeyRow[] },
  set: SizeSet,
  drawings: Drawings,
  told: ReadonlySet<string>,
): Element {
  const nodes = new SetNodes(markdown, rows, set, drawings, new Words(name, told)).nodes();
  const section = rowHeads(shapeChapter(name, nodes));
  return { ...section, children: withPhotographs(section.children, set.pictures) };
}

const SLOT = /\uE000(\d+)\uE002/g;
const DRAWING = /^(size-[^/]+)\/(figures\/[\w-]+)\.svg$/;

/** The class of a size's column and numbers. */
export const classOf = (size: number): string[] => ["s", `s-${size + 1}`];

class SetNodes {
  private readonly prints: Print[] = [];
  private readonly markdown: string;
  private readonly rows: readonly KeyRow[];
  private readonly set: SizeSet;
  private readonly drawings: Drawings;
  private readonly words: Words;

  constructor(markdown: string, rows: readonly KeyRow[], set: SizeSet, drawings: Drawings, words: Words) {
    this.words = words;
    this.rows = rows;
    this.set = set;
    this.drawings = drawings;
    this.markdown = markdown.replace(MARKED, (_, name: string, text: string) => {
      this.prints.push({ name, text });
      return `\uE000${this.prints.length - 1}\uE002`;
    });
  }

  nodes(): ElementContent[] {
    return this.onlyFor(parseToHtml(this.markdown).children.flatMap((node) => this.node(node)));
  }

  private node(node: RootContent): ElementContent[] {
    if (node.type === "text") return this.text(node.value);
    if (node.type !== "element") return [];
    const { tagName, properties } = node;
    if (tagName === "p" && node.children.length === 1) {
      const [only] = node.children;
      const figure =
        only?.type === "element" && only.tagName === "img" ? this.figure(only.properties) : undefined;
      if (figure) return [figure];
    }
    const children = this.onlyFor(node.children.flatMap((child) => this.node(child)));
    if (tagName === "table") return [columns({ ...node, children }, this.columnsOf(node))];
    return [{ type: "element", tagName, properties: this.linked(properties), children }];
  }

  /** What begins with the names of the sizes it is for, and what such a line alone stands over, is marked for the others to be without. */
  private onlyFor(nodes: readonly ElementContent[]): ElementContent[] {
    let over: string[] = [];
    return nodes.map((node): ElementContent => {
      if (node.type !== "element") return node;
      const classes = over;
      over = [];
      const [first, ...rest] = node.children.filter(
        (child) => textOf([child as ElementContent]).trim() !== "",
      );
      const label = first?.type === "element" && first.tagName === "strong" ? first.children[0] : undefined;
      const sizes = label?.type === "element" ? label.properties.dataOnly : undefined;
      if (typeof sizes === "string" && ["p", "li"].includes(node.tagName)) {
        const own = this.without(sizes);
        if (node.tagName === "p" && rest.length === 0) over = own;
        return withClasses(node, own);
      }
      return classes.length === 0 ? node : withClasses(node, classes);
    });
  }

  /** Classes for all sizes but these. */
  private without(sizes: string): string[] {
    const own = sizes.split(",").map(Number);
    return this.set.sizes.flatMap((_, size) => (own.includes(size) ? [] : [`not-${size + 1}`]));
  }

  /** Links lead from page to page. */
  private linked(properties: Properties): Properties {
    const { href, alt } = properties;
    return {
      ...properties,
      ...(typeof href === "string" ? { href: href.replace(/\.md$/, ".html") } : {}),
      ...(typeof alt === "string" ? { alt: this.plain(alt) } : {}),
    };
  }

  private plain(text: string): string {
    return text.replace(SLOT, (_, n) => withoutMarks(this.prints[Number(n)]?.text ?? ""));
  }

  private figure({ src, alt }: Properties): Element | undefined {
    const [, folder, path] = DRAWING.exec(decodeURI(String(src))) ?? [];
    const figure = folder && path ? this.drawings.find(folder, path) : undefined;
    if (!figure || !folder) return undefined;
    return html("figure", { id: `figure-${figure.name}` }, [
      figure.svg,
      html("figcaption", {}, [this.plain(String(alt))]),
    ]);
  }

  private text(text: string): ElementContent[] {
    const nodes: ElementContent[] = [];
    let at = 0;
    const words = (to: number): void => {
      if (to > at) nodes.push({ type: "text", value: unbroken(text.slice(at, to)) });
    };
    for (const match of text.matchAll(SLOT)) {
      words(match.index);
      nodes.push(this.print(this.prints[Number(match[1])] as Print));
      at = match.index + match[0].length;
    }
    words(text.length);
    return nodes;
  }

  private print({ name, text }: Print): ElementContent {
    const words: ElementContent = { type: "text", value: unbroken(text) };
    if (name.startsWith(ROW)) return this.letter(this.rows[Number(name.slice(ROW.length))] as KeyRow);
    if (name.startsWith(OF)) {
      const [size, ...rest] = name.slice(OF.length).split(":");
      return this.data(Number(size), rest.join(":"), text) ?? words;
    }
    if (isWord(name)) return this.words.node(name, unbroken(text));
    if (name.startsWith(ONLY)) return html("span", { dataOnly: name.slice(ONLY.length) }, [unbroken(text)]);
    if (name === "" || name.startsWith("@")) return words;
    return this.data(0, name, text) ?? words;
  }

  private data(size: number, name: string, text: string, properties: Properties = {}): Element | undefined {
    const value = this.set.sizes[size]?.plan.values.get(name);
    return (
      value && html("data", { ...properties, value: exact(value.quantity), dataName: name }, [unbroken(text)])
    );
  }

  /** A letter, and behind it each size's number, which is shown once a size is chosen. */
  private letter({ letter, prints }: KeyRow): Element {
    return html("span", { className: ["by-size"] }, [
      html("b", { className: ["key"] }, [letter]),
      ...prints.map((print, size): Element => {
        const className = classOf(size);
        const text = print?.text ?? "–";
        return (
          this.data(size, print?.name ?? "", text, { className }) ??
          html("span", { className }, [unbroken(text)])
        );
      }),
    ]);
  }

  /** Which size each column of a table is, by its head. */
  private columnsOf(table: Element): (number | undefined)[] {
    const head = table.children.find((child) => child.type === "element" && child.tagName === "thead");
    const row = (head as Element | undefined)?.children.find((child) => child.type === "element");
    const cells = ((row as Element | undefined)?.children ?? []).filter((child) => child.type === "element");
    return cells.map((cell) => {
      const slot = /^\uE000(\d+)\uE002$/.exec(textOf(cell.children as ElementContent[]).trim())?.[1];
      const name = slot === undefined ? "" : (this.prints[Number(slot)]?.name ?? "");
      return name.startsWith(COLUMN) ? Number(name.slice(COLUMN.length)) : undefined;
    });
  }
}

const withClasses = (node: Element, classes: readonly string[]): Element => ({
  ...node,
  properties: { ...node.properties, className: [...classesOf(node), ...classes] },
});

const classesOf = ({ properties: { className } }: Element): string[] =>
  Array.isArray(className) ? className.map(String) : [];

/** A row that says the same of every size says it once, across their columns. */
function onceAcross(row: Element): Element {
  const cells = row.children.filter((child): child is Element => child.type === "element");
  const ofSizes = cells.filter((cell) => classesOf(cell).includes("s"));
  const [first, ...others] = ofSizes;
  if (first?.tagName !== "td" || others.length === 0) return row;
  const text = textOf(first.children);
  if (text.trim() === "" || others.some((cell) => textOf(cell.children) !== text)) return row;
  const { className: _, ...properties } = first.properties;
  const across: Element = { ...first, properties: { ...properties, colSpan: ofSizes.length } };
  return {
    ...row,
    children: row.children.flatMap((child) =>
      child === first ? [across] : (others as ElementContent[]).includes(child) ? [] : [child],
    ),
  };
}

/** Marks the cells of sizes' columns. */
function columns(node: Element, sizes: readonly (number | undefined)[]): Element {
  if (sizes.every((size) => size === undefined)) return node;
  const inside = (element: Element): Element => {
    let at = -1;
    const children = element.children.map((child): ElementContent => {
      if (child.type !== "element") return child;
      if (child.tagName !== "td" && child.tagName !== "th") return inside(child);
      at += 1;
      const size = sizes[at];
      return size === undefined
        ? child
        : { ...child, properties: { ...child.properties, className: classOf(size) } };
    });
    return element.tagName === "tr" ? onceAcross({ ...element, children }) : { ...element, children };
  };
  return { ...inside(node), properties: { ...node.properties, className: ["sizes"] } };
}

/** In a table with columns of sizes the first cell of every row heads it. */
function rowHeads(node: Element): Element {
  const isSizes = node.tagName === "table" && classesOf(node).includes("sizes");
  const heads = (row: Element): Element => {
    const first = row.children.findIndex((child) => child.type === "element");
    return {
      ...row,
      children: row.children.map((child, i) =>
        i === first &&
        child.type === "element" &&
        child.tagName === "td" &&
        textOf(child.children).trim() !== ""
          ? { ...child, tagName: "th", properties: { ...child.properties, scope: "row" } }
          : child,
      ),
    };
  };
  return {
    ...node,
    children: node.children.map((child) => {
      if (child.type !== "element") return child;
      if (isSizes && child.tagName === "tbody") {
        return {
          ...child,
          children: child.children.map((row) => (row.type === "element" ? heads(row) : row)),
        };
      }
      return rowHeads(child);
    }),
  };
}
