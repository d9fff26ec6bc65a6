/** Balance: the skirt lying flat, its hem straight at the foot, the turn-down shaded along the straight cut top. */
import { equal, toFloat } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import { drawSkirt } from "./balance-skirt.ts";
import { drawStrip } from "./balance-strip.ts";
import { Drawing } from "./drawing.ts";
import { noteEstimate } from "./estimate.ts";
import type { Figure } from "./figure.ts";
import { type Half, halfOf } from "./half.ts";
import { printer, shownOf } from "./measure.ts";

/** Tallest flat skirt and deepest turn-down in the picture: where both halves are drawn, each has less. */
const ROOM = { one: { skirt: 260, strip: 84 }, each: { skirt: 190, strip: 60 } } as const;

/** Measures stand beside their arrows; where they would not all find room, letters do and a list has the measures. */
export function drawBalance(plan: Plan): Drawing {
  const drawing = drawHalves(plan, false);
  return drawing.labels.lost > 0 ? drawHalves(plan, true) : drawing;
}

function drawHalves(plan: Plan, listed: boolean): Drawing {
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
    const room = unlike ? ROOM.each : ROOM.one;
    drawSkirt(drawing, plan, halfOf(plan, side), { tallest: room.skirt, listed });
    if (!level) drawStrip(drawing, plan, halfOf(plan, side), room.strip);
  }
  if (level) drawing.note(`Turned down ${shownOf(plan, "turnDown.front")} all round.`);
  drawing.note(
    `The fold is a smooth line that never dips between two marks${plan.recipe.attach.waistEdge?.set === "edge" ? "; in front it runs straight down to the point" : ""}. Places are measured along the cut top from centre front.`,
  );
  noteEstimate(drawing, plan);
  return drawing;
}

export function balance(plan: Plan): Figure {
  const { tape } = printer(plan);
  const measures = plan.balance
    .filter(({ measured }) => measured)
    .map((s) => `${s.station} ${tape(s.finishedMark)} up and ${tape(s.turnDownMark)} turned down`);
  return drawBalance(plan).finish(
    "Balance: measured up from the hem",
    `The ${plan.recipe.garment} lying flat, hem straight at the foot, cut edge straight at the top. Measured up from the finished hem, and what is over turned to the inside: ${measures.join("; ")}. The fold between them is one smooth curve; everything above it, shaded, is turned down.`,
  );
}
