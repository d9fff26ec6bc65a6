/** Everything round the gauging: thread, whipping, hem facing, braid, placket (trade: setting, hem). */
import { fraction, inches } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { fixed } from "./fixed.ts";
import { facingAlong, isAlong } from "./run.ts";

/** Cloth lighter than this (g/m2) may be whipped every other pleat, with a warning. */
const LIGHT = fraction("60/1000000");

/** Counts of bites and marks, and the gauging thread. Needs the sections' totals. */
export function solveThread({ recipe, sheet }: Work): void {
  sheet.set("gauging.marks", "2 * gauging.pleats");
  sheet.set("gauging.bites", "gauging.marks * fullness.rows");
  sheet.set("gauging.threads", "gauging.sections * fullness.rows");
  const [each, all] =
    recipe.fullness.thread === "drawn-along"
      ? ["section.waist", "gauging.waist"]
      : ["section.cloth", "gauging.cloth"];
  sheet.set("gauging.threadEach", `fullness.strands * (${each} + fullness.threadEnds)`);
  sheet.set(
    "gauging.thread",
    `fullness.rows * fullness.strands * (${all} + gauging.sections * fullness.threadEnds)`,
  );
}

/** Whip stitches over the whole skirt; every other pleat only in cloth under 60 g/m2. */
export function solveWhip({ recipe, sheet, say }: Work): void {
  const everyOther = recipe.attach.whip === "every-other";
  sheet.set("whip.pleats", everyOther ? "ceil(gauging.pleats / 2)" : "gauging.pleats");
  sheet.set("whip.doubled", "floor(whip.pleats / 4)");
  sheet.set("whip.stitches", "whip.pleats + whip.doubled");
  if (!everyOther) return;
  const weight = recipe.cloth.weight?.value;
  const light = weight !== undefined && weight.compare(LIGHT) < 0;
  say({
    code: "whip-every-other",
    level: light ? "warning" : "error",
    path: "attach.whip",
    text: light
      ? "whipping only every other pleat is weak, even in cloth this light"
      : `whipping only every other pleat is too weak for ${weight ? "cloth of 60 g/m2 and more" : "cloth of unknown weight"}`,
    hint: light
      ? `whip every pleat if the ${recipe.garment} is to be worn often`
      : "write whip: every, or give the cloth's weight if it is under 60 g/m2",
  });
}

/** Facing and braid for the hem. A turned hem has neither facing nor strips. */
export function solveHem({ recipe, sheet }: Work): void {
  if (recipe.skirt.hem.kind === "faced") {
    sheet.set("facing.depth", "skirt.hem.depth + 2 * skirt.seam");
    sheet.set(
      "facing.strips",
      facingAlong({ recipe, sheet })
        ? "breadths.count"
        : recipe.cloth.repeat?.match || isAlong(recipe)
          ? "ceil(skirt.round / (breadths.usable - 2 * skirt.seam))"
          : "ceil(skirt.round / breadths.finished)",
    );
    sheet.set("facing.length", "skirt.round + facing.strips * 2 * skirt.seam");
    if (recipe.skirt.hem.cloth === "other")
      sheet.set("facing.buy", "ceil(facing.strips * facing.depth / (1 - cloth.shrinkage), cloth.boughtBy)");
  }
  if (recipe.skirt.braid) sheet.set("braid.length", `skirt.round * 103/100 + ${fixed(recipe, "4 in")}`);
}

/** What is left unsewn for the opening, measured from the cut top, and the strip that faces it. Needs turnDown.opening. */
export function solvePlacket({ recipe, sheet }: Work): void {
  const tucks = recipe.skirt.tucks ? " + tucks.crossing * tucks.each" : "";
  sheet.set("placket.unsewn", `skirt.placket + turnDown.opening + ${fixed(recipe, "1/4 in")}${tucks}`);
  sheet.set("placket.strip", `2 * (placket.unsewn + ${fixed(recipe, "1 in")})`);
}

/** The placket strip's width. */
export const PLACKET_STRIP_WIDTH = inches(fraction(5n, 2n));
