/** Rolling the piping back: as it hangs the cord hides the stitches; rolled back it shows that every ridge is held. */
import type { Plan } from "../../solve/plan.ts";
import { Drawing } from "../drawing.ts";
import { chiefSection, shownOf } from "../measure.ts";
import { edgeAt } from "../sewn-edge.ts";
import { arc, type Point } from "../svg.ts";
import { goesOn, p, point, say, thinned, way } from "./parts.ts";
import type { Step } from "./step.ts";

const [LEFT, MIDDLE, RIGHT] = [16, 150, 344] as const;
const EDGE = 74;
const FOOT = 128;
const APART = 22;
/** How far the cord is rolled up. */
const ROLLED = 17;

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-cord");
  const { above } = edgeAt(plan, chiefSection(plan));
  drawing.note(`The outside towards you, the ${above} upwards:`);
  const ridges = Array.from({ length: 15 }, (_, i) => RIGHT - (i + 0.5) * APART);
  const rise = MIDDLE + 34;
  drawing.lines(
    "cord",
    [[p(LEFT, EDGE - 2), p(MIDDLE, EDGE - 2), p(rise, EDGE - ROLLED), p(RIGHT, EDGE - ROLLED)]],
    { soft: true },
  );
  drawing.lines("body", ridges.map(ridge), { soft: true });
  const stride = plan.recipe.attach.whip === "every" ? 1 : 2;
  const seen = ridges.filter((x, i) => i % stride === 0 && x > rise);
  drawing.lines(
    "over",
    seen.flatMap((x, i) => (i % 4 === 3 ? [stitch(x - 2), stitch(x + 2)] : [stitch(x)])),
    { soft: true },
  );
  goesOn(drawing, [
    [p(LEFT, EDGE - 40), p(RIGHT, EDGE - 40)],
    [p(LEFT, FOOT), p(RIGHT, FOOT)],
  ]);
  way(drawing, p(MIDDLE + 6, EDGE - 8), p(MIDDLE + 14, EDGE - 32));
  const fourth = seen[3] as number;
  point(drawing, "every fourth twice", p(fourth, EDGE - 2), p(fourth, FOOT + 3), { sides: ["below"] });
  say(
    drawing,
    `as it hangs: the cord, ${shownOf(plan, "attach.piping.cord")}, hides the stitches`,
    p(88, FOOT + 3),
    {
      sides: ["below"],
      width: 150,
    },
  );
  say(drawing, "rolled back", p(rise + 30, EDGE - ROLLED - 4), { sides: ["above"], gap: 1 });
  return drawing;
}

const ridge = (x: number): Point[] => [
  p(x - 8, FOOT - 4),
  ...thinned(arc(p(x, EDGE + 8), 8, 6, 180, 360), 3),
  p(x + 8, FOOT - 4),
];
const stitch = (x: number): Point[] => [p(x, EDGE + 4), p(x + 3, EDGE - 7)];

export const stepCord: Step = {
  title: "Step: the piping rolled back",
  applies: (plan) => plan.gauged.length > 0 && edgeAt(plan, chiefSection(plan)).piped,
  draw,
  describe(plan) {
    const { above } = edgeAt(plan, chiefSection(plan));
    const which = plan.recipe.attach.whip === "every" ? "every ridge" : "every other ridge";
    return `The whipped seam from the outside, the ${above} at the top. At the left the cord, ${shownOf(plan, "attach.piping.cord")} thick, hides the stitches; at the right it is rolled back towards the ${above}: ${which} is held by a stitch, every fourth stitch twice, ${shownOf(plan, "whip.stitches")} stitches together.`;
  },
};
