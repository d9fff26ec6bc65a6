/** The layout of lining and interlining, each on its own cloth. */
import type { LiningLayout, Plan } from "../solve/plan.ts";
import { Drawing } from "./drawing.ts";
import { noteEstimate } from "./estimate.ts";
import type { Figure } from "./figure.ts";
import { drawOnCloth, drawScale } from "./layout.ts";
import { printer, shownOf } from "./measure.ts";

type Which = LiningLayout["which"];

/** Has this garment a layout of it? */
export const hasLayout =
  (which: Which) =>
  ({ linings }: Plan): boolean =>
    linings.some((lining) => lining.which === which);

function layoutOf({ linings }: Plan, which: Which) {
  const found = linings.find((lining) => lining.which === which);
  if (!found) throw new Error(`the plan has no ${which}`);
  return found.layout;
}

const draw =
  (which: Which) =>
  (plan: Plan): Drawing => {
    const drawing = new Drawing(`layout-${which}`);
    drawing.heading(`The ${which}, right side of the cloth up. The top of every piece lies upwards.`);
    drawing.note("To scale, one layer. Sizes are across × along the cloth.");
    const sheet = drawOnCloth(drawing, plan, {
      layout: layoutOf(plan, which),
      width: `${which}.width`,
      length: `${which}.length`,
    });
    drawing.settle();
    drawScale(drawing, plan, sheet);
    drawing.note("Grain runs along the cloth in every piece.");
    noteEstimate(drawing, plan);
    return drawing;
  };

export const drawLayoutLining = draw("lining");
export const drawLayoutInterlining = draw("interlining");

const figureOf =
  (which: Which) =>
  (plan: Plan): Figure => {
    const { tape } = printer(plan);
    const pieces = layoutOf(plan, which).pieces.map(
      (piece) => `${piece.name} ${tape(piece.width)} across and ${tape(piece.length)} along`,
    );
    return draw(which)(plan).finish(
      `Layout of the ${which}`,
      `The ${which}, ${shownOf(plan, `${which}.width`)} wide and ${shownOf(plan, `${which}.length`)} long, right side up, one layer, drawn to scale. From its beginning: ${pieces.join("; ")}. Every piece keeps the grain.`,
    );
  };

export const layoutLining = figureOf("lining");
export const layoutInterlining = figureOf("interlining");
