/** Other waists and further hooks, as the chapters print them. */
import { decimal, printExactly, printFine, printOnTape } from "../quantity/print.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { HookSet, OtherWaist, Plan } from "../solve/plan.ts";

const VERDICTS: Record<OtherWaist["verdict"], string> = {
  cannot: "cannot be drawn so close",
  tight: "goes, but hard to even and to whip",
  serves: "serves",
  gapes: "gapes: under 3 to 1",
};

/** Closer than reckoned to be easy, and no trial has shown that it goes. */
const UNPROVED = "not sure: sew the trial first";

/** The table of other waists; empty where nothing is gauged. */
export function otherWaistsContext({ otherWaists, recipe }: Plan) {
  const { show, tape } = recipe;
  return otherWaists.map((row) => ({
    waist: printExactly(row.waist, show),
    which: row.asPlanned ? " (as it is)" : row.asked ? " (asked for)" : "",
    spacing: row.verdict === "cannot" ? "-" : printFine(row.spacing, show),
    perInch: row.verdict === "cannot" ? "-" : decimal(row.perInch.value.mul(show === "in" ? "25.4" : 10), 1),
    fullness: decimal(row.fullness.value, 1),
    verdict: row.verdict === "tight" && !recipe.fullness.trial ? UNPROVED : VERDICTS[row.verdict],
    byHooks: row.asPlanned
      ? "as they are"
      : row.hook
        ? hookWords(row.hook, (q) => printOnTape(q, { show, tape }))
        : "no",
  }));
}

/** The further sets of eyes, in the order of the recipe. */
export function hookSetsContext({ hookSets, recipe }: Plan) {
  const onTape = (q: Quantity): string => printOnTape(q, recipe);
  return hookSets.map(({ waist, away, on }) => ({
    waist: printExactly(waist, recipe.show),
    away: onTape(away),
    onLap: on === "lap",
  }));
}

const hookWords = ({ away, on }: HookSet, onTape: (q: Quantity) => string): string =>
  `eyes ${onTape(away)} ${on === "lap" ? "outward along the lap" : "inward, over the gauging"}`;
