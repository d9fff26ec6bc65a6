/** One drawing in the making: lines and fillings are put down, labels wait for their places, notes follow below. */
import type { Box, Segment } from "./box.ts";
import type { Figure, FigureName } from "./figure.ts";
import { Ink } from "./ink.ts";
import { drawKey } from "./key.ts";
import { Labels, type Placed, type Wish } from "./labels.ts";
import { type Filling, LETTERING, type LineKind, PICTURE } from "./language.ts";
import { linesOf, widthOf } from "./lettering.ts";
import { el, type Point, rectangle } from "./svg.ts";
import { Words } from "./words.ts";

interface Waiting {
  readonly wish: Wish;
  /** Called when the place is known, to draw what depends on it. */
  readonly then?: (box: Box) => void;
}

export class Drawing {
  readonly name: FigureName;
  readonly labels = new Labels();
  /** Everything so far ends above this line. */
  bottom: number = PICTURE.margin;
  private readonly ink = new Ink();
  private readonly words = new Words();
  private waiting: Waiting[] = [];

  constructor(name: FigureName) {
    this.name = name;
  }

  /** The picture reaches down to here at least. */
  reach(y: number): void {
    this.bottom = Math.max(this.bottom, y);
  }

  /** A line of one kind through points. Labels keep off it unless it is `soft`. */
  line(kind: LineKind, points: readonly Point[], { soft = false, closed = false } = {}): void {
    this.ink.line(kind, points, closed);
    for (const { y } of points) this.reach(y);
    if (!soft) this.avoid(closed ? [...points, points[0] as Point] : points);
  }

  /** Several lines of one kind. Labels keep off them unless they are `soft`. */
  lines(kind: LineKind, many: readonly (readonly Point[])[], how: { readonly soft?: boolean } = {}): void {
    for (const points of many) this.line(kind, points, how);
  }

  /** Labels keep off these lines. */
  avoid(points: readonly Point[]): void {
    for (let i = 1; i < points.length; i += 1) {
      this.labels.avoid({ from: points[i - 1] as Point, to: points[i] as Point });
    }
  }

  /** Labels keep out of this area while there is other room. */
  keepClear(box: Box): void {
    this.labels.keepClear(box);
  }

  /** An area filled with one of the patterns; several outlines leave holes. */
  fill(filling: Filling, d: string): void {
    this.ink.fill(filling, d);
  }

  /** A small solid dot, such as a needle mark. */
  dot(at: Point, radius: number): void {
    this.ink.dot(at, radius);
    this.reach(at.y + radius);
  }

  /** A solid shape without outline, such as an arrow's head. One that turns the other way inside another leaves a hole. */
  solid(points: readonly Point[]): void {
    this.ink.solid(points);
  }

  /** A label that waits for its place until the drawing round it is done. */
  label(text: string, at: Point, wish: Omit<Wish, "text" | "at"> = {}, then?: (box: Box) => void): void {
    const waiting = { wish: { ...wish, text, at } };
    this.waiting.push(then ? { ...waiting, then } : waiting);
  }

  /** Places the labels that wait. Returns the foot of everything so far. */
  settle(): number {
    for (const { wish, then } of this.waiting) {
      const placed = this.labels.place(wish, this.bottom);
      this.write(placed);
      if (placed.leader) this.lead(placed.leader);
      then?.(placed.box);
    }
    this.waiting = [];
    return this.bottom;
  }

  /** A line of lettering across the picture, below everything so far. Headings say which side is seen and which way is up. */
  note(text: string, { bold = false, above = 6 } = {}): void {
    this.settle();
    const size = bold ? LETTERING.heading : LETTERING.note;
    const limit = PICTURE.width - 2 * PICTURE.margin;
    const lines = linesOf(text, limit, size, bold);
    const width = Math.max(...lines.map((line) => widthOf(line, size, bold)));
    const box = {
      x: PICTURE.margin,
      y: this.bottom + above,
      width,
      height: lines.length * size * LETTERING.line,
    };
    this.set(lines, size, box, { bold });
    this.labels.top = this.bottom + 2;
  }

  /** Lettering in a place of its own, from the left or about its middle; labels keep clear of it. */
  set(
    lines: readonly string[],
    size: number,
    box: Box,
    { bold = false, anchor = "start" }: { bold?: boolean; anchor?: "start" | "middle" } = {},
  ): void {
    const placed: Placed = {
      wish: { text: lines.join(" "), at: box, bold },
      lines,
      size,
      box,
      leader: undefined,
    };
    this.labels.fix(placed);
    this.write(placed, anchor);
  }

  heading(text: string): void {
    this.note(text, { bold: true, above: this.bottom > PICTURE.margin ? 12 : 0 });
  }

  /** Finishes: the key of the lines and fillings used (unless the labels say it all), title, description. */
  finish(title: string, description: string, { key = true } = {}): Figure {
    this.settle();
    const { lines, fillings } = this.ink.used;
    if (key) drawKey(this, lines, fillings);
    const ids = [`fig-${this.name}-title`, `fig-${this.name}-desc`] as const;
    const clear = `fig-${this.name}-clear`;
    const height = Math.ceil(this.bottom + PICTURE.margin);
    const svg = el(
      "svg",
      {
        viewBox: `0 0 ${PICTURE.width} ${height}`,
        role: "img",
        ariaLabelledBy: [...ids],
        fontFamily: "sans-serif",
      },
      [
        el("title", { id: ids[0] }, [title]),
        el("desc", { id: ids[1] }, [description]),
        el("defs", {}, [
          ...this.ink.patterns(this.name),
          el("clipPath", { id: clear }, [el("path", { d: this.besideLabels(height), clipRule: "evenodd" })]),
        ]),
        el("g", { clipPath: `url(#${clear})` }, this.ink.elements(this.name)),
        el("g", { fill: "currentColor" }, this.words.elements()),
      ],
    );
    return { name: this.name, title, description, svg };
  }

  /** The whole picture but the labels: where a line passes under words it is broken. */
  private besideLabels(height: number): string {
    return [
      rectangle(0, 0, PICTURE.width, height),
      ...this.labels.placed.map(({ box }) =>
        rectangle(box.x + box.width * 0.03, box.y + 1, box.width * 0.94, box.height - 1),
      ),
    ].join("");
  }

  private lead(leader: Segment): void {
    this.line("leader", [leader.from, leader.to], { soft: true });
    this.dot(leader.to, 1.3);
  }

  private write(placed: Placed, anchor: "start" | "middle" = "middle"): void {
    this.words.write(placed, anchor);
    this.reach(placed.box.y + placed.box.height);
  }
}
