/** Zones: how a half's cloth lies on its waist. A place on the waist seam has its place along the top through them. */
import { add, div, fraction, isZero, less, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";

/** One zone of a half, from centre front to centre back. */
export interface SolvedZone {
  readonly set: "gauged";
  readonly waist: Quantity;
  readonly cloth: Quantity;
}

/** The zones of one half, mirrored on the other. A skirt gauged all round is one zone: everything on everything. */
export function solveZones({ sheet }: Work): readonly SolvedZone[] {
  return [
    { set: "gauged", waist: sheet.evaluate("waist.seam / 2"), cloth: sheet.evaluate("skirt.round / 2") },
  ];
}

/** Walks a half's zones from centre front, turning a length of one kind into the other, in proportion within a zone. */
function along(
  zones: readonly SolvedZone[],
  at: Quantity,
  from: "waist" | "cloth",
  to: "waist" | "cloth",
): Quantity {
  let rest = at;
  let sum = mul(at, plain(0n));
  for (const zone of zones) {
    if (!less(zone[from], rest))
      return isZero(zone[from]) ? sum : add(sum, mul(rest, div(zone[to], zone[from])));
    rest = sub(rest, zone[from]);
    sum = add(sum, zone[to]);
  }
  return sum;
}

/** Both halves: a place round the ring (from centre front by the left) in inches of waist or of cloth, to the other. */
function round(
  zones: readonly SolvedZone[],
  at: Quantity,
  from: "waist" | "cloth",
  to: "waist" | "cloth",
): Quantity {
  const total = (kind: "waist" | "cloth"): Quantity => zones.map((zone) => zone[kind]).reduce(add);
  const half = total(from);
  if (!less(half, at)) return along(zones, at, from, to);
  const two = plain(2n);
  return sub(mul(total(to), two), along(zones, sub(mul(half, two), at), from, to));
}

/** The place along the flat top of a place on the waist seam; both from centre front by the wearer's left. */
export const topOfWaist = (zones: readonly SolvedZone[], at: Quantity): Quantity =>
  round(zones, at, "waist", "cloth");

/** The place on the waist seam of a place along the flat top. */
export const waistOfTop = (zones: readonly SolvedZone[], at: Quantity): Quantity =>
  round(zones, at, "cloth", "waist");

export const HALF: Quantity = plain(fraction(1n, 2n));
