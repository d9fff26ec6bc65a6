/** The dog-leg closing in three stages, from the front: open; the part band hooked; the bodice closed over it. */
import type { Plan } from "../solve/plan.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { shownOf } from "./measure.ts";
import { partBandOf } from "./sewn-edge.ts";
import type { Point } from "./svg.ts";
import { torn } from "./torn.ts";

const MIDDLE = PICTURE.width / 2;
/** From centre front to the opening, to the end of the lap, and to the side, on the page. */
const OPENING = 52;
const LAP = 68;
const SIDE = 92;
const TALL = 56;
const BAND = 12;

const p = (x: number, y: number): Point => ({ x, y });
type Stage = "open" | "hooked" | "closed";

export function drawDogLeg(plan: Plan): Drawing {
  const drawing = new Drawing("dog-leg");
  const half = partBandOf(plan)?.half ?? "left";
  drawing.note(
    `Seen from the front: the wearer's left is at the right of the page. The opening is on her ${half}. Not in proportion.`,
  );
  for (const stage of ["open", "hooked", "closed"] as const) drawStage(drawing, plan, half, stage);
  return drawing;
}

const TITLES: Readonly<Record<Stage, string>> = {
  open: "1. Open",
  hooked: "2. The part band hooked",
  closed: "3. The bodice closed",
};

function wordsOf(plan: Plan, half: string, stage: Stage): string {
  const other = half === "left" ? "right" : "left";
  const { garment } = plan.recipe;
  if (stage === "open")
    return `The part band hangs from the ${other} front at centre front, with the ${garment} that it carries. The ${half} front is free from centre front to the opening, ${shownOf(plan, "opening.fromFront")}.`;
  if (stage === "hooked")
    return `The band lies across beneath the ${half} front and under its edge at the opening: its end hooks inside the bodice, ${shownOf(plan, "hooks.band")} hooks; then the placket, ${shownOf(plan, "hooks.placket")}. The ${garment}'s edge that hangs on the bodice lies over the one that hangs on the band.`;
  return `The ${half} front lies over the band. Bodice first, from the waist upwards; then the hook at the corner above the opening, and the one at centre front: ${shownOf(plan, "hooks.edge")} hooks on its edge.`;
}

function drawStage(drawing: Drawing, plan: Plan, half: "left" | "right", stage: Stage): void {
  drawing.heading(TITLES[stage]);
  const way = half === "left" ? 1 : -1;
  const x = (out: number): number => MIDDLE + way * out;
  const top = drawing.bottom + (stage === "open" ? 34 : 18);
  const waist = top + TALL;
  const foot = waist + 76;
  const name = (text: string, at: Point, stand: Point, width = 84): void =>
    drawing.label(text, at, {
      stand,
      sides: [stand.x < MIDDLE ? "left" : "right"],
      width,
      size: LETTERING.small,
      leader: "always",
    });
  // The front that the band hangs from, with its skirt.
  drawing.line("body", [p(x(-SIDE), top), p(x(-SIDE + 8), waist)]);
  drawing.line("body", [p(x(0), top), p(x(0), waist)]);
  drawing.line("cord", [p(x(-SIDE + 8), waist), p(x(0), waist)]);
  drawing.line("break", torn(p(x(-SIDE - 14), foot), p(x(SIDE + 14), foot)));
  drawing.line("body", [p(x(-SIDE + 8), waist), p(x(-SIDE - 14), foot)]);
  drawing.line("body", [p(x(SIDE - 8), waist), p(x(SIDE + 14), foot)]);
  // The bodice behind the opening, with the skirt that hangs on it.
  drawing.line("cord", [p(x(OPENING), waist), p(x(SIDE - 8), waist)]);
  if (stage === "open") {
    const end = p(x(LAP - 16), waist + 30);
    drawing.line("band", [p(x(0), waist + BAND / 2), end]);
    drawing.line("fold", [p(x(0), waist + BAND), p(end.x - way * 4, end.y + 8)], { soft: true });
    drawing.line("body", [p(end.x - way * 4, end.y + 8), p(x(OPENING - 18), foot)]);
    drawing.line("finished", [p(x(OPENING), waist), p(x(OPENING + 4), foot - 10)]);
    swung(drawing, x, top, waist);
    name("part band, loose", p((x(0) + end.x) / 2, waist + BAND / 2 + 12), p(x(-SIDE - 10), waist + 34));
    drawing.label(`${half} front, swung open`, p(x(SIDE + 16), top + 3), {
      stand: p(x(SIDE - 10), top - 14),
      sides: ["above"],
      width: 150,
      size: LETTERING.small,
      leader: "always",
    });
    name("opening", p(x(OPENING + 2), waist + 44), p(x(SIDE + 30), waist + 40), 60);
  } else {
    const hidden = stage === "closed";
    drawing.line("hidden", [p(x(OPENING), waist + 4), p(x(LAP), waist + 4), p(x(LAP), waist - BAND + 4)], {
      soft: true,
    });
    if (hidden) drawing.line("hidden", [p(x(0), waist - BAND), p(x(OPENING), waist - BAND)], { soft: true });
    else {
      drawing.line("band", [p(x(0), waist - 2), p(x(OPENING), waist - 2)]);
      swung(drawing, x, top, waist);
      for (const [i, up] of [0, 1].entries()) drawing.dot(p(x(LAP - 4), waist + 1 - up * 6 - i), 1.8);
    }
    drawing.line("finished", [p(x(OPENING), waist), p(x(OPENING + 4), foot - 10)]);
    drawing.dot(p(x(OPENING + 2), waist + 34), 1.8);
    if (hidden) {
      drawing.line("finished", [p(x(0), waist), p(x(OPENING), waist)]);
      drawing.line("body", [p(x(SIDE), top), p(x(SIDE - 8), waist)]);
      for (const out of [0, OPENING]) drawing.dot(p(x(out), waist - 4), 2.4);
      name("hook at centre front", p(x(0), waist - 4), p(x(-SIDE - 10), waist + 2), 70);
      name("hook at the corner", p(x(OPENING), waist - 4), p(x(SIDE + 30), top + 6), 66);
      name("plain edge, over the band", p(x(OPENING / 2), waist), p(x(-SIDE - 14), waist + 44), 66);
    } else {
      name("part band", p(x(OPENING / 2), waist - 2), p(x(-SIDE - 10), waist + 26));
      name("its end, hidden", p(x(LAP), waist - 2), p(x(SIDE + 28), waist + 26), 48);
    }
    name("placket hook", p(x(OPENING + 2), waist + 34), p(x(SIDE + 30), waist + 58), 60);
  }
  drawing.settle();
  drawing.note(wordsOf(plan, half, stage));
}

/** The free front, turned back on its side seam like a door. */
function swung(drawing: Drawing, x: (out: number) => number, top: number, waist: number): void {
  drawing.line("body", [p(x(SIDE), top), p(x(SIDE - 8), waist)]);
  drawing.line("body", [
    p(x(SIDE), top),
    p(x(SIDE + 34), top + 8),
    p(x(SIDE + 26), waist + 8),
    p(x(SIDE - 8), waist),
  ]);
}

/** Order of closing, and what covers what. */
export function dogLeg(plan: Plan): Figure {
  const half = partBandOf(plan)?.half ?? "left";
  return drawDogLeg(plan).finish(
    "The dog-leg closing in three stages",
    (["open", "hooked", "closed"] as const)
      .map((stage) => `${TITLES[stage]}. ${wordsOf(plan, half, stage)}`)
      .join(" "),
  );
}
