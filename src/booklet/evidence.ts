/** What the chapter of evidence prints: common practice for the year and the cloth, the tally, and what was chosen. */
import type { Recipe, Setting } from "../recipe/recipe.ts";
import { countedRows, FEW } from "../solve/evidence.ts";
import type { Plan } from "../solve/plan.ts";

export const SET_WORDS: Readonly<Record<Setting, string>> = {
  gauged: "gauged all round",
  "flat-front-gauged": "plain in front, gauged elsewhere",
  "pleated-gauged-back": "pleated, gauged behind",
  pleated: "pleated",
  knife: "knife pleats",
  box: "box pleats",
  "double-box": "double box pleats",
  gathered: "gathered",
  flat: "plain",
  other: "otherwise",
};

/** The years that common practice is told for. */
const FROM = 1830;
const TO = 1870;

/** Which lines of common practice fit this year and fibre; without a year or a fibre, all that could. */
export function adviceFlags({ year, cloth }: Recipe) {
  const between = (from: number, to: number): boolean => year === undefined || (year >= from && year <= to);
  const { fibre } = cloth;
  const inPeriod = between(FROM, TO);
  const woolOrSilk = fibre === undefined || fibre === "wool" || fibre === "silk" || fibre === "mixed";
  const cotton = fibre === undefined || fibre === "cotton" || fibre === "mixed";
  return {
    outOfPeriod: !inPeriod,
    practiceCotton: inPeriod && cotton,
    practiceForties: between(1840, 1849),
    practiceEither: woolOrSilk && (between(FROM, 1839) || between(1850, 1854)),
    practicePleats: woolOrSilk && between(1855, TO),
    practiceLinen: inPeriod && fibre === "linen",
    practiceSheer: inPeriod && cloth.sheer,
    mixedFibre: fibre === "mixed",
  };
}

/** Flags of the chapter, beside those of common practice. */
export function evidenceFlags({ recipe, values }: Plan) {
  const counted = countedRows(recipe).length;
  const advice = adviceFlags(recipe);
  const chosenGauged =
    recipe.fullness.zones === undefined && (recipe.fullness.method ?? "gauged") === "gauged";
  return {
    ...advice,
    evidence: recipe.evidence?.rows !== undefined,
    evidenceCounted: values.has("evidence.share"),
    evidenceSkipped: (recipe.evidence?.skipped ?? 0) > 0,
    fewOriginals: counted < FEW,
    chosenGauged,
    againstPractice:
      chosenGauged && advice.practicePleats && !advice.practiceCotton && recipe.year !== undefined,
  };
}

/** How the counted originals are set, commonest first; `chosen` in words; how many rows were left out. */
export function evidenceContext({ recipe }: Plan) {
  const counts = new Map<Setting, number>();
  for (const { set } of countedRows(recipe)) counts.set(set, (counts.get(set) ?? 0) + 1);
  const { method } = recipe.fullness;
  return {
    tally: [...counts]
      .sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))
      .map(([set, count]) => ({ set: SET_WORDS[set], count: String(count) })),
    chosenSetting: SET_WORDS[method ?? "gauged"],
    skippedRows: String(recipe.evidence?.skipped ?? 0),
  };
}
