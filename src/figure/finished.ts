/** The finished skirt over its supports, from the front and from the side. */
import { toFloat } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import { PLEAT_NAMES } from "../solve/pleat.ts";
import { Drawing } from "./drawing.ts";
import { noteEstimate } from "./estimate.ts";
import type { Figure } from "./figure.ts";
import { type Hang, hangOf } from "./hang.ts";
import { shownOf } from "./measure.ts";
import { aboveWords, edgeLine } from "./sewn-edge.ts";
import { drawView, type View } from "./view.ts";

/** Room for the two views, with the words beside them. */
const WIDEST = 116;
const TALLEST = 170;
const MIDDLES = [92, 268] as const;

export function drawFinished(plan: Plan): Drawing {
  const drawing = new Drawing("finished");
  const hang = hangOf(plan);
  drawing.heading(`Outside of the finished ${plan.recipe.garment}, standing. Waist upwards.`);
  const right = openingOnRight(plan);
  const across = Math.max(2 * hang.waist + hang.left + hang.right, 2 * hang.waist + hang.front + hang.back);
  const scale = Math.min(WIDEST / across, TALLEST / hang.height);
  const top = drawing.bottom + 64;
  const [first, second] = MIDDLES;
  drawView(drawing, plan, frontView(plan, hang), { middle: first, top, scale });
  drawView(drawing, plan, sideView(plan, hang, right ? "right" : "left"), { middle: second, top, scale });
  drawing.settle();
  if (plan.recipe.attach.to === "part-band")
    drawing.note(
      "The part band lies hidden under the bodice's free front, from centre front to the opening.",
    );
  const level = levelWords(plan);
  if (level) drawing.note(`Thin level lines: ${level}.`);
  const { over } = plan.recipe.wearer;
  drawing.note(
    `Hem straight, level, ${shownOf(plan, "skirt.offFloor")} off the floor all round. Lengths run down the cloth from ${edgeLine(plan)}.`,
  );
  drawing.note(
    `${fullnessWords(plan)}${over ? ` Worn over ${over}.` : ""} The spread is drawn from the lengths and ${plan.recipe.wearer.hoop ? "the hoop" : "is only a suggestion"}.`,
  );
  noteEstimate(drawing, plan);
  return drawing;
}

/** What the thin level lines are: border, flounces, tucks; "" where there are none. */
function levelWords(plan: Plan): string {
  const words: string[] = [];
  if (plan.values.has("border.above"))
    words.push(
      `the border, ${shownOf(plan, "border.above")} to ${shownOf(plan, "border.head")} above the hem`,
    );
  const some = (count: number, one: string): string =>
    count === 1 ? `the lower edge of the ${one}` : `the lower edges of ${count} ${one}s`;
  if (plan.flounces.length > 0)
    words.push(
      `${some(plan.flounces.length, "flounce")}, and the ${plan.flounces.length === 1 ? "" : "highest "}heading, ${shownOf(plan, "flounces.top")} above the hem`,
    );
  if (plan.tucks.length > 0) words.push(some(plan.tucks.length, "tuck"));
  return words.join("; ");
}

/** How the fullness is set, from centre front back, in a line. */
function fullnessWords(plan: Plan): string {
  const sets = new Set(plan.sections.map(({ set }) => set));
  const pleats =
    plan.gauged.length > 0 ? `${shownOf(plan, "gauging.pleats")} gauged pleats, fewer drawn.` : "";
  if (sets.size === 1 && sets.has("gauged")) return `Gauged all round: ${pleats.replace("gauged ", "")}`;
  return `Each half, from centre front to centre back: ${halfWords(plan)}. ${pleats}`.trim();
}

const halfWords = (plan: Plan): string =>
  plan.sections
    .filter(({ half }) => half === "left")
    .map(({ set }) => (set === "flat" ? "flat" : set === "gauged" ? "gauged" : PLEAT_NAMES[set]))
    .filter((set, i, all) => set !== all[i - 1])
    .join(", then ");

const openingOnRight = (plan: Plan): boolean => toFloat(plan.opening.share.value) > 0.5;

/** From the front the wearer's right is on the left of the page. */
function frontView(plan: Plan, hang: Hang): View {
  return {
    title: "front",
    hang,
    across: (share) => Math.sin(2 * Math.PI * share),
    sees: (share) => share <= 0.25 || share >= 0.75,
    edges: [hang.right, hang.left],
    lengths: [
      { words: ["right side", shownOf(plan, "finished.right")], at: -1 },
      { words: ["centre front", shownOf(plan, "finished.front")], at: 0 },
      { words: ["left side", shownOf(plan, "finished.left")], at: 1 },
    ],
  };
}

/** From the wearer's left the front is on the left of the page; from the right it is on the right. */
function sideView(plan: Plan, hang: Hang, side: "left" | "right"): View {
  const turn = side === "left" ? -1 : 1;
  const ends = [
    { words: ["centre front", shownOf(plan, "finished.front")], at: turn },
    { words: [`${side} side`, shownOf(plan, `finished.${side}`)], at: 0 },
    { words: ["centre back", shownOf(plan, "finished.back")], at: -turn },
  ] as const;
  return {
    title: `wearer's ${side} side`,
    hang,
    across: (share) => turn * Math.cos(2 * Math.PI * share),
    sees: side === "left" ? (share) => share <= 0.5 : (share) => share === 0 || share >= 0.5,
    edges: side === "left" ? [hang.front, hang.back] : [hang.back, hang.front],
    lengths: side === "left" ? ends : [...ends].reverse(),
  };
}

export function finished(plan: Plan): Figure {
  const shown = (name: string): string => shownOf(plan, name);
  const level = levelWords(plan);
  return drawFinished(plan).finish(
    `The finished ${plan.recipe.garment}, front and side`,
    `The ${plan.recipe.garment} over its supports, seen from the front and from the wearer's ${openingOnRight(plan) ? "right" : "left"} side. Above it ${aboveWords(plan, shown)}. ${fullnessWords(plan)} From ${edgeLine(plan)} it is ${shown("finished.front")} long at centre front, ${shown("finished.left")} at the left side, ${shown("finished.right")} at the right side and ${shown("finished.back")} at centre back; the hem is straight and hangs level, ${shown("skirt.offFloor")} off the floor.${level ? ` Thin level lines: ${level}.` : ""} It opens at ${plan.opening.station} for ${shown("skirt.placket")}.`,
  );
}
