/** Balance: the skirt lying flat, its hem straight at the foot, the turn-down shaded along the straight cut top. */
import { equal, toFloat } from "../quantity/quantity.ts";
import type { Plan, Station } from "../solve/plan.ts";
import { dimension } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { type Half, halfOf } from "./half.ts";
import type { Side } from "./labels.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { pen, penOf, printer, shownOf } from "./measure.ts";
import { type Point, through } from "./svg.ts";

const LEFT = 40;
const WIDE = PICTURE.width - 2 * LEFT;
/** Tallest flat skirt in the picture. */
const TALLEST = 260;
/** The deepest turn-down in the enlarged strip. */
const STRIP = 84;
const MOST_TIMES = 8;
const NAME = 68;

export function drawBalance(plan: Plan): Drawing {
  const drawing = new Drawing("balance");
  drawing.heading("Right side of the cloth, opened flat. Cut top upwards, hem at the foot.");
  const unlike = plan.recipe.wearer.unlikeSides;
  const onRight = toFloat(plan.opening.share.value) > 0.5;
  const sides: readonly Half["side"][] = unlike ? ["left", "right"] : [onRight ? "right" : "left"];
  const [first] = plan.curve;
  const level = plan.curve.every(({ turnDown }) => first && equal(turnDown, first.turnDown));
  for (const side of sides) {
    const other = unlike ? "" : " The other half is the same, turned about.";
    drawing.note(`The wearer's ${side} half, to scale in both directions.${other}`, { above: 8 });
    drawSkirt(drawing, plan, halfOf(plan, side));
    if (!level) drawStrip(drawing, plan, halfOf(plan, side));
  }
  if (level) drawing.note(`Turned down ${shownOf(plan, "turnDown.front")} all round.`);
  drawing.note(
    "The fold is a smooth line that never dips between two marks. Places are measured along the cut top from centre front.",
  );
  return drawing;
}

/** Across the page: the wearer's left half has centre front at the left, the right half at the right, as they are seen. */
function acrossOf({ side, round }: Half): (fromFront: number) => number {
  const scale = WIDE / round;
  return side === "left" ? (at) => LEFT + at * scale : (at) => LEFT + WIDE - at * scale;
}

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

function drawSkirt(drawing: Drawing, plan: Plan, half: Half): void {
  const across = acrossOf(half);
  const height = penOf(plan, "breadths.cut") - penOf(plan, "hem.allowance");
  const scale = Math.min(WIDE / half.round, TALLEST / height);
  const top = drawing.bottom + 34;
  const hem = top + height * scale;
  const fold = half.curve.map(({ fromFront, turnDown }) => ({
    x: across(fromFront),
    y: top + turnDown * scale,
  }));
  drawing.fill(
    "turn-down",
    through([{ x: across(0), y: top }, { x: across(half.round), y: top }, ...[...fold].reverse()], true),
  );
  levelLine(drawing, "cut", top);
  drawing.line("fold", fold);
  levelLine(drawing, "finished", hem);
  for (const x of [LEFT, LEFT + WIDE]) {
    drawing.line("station", [
      { x, y: top },
      { x, y: hem },
    ]);
  }
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

function levelLine(drawing: Drawing, kind: "cut" | "finished", y: number): void {
  drawing.line(kind, [
    { x: LEFT, y },
    { x: LEFT + WIDE, y },
  ]);
}

/** The turn-down alone, its depth enlarged by a whole number that is said. */
function drawStrip(drawing: Drawing, plan: Plan, half: Half): void {
  const across = acrossOf(half);
  const flat = WIDE / half.round;
  const deepest = Math.max(...half.curve.map(({ turnDown }) => turnDown));
  const times = Math.max(1, Math.min(MOST_TIMES, Math.floor(STRIP / (deepest * flat))));
  const scale = flat * times;
  drawing.note(
    times === 1
      ? `The turn-down of the ${half.side} half:`
      : `The turn-down of the ${half.side} half. Here depths are drawn ${times} times too large:`,
    { above: 12 },
  );
  const top = drawing.bottom + 12;
  const foot = top + deepest * scale + 14;
  const fold = half.curve.map(({ fromFront, turnDown }) => ({
    x: across(fromFront),
    y: top + turnDown * scale,
  }));
  drawing.fill(
    "turn-down",
    through([{ x: across(0), y: top }, { x: across(half.round), y: top }, ...[...fold].reverse()], true),
  );
  levelLine(drawing, "cut", top);
  drawing.line("fold", fold);
  for (const x of [LEFT, LEFT + WIDE])
    drawing.line("station", [
      { x, y: top },
      { x, y: foot },
    ]);
  for (const station of half.stations) {
    const x = across(station.fromFront);
    const y = top + pen(station.turnDown) * scale;
    drawing.dot({ x, y }, 2.6);
    drawing.label(
      `${printer(plan).tape(station.turnDownMark)}`,
      { x, y },
      {
        sides: ["below"],
        gap: 6,
        width: NAME,
      },
    );
  }
  drawing.settle();
}

export function balance(plan: Plan): Figure {
  const { tape } = printer(plan);
  const measures = plan.balance
    .filter(({ measured }) => measured)
    .map((s) => `${s.station} ${tape(s.finishedMark)} up and ${tape(s.turnDownMark)} turned down`);
  return drawBalance(plan).finish(
    "Balance: measured up from the hem",
    `The skirt lying flat, hem straight at the foot, cut edge straight at the top. Measured up from the finished hem, and what is over turned to the inside: ${measures.join("; ")}. The fold between them is one smooth curve; everything above it, shaded, is turned down.`,
  );
}
