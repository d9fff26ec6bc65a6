/**
 * What has been drawn so far, kept by kind: all lines of one kind become one path, so that its weight and dash are
 * written once. Everything is one ink, so the order in which lines were drawn does not show.
 */
import type { Element } from "hast";
import { type Filling, fillingId, LINES, type LineKind, patternOf } from "./language.ts";
import { el, type Point, through } from "./svg.ts";

export class Ink {
  private readonly lines = new Map<LineKind, string[]>();
  private readonly fillings = new Map<Filling, string[]>();
  private readonly solids: string[] = [];
  private readonly dots: Element[] = [];

  line(kind: LineKind, points: readonly Point[], closed: boolean): void {
    const d = through(points, closed);
    const before = this.lines.get(kind);
    if (before) before.push(d);
    else this.lines.set(kind, [d]);
  }

  /** Several outlines in one `d` leave holes; two fillings of one kind may lie over each other. */
  fill(filling: Filling, d: string): void {
    const before = this.fillings.get(filling);
    if (before) before.push(d);
    else this.fillings.set(filling, [d]);
  }

  dot({ x, y }: Point, radius: number): void {
    this.dots.push(el("circle", { cx: x, cy: y, r: radius }));
  }

  solid(points: readonly Point[]): void {
    this.solids.push(through(points, true));
  }

  /** Kinds of line and filling used so far, for the key. */
  get used(): { readonly lines: ReadonlySet<LineKind>; readonly fillings: ReadonlySet<Filling> } {
    return { lines: new Set(this.lines.keys()), fillings: new Set(this.fillings.keys()) };
  }

  /** The patterns that the fillings need, named for the figure. */
  patterns(figure: string): Element[] {
    return [...this.fillings.keys()].map((filling) => patternOf(figure, filling));
  }

  /** Fillings, then lines, then solid shapes. */
  elements(figure: string): Element[] {
    const fillings = [...this.fillings].map(([filling, outlines]) =>
      el(
        "g",
        { fill: `url(#${fillingId(figure, filling)})`, fillRule: "evenodd" },
        outlines.map((d) => el("path", { d })),
      ),
    );
    const lines = [...this.lines].map(([kind, paths]) =>
      el("path", { d: paths.join(""), ...LINES[kind].attributes }),
    );
    const solids = this.solids.length > 0 ? [el("path", { d: this.solids.join("") })] : [];
    return [
      ...fillings,
      el("g", { fill: "none", stroke: "currentColor", strokeLineJoin: "round" }, lines),
      el("g", { fill: "currentColor" }, [...solids, ...this.dots]),
    ];
  }
}
