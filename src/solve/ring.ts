/** The breadths in a ring: which piece lies where along the flat top, and where their seams stand. */
import {
  add,
  equal,
  fraction,
  isWhole,
  mul,
  plain,
  type Quantity,
  sub,
  toCount,
} from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { seamInFront, seamLoss } from "./match.ts";
import type { Breadth } from "./plan.ts";
import { isAlong } from "./run.ts";

export interface Ring {
  /** In ring order from centre front by the wearer's left; the piece astride centre front comes first, its `from` below 0. */
  readonly breadths: readonly Breadth[];
  /** Places of the seams along the top from centre front by the left, from 0 up to, not including, the round. */
  readonly seams: readonly Quantity[];
}

/**
 * Lays the pieces symmetrically about the centre line: a half breadth centred at the front; a seam at centre back
 * whenever symmetry allows it; a given `centre-front` is obeyed.
 */
export function layRing({ recipe, sheet }: Work): Ring {
  const count = sheet.get("breadths.count");
  const whole = sheet.get("breadths.finished");
  const half = sheet.evaluate(`breadths.usable / 2 - ${seamLoss(recipe)}`);
  const round = sheet.get("skirt.round");
  const pieces = toCount(sheet.get("breadths.pieces"));
  const hasHalf = !isWhole(count);
  const first = hasHalf ? half : whole;
  const start = seamInFront({ recipe, sheet }) ? sub(whole, whole) : mul(first, plain(fraction(-1n, 2n)));

  const breadths: Breadth[] = [];
  let from = start;
  for (let i = 0; i < pieces; i += 1) {
    const isHalf = hasHalf && i === 0;
    const to = add(from, isHalf ? half : whole);
    breadths.push({
      name: isHalf ? "half breadth" : `${isAlong(recipe) ? "length" : "breadth"} ${hasHalf ? i : i + 1}`,
      whole: !isHalf,
      from,
      to,
    });
    from = to;
  }
  const ends = breadths.map((breadth) => breadth.to);
  const seams = ends
    .map((end) => (equal(end, round) ? sub(end, round) : end))
    .sort((a, b) => a.value.compare(b.value));
  return { breadths, seams };
}
