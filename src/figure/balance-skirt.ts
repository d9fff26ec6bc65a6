/** The whole half of the skirt in the balance figure, to scale. */
import type { Plan, Station } from "../solve/plan.ts";
import { dimension } from "./dimension.ts";
import type { Drawing } from "./drawing.ts";
import { acrossOf, drawEnds, drawTop, LEFT, levelLine, NAME, WIDE } from "./flat-half.ts";
import type { Half } from "./half.ts";
import type { Side } from "./labels.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { pen, penOf, printer, shownOf } from "./measure.ts";
import type { Point } from "./svg.ts";

/** Tallest flat skirt in the picture. */
const TALLEST = 260;

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

/** The half at one scale both ways: hem, seams, opening, and how far up from the hem each place is measured. */
export function drawSkirt(drawing: Drawing, plan: Plan, half: Half): void {
  const across = acrossOf(half);
  const height = penOf(plan, "breadths.cut") - penOf(plan, "hem.allowance");
  const scale = Math.min(WIDE / half.round, TALLEST / height);
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
  for (const [i, station] of half.stations.entries()) {
    const { x, sides } = besides(half, station.fromFront, across);
    const turned = top + pen(station.turnDown) * scale;
    dimension(drawing, { x, y: hem }, { x, y: turned }, printer(plan).tape(station.finishedMark), {
      sides,
      width: 76,
      at: i % 2 === 0 ? 0.62 : 0.4,
    });
  }
  for (const station of half.stations) {
    const x = across(station.fromFront);
    drawing.label(
      nameAndPlace(plan, half, station),
      { x, y: hem },
      { stand: { x, y: hem + 6 }, sides: ["below"], width: NAME, size: LETTERING.small, leader: "always" },
    );
  }
  drawing.settle();
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
