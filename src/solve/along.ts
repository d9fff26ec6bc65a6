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
function round(zones: readonly Stretched[], from: Side, to: Side): (at: Quantity) => Quantity {
  const total = (side: Side): Quantity => zones.map((zone) => zone[side]).reduce(add);
  const half = total(from);
  const [whole, other] = [mul(half, TWO), mul(total(to), TWO)];
  return (at) =>
    less(half, at) ? sub(other, along(zones, sub(whole, at), from, to)) : along(zones, at, from, to);
}

const TWO = plain(2n);

/** The place along the flat top of any place on the waist seam; both from centre front by the wearer's left. */
export const topsOfWaist = (zones: readonly Stretched[]): ((at: Quantity) => Quantity) =>
  round(zones, "waist", "cloth");

/** The place along the flat top of one place on the waist seam. */
export const topOfWaist = (zones: readonly Stretched[], at: Quantity): Quantity => topsOfWaist(zones)(at);

/** The place on the waist seam of a place along the flat top. */
export const waistOfTop = (zones: readonly Stretched[], at: Quantity): Quantity =>
  round(zones, "cloth", "waist")(at);
