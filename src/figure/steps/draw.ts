/** Drawing the threads of one section together, pushing the pleats along, and the figure of eight that holds them. */
import { equal } from "../../quantity/quantity.ts";
import type { Plan } from "../../solve/plan.ts";
import { Drawing } from "../drawing.ts";
import { chiefSection, pen, printer } from "../measure.ts";
import type { Point } from "../svg.ts";
import { goesOn, level, p, pins, say, upright, way } from "./parts.ts";
import { isGauged, type Step } from "./step.ts";

const FOLD = 58;
const DEEPEST = 40;
const FOOT = FOLD + 62;
/** The section's end, where the pleats begin, its beginning; the hand that pulls. */
const [HAND, END, PLEATS, START] = [34, 96, 196, 332] as const;
const PLEAT = 8;
const STITCH = 10;

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-draw");
  drawing.note("The inside towards you, the fold upwards:");
  drawing.line("fold", level(FOLD, END - 14, START + 10), { soft: true });
  drawing.lines(
    "body",
    Array.from({ length: (START - PLEATS) / PLEAT + 1 }, (_, i) =>
      upright(PLEATS + i * PLEAT, FOLD, FOOT - 4),
    ),
    { soft: true },
  );
  goesOn(drawing, [[p(END - 14, FOOT), p(START + 10, FOOT)]]);
  drawing.line("station", upright(END, FOLD, FOOT), { soft: true });
  const rows = plan.rows.map(pen);
  const scale = DEEPEST / (rows.at(-1) as number);
  const heights = rows.map((row) => FOLD + row * scale);
  const bundle = (FOLD + FOOT) / 2;
  for (const y of heights) drawing.dot(p(START, y), 2.9);
  drawing.lines(
    "under",
    heights.map((y) => level(y, START, PLEATS)),
    { soft: true },
  );
  drawing.lines("over", [...heights.flatMap(stitches), ...heights.map((y) => tail(y, bundle))], {
    soft: true,
  });
  drawing.lines("body", fist(bundle), { soft: true });
  pins(drawing, [p(END, FOLD - 10), p(START + 8, FOLD - 10)], 22);
  say(
    drawing,
    `pull ${plan.rows.length === 2 ? "both" : `all ${plan.rows.length}`} together`,
    p(46, bundle + 14),
    {
      sides: ["below"],
      width: 70,
    },
  );
  way(drawing, p(PLEATS + 4, FOLD - 12), p(PLEATS + 60, FOLD - 12));
  say(drawing, "push the pleats along", p(PLEATS + 2, FOLD - 15), { sides: ["left"], gap: 6 });
  say(drawing, "knots", p(START, FOLD), { sides: ["above"], gap: 8 });
  drawing.settle();
  drawing.note(`Pinned at both ends first. ${amount(plan)}`);
  drawEight(drawing, p(40, drawing.bottom + 24));
  return drawing;
}

/** The hand that holds all the threads at once, its wrist to the left. */
const fist = (y: number): Point[][] => [
  [
    p(4, y - 8),
    p(14, y - 9),
    p(HAND - 4, y - 11),
    p(HAND + 2, y - 6),
    p(HAND + 2, y + 9),
    p(14, y + 12),
    p(4, y + 10),
  ],
  ...[-4, 1, 6].map((off) => level(y + off, 18, HAND + 1)),
];

const stitches = (y: number): Point[][] =>
  Array.from({ length: (PLEATS - END) / STITCH / 2 }, (_, i) =>
    level(y, END + 2 * i * STITCH, END + (2 * i + 1) * STITCH),
  );

/** From the last mark inside to the hand. */
const tail = (y: number, bundle: number): Point[] => [p(END, y), p(HAND + 22, bundle), p(HAND - 2, bundle)];

function amount(plan: Plan): string {
  const { part } = printer(plan);
  const { name, cloth, waist } = chiefSection(plan);
  const alike = plan.gauged.every((other) => equal(other.cloth, cloth) && equal(other.waist, waist));
  return `${alike ? "Each section" : `The ${name}`}: ${part(cloth)} of cloth, drawn up to ${part(waist)}.`;
}

/** The threads wound round a pin, crossing in the middle. */
function drawEight(drawing: Drawing, at: Point): void {
  const turns = Array.from({ length: 25 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 24;
    return p(at.x + 9 * Math.sin(2 * angle), at.y - 14 * Math.cos(angle));
  });
  pins(drawing, [p(at.x, at.y - 18)], 40);
  drawing.line("over", [...turns, p(at.x + 34, at.y - 18)], { soft: true });
  say(drawing, "then round a pin in a figure of eight: not tied", p(at.x + 44, at.y), {
    sides: ["right"],
    width: 240,
  });
  drawing.reach(at.y + 24);
}

export const stepDraw: Step = {
  title: "Step: the threads of one section drawn together",
  applies: isGauged,
  draw,
  describe(plan) {
    return `The ${plan.rows.length} threads of a section leave the cloth inside, at its left-hand end; the section is pinned at both ends; one hand pulls them together, the other pushes the pleats towards the knots at the right. ${amount(plan)} The ends are wound round a pin in a figure of eight.`;
  },
};
