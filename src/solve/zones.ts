/**
 * Zones: how fullness is set to the waist, one half from centre front to centre back, mirrored on the other (trade:
 * zones). Sums are exact: over a half the zones' waists make half the waist seam and their cloths half the round.
 */

import { compare, div, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import { throwBack } from "./back-share.ts";
import type { Work } from "./context.ts";
import { isPleatSet, TAKE_UP } from "./pleat.ts";
import { askedZones, type SolvedZone } from "./zone.ts";
import { clothsOf } from "./zone-cloths.ts";
import { waistsOf } from "./zone-waists.ts";

export { asPlanned, topOfWaist, topsOfWaist, waistOfTop } from "./along.ts";
export type { SolvedZone } from "./zone.ts";

/** Works the zones out. Undefined, with errors said, when they do not add up. */
export function solveZones(work: Work): readonly SolvedZone[] | undefined {
  const { recipe, sheet } = work;
  const asked = askedZones(work);
  const planned = waistsOf(work, asked, sheet.evaluate("waist.planned / 2"), false);
  if (!planned) return undefined;
  const zones = clothsOf(work, asked, planned, planned);
  if (!zones) return undefined;
  if (!recipe.attach.made) return throwBack(work, zones);
  const made = waistsOf(work, asked, sheet.evaluate("waist.seam / 2"), true);
  const again = made && remade(zones, made, () => clothsOf(work, asked, made, planned));
  return again && throwBack(work, again);
}

/** The zones on the made edge: cloth stays where it is, faces and depths follow. A flat part that changed moves the cloth. */
function remade(
  zones: readonly SolvedZone[],
  made: readonly Quantity[],
  anew: () => readonly SolvedZone[] | undefined,
): readonly SolvedZone[] | undefined {
  const moved = zones.some(
    ({ set, waist }, i) => set === "flat" && compare(waist, made[i] as Quantity) !== 0,
  );
  if (moved) return anew();
  return zones.map((zone, i): SolvedZone => {
    const waist = made[i] as Quantity;
    if (!zone.pleats || !isPleatSet(zone.set)) return { ...zone, waist };
    const { count, towards } = zone.pleats;
    const depth = div(sub(zone.cloth, waist), mul(count, plain(TAKE_UP[zone.set])));
    return { ...zone, waist, pleats: { count, towards, face: div(waist, count), depth } };
  });
}
