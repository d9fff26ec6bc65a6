/** Waist seam and breadths: how much cloth there is for how much waist (trade: waist and breadths). */
import { compare, fraction, isWhole, less, plain, type Quantity } from "../quantity/quantity.ts";
import { MOST_BREADTHS } from "../recipe/limits.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";
import { placeDominant, seamLoss, solveMatch } from "./match.ts";
import { isAlong, solveRoundAlong } from "./run.ts";
import { isPointed, solveWaistEdge } from "./waist-edge.ts";

/** The round, as a formula. */
export const roundFormula = (recipe: Recipe): string =>
  `breadths.count * breadths.usable - breadths.seams * ${seamLoss(recipe)}`;

/** Sets the waist seam. An edge that is made and measured replaces the plan for everything not yet sewn. */
export function solveWaist(work: Work): void {
  const { sheet, recipe } = work;
  solveWaistEdge(work);
  sheet.set("waist.planned", isPointed(recipe) ? "edge.length" : "wearer.waist + wearer.ease");
  sheet.set("waist.seam", recipe.attach.made ? "attach.made" : "waist.planned");
  sheet.set("waist.quarter", "waist.seam / 4");
}

/** Sets the breadths, the round and the fullness. Errors: no width left, a round that cannot be reached, W < waist seam. */
export function solveBreadths(work: Work): void {
  const { sheet, recipe, say } = work;
  sheet.set("breadths.usable", "cloth.width - 2 * cloth.selvedge");
  if (sheet.evaluate("breadths.usable - 2 * skirt.seam").value.compare(0) <= 0) {
    say({
      code: "no-width",
      level: "error",
      path: "cloth.width",
      text: `a breadth ${sheet.shown("cloth.width")} wide has no width left between its seams`,
      hint: "check the cloth's width, the selvedge and the seam allowance",
    });
    return;
  }
  if (isAlong(recipe)) solveRoundAlong(work);
  else if (!solveRoundDown(work)) return;
  sheet.set("skirt.quarter", "skirt.round / 4");
  sheet.set("skirt.fullness", "skirt.round / waist.seam");
  if (less(sheet.get("skirt.round"), sheet.get("waist.seam"))) {
    say({
      code: "round-below-waist",
      level: "error",
      path: recipe.skirt.breadths ? "skirt.breadths" : "skirt.round",
      text: `the round is ${sheet.shown("skirt.round")}, less than the waist seam of ${sheet.shown("waist.seam")}`,
      hint: isAlong(recipe) ? "wish for a larger round" : "take more breadths, or wider cloth",
    });
  }
}

/** The round in breadths that run down the body. False, with an error said, where there can be none. */
function solveRoundDown(work: Work): boolean {
  const { sheet, recipe, say } = work;
  if (!solveMatch(work)) return false;
  if (recipe.skirt.breadths) sheet.set("breadths.count", "skirt.breadths");
  else {
    const count = fewestHalves(work);
    if (!count) return false;
    sheet.choose(
      "breadths.count",
      count,
      `the fewest half breadths whose round reaches ${sheet.shown("skirt.roundWished")}`,
    );
  }
  if (recipe.skirt.centreFront && !isWhole(sheet.get("breadths.count"))) {
    say({
      code: "half-in-front",
      level: "error",
      path: "skirt.centre-front",
      text: `${sheet.shown("breadths.count")} breadths reach the round, and the half breadth is centred at the front`,
      hint: "leave centre-front out, or give whole breadths",
    });
    return false;
  }
  sheet.set("breadths.pieces", "ceil(breadths.count)");
  sheet.set("breadths.seams", "breadths.pieces");
  placeDominant(work);
  sheet.set("breadths.finished", `breadths.usable - ${seamLoss(recipe)}`);
  sheet.set("skirt.round", roundFormula(recipe));
  if (recipe.cloth.repeat?.match)
    sheet.set("repeat.roundFree", "breadths.count * breadths.usable - breadths.seams * 2 * skirt.seam");
  sheet.set(
    "seam.fromEdge",
    recipe.cloth.repeat?.match ? "cloth.selvedge + seam.lost / 2" : "cloth.selvedge + skirt.seam",
  );
  return true;
}

function fewestHalves({ recipe, sheet, say }: Work): Quantity | undefined {
  const wished = sheet.get("skirt.roundWished");
  for (let halves = 1n; halves <= BigInt(MOST_BREADTHS) * 2n; halves += 1n) {
    const count = plain(fraction(halves, 2n));
    const pieces = plain((halves + 1n) / 2n);
    const round = sheet.evaluate(roundFormula(recipe), { "breadths.count": count, "breadths.seams": pieces });
    if (compare(round, wished) >= 0) return count;
  }
  say({
    code: "round-too-large",
    level: "error",
    path: "skirt.round",
    text: `a round of ${sheet.shown("skirt.roundWished")} needs more than ${MOST_BREADTHS} breadths of this cloth`,
    hint: "check the round and the cloth's width",
  });
  return undefined;
}
