/** A pointed edge at centre front: how deep, from where, how long its slants are; two stitches in the point. */
import type { Plan } from "../../solve/plan.ts";
import { dimension, extension } from "../dimension.ts";
import { Drawing } from "../drawing.ts";
import { penOf, shownOf } from "../measure.ts";
import { p, point, say } from "./parts.ts";
import type { Step } from "./step.ts";

const MIDDLE = 180;
const pointed = ({ recipe }: Plan): boolean => recipe.attach.waistEdge?.set === "edge";

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-point");
  drawing.note("The front of the bodice's edge, from the outside, waist upwards, in true proportion:");
  const [deep, along] = ["attach.waistEdge.depth", "attach.waistEdge.fromCentre"].map((name) =>
    penOf(plan, name),
  ) as [number, number];
  const scale = Math.min(104 / along, 96 / deep);
  const top = drawing.bottom + 40;
  const [left, right] = [MIDDLE - along * scale, MIDDLE + along * scale];
  const foot = top + deep * scale;
  const edge = [p(left - 36, top), p(left, top), p(MIDDLE, foot), p(right, top), p(right + 36, top)];
  drawing.line("finished", edge);
  drawing.line("hidden", [p(left, top), p(right, top)]);
  drawing.line("station", [p(MIDDLE, top - 34), p(MIDDLE, foot + 26)]);
  say(drawing, "centre front", p(MIDDLE, top - 36), { sides: ["above"] });
  say(drawing, "straight waist", p(left - 30, top), { sides: ["above"], gap: 4, width: 90 });
  dimension(drawing, p(MIDDLE, top - 14), p(right, top - 14), shownOf(plan, "attach.waistEdge.fromCentre"), {
    sides: ["above"],
    width: 90,
  });
  extension(drawing, p(right, top), p(right, top - 18));
  const off = right + 22;
  extension(drawing, p(MIDDLE, foot), p(off + 4, foot));
  dimension(drawing, p(off, top), p(off, foot), `${shownOf(plan, "attach.waistEdge.depth")} deep`, {
    sides: ["right"],
    width: 60,
  });
  point(
    drawing,
    `slant ${shownOf(plan, "edge.slant")}`,
    p((left + MIDDLE) / 2, (top + foot) / 2),
    p(left - 10, foot - 4),
    {
      sides: ["below"],
      width: 80,
    },
  );
  if (pointed(plan)) {
    for (const way of [-1, 1])
      drawing.line("thread", [p(MIDDLE + way * 2, foot - 7), p(MIDDLE + way * 3, foot + 6)], { soft: true });
    point(
      drawing,
      "two stitches in the point; whip away from it on both sides",
      p(MIDDLE + 2, foot + 4),
      p(MIDDLE + 70, foot + 30),
      {
        sides: ["below"],
        width: 150,
      },
    );
  }
  drawing.settle();
  return drawing;
}

export const stepPoint: Step = {
  title: "Step: the point at centre front",
  applies: ({ recipe }) => recipe.attach.waistEdge !== undefined,
  draw,
  describe(plan) {
    const shown = (name: string): string => shownOf(plan, name);
    const sewn = pointed(plan)
      ? " Two whip stitches stand exactly in the point; from there the whipping goes away on both sides."
      : " The point hangs free; the garment is set to the straight waist.";
    return `The edge of the bodice leaves the straight waist ${shown("attach.waistEdge.fromCentre")} from centre front on both sides and slants down to a point ${shown("attach.waistEdge.depth")} below it; each slant is ${shown("edge.slant")} long.${sewn}`;
  },
};
