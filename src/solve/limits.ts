/** What cannot be made although every measure by itself is sensible: each refused with its numbers. */

import { printOnTape } from "../quantity/print.ts";
import { compare, inches, isWhole, less } from "../quantity/quantity.ts";
import { MOST_GAUGED } from "../recipe/limits.ts";
import type { Work } from "./context.ts";
import { seamLoss } from "./match.ts";
import type { Part } from "./sections.ts";

/** Rows further below the fold than this are hard to keep in line and to hide. */
const DEEP_ROW = inches(3n);

/** A half breadth must keep some width between its seams. Needs the breadths. */
export function limitBreadths({ recipe, sheet, say }: Work): void {
  if (isWhole(sheet.get("breadths.count"))) return;
  if (sheet.evaluate(`breadths.usable / 2 - ${seamLoss(recipe)}`).value.compare(0) > 0) return;
  say({
    code: "no-half-width",
    level: "error",
    path: "skirt.breadths",
    text: `half a breadth of ${sheet.shown("breadths.usable")} has no width left between seams of ${sheet.shown("skirt.seam")}`,
    hint: "take whole breadths, wider cloth or a narrower seam",
  });
}

/** The hem must leave some skirt above it. Needs the finished lengths. */
export function limitHem({ recipe, sheet, say }: Work): void {
  const shortest = sheet.evaluate("min(finished.front, finished.left, finished.right, finished.back)");
  if (shortest.value.compare(0) <= 0 || less(sheet.get("skirt.hem.depth"), shortest)) return;
  say({
    code: "hem-too-deep",
    level: "error",
    path: "skirt.hem.depth",
    text: `a ${recipe.skirt.hem.kind === "faced" ? "facing" : "hem"} ${sheet.shown("skirt.hem.depth")} deep is no shorter than the ${recipe.garment} itself`,
    hint: "make the hem shallower",
  });
}

/** The opening must end above the hem. Needs `placket.unsewn`. */
export function limitPlacket({ sheet, say }: Work): void {
  const room = sheet.evaluate("breadths.cut - hem.allowance - skirt.hem.depth");
  const unsewn = sheet.get("placket.unsewn");
  if (compare(unsewn, room) < 0) return;
  say({
    code: "placket-too-long",
    level: "error",
    path: "skirt.placket",
    text: `left open ${sheet.shown("placket.unsewn")} from the cut top, the opening would reach the hem: a breadth is cut ${sheet.shown("breadths.cut")}`,
    hint: "make the placket shorter",
  });
}

/** Gauging is pleats drawn up one against the next: a gauged part of one pleat is none, and its thread would hold nothing even. */
export function limitPleats({ recipe, sheet, say }: Work, { name, cloth, waist }: Part): void {
  say({
    code: "single-pleat",
    level: "error",
    path: recipe.fullness.zones ? "fullness.zones" : "fullness.method",
    text: `the ${name}, ${printOnTape(cloth, sheet.showing)} of cloth to ${printOnTape(waist, sheet.showing)} of waist, makes one pleat only`,
    expected: "two pleats at least in every gauged part",
    hint: "give that part more of the waist or more cloth, lay it in pleats, or move an opening that cuts it short",
  });
}

/** More gauged pleats than are worked out at all: then nothing is laid. */
export function limitGauged({ recipe, say }: Work, pleats: readonly number[]): boolean {
  const all = pleats.reduce((sum, count) => sum + count, 0);
  if (all <= MOST_GAUGED) return true;
  const { fullness } = recipe;
  say({
    code: "too-many-pleats",
    level: "error",
    path: fullness.trial ? "fullness.trial" : fullness.pleatsPerInch ? "fullness.pleats-per-inch" : "cloth",
    text: `the gauging comes to ${all} pleats`,
    expected: `at most ${MOST_GAUGED} in the whole garment`,
    hint: "check the cloth's thickness, the finest bite, the wished pleats an inch and the trial",
  });
  return false;
}

/** Warns of rows that run far below the fold. */
export function limitRows({ sheet, say }: Work): void {
  if (!sheet.has("gauging.lastRow") || !less(DEEP_ROW, sheet.get("gauging.lastRow"))) return;
  say({
    code: "deep-rows",
    level: "warning",
    path: "fullness.rows",
    text: `the last row runs ${sheet.shown("gauging.lastRow")} below the fold`,
    hint: `common practice is two or three rows, ${sheet.showing.show === "cm" ? "6 to 10 mm" : "1/4 to 3/8 in"} apart`,
  });
}
