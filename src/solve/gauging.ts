/** Gauging: how close pleats can stand, and how many go into a section (trade: gauging a section). */

import { compare, less, mul, plain, type Quantity, toCount } from "../quantity/quantity.ts";
import { MOST_GAUGED } from "../recipe/limits.ts";
import { type BiteRules, sizesOf } from "./bites.ts";
import type { Work } from "./context.ts";
import { type Locked, lockPitch } from "./follow-repeat.ts";
import { easyFormula, wallFormula } from "./lining.ts";
import { repeatRound } from "./run.ts";
import type { Scope } from "./sheet.ts";

/** What is being gauged: its cloth and waist. `planned` is the waist before the edge was made. */
export interface Stretch {
  readonly cloth: Quantity;
  readonly waist: Quantity;
  readonly planned: Quantity;
}

/** Formulas of a section, evaluated for each with its own cloth and waist. */
const LEAST = "ceil(section.cloth / fullness.deepestPitch)";
const LIMIT_BY_CLOTH = "floor(section.cloth / (2 * fullness.finestBite))";

export interface Rules {
  readonly least: string;
  readonly most: string;
  readonly wanted: string;
  /** A passing trial's own count, which is kept as it is. */
  readonly kept?: string;
  /** Is the waist that counts the one planned, before the edge was made? */
  readonly usesPlanned: boolean;
}

const scopeOf = ({ cloth, waist, planned }: Stretch): Scope => ({
  "section.cloth": cloth,
  "section.waist": waist,
  "section.planned": planned,
});

/** How close pleats can stand: from thickness, or from the sewn trial, which replaces it. */
export function solveSpacing({ recipe, sheet }: Work): void {
  const { cloth, fullness } = recipe;
  if (cloth.thickness) {
    sheet.set(
      "gauging.wall",
      fullness.stay ? `${wallFormula(recipe)} + fullness.stay.thickness` : wallFormula(recipe),
    );
  }
  if (fullness.trial) {
    sheet.set("gauging.packed", "fullness.trial.closesTo / fullness.trial.pleats");
    sheet.set("gauging.easy", "11/10 * gauging.packed");
    sheet.set("trial.pitch", "fullness.trial.cloth / fullness.trial.pleats");
    return;
  }
  sheet.set("gauging.packed", "2 * gauging.wall");
  const folded = `12 * cloth.thickness${easyFormula(recipe)}`;
  const easy = fullness.stay ? `${folded} + 2 * fullness.stay.thickness` : folded;
  sheet.set("gauging.easy", fullness.pleatsPerInch ? easy : `max(${easy}, fullness.closestEasy)`);
}

/**
 * Which formulas hold for this garment.
 *
 * Without a trial the count comes from the waist as planned (once an edge is made, spacing changes, bites do not). A
 * trial that could not close is solved anew, for the waist as it now is.
 */
export function rulesFor({ recipe }: Work, trialPasses: boolean | undefined): Rules {
  const waist = trialPasses === undefined ? "section.planned" : "section.waist";
  const most = `min(floor(${waist} / gauging.packed), ${LIMIT_BY_CLOTH})`;
  const easy = `max(min(floor(${waist} / gauging.easy), ${LIMIT_BY_CLOTH}), section.least)`;
  // With a back-share the wish is a mean: a section that has more of the cloth takes as much more of the pleats.
  const wishedOn = recipe.fullness.backShare ? "section.cloth * backShare.waist / backShare.cloth" : waist;
  const wished = `min(max(round(fullness.pleatsPerInch * ${wishedOn} / (1 in)), section.least), section.most)`;
  // A trial that could not close has shown how close is easy: a wish gives way to it.
  const asWished = trialPasses === false ? `min(${wished}, ${easy})` : wished;
  const rules: Rules = {
    least: LEAST,
    most,
    wanted: recipe.fullness.pleatsPerInch ? asWished : easy,
    usesPlanned: trialPasses === undefined,
  };
  return trialPasses
    ? {
        ...rules,
        kept: "max(1, min(round(section.cloth / trial.pitch), floor(section.waist / gauging.packed)))",
      }
    : rules;
}

export interface Count {
  readonly least: number;
  readonly most: number;
  readonly wanted: number;
  /** Undefined when nothing fits. */
  readonly pleats: number | undefined;
  /** Where the pitch follows the cloth's repeat. */
  readonly locked?: Locked;
}

/** Chooses the number of pleats of one stretch; says nothing. `instead` puts other spacings in place of the sheet's. */
export function countPleats(
  work: Work,
  rules: Rules,
  stretch: Stretch,
  bites: BiteRules,
  instead: Scope = {},
): Count {
  const { sheet } = work;
  const scope: Scope = { ...scopeOf(stretch), ...instead };
  const least = sheet.evaluate(rules.least, scope);
  const most = sheet.evaluate(rules.most, scope);
  const limits: Scope = { ...scope, "section.least": least, "section.most": most };
  const wanted = sheet.evaluate(rules.wanted, limits);
  const counts = { least: toCount(least), most: toCount(most), wanted: toCount(wanted) };
  const kept = rules.kept ? toCount(sheet.evaluate(rules.kept, scope)) : undefined;
  // Past what is made at all: no search among as many.
  if (Math.max(kept ?? 0, counts.wanted) > MOST_GAUGED) return { ...counts, pleats: kept ?? counts.wanted };
  if (work.recipe.fullness.followRepeat) {
    const value = (name: string): Quantity => scope[name] ?? sheet.get(name);
    const waist = rules.usesPlanned ? stretch.planned : stretch.waist;
    const locked = lockPitch(
      stretch.cloth,
      waist,
      Math.max(1, kept ?? counts.wanted),
      sheet.get(repeatRound(work.recipe)),
      value("gauging.packed"),
      sheet.get("fullness.deepestPitch"),
    );
    return locked ? { ...counts, pleats: locked.pleats, locked } : { ...counts, pleats: undefined };
  }
  if (kept !== undefined) return { ...counts, pleats: kept };
  if (compare(least, most) > 0 || counts.most < 1) return { ...counts, pleats: undefined };
  if (work.recipe.fullness.pleatsAsWished && work.recipe.fullness.pleatsPerInch)
    return { ...counts, pleats: counts.wanted };
  const low = sheet.evaluate("max(floor(9/10 * section.wanted), section.least, 1)", {
    ...limits,
    "section.wanted": wanted,
  });
  return { ...counts, pleats: bestOnTape(stretch.cloth, toCount(low), counts.wanted, bites) };
}

/** The count from `low` to `high` with the fewest sizes of bite, then nearest the wanted one, which is `high`. */
function bestOnTape(cloth: Quantity, low: number, high: number, rules: BiteRules): number {
  let best = high;
  let fewest = sizesOf(cloth, high, rules);
  for (let pleats = high - 1; pleats >= low; pleats -= 1) {
    const sizes = sizesOf(cloth, pleats, rules);
    if (sizes < fewest) {
      best = pleats;
      fewest = sizes;
    }
  }
  return best;
}

/** Puts the limits and the choice for one section on the sheet, by the same formulas. */
export function recordSection(work: Work, rules: Rules, stretch: Stretch, pleats: number): void {
  const { sheet } = work;
  const scope = scopeOf(stretch);
  sheet.choose(
    "section.cloth",
    stretch.cloth,
    "half the garment's gauged cloth in the fewest equal sections of a quarter of the waist at most",
  );
  sheet.choose("section.planned", stretch.planned, "its share of the waist seam as planned");
  sheet.choose("section.waist", stretch.waist, "its share of the waist seam");
  sheet.set("section.least", rules.least, scope);
  sheet.set("section.most", rules.most, scope);
  sheet.set("section.wanted", rules.wanted, scope);
  if (work.recipe.fullness.followRepeat) {
    sheet.choose(
      "section.pleats",
      plain(pleats),
      `the section's cloth over a pitch of a whole even number of lines, nearest whole`,
    );
  } else if (rules.kept) sheet.set("section.pleats", rules.kept, scope);
  else if (work.recipe.fullness.pleatsAsWished && work.recipe.fullness.pleatsPerInch)
    sheet.set("section.pleats", "section.wanted");
  else
    sheet.choose(
      "section.pleats",
      plain(pleats),
      `of the counts from nine tenths of ${sheet.shown("section.wanted")} to ${sheet.shown("section.wanted")}, the one with the fewest sizes of bite on the tape, then the one nearest ${sheet.shown("section.wanted")}`,
    );
}

/** Do so many pleats close to this waist, packed? */
export function closes(pleats: number, packed: Quantity, waist: Quantity): boolean {
  return !less(waist, mul(packed, plain(pleats)));
}
