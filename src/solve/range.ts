/**
 * The range of a gauging: what other waists its rows can be set to without being sewn again, and what each of them does
 * to the spacing. Flat and pleated parts keep the waist they have (practice: what waists this gauging can serve).
 */
import { decimal } from "../quantity/print.ts";
import {
  compare,
  inches,
  isNegative,
  isZero,
  less,
  mul,
  plain,
  type Quantity,
  sub,
} from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import type { Work } from "./context.ts";
import { fixed } from "./fixed.ts";
import { hookAt } from "./hook-sets.ts";
import type { OtherWaist } from "./plan.ts";

/** How many steps to either side of the waist seam the table shows. */
const STEPS = 4;

/**
 * Needs the gauging's totals. Sets the least and the most waist, and the closest that the rows can be drawn at all. The least goes by
 * easy spacing, which is 11/10 of what a sewn trial measures, and reckoned from thickness until there is one: packed walls are
 * thinner than any trial comes out, so that they promise too much.
 */
export function solveRange({ recipe, sheet }: Work): void {
  const plain = "waist.seam - gauging.waist";
  // Thrown to the back the pleats close up behind first, and gape first in front: each in its share of the gauged waist.
  const shared = recipe.fullness.backShare !== undefined;
  const pleats = shared ? "gauging.pleatsBack * gauging.waist / gauging.waistBack" : "gauging.pleats";
  const cloth = shared ? "2 * backShare.before * gauging.waist / gauging.waistFront" : "gauging.cloth";
  sheet.set("gauging.waistPacked", `${pleats} * gauging.packed + ${plain}`);
  sheet.set("gauging.waistLeast", `${pleats} * gauging.easy + ${plain}`);
  sheet.set("gauging.waistMost", `${cloth} / 3 + ${plain}`);
}

/**
 * The table of other waists: whole steps of 1 in (2 cm) to either side, and those the recipe asks for, in order of size. One
 * that is asked for and cannot be is refused, with what would serve it; one that is tight or gapes is warned of.
 */
export function otherWaists(work: Work): readonly OtherWaist[] {
  const { recipe, sheet } = work;
  const seam = sheet.get("waist.seam");
  const step = sheet.showing.show === "cm" ? sheet.evaluate("2 cm") : inches(1n);
  const rows = new Map<string, OtherWaist>();
  const put = (waist: Quantity, asked: boolean): OtherWaist | undefined => {
    const row = rowOf(work, waist, asked);
    if (row) rows.set(waist.value.toFraction(), row);
    return row;
  };
  for (let i = -STEPS; i <= STEPS; i += 1) put(sub(seam, mul(step, plain(-i))), false);
  for (const [i, { waist }] of (recipe.attach.otherWaists ?? []).entries()) {
    judge(work, waist, put(waist, true), `attach.other-waists.${i}.waist`);
  }
  return [...rows.values()].sort((a, b) => compare(a.waist, b.waist));
}

/** One row; nothing where the flat and pleated parts leave no waist to the gauging. */
function rowOf(work: Work, waist: Quantity, asked: boolean): OtherWaist | undefined {
  const { sheet } = work;
  const at = { "other.waist": waist };
  const gauged = sheet.evaluate("other.waist - (waist.seam - gauging.waist)", at);
  if (isNegative(gauged) || isZero(gauged)) return undefined;
  const on = { "other.gauged": gauged };
  const least = (name: string): boolean => compare(waist, sheet.get(name)) < 0;
  const asPlanned = compare(waist, sheet.get("waist.seam")) === 0;
  const hook = asPlanned ? undefined : hookAt(work, waist);
  return {
    waist,
    asked,
    asPlanned,
    spacing: sheet.evaluate("other.gauged / gauging.pleats", on),
    perInch: sheet.evaluate("gauging.pleats / other.gauged", on),
    fullness: sheet.evaluate("gauging.cloth / other.gauged", on),
    verdict: least("gauging.waistPacked")
      ? "cannot"
      : least("gauging.waistLeast")
        ? "tight"
        : compare(waist, sheet.get("gauging.waistMost")) > 0
          ? "gapes"
          : "serves",
    ...(hook ? { hook } : {}),
  };
}

function judge(work: Work, waist: Quantity, row: OtherWaist | undefined, path: string): void {
  const { recipe, sheet, say } = work;
  const name = nameOf(path);
  if (!row || row.verdict === "cannot") {
    say({
      code: "other-waist-too-small",
      level: "error",
      path,
      text: `${sheet.shown("gauging.pleats")} pleats drawn as close as they go need a waist seam of ${sheet.shown("gauging.waistPacked")}, and ${sheet.shown(name)} is asked for: this gauging cannot be set to it`,
      hint: `${fewer(work, waist)}thinner cloth or stay; or take this waist off the list and sew the rows anew for it`,
    });
  } else if (row.verdict === "tight") {
    say({
      code: "other-waist-tight",
      level: "warning",
      path,
      text: `set to ${sheet.shown(name)} this gauging ${recipe.fullness.trial ? "can be drawn up, but is hard to even and to whip" : "stands closer than is reckoned to be easy, and no trial shows that it goes"}: it serves from ${sheet.shown("gauging.waistLeast")}`,
      hint: `${recipe.fullness.trial ? "" : "sew the trial; or "}${fewer(work, waist)}thinner cloth or stay`,
    });
  } else if (row.verdict === "gapes") {
    say({
      code: "other-waist-gapes",
      level: "warning",
      path,
      text: `set to ${sheet.shown(name)} this gauging is under 3 to 1 and gapes: it serves up to ${sheet.shown("gauging.waistMost")}`,
      hint: "take more breadths; or leave what is over that plain in front, when it is set to this waist",
    });
  }
}

/** How wide the pleats must be planned so that they serve the smaller waist with ease; nothing where no count does. */
function fewer({ recipe, sheet }: Work, waist: Quantity): string {
  const gauged = sheet.evaluate("other.waist - (waist.seam - gauging.waist)", { "other.waist": waist });
  if (isNegative(gauged) || isZero(gauged) || recipe.fullness.followRepeat) return "";
  const perInch = sheet.evaluate("other.gauged / gauging.easy / gauging.waist", {
    "other.gauged": gauged,
  });
  const mark = roundTo(plain(perInch.value.mul("25.4")), plain("1/10"), "down");
  return `write pleats-per-inch: ${decimal(mark.value, 1)} or fewer; `;
}

/** The path of an entry as its name on the sheet. */
const nameOf = (path: string): string => path.replace("other-waists", "otherWaists");

/** What each thread's tail must keep, where a larger waist is asked for: the growth of the longest section, and an end to hold. */
export function solveTail({ recipe, sheet }: Work, sections: readonly { readonly waist: Quantity }[]): void {
  const largest = (recipe.attach.otherWaists ?? [])
    .map(({ waist }) => waist)
    .reduce((a, b) => (less(a, b) ? b : a), sheet.get("waist.seam"));
  if (!less(sheet.get("waist.seam"), largest)) return;
  const longest = sections.map(({ waist }) => waist).reduce((a, b) => (less(a, b) ? b : a));
  sheet.choose("gauging.largest", largest, "the largest of attach.other-waists");
  sheet.choose("gauging.longest", longest, "the waist of the longest gauged section");
  const hold = fixed(recipe, "1 in");
  sheet.set("gauging.tail", `(gauging.largest - waist.seam) * gauging.longest / gauging.waist + ${hold}`);
}
