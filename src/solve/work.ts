/** Hand work by stage, as a range: counts of stitches and marks over rates a minute. Rests come on top: five to ten minutes in every hour. */
import { fraction, quantity, RATE } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Stage } from "./plan.ts";

interface RateRange {
  readonly low: bigint;
  readonly high: bigint;
  readonly about: string;
  readonly rule: string;
}

const OURS = "this project's own modelling choice";

/** A minute, slow and quick. Running: 23 on linen, 30 on silk, a trial of 1861 (tests/outside has the source). */
const RATES: Record<"running" | "marking" | "gauging" | "whip", RateRange> = {
  running: {
    low: 23n,
    high: 30n,
    about: "running stitches",
    rule: "a published trial of 1861, by hand on linen and on silk",
  },
  marking: { low: 15n, high: 30n, about: "marks", rule: OURS },
  gauging: { low: 12n, high: 25n, about: "bites of gauging", rule: OURS },
  whip: { low: 3n, high: 8n, about: "whip stitches", rule: OURS },
};

const STAGES: readonly {
  name: string;
  rate: keyof typeof RATES;
  count:
    | `stitches.${"seams" | "lining" | "interlining" | "pocket" | "hem" | "tucks" | "flounces"}`
    | "gauging.marks"
    | "gauging.bites"
    | "whip.stitches";
}[] = [
  { name: "seams", rate: "running", count: "stitches.seams" },
  { name: "lining", rate: "running", count: "stitches.lining" },
  { name: "interlining", rate: "running", count: "stitches.interlining" },
  { name: "pocket", rate: "running", count: "stitches.pocket" },
  { name: "hem", rate: "running", count: "stitches.hem" },
  { name: "tucks", rate: "running", count: "stitches.tucks" },
  { name: "flounces", rate: "running", count: "stitches.flounces" },
  { name: "marking", rate: "marking", count: "gauging.marks" },
  { name: "gauging", rate: "gauging", count: "gauging.bites" },
  { name: "whipping", rate: "whip", count: "whip.stitches" },
];

/**
 * Seconds of work for every stage, low and high, and their sums `work.low` and `work.high`. A recipe's own rate is both; else the
 * maker's own pace, where her other garments are recorded, stands in place of the usual range.
 */
export function solveWork({ recipe, sheet }: Work): readonly Stage[] {
  sheet.set("stitches.seams", "breadths.seams * breadths.cut * 8 / (1 in)");
  sheet.set("stitches.hem", "2 * skirt.round * 6 / (1 in)");
  if (recipe.skirt.tucks) sheet.set("stitches.tucks", "skirt.tucks.count * skirt.round * 8 / (1 in)");
  for (const [name, rate] of Object.entries(RATES)) {
    const own = recipe.work.rates[name as keyof typeof RATES];
    const pace = recipe.recorded?.paces?.[name as keyof typeof RATES];
    const put = (end: "low" | "high"): void => {
      const usual = pace ? fraction(pace[end]) : fraction(rate[end], 60n);
      const value = own ?? quantity(usual, RATE);
      const rule = own ? "given in the recipe" : pace ? paceRule(pace.garments) : rate.rule;
      sheet.assume(
        `rate.${name}.${end}`,
        value,
        "rate",
        `${rate.about}, the ${end === "low" ? "slower" : "quicker"} hand`,
        rule,
      );
    };
    put("low");
    put("high");
  }
  if (sheet.has("section.pleats")) {
    sheet.set("redo.bites", "2 * section.pleats");
    sheet.set("redo.low", "redo.bites / rate.gauging.high");
    sheet.set("redo.high", "redo.bites / rate.gauging.low");
  }
  const done = STAGES.filter(({ count }) => sheet.has(count));
  const stages = done.map(
    ({ name, rate, count }): Stage => ({
      name,
      low: sheet.evaluate(`${count} / rate.${rate}.high`),
      high: sheet.evaluate(`${count} / rate.${rate}.low`),
    }),
  );
  const sum = (end: "rate.high" | "rate.low"): string =>
    done.map(({ rate, count }) => `${count} / rate.${rate}.${end.slice(5)}`).join(" + ");
  sheet.set("work.low", sum("rate.high"));
  sheet.set("work.high", sum("rate.low"));
  sheet.set("work.clockLow", "work.low * (60 + 5) / 60");
  sheet.set("work.clockHigh", "work.high * (60 + 10) / 60");
  return stages;
}

/** Where the maker's own pace comes from. */
const paceRule = (garments: number): string =>
  `your own pace, from ${garments} other ${garments === 1 ? "garment" : "garments"} you recorded, at least a tenth either way`;
