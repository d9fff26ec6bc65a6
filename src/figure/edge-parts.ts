/** Parts of the section through the waist: band or bodice with its cord above the waist seam. */

import type { Plan } from "../solve/plan.ts";
import { dimension } from "./dimension.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING } from "./language.ts";
import { shownOf } from "./measure.ts";
import type { ColumnName } from "./name-column.ts";
import type { SewnEdge } from "./sewn-edge.ts";
import { arc, type Point } from "./svg.ts";
import { torn } from "./torn.ts";

export interface Standing {
  /** The outer face of the edge across the page; the body is at the left. */
  readonly x: number;
  /** Height of the waist seam on the page, and of the top of what is drawn above it. */
  readonly seam: number;
  readonly top: number;
}

export const CORD_SIZE = 9;
const GAP = 9;
const p = (x: number, y: number): Point => ({ x, y });
const small = { size: LETTERING.small, leader: "always" } as const;

export interface DrawnEdge {
  /** Where its cord or its outer turn lies. */
  readonly at: Point;
  /** What is to be named at the right of it, from the top down. */
  readonly names: readonly ColumnName[];
}

/** Draws what stands above the seam. */
export function drawEdge(drawing: Drawing, plan: Plan, edge: SewnEdge, standing: Standing): DrawnEdge {
  return edge.above === "bodice"
    ? drawBodice(drawing, plan, standing)
    : drawBand(drawing, plan, edge, standing);
}

/** A band: outer and inner face turned in at the lower edges (from one piece folded at the top; else seamed). */
function drawBand(drawing: Drawing, plan: Plan, edge: SewnEdge, { x, seam, top }: Standing): DrawnEdge {
  const [outer, inner] = [x, x - 3 * GAP];
  const foot = edge.piped ? seam - CORD_SIZE : seam;
  const turn = Math.min((foot - top) * 0.45, 24);
  const face = (at: number, way: 1 | -1): Point[] => [
    p(at, top + 6),
    p(at, foot - 4),
    ...arc(p(at + (way * GAP) / 2, foot - 4), GAP / 2, 4, way === 1 ? 180 : 0, way === 1 ? 0 : 180).map(
      ({ x: ax, y }) => p(ax, way === 1 ? 2 * (foot - 4) - y : y),
    ),
    p(at + way * GAP, foot - turn),
  ];
  const low = (points: Point[]): Point[] =>
    points.map(({ x: px, y }) =>
      p(px, y < foot - 4 && y > foot - 8.1 && y !== foot - turn ? 2 * (foot - 4) - y : y),
    );
  drawing.line("cloth", low(face(outer, -1)));
  drawing.line("cloth", low(face(inner, 1)));
  if (plan.recipe.attach.band.from === "one-piece")
    drawing.line("cloth", arc(p((outer + inner) / 2, top + 6), (outer - inner) / 2, 6, 180, 360));
  else {
    drawing.line("cloth", [p(outer, top + 6), p(outer - GAP, top + 3), p(outer - GAP, top + turn)]);
    drawing.line("cloth", [p(inner, top + 6), p(inner + GAP, top + 3), p(inner + GAP, top + turn)]);
    drawing.line("thread", [p(outer - GAP - 3, top + 5), p(inner + GAP + 3, top + 5)]);
  }
  const made = plan.recipe.attach.band.from === "one-piece" ? "folded" : "seamed";
  const names = [
    { text: `${edge.name}, ${made} at the top`, at: p(outer, top + 8) },
    { text: `turned in ${shownOf(plan, "attach.band.turning")}`, at: p(outer - GAP, foot - turn + 2) },
  ];
  if (!edge.piped) return { at: p(outer, seam), names };
  const at = p(outer - 4, seam - CORD_SIZE / 2);
  return { at, names: [...names, drawCord(drawing, plan, at, p(outer - 1.5 * GAP, foot - turn))] };
}

/** The bodice: its outside turned up over the piping's turnings, the lining overcast to them. */
function drawBodice(drawing: Drawing, plan: Plan, { x, seam, top }: Standing): DrawnEdge {
  const foot = seam - CORD_SIZE;
  const turned = foot - 24;
  drawing.line("cloth", [
    p(x, top),
    p(x, foot - 4),
    ...arc(p(x - GAP / 2, foot - 4), GAP / 2, 4, 0, 180),
    p(x - GAP, turned + 10),
  ]);
  drawing.line("cloth", [p(x - 4 * GAP, top), p(x - 4 * GAP, foot - 8)]);
  drawing.line("break", torn(p(x - 4 * GAP - 8, top), p(x + 8, top)));
  drawing.line("thread", [p(x - 4 * GAP - 3, turned + 4), p(x - 1.6 * GAP, turned + 4)]);
  drawing.label("bodice", p(x, top + 16), { sides: ["right"], gap: 8, leader: "never" });
  drawing.label("lining", p(x - 4 * GAP, top + 16), { sides: ["left"], gap: 8, leader: "never" });
  drawing.label(
    `turnings ${shownOf(plan, "attach.piping.turning")}, overcast to the lining`,
    p(x - 2.4 * GAP, turned + 4),
    {
      stand: p(x - 4 * GAP - 22, turned - 2),
      sides: ["left"],
      width: 84,
      ...small,
    },
  );
  const cord = p(x - 4, seam - CORD_SIZE / 2);
  return { at: cord, names: [drawCord(drawing, plan, cord, p(x - 2.2 * GAP, turned))] };
}

/** The cord in its casing: a round, the strip about it, both its ends turned up inside. Returns its name. */
function drawCord(drawing: Drawing, plan: Plan, at: Point, ends: Point): ColumnName {
  const r = CORD_SIZE / 2;
  drawing.dot(at, r - 1.4);
  const neck = at.y - r - 3;
  drawing.line("body", [
    p(ends.x, ends.y),
    p(at.x - 3, neck),
    ...arc(at, r + 0.8, r + 0.8, 235, -55),
    p(at.x - 1, neck - 2),
    p(ends.x + 4, ends.y),
  ]);
  return { text: `cord ${shownOf(plan, "attach.piping.cord")}, in its casing`, at: p(at.x + r, at.y) };
}

/** The depth of a band, written beside it. */
export function measureBand(drawing: Drawing, plan: Plan, { x, seam, top }: Standing): void {
  dimension(drawing, p(x - 62, top), p(x - 62, seam), `depth ${shownOf(plan, "attach.band.depth")}`, {
    sides: ["left"],
    width: 60,
  });
}
