/** A maker's own pace, from the garments she finished and recorded: counts of stitches, marks and bites over hours. */
import {
  add,
  div,
  fraction,
  isNegative,
  isZero,
  less,
  max,
  min,
  more,
  mul,
  plain,
  type Quantity,
} from "../../quantity/quantity.ts";
import type { AsMade, CountedStage } from "./as-made.ts";
import { standing } from "./standing.ts";

export const RATE_KINDS = ["running", "marking", "gauging", "whip"] as const;
export type RateKind = (typeof RATE_KINDS)[number];

/** Which rate a stage is worked at. */
const KIND: Readonly<Record<CountedStage, RateKind>> = {
  seams: "running",
  hem: "running",
  tucks: "running",
  flounces: "running",
  marking: "marking",
  gauging: "gauging",
  whipping: "whip",
};

/** One rate as it was found; plain data, so that a page carries it. */
export interface Pace {
  /** So many a second, exact, as the slower and the quicker hand. */
  readonly low: string;
  readonly high: string;
  /** How many garments it rests on. */
  readonly garments: number;
}

export type Paces = Readonly<Partial<Record<RateKind, Pace>>>;

/** No estimate is closer than a tenth either way of the mean: one garment's hours do not bind the next (this project's own choice). */
const LEAST_SPREAD = [fraction(9n, 10n), fraction(11n, 10n)] as const;

/** Rates of the finished garments among these: slowest and quickest, and at least a tenth either way of the mean. */
export function pacesOf(garments: readonly AsMade[]): Paces {
  const found = new Map<RateKind, { rates: Quantity[]; count: Quantity; time: Quantity }>();
  for (const garment of garments) {
    for (const [kind, { count, time }] of worked(garment)) {
      const before = found.get(kind);
      found.set(kind, {
        rates: [...(before?.rates ?? []), div(count, time)],
        count: before ? add(before.count, count) : count,
        time: before ? add(before.time, time) : time,
      });
    }
  }
  return Object.fromEntries(
    [...found].map(([kind, { rates, count, time }]): [RateKind, Pace] => {
      const mean = div(count, time);
      const [first, ...rest] = rates as [Quantity, ...Quantity[]];
      const [least, most] = LEAST_SPREAD.map((share) => mul(mean, plain(share))) as [Quantity, Quantity];
      const slowest = min(first, ...rest);
      const quickest = max(first, ...rest);
      return [
        kind,
        {
          low: (less(slowest, least) ? slowest : least).value.toFraction(),
          high: (more(quickest, most) ? quickest : most).value.toFraction(),
          garments: rates.length,
        },
      ];
    }),
  );
}

/** What was done of each kind, and how long it took; nothing for a garment that is not finished. */
function worked(garment: AsMade): Map<RateKind, { count: Quantity; time: Quantity }> {
  const { finished, hours, counts } = standing(garment);
  const sums = new Map<RateKind, { count: Quantity; time: Quantity }>();
  if (finished === undefined) return sums;
  for (const [stage, kind] of Object.entries(KIND) as [CountedStage, RateKind][]) {
    const [count, time] = [counts[stage], hours.get(stage)];
    if (!count || !time || isZero(count) || isNegative(time)) continue;
    const before = sums.get(kind);
    sums.set(
      kind,
      before ? { count: add(before.count, count), time: add(before.time, time) } : { count, time },
    );
  }
  return sums;
}
