/** Lengths and balance at the four measured stations: hem first, and the difference goes into the turn-down. */
import { printOnTape } from "../quantity/print.ts";
import { compare, fraction, inches, less, type Quantity, sub } from "../quantity/quantity.ts";
import { placeBorder } from "./border.ts";
import type { Work } from "./context.ts";
import { MEASURED_STATIONS, solveOverHoop } from "./over-hoop.ts";
import { isAlong, solveAcross } from "./run.ts";
import { checkHeights, solveHeights, topOf } from "./trims.ts";
import { isPointed } from "./waist-edge.ts";

/** Is any of the waist gauged? */
export const isGauged = ({ fullness }: Work["recipe"]): boolean =>
  fullness.zones ? fullness.zones.some(({ set }) => set === "gauged") : fullness.method !== "pleated";

/** Finished lengths, hem allowance, least turn-down, cut length, and the turn-down at each measured station. */
export function solveLengths({ recipe, sheet, say }: Work): void {
  const estimated = recipe.wearer.waistToFloor === undefined;
  if (estimated && !solveOverHoop({ recipe, sheet, say })) return;
  const toFloor = estimated ? "domed" : "wearer.waistToFloor";
  for (const station of MEASURED_STATIONS) {
    const level = `${toFloor}.${station} - skirt.offFloor`;
    if (station !== "front" || !isPointed(recipe)) sheet.set(`finished.${station}`, level);
    else {
      sheet.set("finished.level", level);
      sheet.set("finished.front", "finished.level - attach.waistEdge.depth");
    }
  }
  // Beside a point the front is as long as from the straight waist.
  const front = isPointed(recipe) ? "finished.level" : "finished.front";
  sheet.set("breadths.longest", `max(${front}, finished.left, finished.right, finished.back)`);
  sheet.set("breadths.shortest", "min(finished.front, finished.left, finished.right, finished.back)");
  sheet.set("hem.allowance", allowanceOf(recipe));
  const gauged = isGauged(recipe);
  if (gauged) {
    sheet.set("gauging.lastRow", "fullness.firstRow + (fullness.rows - 1) * fullness.betweenRows");
  }
  const least = gauged
    ? "max(skirt.leastTurnDown, gauging.lastRow + fullness.margin)"
    : "skirt.leastTurnDown";
  sheet.set("balance.least", recipe.skirt.turnDown ? "skirt.turnDown" : least);
  if (recipe.cloth.border && isAlong(recipe)) placeBorder({ recipe, sheet, say }, recipe.cloth.border);
  solveHeights({ recipe, sheet, say });
  const tucks = recipe.skirt.tucks ? " + tucks.takeUp" : "";
  sheet.set("breadths.cut", `ceil(breadths.longest + hem.allowance${tucks} + balance.least, tape)`);
  sheet.set("breadths.hemmed", "breadths.cut - hem.allowance");
  if (recipe.skirt.tucks) sheet.set("tucks.left", "breadths.hemmed - tucks.takeUp");
  sheet.set(
    "breadths.allotted",
    recipe.cloth.repeat?.down && !isAlong(recipe) ? "ceil(breadths.cut, cloth.repeat.down)" : "breadths.cut",
  );
  solveAcross({ recipe, sheet, say });
  for (const station of ["front", "left", "right", "back"] as const) {
    sheet.set(`turnDown.${station}`, `${topOf(recipe)} - finished.${station}`);
  }
  if (sheet.get("breadths.shortest").value.compare(0) > 0) checkHeights({ recipe, sheet, say });
  else {
    say({
      code: "no-length",
      level: "error",
      path: "skirt.off-floor",
      text: `${sheet.shown("skirt.offFloor")} off the floor leaves no skirt`,
      hint: estimated
        ? "check waist-height, the hoop and off-floor"
        : "check the waist-to-floor lengths and off-floor",
    });
  }
  warnOfSides({ recipe, sheet, say });
  warnOfLengths({ recipe, sheet, say });
}

/** What the hem takes of the cut length: a faced one its seam, a selvedge nothing, a turned one what is turned up. */
function allowanceOf({ skirt }: Work["recipe"]): string {
  if (skirt.hem.kind === "turned") return "skirt.hem.depth + skirt.hem.turnIn";
  return skirt.hem.edge === "selvedge" ? "0 * skirt.seam" : "skirt.seam";
}

/** How far two readings of one length may lie apart: a side further than this outside front and back is said (ours). */
const READING = inches(fraction(1n, 4n));

/** A side that is measured longer or shorter than front and back both, as when one length was changed and another forgotten. */
function warnOfSides({ recipe, sheet, say }: Work): void {
  if (!recipe.wearer.waistToFloor) return;
  const at = (station: string): Quantity => sheet.get(`wearer.waistToFloor.${station}`);
  const ends = [at("front"), at("back")];
  for (const side of ["left", "right"] as const) {
    const shorter = ends.every((end) => less(READING, sub(end, at(side))));
    if (!shorter && !ends.every((end) => less(READING, sub(at(side), end)))) continue;
    const shown = (station: string): string => sheet.shown(`wearer.waistToFloor.${station}`);
    say({
      code: "side-outside",
      level: "warning",
      path: "wearer.waist-to-floor",
      text: `${at("left").value.equals(at("right").value) ? `the sides (${shown(side)}) are` : `the ${side} side (${shown(side)}) is`} ${shorter ? "shorter" : "longer"} than front (${shown("front")}) and back (${shown("back")})`,
      hint: "measure the sides again, over all the supports; if it is so, go on",
    });
    return;
  }
}

function warnOfLengths({ sheet, say }: Work): void {
  const front = sheet.get(sheet.has("finished.level") ? "finished.level" : "finished.front");
  const back = sheet.get("finished.back");
  if (compare(front, back) > 0) {
    say({
      code: "front-longer",
      level: "warning",
      path: "wearer.waist-to-floor",
      text: `the front (${sheet.shown("finished.front")}) is longer than the back (${sheet.shown("finished.back")})`,
      hint: "measure again over all the supports; if it is so, go on: the turn-down is deeper at the back",
    });
  }
  const most = inches(4n);
  if (less(most, sub(back, front))) {
    say({
      code: "hem-must-shape",
      level: "warning",
      path: "wearer.waist-to-floor",
      text: `the back is ${printOnTape(sub(back, front), sheet.showing)} longer than the front, more than ${printOnTape(most, sheet.showing)}: more than the top alone balances well, and no train can be made this way`,
      hint: "measure again; past that the hem itself has to be shaped, which straight breadths do not do",
    });
  }
}
