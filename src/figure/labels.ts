/**
 * Places labels: none meets another, none leaves the picture, none lies on a line if room can be found elsewhere.
 * A label that has to move away from its point is joined to it by a leader line.
 */
import { type Box, grown, inside, nearestOn, overlap, type Segment } from "./box.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { linesOf, widthOf } from "./lettering.ts";
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
const AROUND = 16;

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

const clamped = (box: Box, top: number): Box => ({
  ...box,
  x: Math.max(PICTURE.margin, Math.min(box.x, PICTURE.width - PICTURE.margin - box.width)),
  y: Math.max(top, box.y),
});

const contains = (outer: Box, box: Box): boolean =>
  box.x >= outer.x &&
  box.y >= outer.y &&
  box.x + box.width <= outer.x + outer.width &&
  box.y + box.height <= outer.y + outer.height;

/** What stands on the page already. */
export class Labels {
  readonly placed: Placed[] = [];
  readonly lines: Segment[] = [];
  readonly areas: Box[] = [];
  /** Nothing may stand higher than this, the foot of the heading. */
  top: number = PICTURE.margin;

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
    const finish = (box: Box, leader: Segment | undefined): Placed => {
      const placed: Placed = { wish, lines, size, box, leader };
      this.placed.push(placed);
      if (leader) this.lines.push(leader);
      return placed;
    };
    for (const { strict, rings } of PASSES) {
      for (const { box, near } of this.candidates(wish, width, height, rings)) {
        const leader = this.leaderOf(wish, box, near);
        if (this.free(wish, box, leader, strict)) return finish(box, leader);
      }
    }
    const box = clamped(
      { x: wish.at.x - width / 2, y: Math.max(bottom, this.foot()) + 4, width, height },
      this.top,
    );
    return finish(box, this.leaderOf(wish, box, false));
  }

  /** The lowest point of all labels. */
  foot(): number {
    return Math.max(this.top, ...this.placed.map(({ box }) => box.y + box.height));
  }

  private *candidates(
    wish: Wish,
    width: number,
    height: number,
    rings: number,
  ): Generator<{ box: Box; near: boolean }> {
    const sides = wish.sides ?? DEFAULT_SIDES;
    for (const side of sides) yield { box: clamped(boxAt(wish, side, width, height), this.top), near: true };
    for (let ring = 1; ring <= rings; ring += 1) {
      for (const side of sides) {
        const start = boxAt(wish, side, width, height);
        for (let i = 0; i < AROUND; i += 1) {
          const angle = (2 * Math.PI * i) / AROUND;
          const x = start.x + Math.cos(angle) * ring * STEP;
          const y = start.y + Math.sin(angle) * ring * STEP;
          yield { box: clamped({ ...start, x, y }, this.top), near: ring === 1 };
        }
      }
    }
  }

  private leaderOf(wish: Wish, box: Box, near: boolean): Segment | undefined {
    if (wish.leader === "never") return undefined;
    if (near && wish.leader !== "always" && !wish.stand) return undefined;
    const to = wish.at;
    const from = nearestOn(box, to);
    return Math.hypot(from.x - to.x, from.y - to.y) < 3 ? undefined : { from, to };
  }

  private free(wish: Wish, box: Box, leader: Segment | undefined, strict: boolean): boolean {
    const room = grown(box, AIR);
    const taken = this.placed.some(
      (other) =>
        overlap(room, other.box) ||
        (leader !== undefined && inside(leader, other.box) !== undefined) ||
        (other.leader !== undefined && inside(other.leader, room) !== undefined),
    );
    if (taken) return false;
    if (!strict) return true;
    if (wish.within && !contains(wish.within, box)) return false;
    return !(this.lines.some((line) => inside(line, room)) || this.areas.some((area) => overlap(room, area)));
  }
}
