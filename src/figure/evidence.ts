/** The maker's dated originals: each a mark at its year, and the share gauged with its interval. */

import { countedRows, GAUGED } from "../solve/evidence.ts";
import type { Plan } from "../solve/plan.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { PICTURE } from "./language.ts";
import { penOf, shownOf } from "./measure.ts";
import type { Point } from "./svg.ts";

const LEFT = PICTURE.margin + 12;
const RIGHT = PICTURE.width - PICTURE.margin - 12;
/** Room for one mark above another. */
const STEP = 11;
const RADIUS = 3.6;

/** Gauged: a solid dot. Set otherwise: an open square. */
function mark(drawing: Drawing, { x, y }: Point, gauged: boolean): void {
  if (gauged) drawing.dot({ x, y }, RADIUS);
  else {
    const [a, b] = [RADIUS - 0.4, -(RADIUS - 0.4)];
    const corners: [number, number][] = [
      [a, a],
      [b, a],
      [b, b],
      [a, b],
    ];
    drawing.line(
      "body",
      corners.map(([dx, dy]) => ({ x: x + dx, y: y + dy })),
      { closed: true, soft: true },
    );
  }
}

/** Marks stack up at their year; a list too long for its column is said in the note, never cut. */
function drawYears(drawing: Drawing, plan: Plan): void {
  const rows = [...countedRows(plan.recipe)].sort((a, b) => a.year - b.year);
  const years = rows.map(({ year }) => year);
  const [first, last] = [Math.min(...years), Math.max(...years)];
  const at = (year: number): number =>
    first === last ? (LEFT + RIGHT) / 2 : LEFT + ((RIGHT - LEFT) * (year - first)) / (last - first);
  const heights = new Map<number, number>();
  for (const { year } of rows) heights.set(year, (heights.get(year) ?? 0) + 1);
  const tallest = Math.max(...heights.values());
  const step = Math.min(STEP, 260 / tallest);
  const ground = drawing.bottom + 14 + tallest * step;
  const stacked = new Map<number, number>();
  for (const { year, set } of rows) {
    const below = stacked.get(year) ?? 0;
    stacked.set(year, below + 1);
    mark(drawing, { x: at(year), y: ground - 7 - below * step }, GAUGED.has(set));
  }
  drawing.line("body", [
    { x: LEFT - 8, y: ground },
    { x: RIGHT + 8, y: ground },
  ]);
  for (const year of new Set([first, last])) {
    drawing.line(
      "leader",
      [
        { x: at(year), y: ground },
        { x: at(year), y: ground + 4 },
      ],
      { soft: true },
    );
    drawing.label(String(year), { x: at(year), y: ground + 4 }, { sides: ["below"], leader: "never" });
  }
  drawing.settle();
}

/** A scale from none to all, the share on it, and the interval as a bar between two ends. */
function drawShare(drawing: Drawing, plan: Plan): void {
  const y = drawing.bottom + 42;
  const at = (share: number): number => LEFT + (RIGHT - LEFT) * share;
  const [low, share, high] = ["evidence.low", "evidence.share", "evidence.high"].map((name) =>
    penOf(plan, name),
  ) as [number, number, number];
  drawing.line("body", [
    { x: at(0), y },
    { x: at(1), y },
  ]);
  for (const [end, words] of [
    [0, "none"],
    [1, "all"],
  ] as const) {
    drawing.line(
      "leader",
      [
        { x: at(end), y: y - 4 },
        { x: at(end), y: y + 4 },
      ],
      { soft: true },
    );
    drawing.label(words, { x: at(end), y: y + 5 }, { sides: ["below"], leader: "never" });
  }
  const bar = y - 12;
  drawing.line("body", [
    { x: at(low), y: bar },
    { x: at(high), y: bar },
  ]);
  for (const end of [low, high])
    drawing.line(
      "body",
      [
        { x: at(end), y: bar - 4 },
        { x: at(end), y: bar + 4 },
      ],
      { soft: true },
    );
  drawing.dot({ x: at(share), y: bar }, RADIUS);
  drawing.label(
    `${shownOf(plan, "evidence.share")} gauged`,
    { x: at(share), y: bar - 4 },
    { sides: ["above"], leader: "moved" },
  );
  drawing.settle();
}

export function drawEvidence(plan: Plan): Drawing {
  const drawing = new Drawing("evidence");
  drawing.heading("Dated originals, each at its year");
  drawYears(drawing, plan);
  drawing.note("A dot: gauged, all round or behind a plain front. An open square: set otherwise.");
  drawing.heading("The share that is gauged");
  drawShare(drawing, plan);
  drawing.note(
    `The dot is this list's share; the bar what it may well be: ${shownOf(plan, "evidence.low")} to ${shownOf(plan, "evidence.high")}, from ${shownOf(plan, "evidence.items")} originals.`,
  );
  return drawing;
}

/** Does the plan count any originals? */
export const hasEvidence = (plan: Plan): boolean => plan.values.has("evidence.share");

export function evidence(plan: Plan): Figure {
  const shown = (name: string): string => shownOf(plan, name);
  return drawEvidence(plan).finish(
    "What the dated originals say",
    `Of ${shown("evidence.items")} dated originals near this garment's year, each drawn as a mark at its year, ${shown("evidence.gauged")} are gauged: ${shown("evidence.share")}. The 95 % interval for the share runs from ${shown("evidence.low")} to ${shown("evidence.high")}.`,
  );
}
