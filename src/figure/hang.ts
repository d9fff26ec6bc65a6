/**
 * The outline of a standing skirt from its lengths: how high the waist is and how far the hem stands out at front,
 * sides and back. A drawing aid only, this project's own: lengths, round of the hoop and the level hem are the plan's;
 * the straight slope between them is assumed.
 */
import type { Plan } from "../solve/plan.ts";
import { pen, penOf } from "./measure.ts";

export interface Hang {
  /** Inches. Half the waist's width, drawn as a circle. */
  readonly waist: number;
  /** Height of the waist seam above the hem. */
  readonly height: number;
  /** How far the hem stands out beyond the waist. */
  readonly front: number;
  readonly left: number;
  readonly right: number;
  readonly back: number;
}

/** Spread of a skirt that no hoop holds, as a share of its length. */
const SOFT = 0.32;
/** The waist cannot be as high as the shortest length is long, or the skirt would hang straight down there. */
const STEEPEST = 0.97;

export function hangOf(plan: Plan): Hang {
  const [front, left, right, back] = (["front", "left", "right", "back"] as const).map((place) =>
    penOf(plan, `finished.${place}`),
  ) as [number, number, number, number];
  const waist = penOf(plan, "waist.seam") / (2 * Math.PI);
  const most = penOf(plan, "skirt.round") / (2 * Math.PI) - waist;
  const { hoop } = plan.recipe.wearer;
  const side = (left + right) / 2;
  const held = hoop ? pen(hoop.round) / (2 * Math.PI) - waist : side * SOFT;
  const spread = Math.max(0, Math.min(most, held, side * 0.8));
  const shortest = Math.min(front, left, right, back);
  const height = Math.min(Math.sqrt(side * side - spread * spread), shortest * STEEPEST);
  const out = (length: number): number => Math.sqrt(Math.max(0, length * length - height * height));
  return { waist, height, front: out(front), left: out(left), right: out(right), back: out(back) };
}

/** How far out the skirt stands at a share of its way down, for a place whose hem stands `out` beyond the waist. */
export function slope(out: number, down: number): number {
  return out * (down + 0.3 * down * (1 - down));
}

/**
 * What is seen level above the hem, in inches from it: the border's edges, each flounce's lower edge and the highest one's
 * heading (the others lie under the next flounce), the lower edge of each tuck.
 */
export const levelLines = (plan: Plan): number[] => [
  ...["border.above", "border.head"].filter((name) => plan.values.has(name)).map((name) => penOf(plan, name)),
  ...plan.flounces.map(({ edge }) => pen(edge)),
  ...plan.flounces.slice(-1).map(({ heading }) => pen(heading)),
  ...plan.tucks.map(({ edge }) => pen(edge)),
];
