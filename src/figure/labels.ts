/**
 * Places labels: none meets another, none leaves the picture, none lies on a line if room can be found elsewhere.
 * A label that has to move away from its point is joined to it by a leader line.
 */
import { type Box, grown, inside, nearestOn, overlap, type Segment } from "./box.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { linesOf, widthOf } from "./lettering.ts";
import { LineIndex } from "./line-index.ts";
import type { Point } from "./svg.ts";

/** Where a label would rather stand, seen from its point. */
export type Side = "on" | "above" | "below" | "left" | "right";

export interface Wish {
  readonly text: string;
  readonly at: Point;
  /** Where the label stands, if not beside its point: then a leader line joins the two. */
  readonly stand?: Point;
  /** In the order of preference. Default: above, below, right, left. */
  readonly sides?: readonly Side[];
  readonly size?: number;
  readonly bold?: boolean;
  /** Widest line; default 150. */
  readonly width?: number;
  /** Distance from the point; default 4. */
  readonly gap?: number;
  /** Leader line to the point: if the label had to move (default), always, or never. */
  readonly leader?: "moved" | "always" | "never";
  /** A region the label should stay in if it can. */
  readonly within?: Box;
}

export interface Placed {
  readonly wish: Wish;
  readonly lines: readonly string[];
  readonly size: number;
  readonly box: Box;
  readonly leader: Segment | undefined;
}

const DEFAULT_SIDES: readonly Side[] = ["above", "below", "right", "left"];
/** Air kept round every label. */
const AIR = 1.5;
const STEP = 6;
/** Off every line and close by; then across lines (which are broken for it) but close by; then further and further off. */
const PASSES = [
  { strict: true, rings: 3 },
  { strict: false, rings: 0 },
  { strict: true, rings: 10 },
  { strict: false, rings: 3 },
  { strict: true, rings: 26 },
  { strict: false, rings: 26 },
] as const;
/** The ways off a ring has, as parts of its radius. */
const WAYS: readonly Point[] = Array.from({ length: 16 }, (_, i) => ({
  x: Math.cos((2 * Math.PI * i) / 16),
  y: Math.sin((2 * Math.PI * i) / 16),
}));

/** How far to either side a label below everything is tried. */
const ASIDE: readonly number[] = [0, ...[30, 60, 90, 120, 150, 180, 240, 300].flatMap((off) => [off, -off])];

/** How good a place is: taken, free but across a line, or free of everything. */
const TAKEN = 0;
const ACROSS = 1;
const FREE = 2;

interface Candidate {
  readonly box: Box;
  readonly leader: Segment | undefined;
  readonly grade: typeof TAKEN | typeof ACROSS | typeof FREE;
}

function boxAt({ at: point, stand, gap = 4 }: Wish, side: Side, width: number, height: number): Box {
  const at = stand ?? point;
  const middle = { x: at.x - width / 2, y: at.y - height / 2 };
  switch (side) {
    case "on":
      return { ...middle, width, height };
    case "above":
      return { x: middle.x, y: at.y - gap - height, width, height };
    case "below":
      return { x: middle.x, y: at.y + gap, width, height };
    case "left":
      return { x: at.x - gap - width, y: middle.y, width, height };
    case "right":
      return { x: at.x + gap, y: middle.y, width, height };
  }
}

const clamped = ({ x, y, width, height }: Box, top: number): Box => ({
  x: Math.max(PICTURE.margin, Math.min(x, PICTURE.width - PICTURE.margin - width)),
  y: Math.max(top, y),
  width,
  height,
});

const contains = (outer: Box, box: Box): boolean =>
  box.x >= outer.x &&
  box.y >= outer.y &&
  box.x + box.width <= outer.x + outer.width &&
  box.y + box.height <= outer.y + outer.height;

/** What stands on the page already. */
export class Labels {
  readonly placed: Placed[] = [];
  private readonly lines = new LineIndex();
  private readonly areas: Box[] = [];
  /** Labels that found no place near their point and were put below everything: the drawing is too crowded for them. */
  lost = 0;
  /** Nothing may stand higher than this, the foot of the heading. */
  top: number = PICTURE.margin;

  /** Labels keep off this line. */
  avoid(line: Segment): void {
    this.lines.add(line);
  }

  /** Labels keep out of this area while there is other room. */
  keepClear(area: Box): void {
    this.areas.push(area);
  }

  /** Lettering that was set by itself, in lines below one another; labels keep clear of it. */
  fix(placed: Placed): void {
    this.placed.push(placed);
  }

  /** Finds a place for one label. `bottom` is where the picture ends so far: there is always room below it. */
  place(wish: Wish, bottom: number): Placed {
    const size = wish.size ?? LETTERING.label;
    const lines = linesOf(wish.text, wish.width ?? 150, size, wish.bold);
    const width = Math.max(...lines.map((line) => widthOf(line, size, wish.bold)));
    const height = lines.length * size * LETTERING.line;
    const found = this.search(wish, width, height);
    if (!found) this.lost += 1;
    const { box, leader } = found ?? this.below(wish, width, height, bottom);
    const placed: Placed = { wish, lines, size, box, leader };
    this.placed.push(placed);
    if (leader) this.avoid(leader);
    return placed;
  }

  /** The lowest point of all labels. */
  foot(): number {
    return Math.max(this.top, ...this.placed.map(({ box }) => box.y + box.height));
  }

  /** The first place that is good enough, pass by pass. Each place is looked at once, whatever the number of passes. */
  private search(wish: Wish, width: number, height: number): Candidate | undefined {
    const starts = (wish.sides ?? DEFAULT_SIDES).map((side) => boxAt(wish, side, width, height));
    const ring = starts.length * WAYS.length;
    const seen: Candidate[] = [];
    for (const { strict, rings } of PASSES) {
      for (let i = 0; i < starts.length + rings * ring; i += 1) {
        const candidate = seen[i] ?? this.candidate(wish, starts, i);
        seen[i] = candidate;
        if (candidate.grade >= (strict ? FREE : ACROSS)) return candidate;
      }
    }
    return undefined;
  }

  /** The nth place to try: beside the point first, then ring by ring round each of those places. */
  private candidate(wish: Wish, starts: readonly Box[], n: number): Candidate {
    const round = n - starts.length;
    if (round < 0) return this.graded(wish, starts[n] as Box, true);
    const way = WAYS[round % WAYS.length] as Point;
    const start = starts[Math.floor(round / WAYS.length) % starts.length] as Box;
    const ring = 1 + Math.floor(round / (WAYS.length * starts.length));
    const off = {
      x: start.x + way.x * ring * STEP,
      y: start.y + way.y * ring * STEP,
      width: start.width,
      height: start.height,
    };
    return this.graded(wish, off, ring === 1);
  }

  private graded(wish: Wish, wished: Box, near: boolean): Candidate {
    const box = clamped(wished, this.top);
    const leader = this.leaderOf(wish, box, near);
    const room = grown(box, AIR);
    const grade = this.isTaken(room, leader) ? TAKEN : this.isAcross(wish, box, room) ? ACROSS : FREE;
    return { box, leader, grade };
  }

  /**
   * Below everything there is always room: straight down if the leader runs clear of other labels, else where across
   * the picture it does, a little lower each time.
   */
  private below(wish: Wish, width: number, height: number, bottom: number): Candidate {
    const foot = Math.max(bottom, this.foot()) + 4;
    const under = (x: number, down: number): Candidate =>
      this.graded(wish, { x, y: foot + down * height, width, height }, false);
    const middle = wish.at.x - width / 2;
    for (let down = 0; down < 12; down += 1) {
      for (const off of ASIDE) {
        const candidate = under(middle + off, down);
        if (candidate.grade !== TAKEN) return candidate;
      }
    }
    return under(middle, 0);
  }

  private leaderOf(wish: Wish, box: Box, near: boolean): Segment | undefined {
    if (wish.leader === "never") return undefined;
    if (near && wish.leader !== "always" && !wish.stand) return undefined;
    const to = wish.at;
    const from = nearestOn(box, to);
    return Math.hypot(from.x - to.x, from.y - to.y) < 3 ? undefined : { from, to };
  }

  /** Would the label or its leader meet another label or its leader? */
  private isTaken(room: Box, leader: Segment | undefined): boolean {
    return this.placed.some(
      (other) =>
        overlap(room, other.box) ||
        (leader !== undefined && inside(leader, other.box) !== undefined) ||
        (other.leader !== undefined && inside(other.leader, room) !== undefined),
    );
  }

  /** Would the label lie on a line, in an area kept clear, or outside the region it should stay in? */
  private isAcross({ within }: Wish, box: Box, room: Box): boolean {
    if (within && !contains(within, box)) return true;
    return this.lines.meets(room) || this.areas.some((area) => overlap(room, area));
  }
}
