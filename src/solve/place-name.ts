/** How a place on the waist seam is called: a measured station, the opening, or its distance from centre front. */
import { printPart } from "../quantity/print.ts";
import { div, equal, min, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Plan } from "./plan.ts";

/** The name of the place `at`, counted on the waist seam from centre front by the wearer's left. */
export function placeName(at: Quantity, waist: Quantity, plan: Plan): string {
  const share = div(at, waist);
  const named = plan.balance.find((station) => station.measured && equal(station.share, share));
  if (named) return named.station;
  if (equal(share, plain(1n))) return "centre front";
  if (equal(share, plan.opening.share)) return "the opening";
  return printPart(min(at, sub(waist, at)), { show: plan.recipe.show, tape: plan.recipe.tape });
}
