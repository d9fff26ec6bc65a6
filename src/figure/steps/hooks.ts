/** Hooks and eyes: at the band's end and on its lap, and down the placket, in the places they take. */
import type { Plan } from "../../solve/plan.ts";
import { Drawing } from "../drawing.ts";
import { furtherEyes } from "../hook-words.ts";
import { shownOf } from "../measure.ts";
import { count, drawBand, eye, hook, setBack } from "./hooks-band.ts";
import { p, point, say } from "./parts.ts";
import type { Step } from "./step.ts";

const TOP = 48;
const PLACKET = { top: 44, foot: 140 } as const;

const banded = ({ recipe }: Plan): boolean => recipe.attach.to === "waistband";

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-hooks");
  drawing.note("Waist upwards; the upper edge turned back, so that its inside is seen:");
  const down = drawing.bottom - 30;
  if (banded(plan)) drawBand(drawing, plan, TOP + down);
  drawPlacket(drawing, plan, banded(plan) ? 306 : 180, down);
  drawing.settle();
  drawing.note(`The placket, ${shownOf(plan, "skirt.placket")}: ${placketWords(plan)}.`);
  const further = furtherEyes(plan);
  if (further) drawing.note(`On the lap ${further}.`);
  return drawing;
}

function placketWords(plan: Plan): string {
  const many = count(plan, "hooks.placket");
  return many === 1
    ? "1 hook at its middle, the eye opposite"
    : `${many} hooks about ${shownOf(plan, "attach.hookSpacing")} apart, hook and eye by turns`;
}

/** Both edges of the opening from waist to foot: the middle one hook, or hook and eye by turns all the way. */
function drawPlacket(drawing: Drawing, plan: Plan, x: number, down: number): void {
  const apart = banded(plan) ? 9 : 18;
  const [top, foot] = [PLACKET.top + down, PLACKET.foot + down];
  const strip = 14;
  drawing.lines(
    "finished",
    [
      [
        p(x - apart - strip, top),
        p(x - apart, top),
        p(x, foot),
        p(x + apart, top),
        p(x + apart + strip, top),
      ],
    ],
    { soft: true },
  );
  drawing.lines(
    "body",
    [
      [p(x - apart - strip, top), p(x - 8, foot)],
      [p(x + apart + strip, top), p(x + 8, foot)],
    ],
    { soft: true },
  );
  const hooks = count(plan, "hooks.placket");
  const places =
    hooks === 1 ? [0.5] : Array.from({ length: hooks }, (_, i) => 0.04 + (0.88 * i) / (hooks - 1));
  const fastenings = places.flatMap((share, i) => {
    const y = top + share * (foot - top);
    const off = apart * (1 - share) + 6;
    const [first, second] = i % 2 === 0 ? [hook, eye] : [eye, hook];
    return [first(p(x - off - 3, y)), second(p(x + off, y))];
  });
  drawing.lines("body", fastenings, { soft: true });
  drawing.lines("over", [[p(x - 6, foot), p(x + 6, foot)]], { soft: true });
  if (banded(plan)) return;
  say(drawing, "laps over, turned back", p(x - 56, top + 40), { sides: ["left"], width: 80 });
  say(drawing, "lies under", p(x + 56, top + 40), { sides: ["right"], width: 80 });
  const above =
    plan.recipe.attach.to === "bodice-edge"
      ? "a hook of the bodice's own at the cord"
      : "the band's hooks: on the wearer";
  point(drawing, above, p(x + apart, top), p(x + 96, top + 6), { sides: ["on"], width: 130 });
}

export const stepHooks: Step = {
  title: "Step: hooks and eyes",
  draw,
  describe(plan) {
    const band = banded(plan)
      ? `The band's upper end turned back: ${count(plan, "hooks.band")} hooks inside, ${setBack(plan).shown} from its end; their eyes on the outer face of the lap, ${shownOf(plan, "attach.band.lap")} long, beside the closing mark${furtherEyes(plan) ? `; ${furtherEyes(plan)}` : ""}. `
      : "";
    return `${band}The placket, ${shownOf(plan, "skirt.placket")} deep: ${placketWords(plan)}.`;
  },
};
