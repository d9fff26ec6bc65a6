/** The sections of a skirt: gauged ones counted and laid out with their trial, flat and pleated ones laid. */

import { printOnTape } from "../quantity/print.ts";
import { add, equal, plain, type Quantity } from "../quantity/quantity.ts";
import type { BiteRules } from "./bites.ts";
import type { Work } from "./context.ts";
import { solveFlatParts } from "./flat-parts.ts";
import { evenAbove, type Locked } from "./follow-repeat.ts";
import { recordSection, rulesFor, solveSpacing } from "./gauging.ts";
import { limitGauged, limitPleats } from "./limits.ts";
import type { Opening } from "./opening.ts";
import { warnOfOpening } from "./opening-in-pleats.ts";
import type { GaugedSection, Plan, Section } from "./plan.ts";
import { solveRange, solveTail } from "./range.ts";
import { repeatRound } from "./run.ts";
import {
  type CountedPart,
  countParts,
  cutSections,
  laidAlike,
  layGauged,
  layPlain,
  nearestBack,
  type Part,
} from "./sections.ts";
import { judgeTrial, planTrial, trialTable } from "./trial.ts";
import { warnOfPleats, warnOfSections, warnOfTightness } from "./warnings.ts";
import { sayNothingFits } from "./ways-out.ts";
import type { SolvedZone } from "./zones.ts";

/** Every section from centre front round by the left, with the trial table. Undefined, with errors said, when one cannot be made. */
export function solveSections(
  work: Work,
  zones: readonly SolvedZone[],
  opening: Opening,
): Pick<Plan, "sections" | "gauged" | "trialTable" | "flatParts"> | undefined {
  const parts = cutSections(work, zones, opening);
  const toGauge = parts.filter(({ zone }) => zone.set === "gauged");
  const gauging = toGauge.length > 0 ? gauge(work, toGauge) : { gauged: new Map(), trialTable: [] };
  if (!gauging) return undefined;
  const sections = parts.map(
    (part): Section => gauging.gauged.get(part) ?? layPlain(part, zones, work.sheet.showing.tape),
  );
  warnOfPleats(work, sections);
  const flatParts = solveFlatParts(work, sections);
  warnOfOpening(work, sections, opening);
  countLaid(work, sections);
  const pins = toGauge.length > 0 ? "4 + 8 * gauging.sections + 8" : "4 + 8 * 4 + 8";
  work.sheet.set("pins.count", work.sheet.has("pleating.count") ? `${pins} + 2 * pleating.count` : pins);
  const gauged = [...gauging.gauged.values()];
  return { sections, gauged, trialTable: gauging.trialTable, ...(flatParts ? { flatParts } : {}) };
}

/** The pleats laid, where there are any; halves astride a centre line make whole ones. */
function countLaid({ sheet }: Work, sections: readonly Section[]): void {
  const counts = sections.flatMap((section) =>
    section.set === "flat" || section.set === "gauged" ? [] : [section.count],
  );
  if (counts.length > 0)
    sheet.choose("pleating.count", counts.reduce(add), "the pleats of all laid parts together");
}

function gauge(
  work: Work,
  parts: readonly Part[],
): { gauged: Map<Part, GaugedSection>; trialTable: Plan["trialTable"] } | undefined {
  const { recipe, sheet } = work;
  const bites: BiteRules = {
    tape: sheet.showing.tape,
    comfortable: sheet.get("fullness.comfortableBite"),
    short: sheet.get("fullness.shortBite"),
  };
  solveSpacing(work);
  const chief = nearestBack(sheet, parts);
  const rules = rulesFor(work, judgeTrial(work, chief));
  const gauged = new Map<Part, GaugedSection>();
  const said = new Set<string>();
  const counted = countParts(work, rules, parts, bites);
  if (
    !limitGauged(
      work,
      counted.map(({ count }) => count.pleats ?? 0),
    )
  )
    return undefined;
  for (const { part, count } of counted) {
    if (count.pleats === 1) limitPleats(work, part);
    else if (count.pleats !== undefined) {
      const alike = [...gauged.values()].find(
        ({ pleats, cloth }) => pleats === count.pleats && equal(cloth, part.cloth),
      );
      gauged.set(part, alike ? laidAlike(part, alike) : layGauged(part, count.pleats, bites, count.locked));
    } else if (!said.has(part.cloth.value.toFraction())) {
      said.add(part.cloth.value.toFraction());
      sayNothingFits(work, part.name, part, count);
    }
  }
  if (gauged.size < parts.length) return undefined;
  sayLocked(work, counted.find(({ part }) => part === chief)?.count.locked);
  recordSection(work, rules, chief, gauged.get(chief)?.pleats ?? 0);
  const sections = [...gauged.values()];
  const total = (of: (section: GaugedSection) => Quantity): Quantity => sections.map(of).reduce(add);
  sheet.choose("gauging.sections", plain(sections.length), "the gauged sections counted");
  sheet.choose(
    "gauging.pleats",
    total((section) => plain(section.pleats)),
    "the pleats of all gauged sections together",
  );
  sheet.choose(
    "gauging.waist",
    total((section) => section.waist),
    "the waists of all gauged sections together",
  );
  sheet.choose(
    "gauging.cloth",
    total((section) => section.cloth),
    "the cloth of all gauged sections together",
  );
  sheet.set("gauging.perInch", "gauging.pleats / gauging.waist");
  sheet.set("gauging.pitch", "gauging.cloth / gauging.pleats");
  sheet.set("gauging.bite", "gauging.pitch / 2");
  sheet.set("gauging.depth", "gauging.pitch / 2");
  solveShared(work, counted, gauged);
  solveRange(work);
  solveTail(work, sections);
  planTrial(work);
  if (!rules.kept) warnOfTightness(work);
  warnOfSections(work, sections);
  return { gauged, trialTable: recipe.fullness.trial ? [] : trialTable(work, chief, bites) };
}

/** With a back-share: pleats, pitch and pleats an inch before the sides and behind them. */
function solveShared(
  { recipe, sheet }: Work,
  counted: readonly CountedPart[],
  gauged: ReadonlyMap<Part, GaugedSection>,
): void {
  if (!recipe.fullness.backShare) return;
  for (const [end, parted, where, cloth] of [
    ["Front", "before", "before the sides", "backShare.before"],
    ["Back", "behind", "behind the sides", "backShare.behind"],
  ] as const) {
    const own = counted.flatMap(({ part }) =>
      part.zone.parted === parted ? [gauged.get(part) as GaugedSection] : [],
    );
    sheet.choose(
      `gauging.pleats${end}`,
      own.map(({ pleats }) => plain(pleats)).reduce(add),
      `the pleats of the gauged sections ${where} together`,
    );
    sheet.choose(
      `gauging.waist${end}`,
      own.map(({ waist }) => waist).reduce(add),
      `the waists of the gauged sections ${where} together`,
    );
    sheet.set(`gauging.pitch${end}`, `2 * ${cloth} / gauging.pleats${end}`);
    sheet.set(`gauging.perInch${end}`, `gauging.pleats${end} / gauging.waist${end}`);
  }
}

/** An odd number of lines is never taken; the even neighbours are offered. */
function sayLocked({ recipe, sheet, say }: Work, locked: Locked | undefined): void {
  if (!locked) return;
  const repeat = sheet.get(repeatRound(recipe));
  sheet.choose(
    "section.lines",
    plain(locked.lines),
    "the largest even number of lines not above the free pitch whose pleats fit",
  );
  sheet.set("section.pitch", `section.lines * ${repeatRound(recipe)}`);
  if (locked.free % 2 === 0) return;
  const above = evenAbove(locked, repeat);
  say({
    code: "lines-odd",
    level: "note",
    path: "fullness.follow-repeat",
    text: `the free pitch would hold ${locked.free} ${locked.free === 1 ? "line" : "lines"}, an odd number; ${locked.lines} are taken, ${sheet.shown("section.pitch")} a pleat`,
    hint: `the even neighbour above is ${above.lines} lines, ${printOnTape(above.pitch, sheet.showing)}: fewer pleats an inch gives it`,
  });
}
