/** The cloth of the gauging figure: fold, turned-down layer, wrong side below its cut edge, stay. */
import type { Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING } from "./language.ts";
import { pen, penOf, printer, turnDownNear } from "./measure.ts";
import { besideLeft, LEFT, PAST, RIGHT, type Stretch } from "./stretch.ts";
import { rectangle } from "./svg.ts";
import { torn } from "./torn.ts";

/** How far down the cloth is drawn, in units: to its cut edge and a little more, within these. */
const DEEPEST = 170;
const LEAST_DEEP = 70;

/** The fold, the turned-down layer to its cut edge, the wrong side below, the stay between the layers. Returns the foot. */
export function drawCloth(drawing: Drawing, plan: Plan, stretch: Stretch): number {
  const { section, scale, fold } = stretch;
  const turnDown = turnDownNear(plan, section.clothFrom);
  const last = fold + penOf(plan, "gauging.lastRow") * scale;
  const edge = fold + pen(turnDown) * scale;
  const foot = fold + Math.max(LEAST_DEEP, last - fold + 24, Math.min(DEEPEST, edge - fold + 24));
  const [from, to] = [LEFT - PAST, RIGHT + PAST];
  const cut = edge < foot - 8;
  drawing.line("fold", [
    { x: from, y: fold },
    { x: to, y: fold },
  ]);
  if (cut) {
    drawing.line("cut", [
      { x: from, y: edge },
      { x: to, y: edge },
    ]);
    drawing.fill("wrong", rectangle(from, edge, to - from, foot - edge));
    drawing.keepClear({ x: from, y: edge, width: to - from, height: foot - edge });
  }
  drawing.line("station", [
    { x: RIGHT, y: fold },
    { x: RIGHT, y: foot },
  ]);
  drawing.line("break", torn({ x: from, y: fold }, { x: from, y: foot }));
  drawing.line("break", torn({ x: to, y: fold }, { x: to, y: foot }));
  drawing.line("break", torn({ x: from, y: foot }, { x: to, y: foot }));
  drawing.label("fold", { x: from, y: fold }, { sides: ["left"], leader: "never" });
  const depth = `${printer(plan).tape(turnDown)} below the fold at the dashed line`;
  drawing.label(
    cut ? `cut edge, ${depth}` : `its cut edge is further down, ${depth}`,
    { x: LEFT + 130, y: cut ? edge : foot },
    { stand: { x: LEFT + 130, y: foot + 2 }, sides: ["below"], width: 200, leader: cut ? "moved" : "never" },
  );
  drawing.label(
    "turned down: right side of the cloth",
    { x: (LEFT + RIGHT) / 2, y: (last + Math.min(edge, foot)) / 2 },
    { sides: ["on", "below"], width: 240, size: LETTERING.small },
  );
  return foot;
}

/** The stay is cut three eighths of an inch (1 cm) deeper than the last row. */
export function drawStay(drawing: Drawing, plan: Plan, stretch: Stretch): void {
  const { fold, scale } = stretch;
  const past = plan.recipe.show === "cm" ? 1 / 2.54 : 3 / 8;
  const y = fold + (penOf(plan, "gauging.lastRow") + past) * scale;
  drawing.line("hidden", [
    { x: LEFT - PAST, y },
    { x: RIGHT + PAST, y },
  ]);
  drawing.label(
    "edge of the stay",
    { x: LEFT - PAST, y },
    {
      stand: besideLeft(stretch, plan.rows.length),
      sides: ["left"],
      width: 60,
    },
  );
}
