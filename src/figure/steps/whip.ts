/** Whipping: the needle through edge and ridge from the side, and the fourth stitch sewn a second time in its holes. */
import type { Plan } from "../../solve/plan.ts";
import { Drawing } from "../drawing.ts";
import { chiefSection, penOf, shownOf } from "../measure.ts";
import { edgeAt, type SewnEdge } from "../sewn-edge.ts";
import { arc, type Point } from "../svg.ts";
import { curve } from "../whip-stitches.ts";
import { stitchDepth } from "../whipping.ts";
import { goesOn, level, needle, p, point, say, thinned, upright } from "./parts.ts";
import { isGauged, type Step } from "./step.ts";

/** Height of the fold and the edge on the page; how far down both are drawn; the stitch below the fold. */
const FOLD = 62;
const FOOT = 132;
const STITCH = 11;
/** Where band and ridge touch, seen from the side. */
const TOUCH = 76;
const BAND = 22;
/** The right-hand picture: its first ridge, from one stitch to the next, half a ridge. */
const [FIRST, APART, HALF] = [334, 40, 9] as const;
const CORD = 8;

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-whip");
  const edge = edgeAt(plan, chiefSection(plan));
  drawing.note("Edges upwards. From the side; from the inside:");
  drawSide(drawing, plan, edge);
  drawDoubled(drawing, plan, edge);
  drawing.settle();
  const every = plan.recipe.attach.whip === "every-other" ? "Every other pleat" : "Every pleat";
  drawing.note(
    `${every}; every fourth stitch twice, in the same holes: ${shownOf(plan, "whip.doubled")} of ${shownOf(plan, "whip.stitches")}.`,
  );
  return drawing;
}

/** From behind through the edge, beside the cord where there is one, and through both layers of the ridge. */
function drawSide(drawing: Drawing, plan: Plan, edge: SewnEdge): void {
  const { inches, shown } = stitchDepth(plan);
  const deep = Math.min(64, Math.max(24, (penOf(plan, "gauging.depth") / inches) * STITCH));
  const ridge = TOUCH + 5;
  const free = ridge + deep;
  const turn = edge.piped ? FOLD + CORD : FOLD;
  const face = (x: number, way: 1 | -1): Point[] => [
    p(x, FOOT),
    ...thinned(arc(p(x + way * 3.5, turn + 4), 3.5, 4, way === 1 ? 180 : 360, 270), 4),
    p(x + way * 6, turn + 5),
    p(x + way * 6, turn + 30),
  ];
  drawing.lines("finished", [face(TOUCH, -1), face(TOUCH - BAND, 1)]);
  if (edge.piped) drawing.dot(p(TOUCH - 4, FOLD + CORD / 2), CORD / 2);
  drawing.lines("fold", [level(FOLD, ridge, free)]);
  drawing.lines("body", [
    upright(ridge, FOLD, FOOT),
    upright(ridge + 5, FOLD, FOOT),
    upright(free, FOLD, FOOT),
  ]);
  goesOn(drawing, [[p(TOUCH - BAND - 6, FOOT), p(free + 6, FOOT)]]);
  const hole = p(ridge + 2, FOLD + STITCH);
  const slope = edge.piped ? 0.06 : 0.55;
  const on = (dx: number): Point => p(hole.x + dx, hole.y + slope * dx);
  needle(drawing, on(-64), on(46));
  point(drawing, `ridge, ${shown} below its fold`, hole, p(free + 4, FOLD - 16), {
    sides: ["on"],
    width: 96,
  });
  say(drawing, edge.above, p(TOUCH - BAND - 4, FOOT - 16), { sides: ["left"], width: 44 });
  say(drawing, "depth, inside", p(free + 2, FOOT - 22), { sides: ["right"], width: 48 });
  if (edge.piped) point(drawing, "cord", p(TOUCH - 4, FOLD + 2), p(44, FOLD - 18), { sides: ["on"] });
}

/** Ridges against the edge, from right to left: the stitch before, the fourth on its second way, the next to come. */
function drawDoubled(drawing: Drawing, plan: Plan, edge: SewnEdge): void {
  const every = plan.recipe.attach.whip === "every";
  const step = every ? APART : APART / 2;
  const ridges = Array.from({ length: every ? 4 : 7 }, (_, i) => FIRST - i * step);
  const half = every ? HALF : HALF * 0.7;
  const far = FOLD - (edge.piped ? 13 : 9);
  const [left, right] = [FIRST - 3 * APART - 14, FIRST + 12];
  drawing.lines("finished", [level(far, left, right)], { soft: true });
  drawing.lines(edge.piped ? "cord" : "finished", [level(FOLD - (edge.piped ? 5 : 1), left, right)], {
    soft: true,
  });
  drawing.lines(
    "body",
    ridges.map((x) => [
      p(x - half, FOOT - 4),
      ...thinned(arc(p(x, FOLD + 8), half, 6, 180, 360), 2),
      p(x + half, FOOT - 4),
    ]),
    { soft: true },
  );
  goesOn(drawing, [[p(left, FOOT), p(right, FOOT)]]);
  const over = (x: number): Point[] => [p(x, FOLD + STITCH), p(x - 9, far)];
  const [three, four] = [FIRST, FIRST - APART];
  drawing.lines("over", [over(three), over(four)], { soft: true });
  const [eye, tip] = [p(four + 3, far - 22), p(four + 5, FOLD + STITCH + 26)];
  const share = (y: number): number => (y - eye.y) / (tip.y - eye.y);
  needle(drawing, eye, tip, [share(far), share(FOLD + STITCH)]);
  drawing.line("over", thinned(curve(p(four - 9, far), p(four - 18, far - 22), eye), 2), { soft: true });
  for (const [i, words] of ["3", "4, again", "5", "6"].entries())
    say(drawing, words, p(FIRST - i * APART, FOOT + 2), { sides: ["below"], gap: 3, bold: i === 1 });
}

export const stepWhip: Step = {
  title: "Step: the whip stitch, and the fourth sewn twice",
  applies: isGauged,
  draw,
  describe(plan) {
    const edge = edgeAt(plan, chiefSection(plan));
    const takes = edge.piped ? "the casing beside the cord" : `the turned edge of the ${edge.name}`;
    return `From the side: the needle comes from behind through ${takes} and both layers of the ridge, ${stitchDepth(plan).shown} below its fold. From the inside, right to left: the third stitch, the fourth on its second way through the same holes, the next ridges; ${shownOf(plan, "whip.doubled")} of ${shownOf(plan, "whip.stitches")} stitches are such.`;
  },
};
