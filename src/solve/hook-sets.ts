/**
 * Further sets of eyes, so that a band closes to other waists without being touched. Closed smaller, the upper end comes to
 * lie over the garment itself; closed larger, it draws back along the lap (practice: a band that hooks to two waists).
 */
import { printOnTape } from "../quantity/print.ts";
import { compare, less, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { fixed } from "./fixed.ts";
import type { HookSet } from "./plan.ts";

/** Least lap that eyes can be sewn to. This project's own choice. */
const LEAST_LAP = "1/2 in";
/** Past this the band stands double over too much gauging: common practice, no source. */
const USUAL = "2 in";

/** Where another waist's eyes come to stand: how far from the closing mark, and on what. Undefined for a waist that cannot be hooked. */
export function hookAt(
  { recipe, sheet }: Pick<Work, "recipe" | "sheet">,
  waist: Quantity,
): HookSet | undefined {
  const seam = sheet.get("waist.seam");
  if (recipe.attach.to !== "waistband") return undefined;
  if (compare(waist, seam) < 0) {
    const away = sub(seam, waist);
    return less(sheet.evaluate(fixed(recipe, USUAL)), away) ? undefined : { waist, away, on: "garment" };
  }
  const away = sub(waist, seam);
  const room = sheet.evaluate(`attach.band.lap - ${fixed(recipe, LEAST_LAP)}`);
  return less(room, away) ? undefined : { waist, away, on: "lap" };
}

/** The sets the recipe asks for, with their eyes counted. Refuses what has no room on the band. */
export function solveHookSets(work: Work): readonly HookSet[] {
  const { recipe, sheet, say } = work;
  const asked = recipe.attach.band.hookSets ?? [];
  if (asked.length === 0 || recipe.attach.to !== "waistband") return [];
  sheet.choose("hooks.sets", plain(asked.length), "the further waists the band hooks to, counted");
  sheet.set("hooks.eyes", "hooks.count + hooks.band * hooks.sets");
  const seam = sheet.get("waist.seam");
  const print = (q: Quantity): string => printOnTape(q, sheet.showing);
  return asked.flatMap(({ waist }, i): HookSet[] => {
    const path = `attach.band.hook-sets.${i}.waist`;
    const shown = sheet.shown(`attach.band.hookSets.${i}.waist`);
    if (compare(waist, seam) === 0) {
      say({
        code: "hook-set-same",
        level: "error",
        path,
        text: `the band closes to ${shown} already`,
        hint: "give another waist, or take this set out",
      });
      return [];
    }
    const set = hookAt(work, waist);
    if (set) return [set];
    if (compare(waist, seam) > 0) {
      say({
        code: "hook-set-off-lap",
        level: "error",
        path,
        text: `closed to ${shown} the band's end would draw ${print(sub(waist, seam))} back along a lap of ${sheet.shown("attach.band.lap")}, and ${print(sheet.evaluate(fixed(recipe, LEAST_LAP)))} must stay under it for the eyes`,
        hint: `make the lap ${print(sheet.evaluate(`other.away + ${fixed(recipe, LEAST_LAP)}`, { "other.away": sub(waist, seam) }))} or more; or plan the waist for ${shown} and give ${sheet.shown("waist.seam")} as the further set`,
      });
      return [];
    }
    const away = sub(seam, waist);
    const tooFar = !less(away, sheet.get("waist.quarter"));
    say({
      code: tooFar ? "hook-set-too-far" : "hook-set-far",
      level: tooFar ? "error" : "warning",
      path,
      text: `closed to ${shown} the band's end lies ${print(away)} over the ${recipe.garment} itself: ${tooFar ? "a quarter of the waist and more" : "that stands thick and pulls askew"}`,
      hint: tooFar
        ? "give a waist nearer to the planned one; a waist so much smaller needs a band of its own (see attach.other-waists)"
        : `common practice is ${print(sheet.evaluate(fixed(recipe, USUAL)))} at most; for more set the gauging to a smaller band`,
    });
    return tooFar ? [] : [{ waist, away, on: "garment" }];
  });
}
