/** How many pleats stand between two pins of the edge, where pins part a section into four. */
import { vulgar } from "../quantity/print.ts";
import { div, isWhole, plain } from "../quantity/quantity.ts";
import { nearestWhole } from "../quantity/tape.ts";

/** A quarter of the pleats, "14"; where four do not go into them "about 14", the nearest whole (ties to even). */
export function betweenPins(pleats: number): string {
  const quarter = div(plain(pleats), plain(4n));
  return isWhole(quarter) ? vulgar(quarter.value) : `about ${nearestWhole(quarter.value)}`;
}
