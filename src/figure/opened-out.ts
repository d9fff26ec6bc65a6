/** The whipped seam opened out, seen from the outside: ridges close under the band, or under the cord of a piped edge. */
import type { Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import { shownOf } from "./measure.ts";
import type { SewnEdge } from "./sewn-edge.ts";
import { arc, type Point } from "./svg.ts";
import { torn } from "./torn.ts";

const BAND = 34;
const DOWN = 74;
/** How much of the space between two ridges one ridge takes to the eye. */
const FULL = 0.4;

export interface Row {
  readonly pleats: number;
  readonly spacing: number;
  readonly right: number;
  readonly edge: SewnEdge;
}

export function drawOpenedOut(drawing: Drawing, plan: Plan, { pleats, spacing, right, edge }: Row): void {
  const top = drawing.bottom + 12;
  const seam = top + BAND;
  const foot = seam + DOWN;
  const left = right - pleats * spacing;
  const [from, to] = [left - 8, right + 8];
  const across = (y: number): Point[] => [
    { x: from, y },
    { x: to, y },
  ];
  const bodice = edge.above === "bodice";
  if (bodice) drawing.line("break", torn({ x: from, y: top }, { x: to, y: top }));
  else drawing.line("finished", across(top));
  drawing.line(edge.piped ? "cord" : "finished", across(edge.piped ? seam - 2 : seam));
  if (edge.piped) drawing.line("seam", across(seam - 6), { soft: true });
  drawing.line("break", torn({ x: from, y: top }, { x: from, y: seam }));
  drawing.line("break", torn({ x: to, y: top }, { x: to, y: seam }));
  for (let i = 0; i < pleats; i += 1) {
    const x = right - (i + 0.5) * spacing;
    const half = spacing * FULL;
    const ridge: Point[] = [
      { x: x - half, y: foot },
      ...arc({ x, y: seam + 2 + half * 0.7 }, half, half * 0.7, 180, 360),
      { x: x + half, y: foot },
    ];
    drawing.line("body", ridge);
    if (!edge.piped) drawing.dot({ x, y: seam + 1 }, 1.1);
  }
  drawing.line("break", torn({ x: from, y: foot }, { x: to, y: foot }));
  drawing.label(
    bodice
      ? `bodice, cord ${shownOf(plan, "attach.piping.cord")}`
      : `${edge.above} ${shownOf(plan, "attach.band.depth")}`,
    { x: (from + to) / 2, y: top + (BAND - (edge.piped ? 7 : 0)) / 2 },
    {
      sides: ["on"],
      leader: "never",
    },
  );
  drawing.label("waist seam", { x: from, y: seam }, { sides: ["left"], width: 40, leader: "never" });
}
