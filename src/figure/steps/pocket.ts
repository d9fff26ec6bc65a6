/** The pocket from the inside: cut top, fold, slit, bag, and the strap up to the waist seam. */
import type { Plan } from "../../solve/plan.ts";
import { Drawing } from "../drawing.ts";
import { penOf, shownOf } from "../measure.ts";
import { goesOn, level, p, point, say, upright } from "./parts.ts";
import type { Step } from "./step.ts";

const SEAM = 196;
const HIGH = 150;

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-pocket");
  drawing.note("Inside, tops up, the bag lying towards the front; heights in true proportion:");
  const top = drawing.bottom + 26;
  const far = penOf(plan, "pocket.bagTop") + penOf(plan, "pocket.bagLength");
  const scale = HIGH / far;
  const y = (name: string): number => top + penOf(plan, name) * scale;
  const fold = y("turnDown.pocket");
  const [from, to, bag] = [y("pocket.from"), y("pocket.to"), y("pocket.bagTop")];
  const foot = top + far * scale;
  drawing.lines("cut", [level(top, 60, 300)]);
  drawing.lines("fold", [level(fold, 60, 300)]);
  drawing.lines("seam", [upright(SEAM, top, from), upright(SEAM, to, foot + 14)], { soft: true });
  const wide = Math.min(84, penOf(plan, "pocket.bagWidth") * scale);
  drawing.line("body", [p(SEAM, bag), p(SEAM - wide, bag), p(SEAM - wide, foot), p(SEAM, foot)]);
  drawing.line("finished", [p(SEAM, from), p(SEAM - 3, (from + to) / 2), p(SEAM, to)]);
  const strap = SEAM - 10;
  const head = bag + penOf(plan, "skirt.seam") * scale;
  drawing.line("band", [p(strap, head), p(strap, fold)]);
  goesOn(drawing, [[p(60, foot + 14), p(300, foot + 14)]]);
  say(drawing, "cut top", p(300, top), { sides: ["right"], gap: 3 });
  say(drawing, "fold", p(300, fold), { sides: ["right"], gap: 3 });
  point(
    drawing,
    `strap ${shownOf(plan, "pocket.strapRun")}, to the waist seam`,
    p(strap, (head + fold) / 2),
    p(96, top - 10),
    {
      sides: ["above"],
      width: 130,
    },
  );
  const side = SEAM + 28;
  point(
    drawing,
    `slit from ${shownOf(plan, "pocket.from")} to ${shownOf(plan, "pocket.to")} below the cut top`,
    p(SEAM, (from + to) / 2),
    p(side, (from + to) / 2 + 10),
    {
      sides: ["right"],
      width: 96,
    },
  );
  say(drawing, "bag", p(SEAM - wide / 2, (bag + foot) / 2 + 12));
  drawing.settle();
  return drawing;
}

export const stepPocket: Step = {
  title: "Step: the pocket and its strap",
  applies: ({ pocket }) => pocket !== undefined,
  draw,
  describe(plan) {
    const shown = (name: string): string => shownOf(plan, name);
    return `The pocket from the inside. Its slit stays open from ${shown("pocket.from")} to ${shown("pocket.to")} below the cut top, of which ${shown("turnDown.pocket")} is turned down. The bag begins ${shown("pocket.bagTop")} below the cut top and lies towards the front. A strap, ${shown("pocket.strapRun")} finished, runs from its top up to the waist seam.`;
  },
};
