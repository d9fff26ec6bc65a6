/** What the trial comes to, and what bites a little too long or too short do to the pleats: rows of two tables. */
import { decimal, printExactly, printFine, vulgar } from "../quantity/print.ts";
import { compare, isZero, plain, type Quantity } from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import { exact } from "../solve/json.ts";
import type { GaugedSection, Plan, TrialRow } from "../solve/plan.ts";
import { biteAfter } from "../solve/sensitivity.ts";
import { hasLonger } from "./gauging-flags.ts";

/** Rows of the sections that differ; one that is like an earlier one has none. */
export function sensitivityContext(plan: Plan) {
  const kinds = new Set<string>();
  const firstOfKind = new Set(
    plan.gauged
      .filter((section) => {
        const kind = `${exact(section.cloth)} ${exact(section.waist)}`;
        return !kinds.has(kind) && kinds.add(kind);
      })
      .map(({ name }) => name),
  );
  return plan.sensitivity
    .filter(({ section }) => firstOfKind.has(section))
    .map((row) => {
      const section = plan.gauged.find(({ name }) => name === row.section) as GaugedSection;
      return {
        section: row.section,
        change: isZero(row.change)
          ? "as planned"
          : `${compare(row.change, plain(0n)) > 0 ? "+" : "-"}${decimal(row.change.value.abs().mul(100), 0)} %`,
        pleats: String(row.pleats),
        perInch:
          plan.recipe.show === "in"
            ? decimal(row.perInch.value.mul("25.4"), 1)
            : decimal(row.perInch.value.mul(10), 1),
        closes: row.closes ? "yes" : "no",
        bite: printFine(biteAfter(section, row.change), plan.recipe.show),
      };
    });
}

/** A row of the trial's table. */
export function trialContext(row: TrialRow, plan: Plan) {
  const { show, tape } = plan.recipe;
  const bite = row.bite ? printFine(row.bite, show) : "";
  const planned = (plan.values.get("section.pleats") as { quantity: Quantity }).quantity;
  const verdicts: Record<TrialRow["verdict"], string> = {
    keep: "passes: keep the bites as planned",
    "keep-tight":
      "goes on, but hard to even and to whip: in thin cloth keep the bites; else take longer ones",
    longer: "cannot close: take longer bites",
    none: `nothing fits: take a breadth out, ${plan.recipe.fullness.stay ? "a thinner stay" : "thinner cloth"}, or gauge less of the waist`,
  };
  const change = row.change;
  const stays = row.verdict === "keep" || (row.verdict === "keep-tight" && !hasLonger(row, plan));
  const noLonger = `goes on, but hard to even and to whip; no longer bite fits: keep these${plan.recipe.fullness.stay ? ", or leave out the stay" : ""}`;
  return {
    // Down to a mark, as the target: what is printed as closing does close.
    measures: printExactly(roundTo(row.measures, tape, "down"), show),
    change: isZero(change)
      ? "just closes"
      : `${compare(change, plain(0n)) > 0 ? "+" : "-"}${decimal(change.value.abs().mul(100), 0)} %`,
    verdict: stays && row.verdict === "keep-tight" ? noLonger : verdicts[row.verdict],
    bite: stays
      ? printFine((plan.values.get("gauging.bite") as { quantity: Quantity }).quantity, show)
      : bite,
    pleats: stays ? vulgar(planned.value) : row.pleats === undefined ? "" : String(row.pleats),
  };
}
