/**
 * Thread and needles for everything that is not gauging. A whip stitch takes 5/8 in of thread and each needleful loses 6 in at its
 * ends (practice); running and tacking threads are estimates by length (common practice, no source).
 */
import { compare } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { fixed } from "./fixed.ts";

/** Thread for whipping, in needlefuls. Needs whip.stitches. */
export function solveWhipThread(work: Work): void {
  needlefuls(work, "whip");
}

/** Running thread by what is sewn, setting thread by its stitches, tacking thread by the lines tacked. Needs the counts of stitches. */
export function solveSewingThread(work: Work): void {
  const { recipe, sheet } = work;
  const gauged = sheet.has("gauging.waist");
  if (!gauged || compare(sheet.get("gauging.waist"), sheet.get("waist.seam")) < 0) {
    sheet.set("setting.waist", gauged ? "waist.seam - gauging.waist" : "waist.seam");
    const atPleats = sheet.has("pleating.count") ? " + 2 * pleating.count" : "";
    sheet.set("setting.stitches", `setting.waist * 8 / (1 in)${atPleats}`);
    needlefuls(work, "setting");
  }
  sheet.set("thread.seams", "breadths.seams * breadths.cut * 3/2");
  // Run on and sewn down, or sewn down alone; braid is sewn along both its edges.
  const rounds = (recipe.skirt.hem.kind === "faced" ? 2 : 1) + (recipe.skirt.braid ? 2 : 0);
  sheet.set("thread.hem", `${rounds} * skirt.round * 3/2`);
  sheet.set("thread.edge", "(2 * placket.strip + 4 * waist.seam) * 3/2");
  const trims = [
    ...(sheet.has("stitches.tucks") ? ["stitches.tucks / 8"] : []),
    ...(sheet.has("stitches.pocket") ? ["stitches.pocket / 8"] : []),
    ...(sheet.has("stitches.flounces") ? ["stitches.flounces / 6"] : []),
  ];
  if (trims.length > 0) sheet.set("thread.trims", `(${trims.join(" + ")}) * (1 in) * 3/2`);
  sheet.set(
    "thread.sewing",
    `thread.seams + thread.hem + thread.edge${trims.length > 0 ? " + thread.trims" : ""}`,
  );
  sheet.set("thread.tacking", `(2 * skirt.round + 2 * waist.seam + 8 * (${fixed(recipe, "6 in")})) * 5/4`);
}

/** Sharps for rows and seams, betweens for what is sewn at the waist; all of them are counted back. */
export function solveNeedles({ sheet }: Work): void {
  sheet.set("needles.sharps", sheet.has("gauging.pleats") ? "fullness.rows + 1" : "1 + 1");
  sheet.set("needles.count", "needles.sharps + 2");
}

function needlefuls({ recipe, sheet }: Work, of: "whip" | "setting"): void {
  if (!sheet.has("whip.needleful")) sheet.set("whip.needleful", fixed(recipe, "18 in"));
  const each = fixed(recipe, "5/8 in");
  sheet.set(
    `${of}.needlefuls`,
    `ceil(${of}.stitches * (${each}) / (whip.needleful - ${fixed(recipe, "6 in")}))`,
  );
  sheet.set(`${of}.thread`, `${of}.needlefuls * whip.needleful`);
}
