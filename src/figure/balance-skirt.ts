/** The whole half of the skirt in the balance figure, to scale. */
import type { Plan, Station } from "../solve/plan.ts";
import { arrow, dimension } from "./dimension.ts";
import type { Drawing } from "./drawing.ts";
import { acrossOf, drawEnds, drawTop, isCrowded, LEFT, levelLine, NAME, WIDE } from "./flat-half.ts";
import type { Half } from "./half.ts";
import type { Side } from "./labels.ts";
import { PICTURE } from "./language.ts";
import { pen, penOf, printer, shownOf } from "./measure.ts";
import { letterOf, nameRow } from "./row.ts";
import type { Point } from "./svg.ts";

interface Upright {
  readonly x: number;
  readonly sides: readonly Side[];
}

/** A place for an upright dimension beside any seam or end that stands there, and where its words go. */
function besides(half: Half, at: number, across: (at: number) => number): Upright {
  const x = across(at);
  const left = x < PICTURE.width / 2;
  const toward: readonly Side[] = left ? ["right", "left"] : ["left", "right"];
  const shift = left ? 9 : -9;
  const taken = [LEFT, LEFT + WIDE, ...half.seams.map((seam) => across(seam.fromFront))];
  return taken.some((line) => Math.abs(line - x) < 7)
    ? { x: x + shift, sides: toward }
    : { x, sides: ["on", ...toward] };
}

export interface Skirt {
  /** The tallest it may be on the page. */
  readonly tallest: number;
  /** Measures stand in a list below, not beside their arrows. */
  readonly listed: boolean;
}

interface Flat {
  readonly top: number;
  readonly hem: number;
  /** Units to an inch. */
  readonly scale: number;
  readonly listed: boolean;
}

/** The half at one scale both ways, no taller than it may be: hem, seams, opening, and how far up from the hem each place is measured. */
export function drawSkirt(drawing: Drawing, plan: Plan, half: Half, { tallest, listed }: Skirt): void {
  const across = acrossOf(half);
  const height = penOf(plan, "breadths.cut") - penOf(plan, "hem.allowance");
  const scale = Math.min(WIDE / half.round, tallest / height);
  const top = drawing.bottom + 34;
  const hem = top + height * scale;
  drawTop(drawing, half, top, scale);
  levelLine(drawing, "finished", hem);
  drawEnds(drawing, top, hem);
  for (const { fromFront, kind } of half.seams) {
    const x = across(fromFront);
    const from = kind === "seam" ? top : top + penOf(plan, "placket.unsewn") * scale;
    if (kind !== "slit") {
      drawing.line("seam", [
        { x, y: from },
        { x, y: hem },
      ]);
    }
    if (kind !== "seam") drawOpening(drawing, plan, { x, y: top }, from);
  }
  measureUp(drawing, plan, half, { top, hem, scale, listed: listed || isCrowded(half) });
  drawing.settle();
}

/**
 * How far up from the hem each station is measured, and its name and place in a row under the hem. A list has
 * them instead where there is no room: then letters stand in the row.
 */
function measureUp(drawing: Drawing, plan: Plan, half: Half, { top, hem, scale, listed }: Flat): void {
  const across = acrossOf(half);
  const up = (station: Station): string => printer(plan).tape(station.finishedMark);
  const names = half.stations.map((station, i) => ({
    text: listed ? letterOf(i) : nameAndPlace(plan, half, station),
    at: { x: across(station.fromFront), y: hem },
  }));
  nameRow(drawing, names, hem + 11, NAME);
  for (const [i, station] of half.stations.entries()) {
    const { x, sides } = besides(half, station.fromFront, across);
    const [foot, head] = [
      { x, y: hem },
      { x, y: top + pen(station.turnDown) * scale },
    ];
    if (listed) arrow(drawing, foot, head, true);
    else dimension(drawing, foot, head, up(station), { sides, width: 76, at: i % 2 === 0 ? 0.62 : 0.4 });
  }
  if (listed)
    for (const [i, station] of half.stations.entries())
      drawing.note(`${letterOf(i)}: ${nameAndPlace(plan, half, station)}, up from the hem ${up(station)}`, {
        above: 3,
      });
}

/** Left unsewn from the cut top: an open edge with a bar at its end. */
function drawOpening(drawing: Drawing, plan: Plan, top: Point, foot: number): void {
  drawing.line("finished", [top, { x: top.x, y: foot }]);
  drawing.line("finished", [
    { x: top.x - 4, y: foot },
    { x: top.x + 4, y: foot },
  ]);
  drawing.label(`opening: ${shownOf(plan, "placket.unsewn")} unsewn from the cut top`, top, {
    stand: { x: top.x, y: top.y - 10 },
    sides: ["above"],
    gap: 0,
    width: 300,
  });
}

function nameAndPlace(plan: Plan, half: Half, station: Station & { fromFront: number }): string {
  const name = station.station.replace(/^(left|right) /, "");
  return station.fromFront === 0 ? name : `${name} ${printer(plan).tape(half.placeOf(station))}`;
}
