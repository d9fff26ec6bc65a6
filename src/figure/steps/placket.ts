/** The placket: its strip along the opened edges, then folded back on one edge and left standing on the other. */
import type { Plan } from "../../solve/plan.ts";
import { Drawing } from "../drawing.ts";
import { penOf, shownOf } from "../measure.ts";
import { rectangle } from "../svg.ts";
import { goesOn, level, p, point, say, upright } from "./parts.ts";
import type { Step } from "./step.ts";

/** The opened edges in one line: from top to top, the foot half-way; the strip's depth below the line. */
const [TOP, FOOT, OTHER] = [12, 94, 176] as const;
const LINE = 58;
const STRIP = 26;
const END = 138;
/** The finished opening: its foot, and how far its edges stand apart at the top. */
const MADE = { x: 288, top: 44, foot: 118, apart: 25, strip: 23 } as const;

/** How far from the edge a slit's strip is sewn, at the top and at the foot: rules of the chapter, no values of the plan. */
const turnings = ({ recipe }: Plan): readonly [string, string] =>
  recipe.show === "cm" ? ["6 mm", "1.5 mm"] : ["1/4 in", "1/16 in"];

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-placket");
  const slit = plan.opening.kind === "slit";
  drawing.note("Outside, opened out; inside, made, waist upwards:");
  drawOpened(drawing, plan, slit);
  drawMade(drawing);
  drawing.settle();
  const [wide, narrow] = turnings(plan);
  const run = slit ? `${wide} from the edge, ${narrow} at the foot` : "along the line of the seam";
  drawing.note(
    `The strip is run on ${run}; then folded back where it laps over, left standing where it lies under. Heavy lines: the fold, ${shownOf(plan, "turnDown.opening")} below the cut top.`,
  );
  return drawing;
}

/** Both edges spread to one straight line, the strip on them, wrong side up, and the line it is run on along. */
function drawOpened(drawing: Drawing, plan: Plan, slit: boolean): void {
  drawing.fill("wrong", rectangle(TOP, LINE, OTHER - TOP, STRIP));
  drawing.line("cut", [p(TOP, LINE), p(OTHER, LINE), p(OTHER, LINE + STRIP), p(TOP, LINE + STRIP)], {
    closed: true,
    soft: true,
  });
  const sewn = slit
    ? [
        p(TOP, LINE + 8),
        p(FOOT - 14, LINE + 5),
        p(FOOT, LINE + 2.5),
        p(FOOT + 14, LINE + 5),
        p(OTHER, LINE + 8),
      ]
    : level(LINE + 7, TOP, OTHER);
  drawing.line("under", sewn, { soft: true });
  const turned = (penOf(plan, "turnDown.opening") / penOf(plan, "placket.unsewn")) * (FOOT - TOP);
  drawing.lines(
    "fold",
    [upright(TOP + turned, LINE + STRIP, END), upright(OTHER - turned, LINE + STRIP, END)],
    {
      soft: true,
    },
  );
  if (!slit) drawing.lines("seam", [upright(FOOT, LINE + STRIP, END)], { soft: true });
  goesOn(drawing, [[p(TOP, END), p(OTHER, END)]]);
  const unsewn = shownOf(plan, "placket.unsewn");
  for (const [from, to] of [
    [TOP, FOOT],
    [FOOT, OTHER],
  ] as const)
    say(drawing, unsewn, p((from + to) / 2, LINE), { sides: ["above"], gap: 3, width: 84 });
  drawing.lines("leader", [
    upright(TOP, LINE - 16, LINE),
    upright(FOOT, LINE - 16, LINE),
    upright(OTHER, LINE - 16, LINE),
  ]);
  say(drawing, `strip ${shownOf(plan, "placket.strip")}, wrong side up`, p(FOOT, LINE + STRIP), {
    sides: ["below"],
    gap: 3,
    width: 200,
  });
  say(drawing, "foot", p(FOOT, LINE + STRIP + 20), { sides: ["below"], gap: 2 });
  for (const x of [TOP + 10, OTHER - 10])
    say(drawing, "top", p(x, LINE + STRIP + 20), { sides: ["below"], gap: 2 });
}

/** From the inside: the strip folded back under the edge that laps over, standing out on the other, barred at the foot. */
function drawMade(drawing: Drawing): void {
  const { x, top, foot, apart, strip } = MADE;
  const [over, under] = [p(x - apart, top), p(x + apart, top)];
  const end = p(x, foot);
  drawing.lines(
    "finished",
    [
      [over, end],
      [under, end],
    ],
    { soft: true },
  );
  drawing.lines(
    "body",
    [
      [over, p(over.x - strip, top), p(end.x - strip, foot + 3), p(end.x, foot + 3)],
      [under, p(under.x - strip, top), p(end.x - strip * 0.5, foot - 6)],
    ],
    { soft: true },
  );
  drawing.lines("over", tacks(p(over.x - strip + 4, top + 6), p(end.x - strip + 4, foot - 4)), {
    soft: true,
  });
  drawing.lines("over", [level(foot + 1, x - 6, x + 6), level(foot + 4, x - 6, x + 6)], { soft: true });
  goesOn(drawing, [[p(x - 58, END), p(x + 60, END)]]);
  point(drawing, "laps over", p(over.x - strip + 6, top + 30), p(x - 76, foot - 30), {
    sides: ["on"],
    width: 44,
  });
  point(drawing, "lies under", p(under.x - 8, top + 22), p(x + 42, foot - 22), { sides: ["on"], width: 46 });
  point(drawing, "bar", p(x + 6, foot + 3), p(x + 38, foot + 8), { sides: ["on"] });
}

const tacks = (from: ReturnType<typeof p>, to: ReturnType<typeof p>) =>
  [0, 2, 4, 6].map((i) => {
    const at = (k: number) => p(from.x + ((to.x - from.x) * k) / 7, from.y + ((to.y - from.y) * k) / 7);
    return [at(i), at(i + 1)];
  });

export const stepPlacket: Step = {
  title: "Step: the strip of the placket",
  draw,
  describe(plan) {
    const [wide, narrow] = turnings(plan);
    const run =
      plan.opening.kind === "slit"
        ? `${wide} from the edge, ${narrow} at the foot`
        : "along the line of the seam";
    return `Left, from the outside: the edges of the opening, ${shownOf(plan, "placket.unsewn")} each, spread to one straight line with the foot in the middle; the strip, ${shownOf(plan, "placket.strip")} long, lies on it right sides together and is run on ${run}; the top will be folded ${shownOf(plan, "turnDown.opening")} below the cut edge. Right, from the inside, made: folded back and tacked on the edge that laps over, standing out on the one that lies under, barred at the foot.`;
  },
};
