/** What flounces are cut from: strips, their rings, cloth on the straight or on the true bias, thread (trade: trimmings). */
import { isNegative, toCount } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Wanted } from "./layout.ts";
import { isAlong } from "./run.ts";

/** The round of one flounce as wished. */
export const FLOUNCE_ROUND = "skirt.flounces.fullness * skirt.round";
/** What whole strips make more than was wished, in marks of the tape. */
const SPARE = "flounces.ring - ceil(flounces.round, tape)";
/** What a strip gives between its joins where it lies across the cloth. */
const across = (recipe: Work["recipe"]): string =>
  isAlong(recipe) ? "(breadths.usable - 2 * skirt.seam)" : "breadths.finished";

/** Strips for one flounce: straight, or on the true bias, where a strip is the root of 2 longer (compared exactly). */
const stripsFrom = (each: string) => ({
  straight: `ceil(flounces.round / ${each})`,
  cross: `diagonal(flounces.round / (2 * ${each}), 1)`,
});
export const STRIPS = stripsFrom("breadths.finished");
/** Straight strips that run along the cloth, as its lengths do. */
const STRIPS_ALONG = "ceil(skirt.flounces.fullness * breadths.count)";
const stripsOf = (recipe: Work["recipe"], cut: "straight" | "cross"): string =>
  isAlong(recipe) && cut === "straight" ? STRIPS_ALONG : stripsFrom(across(recipe))[cut];

/** Strips, rings and cloth of the flounces. Whole strips are used, so a flounce is at least as full as wished; what is more than that, by a mark or more, is `flounces.spare`. */
export function solveFlounces({ recipe, sheet }: Work): void {
  const { flounces } = recipe.skirt;
  if (!flounces) return;
  const cross = flounces.cut === "cross";
  sheet.set("flounces.round", FLOUNCE_ROUND);
  sheet.set("flounces.strips", stripsOf(recipe, flounces.cut));
  sheet.set("flounces.pieces", "skirt.flounces.count * flounces.strips");
  sheet.set("flounces.cut", "skirt.flounces.depth + 2 * skirt.seam");
  sheet.set("flounces.along", cross ? "diagonal(flounces.cut, tape)" : "flounces.cut");
  if (cross) {
    sheet.set("flounces.strip", "diagonal(breadths.usable, tape)");
    sheet.set("flounces.block", "cloth.width + flounces.pieces * flounces.along");
  }
  if (cross) sheet.set("flounces.each", `diagonal(${across(recipe)}, tape)`);
  else if (isAlong(recipe)) {
    sheet.set("flounces.each", "ceil(flounces.round / flounces.strips, tape)");
    sheet.set("flounces.strip", "flounces.each + 2 * skirt.seam");
  } else sheet.set("flounces.each", "breadths.finished");
  sheet.set("flounces.ring", "flounces.strips * flounces.each");
  if (!isAlong(recipe) && !isNegative(sheet.evaluate(`${SPARE} - tape`))) sheet.set("flounces.spare", SPARE);
  sheet.set("flounces.quarter", "flounces.ring / 4");
  sheet.set("flounces.drawn", "skirt.round / 4");
  sheet.set("flounces.fullness", "flounces.ring / skirt.round");
  sheet.set("flounces.thread", "skirt.flounces.count * (flounces.ring + 4 * fullness.threadEnds)");
  sheet.set(
    "stitches.flounces",
    "flounces.pieces * flounces.cut * 8 / (1 in) + skirt.flounces.count * (2 * flounces.ring + skirt.round) * 6 / (1 in)",
  );
}

/** The strips as they lie on the cloth. On the true bias they lie side by side in one block with a corner over at each end. */
export function flouncePieces({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): Wanted[] {
  const { flounces } = recipe.skirt;
  if (!flounces) return [];
  const width = sheet.get("cloth.width");
  if (flounces.cut === "cross")
    return [{ name: "flounces, on the true bias", width, length: sheet.get("flounces.block") }];
  const length = sheet.get("flounces.cut");
  if (isAlong(recipe)) return stripsAlong({ recipe, sheet });
  return Array.from({ length: toCount(sheet.get("flounces.pieces")) }, (_, i) => ({
    name: `flounce strip ${i + 1}`,
    width,
    length,
  }));
}

/** Strips along the cloth; with a spare border all of them along bordered edges, the other selvedge's first. */
function stripsAlong({ sheet }: Pick<Work, "recipe" | "sheet">): Wanted[] {
  const [width, length] = [sheet.get("flounces.cut"), sheet.get("flounces.strip")];
  const bordered = sheet.has("border.flounces");
  return Array.from({ length: toCount(sheet.get("flounces.pieces")) }, (_, i) => ({
    name: `flounce strip ${i + 1}`,
    width,
    length,
    ...(bordered
      ? { at: [sheet.evaluate("cloth.width - border.flounces - flounces.cut"), sheet.get("border.flounces")] }
      : {}),
  }));
}
