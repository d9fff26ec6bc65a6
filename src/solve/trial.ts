/** The sewn trial: what it must reach, whether the one that was sewn passes, and what each width would mean. */
import { add, compare, div, fraction, less, mul, plain } from "../quantity/quantity.ts";
import type { BiteRules } from "./bites.ts";
import type { Work } from "./context.ts";
import { countPleats, rulesFor, type Stretch } from "./gauging.ts";
import type { TrialRow } from "./plan.ts";

const NINE_TENTHS = plain(fraction(9n, 10n));

/** Does the sewn trial close to its share of the waist? Undefined when none is sewn. Warns above nine tenths. */
export function judgeTrial({ recipe, sheet, say }: Work, stretch: Stretch): boolean | undefined {
  if (!recipe.fullness.trial) return undefined;
  const reaches = sheet.set("trial.reaches", "fullness.trial.cloth * section.waist / section.cloth", {
    "section.waist": stretch.waist,
    "section.cloth": stretch.cloth,
  });
  const measured = recipe.fullness.trial.closesTo;
  if (less(reaches, measured)) {
    say({
      code: "trial-too-wide",
      level: "note",
      path: "fullness.trial.closes-to",
      text: `the trial closes to ${sheet.shown("fullness.trial.closesTo")} and had to reach ${sheet.shown("trial.reaches")}: the bites are worked out again, longer`,
    });
    return false;
  }
  if (less(mul(reaches, NINE_TENTHS), measured)) {
    say({
      code: "trial-tight",
      level: "warning",
      path: "fullness.trial.closes-to",
      text: `the trial closes to ${sheet.shown("fullness.trial.closesTo")}, and ${sheet.shown("trial.reaches")} is all there is: it goes on, but will be hard to even and to whip`,
      hint: "in thin cloth keep the bites; else take longer ones, a tenth longer than just closes (see the table of the trial chapter)",
    });
  }
  return true;
}

/** The trial to sew: half the section (whole pleats where they follow the lines) and the width it must reach. */
export function planTrial({ recipe, sheet }: Work): void {
  if (recipe.fullness.followRepeat) {
    sheet.set("trial.pleats", "max(floor(section.pleats / 2), ceil(fullness.leastTrial / section.pitch), 1)");
    sheet.set("trial.cloth", "trial.pleats * section.pitch");
  } else {
    sheet.set("trial.cloth", "max(section.cloth / 2, fullness.leastTrial)");
    sheet.set("trial.pleats", "round(section.pleats * trial.cloth / section.cloth, 1/2)");
  }
  sheet.set("trial.target", "section.waist * trial.cloth / section.cloth");
  sheet.set("trial.pass", "floor(9/10 * trial.target, tape)");
}

/** Tenths less and more than the target that the trial table shows. */
const CHANGES = [-3n, -2n, -1n, 0n, 1n, 2n, 3n, 4n];

/** If the trial measures so much, what becomes of the bites: the same rules as for a trial that has been entered. */
export function trialTable(work: Work, stretch: Stretch, bites: BiteRules): readonly TrialRow[] {
  const { sheet } = work;
  const target = sheet.get("trial.target");
  const pleats = sheet.get("trial.pleats");
  const anew = rulesFor(work, false);
  return CHANGES.map((tenths): TrialRow => {
    const change = plain(fraction(tenths, 10n));
    const measures = mul(target, add(plain(1n), change));
    const packed = div(measures, pleats);
    if (compare(measures, mul(target, NINE_TENTHS)) <= 0) return { change, measures, verdict: "keep" };
    const easy = mul(packed, plain(fraction(11n, 10n)));
    const count = countPleats(work, anew, stretch, bites, { "gauging.packed": packed, "gauging.easy": easy });
    const tight = compare(measures, target) <= 0;
    if (count.pleats === undefined) return { change, measures, verdict: tight ? "keep-tight" : "none" };
    return {
      change,
      measures,
      verdict: tight ? "keep-tight" : "longer",
      pleats: count.pleats,
      bite: div(stretch.cloth, plain(2 * count.pleats)),
    };
  });
}
