/** A place on the waist seam has its place along the flat top through the zones, in proportion within each. */
import { add, div, isZero, less, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";

/** What of a zone the map needs. */
export interface Stretched {
  readonly waist: Quantity;
  readonly cloth: Quantity;
}

/** The zones on the waist as planned: what is sewn before the edge is made goes by it. */
export const asPlanned = (
  zones: readonly { readonly planned: Quantity; readonly cloth: Quantity }[],
): readonly Stretched[] => zones.map(({ planned, cloth }) => ({ waist: planned, cloth }));

type Side = "waist" | "cloth";

/** Walks a half's zones from centre front, turning a length of one kind into the other, in proportion within a zone. */
function along(zones: readonly Stretched[], at: Quantity, from: Side, to: Side): Quantity {
  let rest = at;
  let sum = mul(at, plain(0n));
  for (const zone of zones) {
    if (!less(zone[from], rest)) {
      return isZero(zone[from]) ? sum : add(sum, mul(rest, div(zone[to], zone[from])));
    }
    rest = sub(rest, zone[from]);
    sum = add(sum, zone[to]);
  }
  return sum;
}

/** Both halves: a place round the ring (from centre front by the left) in inches of waist or of cloth, to the other. */
function round(zones: readonly Stretched[], at: Quantity, from: Side, to: Side): Quantity {
  const total = (side: Side): Quantity => zones.map((zone) => zone[side]).reduce(add);
  const half = total(from);
  if (!less(half, at)) return along(zones, at, from, to);
  const two = plain(2n);
  return sub(mul(total(to), two), along(zones, sub(mul(half, two), at), from, to));
}

/** The place along the flat top of a place on the waist seam; both from centre front by the wearer's left. */
export const topOfWaist = (zones: readonly Stretched[], at: Quantity): Quantity =>
  round(zones, at, "waist", "cloth");

/** The place on the waist seam of a place along the flat top. */
export const waistOfTop = (zones: readonly Stretched[], at: Quantity): Quantity =>
  round(zones, at, "cloth", "waist");
