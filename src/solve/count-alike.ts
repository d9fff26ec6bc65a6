/** Pleats of a part that takes the bites of another: where fullness is thrown to the back, one pitch goes all round. */
import { abs, add, compare, div, mul, plain, type Quantity, sub, toCount } from "../quantity/quantity.ts";
import { nearestWhole, roundTo } from "../quantity/tape.ts";
import { MOST_GAUGED } from "../recipe/limits.ts";
import { type BiteRules, isLong, layBites, sizesOf } from "./bites.ts";
import type { Work } from "./context.ts";
import { lockedAt } from "./follow-repeat.ts";
import { type Count, countPleats, type Rules, type Stretch } from "./gauging.ts";

/** The part that is followed. */
interface Lead {
  readonly cloth: Quantity;
  readonly waist: Quantity;
  readonly count: Count;
}

/** A count, and whether its bites lie within a mark of the lead's. */
interface Followed {
  readonly count: Count;
  readonly alike: boolean;
}

/** A part of fewer pleats than this, cut off by an opening, has no bites that could be told from those beside it. */
const FEW = 8;

/**
 * Counts every part by the bites of the lead: of its own counts, from nine tenths of what is wanted up to it, the first (by
 * fewest sizes of bite, then nearest) whose bites all the others can take without a step of more than one mark; where there
 * is none, its own count, and a step is said.
 */
export function countAllAlike(
  work: Work,
  rules: Rules,
  parts: readonly Stretch[],
  bites: BiteRules,
  lead: Stretch,
): readonly Count[] {
  const own = countPleats(work, rules, lead, bites);
  const counts = parts.map((part) => countPleats(work, rules, part, bites));
  if ((own.pleats ?? 0) > MOST_GAUGED) return counts;
  const fits = (all: readonly Followed[]): boolean =>
    all.every(({ count, alike }) => alike || (count.pleats ?? 0) < FEW);
  const by = (pleats: number | undefined): readonly Followed[] => {
    const led = { ...lead, count: { ...own, pleats } as Count };
    const tries = windowsOf(lead.cloth, pleats, bites).map((window) =>
      parts.map((part, i) => countAlike(rules, part, counts[i] as Count, bites, led, window)),
    );
    return tries.find(fits) ?? (tries[0] as readonly Followed[]);
  };
  const chosen = by(own.pleats);
  if (own.pleats === undefined || own.locked || rules.kept || fits(chosen))
    return said(work, chosen, fits(chosen));
  const low = Math.max(
    toCount(roundTo(mul(plain(own.wanted), plain("9/10")), plain(1n), "down")),
    own.least,
    1,
  );
  const others = Array.from({ length: Math.max(0, own.wanted - low + 1) }, (_, i) => own.wanted - i).sort(
    (a, b) => sizesOf(lead.cloth, a, bites) - sizesOf(lead.cloth, b, bites) || b - a,
  );
  for (const pleats of others) {
    const all = by(pleats);
    if (fits(all)) return said(work, all, true);
  }
  return said(work, chosen, false);
}

function said({ say }: Work, all: readonly Followed[], fits: boolean): readonly Count[] {
  const whole = all.every(({ count }) => count.pleats !== undefined);
  if (!fits && whole)
    say({
      code: "back-share-step",
      level: "warning",
      path: "fullness.back-share",
      text: "whole pleats do not come out alike before and behind the side: there the bites step by more than one mark of the tape",
      hint: "it does not show in the wearing; a slightly larger or smaller back-share, or another number of breadths, avoids it",
    });
  return all.map(({ count }) => count);
}

/** The count nearest to the lead's pitch that fits the part, and whose bites are of the lead's style and within the window. */
function countAlike(
  rules: Rules,
  part: Stretch,
  own: Count,
  bites: BiteRules,
  lead: Lead,
  window: Window,
): Followed {
  const led = lead.count.pleats;
  const same = compare(part.cloth, lead.cloth) === 0 && compare(part.waist, lead.waist) === 0;
  if (led === undefined || same) return { count: lead.count, alike: true };
  if (lead.count.locked) {
    const locked = lockedAt(part.cloth, lead.count.locked);
    const fits = locked.pleats >= 1 && locked.pleats <= own.most;
    return { count: fits ? { ...own, pleats: locked.pleats, locked } : own, alike: true };
  }
  const free = div(mul(part.cloth, plain(led)), lead.cloth);
  const least = rules.kept ? 1 : Math.max(1, own.least);
  const most = own.most;
  if (least > most) return { count: { ...own, pleats: undefined }, alike: true };
  const held = Math.min(Math.max(Number(nearestWhole(free.value)), least), most);
  const long = isLong(lead.cloth, led, bites);
  const reach = Math.max(1, toCount(roundTo(mul(plain(held), plain("1/10")), plain(1n), "up")));
  const near = Array.from({ length: 2 * reach + 1 }, (_, i) => held - reach + i)
    .filter((n) => n >= least && n <= most)
    .sort((a, b) => compare(away(free, a), away(free, b)) || a - b);
  const pleats = near.find(
    (n) => isLong(part.cloth, n, bites) === long && within(rangeOf(part.cloth, n, bites), window),
  );
  return { count: { ...own, wanted: held, pleats: pleats ?? held }, alike: pleats !== undefined };
}

/** How far a whole count lies from the free one. */
const away = (free: Quantity, n: number): Quantity => abs(sub(free, plain(n)));

/** From a bite to one of a mark more: where all parts lie within it, no two of them step by more. */
interface Window {
  readonly smallest: Quantity;
  readonly largest: Quantity;
}

/** The windows of a mark that hold the lead's bites: one where it has two sizes, else one to either side. */
function windowsOf(cloth: Quantity, pleats: number | undefined, rules: BiteRules): readonly Window[] {
  const { smallest, largest } = rangeOf(cloth, pleats ?? 1, rules);
  if (compare(smallest, largest) !== 0) return [{ smallest, largest }];
  return [
    { smallest, largest: add(largest, rules.tape) },
    { smallest: sub(smallest, rules.tape), largest },
  ];
}

const within = (range: Window, window: Window): boolean =>
  compare(window.smallest, range.smallest) <= 0 && compare(range.largest, window.largest) <= 0;

/** The smallest and the largest outside bite, a remainder finer than a mark left out. */
function rangeOf(cloth: Quantity, pleats: number, rules: BiteRules): Window {
  const { bites, remainder } = layBites(cloth, pleats, rules);
  const outside = bites.slice(0, -1).filter((_, i) => i % 2 === 0);
  const all = isLong(cloth, pleats, rules)
    ? outside
    : [...bites.slice(0, -1), sub(bites.at(-1) as Quantity, remainder)];
  const sorted = [...all].sort(compare);
  return {
    smallest: sorted[0] ?? (bites[0] as Quantity),
    largest: sorted.at(-1) ?? (bites[0] as Quantity),
  };
}
