/** The edge that the skirt is sewn to, in words and for the pen: a band, plain or piped, or the piped edge of a bodice. */
import { toFloat } from "../quantity/quantity.ts";
import type { Plan, Section } from "../solve/plan.ts";
import { pen, penOf } from "./measure.ts";

export interface SewnEdge {
  /** "band", "bodice edge". */
  readonly name: string;
  /** What stands above the edge: "band", "bodice". */
  readonly above: string;
  /** Has it a covered cord along it? Then the stitch takes the casing beside the cord. */
  readonly piped: boolean;
}

const BAND = { name: "band", above: "band" } as const;
const BODICE: SewnEdge = { name: "bodice edge", above: "bodice", piped: true };

/** The edge at one section. A part band has no cord; the bodice edge has one always. */
export function edgeAt(plan: Plan, section: Section): SewnEdge {
  const { to, piping } = plan.recipe.attach;
  if (to === "waistband") return { ...BAND, piped: piping !== undefined };
  return onPartBand(plan, section) ? { name: "part band", above: "part band", piped: false } : BODICE;
}

/** Does this section lie between centre front and the opening of a part band? One that the opening cuts does not. */
export function onPartBand(plan: Plan, { half, from, waist }: Section): boolean {
  const reach = partBandOf(plan);
  if (!reach || half !== reach.half) return false;
  const far = half === "left" ? pen(from) + pen(waist) : penOf(plan, "waist.seam") - pen(from);
  return far <= reach.inches + 1e-9;
}

/** How far a part band reaches from centre front, and on which half; undefined where there is none. */
export function partBandOf(
  plan: Plan,
): { readonly half: "left" | "right"; readonly inches: number } | undefined {
  if (plan.recipe.attach.to !== "part-band") return undefined;
  const share = toFloat(plan.opening.share.value);
  return { half: share <= 0.5 ? "left" : "right", inches: penOf(plan, "opening.fromFront") };
}

/** The line that every length begins at. */
export const edgeLine = ({ recipe }: Plan): string =>
  ({
    waistband: "the band's lower edge",
    "bodice-edge": "the bodice's piped edge",
    "part-band": "the waist seam, bodice edge and part band in one line",
  })[recipe.attach.to];

/** What stands above the waist seam, in words. */
export function aboveWords(plan: Plan, shown: (name: string) => string): string {
  const { to, piping } = plan.recipe.attach;
  if (to === "bodice-edge")
    return `the bodice's edge with its covered cord, ${shown("attach.piping.cord")} thick`;
  const band = `a band ${shown("attach.band.depth")} deep`;
  if (to === "waistband") return piping ? `${band}, piped along its lower edge` : band;
  return `the bodice's edge with its covered cord, and from centre front to the opening a part band ${shown("attach.band.depth")} deep that the bodice's free front covers`;
}
