/**
 * A pointed waist: the edge of the bodice drops at centre front and runs straight up to the waist on both sides (practice:
 * pointed waists). The skirt is set to that edge, or to the straight waist within it, and the point hangs over.
 */
import { hypotenuse } from "../quantity/hypotenuse.ts";
import { div, less, min, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { type SolvedZone, topOfWaist } from "./zones.ts";

/** Is the skirt set to the pointed edge itself? */
export const isPointed = ({ attach }: Work["recipe"]): boolean => attach.waistEdge?.set === "edge";

/** The slanting edge and what it adds to the waist. Before the waist seam. */
export function solveWaistEdge({ recipe, sheet }: Work): void {
  const { waistEdge } = recipe.attach;
  if (!waistEdge) return;
  sheet.choose(
    "edge.slant",
    hypotenuse(waistEdge.depth, waistEdge.fromCentre, sheet.showing.tape),
    "the root of attach.waistEdge.depth squared and attach.waistEdge.fromCentre squared, to the nearest mark of the tape",
  );
  sheet.set("edge.gain", "2 * (edge.slant - attach.waistEdge.fromCentre)");
  sheet.set("edge.length", "wearer.waist + wearer.ease + edge.gain");
}

/** How far the edge lies below the straight waist at a share of the waist seam; nothing where the skirt is set straight. */
export function dropAt({ recipe, sheet }: Pick<Work, "recipe" | "sheet">, share: Quantity): Quantity {
  const seam = sheet.get("waist.planned");
  const none = sub(seam, seam);
  const { waistEdge } = recipe.attach;
  if (!waistEdge || !isPointed(recipe)) return none;
  const away = mul(seam, min(share, sub(plain(1n), share)));
  const slant = sheet.get("edge.slant");
  return less(away, slant) ? mul(waistEdge.depth, div(sub(slant, away), slant)) : none;
}

/** Where the slant meets the straight waist, along the cut top, and what is turned down there. */
export function solveShoulder(
  { recipe, sheet }: Work,
  zones: readonly SolvedZone[],
  turnDown: (share: Quantity) => Quantity,
): void {
  if (!isPointed(recipe)) return;
  const slant = sheet.get("edge.slant");
  sheet.choose(
    "edge.alongTop",
    topOfWaist(zones, slant),
    "the place along the cut top that comes to edge.slant from the point, by the parts of the waist",
  );
  sheet.choose(
    "turnDown.shoulder",
    turnDown(div(slant, sheet.get("waist.planned"))),
    "the turn-down curve where the slant ends",
  );
}
