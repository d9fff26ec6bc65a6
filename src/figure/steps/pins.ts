/** Pinning: marks of the skirt to marks of the edge, colour to colour, along the half that has the opening. */
import { add } from "../../quantity/quantity.ts";
import type { Plan, Section } from "../../solve/plan.ts";
import { betweenPins } from "../between-pins.ts";
import { Drawing } from "../drawing.ts";
import { pen, printer } from "../measure.ts";
import { edgeAt } from "../sewn-edge.ts";
import type { Point } from "../svg.ts";
import { goesOn, level, p, pins, say, upright } from "./parts.ts";
import { LEFT, type PinnedHalf, pinnedHalf, RIGHT } from "./pin-marks.ts";
import type { Step } from "./step.ts";

const EDGE = 62;
const FOOT = EDGE + 76;
const SAG = 24;
/** How far edge and cloth are drawn beyond the half. */
const PAST = 14;

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-pins");
  const half = pinnedHalf(plan);
  const above = plan.recipe.attach.to === "waistband" ? "band" : "bodice";
  drawing.note(`Inside towards you, edges up, ${above} behind:`);
  const ends = [LEFT - PAST, RIGHT + PAST] as const;
  for (const section of half.sections) drawPart(drawing, plan, half, section);
  goesOn(drawing, [[p(ends[0], FOOT), p(ends[1], FOOT)]]);
  drawing.lines(
    "station",
    half.marks.map(({ x }) => upright(x, EDGE + 12, FOOT - 6)),
    { soft: true },
  );
  drawing.lines(
    "body",
    half.sections.flatMap((section) => quarters(half, section)),
    { soft: true },
  );
  pins(
    drawing,
    half.marks.map(({ x }) => p(x, EDGE - 12)),
    28,
  );
  for (const { x, words } of half.marks)
    if (words !== "") say(drawing, words, p(x, FOOT), { sides: ["below"], gap: 4, width: 92 });
  drawing.settle();
  drawing.note(wordsBelow(plan));
  return drawing;
}

function wordsBelow({ gauged, sections }: Plan): string {
  const pleated = sections.some(({ set }) => set !== "flat" && set !== "gauged");
  if (gauged.length === 0) return "Every fold is pinned to the edge as well.";
  const [first] = gauged;
  const alike = first && gauged.every(({ pleats }) => pleats === first.pleats);
  const between = alike ? `${betweenPins(first.pleats)} pleats` : "as many pleats as the table says";
  return `${pleated ? "Every fold pinned; what is slack is drawn up next" : "Slack between the pins: it is drawn up next"}. Strokes on the edge: pins that part a section into four, ${between} between two.`;
}

/** Three strokes across the edge, that part a gauged section into four. */
function quarters({ across }: PinnedHalf, { set, from, waist }: Section): Point[][] {
  if (set !== "gauged") return [];
  const [a, b] = [across(from), across(add(from, waist))];
  return [1, 2, 3].map((i) => upright(a + ((b - a) * i) / 4, EDGE - 4, EDGE + 4));
}

/** One part between its pins: gauged cloth hangs slack, flat cloth and pleats lie along the edge. */
function drawPart(drawing: Drawing, plan: Plan, { across }: PinnedHalf, section: Section): void {
  const { part } = printer(plan);
  const [a, b] = [section.from, add(section.from, section.waist)].map((at) => round(across(at))) as [
    number,
    number,
  ];
  const along = (at: number): number => at + (at === LEFT ? -PAST : at === RIGHT ? PAST : 0);
  const kind = edgeAt(plan, section).piped ? "cord" : "finished";
  drawing.lines(kind, [level(EDGE, along(a), along(b))], { soft: true });
  const fold = section.set === "gauged" ? slack(a, b) : level(EDGE + 3, a, b);
  drawing.lines("fold", [fold], { soft: true });
  if (section.set !== "gauged" && section.set !== "flat")
    drawing.lines(
      "body",
      folds(section.faces.map(pen), ...(section.half === "left" ? ([a, b] as const) : ([b, a] as const))),
      { soft: true },
    );
  const wide = Math.abs(b - a);
  say(drawing, part(section.waist), p((a + b) / 2 + (wide > 200 ? wide / 5 : 0), EDGE - 3), {
    sides: ["above"],
    gap: 2,
    width: Math.max(64, wide - 6),
  });
  if (section.set === "gauged" && wide > 70)
    say(drawing, `${part(section.cloth)} of cloth`, p((a + b) / 2, EDGE + SAG + 3), {
      sides: ["below"],
      gap: 3,
      width: wide - 6,
    });
}

/** A float's last digits must not part what meets. */
const round = (n: number): number => Math.round(n * 1000) / 1000;

const slack = (a: number, b: number): Point[] =>
  Array.from({ length: 9 }, (_, i) =>
    p(a + ((b - a) * i) / 8, EDGE + 3 + SAG * Math.sin((Math.PI * i) / 8) ** 0.5),
  );

/** The edges of the faces, each upright below its pin, from the end nearer centre front. */
function folds(faces: readonly number[], a: number, b: number): Point[][] {
  const sum = faces.reduce((total, face) => total + face, 0);
  let along = 0;
  return faces.slice(0, -1).map((face) => {
    along += face / sum;
    return upright(a + (b - a) * along, EDGE + 3, FOOT - 4);
  });
}

export const stepPins: Step = {
  title: "Step: mark pinned to mark",
  draw,
  describe(plan) {
    const { part } = printer(plan);
    const { side, sections } = pinnedHalf(plan);
    const parts = sections.map(
      ({ name, waist, cloth }) => `${name}, ${part(cloth)} of cloth to ${part(waist)}`,
    );
    return `The wearer's ${side} half from the inside, ${side === "left" ? "from right to left" : "from left to right"}: centre front, side and centre back pinned to the marks of the same colour, and every other end of a part to its mark. ${parts.join("; ")}. The other half is its mirror, but for the opening.`;
  },
};
