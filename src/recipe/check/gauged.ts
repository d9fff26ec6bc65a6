/** Is any part of the waist gauged? */
import type { Checking } from "./checking.ts";

/** True when the method or a zone gauges; false only when the recipe says for certain that nothing is gauged. */
export function isGauged({ values, written }: Pick<Checking, "values" | "written">): boolean {
  if (written("fullness.zones")) {
    const zones = values.fullness?.zones;
    return !zones || zones.some((zone) => zone.set === undefined || zone.set === "gauged");
  }
  return values.fullness?.method !== "pleated";
}
