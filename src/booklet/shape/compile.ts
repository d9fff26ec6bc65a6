/**
 * Template -> shape, when the program is built (and, for a maker's own text, when her recipe is read). The template is
 * expanded with every branch taken, parsed as Markdown once, and the parsed nodes are put under the choices and lists
 * whose part of the text they came from. Held in tests against parsing what the template renders.
 */
import type { Element, Root, RootContent } from "hast";
import { parseToHtml } from "../parse.ts";
import type { Expression, Template } from "../template/tree.ts";
import { indexIn } from "./align.ts";
import { type Expansion, expand, type Range, SLOT } from "./expand.ts";
import type { Attributes, Shape, ShapeNode } from "./tree.ts";

/** A parsed node, or a piece of a text, with the stretch of the expansion it came from. */
interface Atom {
  readonly node: RootContent | string;
  readonly start: number;
  readonly end: number;
}

/** Compiles a template. Throws where a list crosses the blocks of the Markdown, or a text cannot be followed. */
export function compileShape(template: Template): Shape {
  const expansion = expand(template);
  const tree: Root = parseToHtml(expansion.text);
  // The whole is wider than any range in it.
  const whole = { start: -1, end: expansion.text.length + 1 };
  return new Compiler(expansion).children(tree.children, expansion.ranges, whole);
}

interface Stretch {
  readonly start: number;
  readonly end: number;
}

const holdsStretch = (outer: Stretch, inner: Stretch): boolean =>
  outer.start <= inner.start && inner.end <= outer.end;

class Compiler {
  private readonly expansion: Expansion;
  /** A word of the trade within a link leads nowhere else. */
  private inLink = false;

  constructor(expansion: Expansion) {
    this.expansion = expansion;
  }

  /** The children of one node under those ranges that do not hold the whole node. */
  children(nodes: readonly RootContent[], ranges: readonly Range[], parent: Stretch): Shape {
    const inside = ranges.filter(
      (range) => !branchOf(range, parent) && range.start < parent.end && range.end > parent.start,
    );
    return this.group(this.atoms(nodes, inside, parent), inside);
  }

  private atoms(nodes: readonly RootContent[], ranges: readonly Range[], parent: Stretch): Atom[] {
    const atoms: Atom[] = [];
    for (const node of nodes) {
      const stretch = stretchOf(node);
      const last = atoms.at(-1);
      // Line ends between blocks have no place of their own: they go with what stands before them.
      if (!stretch)
        atoms.push({
          node: node.type === "text" ? node.value : node,
          start: last?.start ?? parent.start,
          end: last ? last.end : parent.start,
        });
      else if (node.type === "text") atoms.push(...this.pieces(node.value, stretch, ranges));
      else atoms.push({ node, ...(this.cell(node, ranges) ?? stretch) });
    }
    return atoms;
  }

  /**
   * A cell's own place takes in the bar before it. In `|{{#if a}} c |{{/if}}` that bar stands outside the choice the cell
   * is of, and the bar behind it inside: then the cell is taken from its text to there.
   */
  private cell(node: RootContent, ranges: readonly Range[]): Stretch | undefined {
    if (node.type !== "element" || !CELLS.has(node.tagName) || node.children.length === 0) return undefined;
    const own = stretchOf(node);
    const [first, last] = [node.children[0], node.children.at(-1)].map((child) =>
      stretchOf(child as RootContent),
    );
    if (!own || !first || !last || ranges.some((range) => branchOf(range, own))) return undefined;
    const bar = this.expansion.text.indexOf("|", last.end);
    const withBar = { start: first.start, end: bar + 1 };
    return bar >= 0 && ranges.some((range) => branchOf(range, withBar)) ? withBar : undefined;
  }

  /** A text cut where ranges begin, turn and end. */
  private pieces(value: string, { start, end }: Stretch, ranges: readonly Range[]): Atom[] {
    const source = this.expansion.text.slice(start, end);
    const cuts = new Set(ranges.flatMap((range) => [range.start, range.middle, range.end]));
    const places = [start, ...[...cuts].filter((at) => at > start && at < end).sort((a, b) => a - b), end];
    return places.slice(1).map((to, i) => {
      const from = places[i] as number;
      const text = value.slice(
        indexIn(value, source, from - start),
        to === end ? value.length : indexIn(value, source, to - start),
      );
      return { node: text, start: from, end: to };
    });
  }

  /** Atoms under the outermost range that holds each, and so on inwards. */
  private group(atoms: readonly Atom[], ranges: readonly Range[]): Shape {
    const shape: ShapeNode[] = [];
    for (let i = 0; i < atoms.length; ) {
      const atom = atoms[i] as Atom;
      const range = ranges.find((one) => branchOf(one, atom) !== undefined);
      if (!range) {
        shape.push(...this.node(atom, ranges));
        i += 1;
        continue;
      }
      let to = i;
      while (to < atoms.length && branchOf(range, atoms[to] as Atom) !== undefined) to += 1;
      const held = atoms.slice(i, to);
      const inner = ranges.slice(ranges.indexOf(range) + 1).filter((one) => holdsStretch(range, one));
      const part = (branch: "do" | "else"): Shape =>
        this.group(
          held.filter((one) => branchOf(range, one) === branch),
          inner,
        );
      shape.push(
        range.kind === "if"
          ? { if: range.about, do: part("do"), else: part("else") }
          : { each: range.about, do: part("do"), else: part("else") },
      );
      i = to;
    }
    return shape;
  }

  private node({ node, start, end }: Atom, ranges: readonly Range[]): ShapeNode[] {
    if (typeof node === "string") return this.text(node);
    if (node.type !== "element") return [];
    const drawing = this.expansion.drawings[drawingNumber(node)];
    if (drawing) return [drawing];
    if (node.tagName === "li") this.checkItem({ start, end }, ranges);
    const outside = this.inLink;
    this.inLink ||= node.tagName === "a";
    const within = this.children(node.children, ranges, { start, end });
    this.inLink = outside;
    const attributes = Object.entries(node.properties).filter(
      ([, value]) => value !== undefined && value !== null,
    );
    return [
      attributes.length === 0
        ? { tag: node.tagName, in: within }
        : { tag: node.tagName, with: Object.fromEntries(attributes) as Attributes, in: within },
    ];
  }

  /** An item of a list that begins within a choice must end within it. */
  private checkItem(item: Stretch, ranges: readonly Range[]): void {
    const torn = ranges.find(
      ({ start, middle, end }) =>
        (item.start >= start && item.start < middle && item.end > middle) ||
        (item.start >= middle && item.start < end && item.end > end),
    );
    if (!torn) return;
    const text = this.expansion.text.slice(item.start, item.start + 60).split("\n")[0];
    throw new Error(`the item "${text}" begins within {{#${torn.kind}}} and goes on behind it`);
  }

  private text(text: string): ShapeNode[] {
    const parts: ShapeNode[] = [];
    let at = 0;
    for (const match of text.matchAll(SLOT)) {
      if (match.index > at) parts.push(text.slice(at, match.index));
      const n = Number(match[1]);
      const print = this.expansion.prints[n] ?? "";
      parts.push((this.inLink ? wordOf(print) : undefined) ?? { print, n });
      at = match.index + match[0].length;
    }
    if (at < text.length) parts.push(text.slice(at));
    return parts;
  }
}

/** What `{{word "bites" "bite"}}` shows. */
function wordOf(print: Expression): string | undefined {
  if (typeof print === "string" || !("helper" in print) || print.helper !== "word") return undefined;
  const [shown] = print.with;
  return typeof shown === "object" && "says" in shown ? shown.says : undefined;
}

const CELLS = new Set(["td", "th"]);

/** Which branch of a range holds a stretch; an empty stretch on the edge belongs to neither. */
function branchOf(range: Range, stretch: Stretch): "do" | "else" | undefined {
  if (stretch.start === stretch.end && (stretch.start === range.start || stretch.start === range.end))
    return undefined;
  if (range.start <= stretch.start && stretch.end <= range.middle) return "do";
  if (range.middle <= stretch.start && stretch.end <= range.end) return "else";
  return undefined;
}

function stretchOf(node: RootContent): Stretch | undefined {
  const start = node.position?.start.offset;
  const end = node.position?.end.offset;
  return start === undefined || end === undefined ? undefined : { start, end };
}

/** The number of the drawing that a paragraph holds and nothing else; -1 where it is no such paragraph. */
function drawingNumber(node: Element): number {
  const [image] = node.children;
  if (node.tagName !== "p" || node.children.length !== 1 || image?.type !== "element") return -1;
  const found = image.tagName === "img" ? /^drawings\/(\d+)\.svg$/.exec(String(image.properties.src)) : null;
  return found ? Number(found[1]) : -1;
}
