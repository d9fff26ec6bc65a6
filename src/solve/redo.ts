/** What the commonest faults cost and gain in this garment: numbers for the chapter on what goes wrong. */
import { equal } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { isAlong, repeatRound, roundRepeatOf } from "./run.ts";

/** Needs the sections, the work's rates and the placket. */
export function solveRedo({ recipe, sheet }: Work): void {
  sheet.set("placket.passes", "waist.seam + 2 * skirt.placket");
  sheet.set(
    "redo.roundLess",
    isAlong(recipe) ? "skirt.round - floor(skirt.round / 8, tape)" : "skirt.round - breadths.finished / 2",
  );
  if (roundRepeatOf(recipe)) sheet.set("redo.roundRepeat", `skirt.round - ${repeatRound(recipe)}`);
  sheet.set("redo.seams", "min(2, breadths.seams) * breadths.cut * 8 / (1 in)");
  sheet.set("redo.seamsLow", "redo.seams / rate.running.high");
  sheet.set("redo.seamsHigh", "redo.seams / rate.running.low");
  if (!sheet.has("section.pleats")) return;
  if (sheet.has("fullness.stay.thickness"))
    sheet.set("redo.staySaves", "2 * fullness.stay.thickness * section.pleats");
  // Five in a hundred pass behind the sides, half of them on each side; only where every part gives.
  if (equal(sheet.get("gauging.waist"), sheet.get("waist.seam")))
    sheet.set("redo.moved", "ceil(gauging.pleats / 40)");
}
