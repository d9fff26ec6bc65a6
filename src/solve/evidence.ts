/** The maker's own list of dated originals, tallied near the garment's year and of its fibre. */
import { enclosed, middle, root } from "../quantity/enclosure.ts";
import { plain } from "../quantity/quantity.ts";
import type { EvidenceRow, Recipe, Setting } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";

/** Fewer originals than this prove little. */
export const FEW = 30;

/** The normal deviate of a two-sided 95 % interval. */
const Z = plain("1.959963984540054");
const SQUARED =
  "evidence.share * (1 - evidence.share) / evidence.items + evidence.z * evidence.z / (4 * evidence.items * evidence.items)";

/** Settings with all their fullness gauged. */
export const GAUGED: ReadonlySet<Setting> = new Set<Setting>(["gauged", "flat-front-gauged"]);

/** The rows that count: within the window of the recipe's year, and of the garment's fibre; each only where it is given. */
export function countedRows({ evidence, year, cloth }: Recipe): readonly EvidenceRow[] {
  const window = evidence?.window.value;
  return (evidence?.rows ?? []).filter(
    (row) =>
      (year === undefined || (window !== undefined && window.compare(Math.abs(row.year - year)) >= 0)) &&
      (cloth.fibre === undefined || row.fibre === cloth.fibre),
  );
}

/** Sets the tally and its Wilson interval, to four places; says plainly when the list is short. */
export function solveEvidence({ recipe, sheet, say }: Work): void {
  const { evidence } = recipe;
  if (!evidence) return;
  if (!evidence.rows) {
    say({
      code: "no-evidence",
      level: "warning",
      path: "evidence",
      text: "the recipe says how evidence.csv is counted, but there is no evidence.csv beside it",
      hint: "put the list of originals you have looked at beside the recipe: year,fibre,sheer,set,seen,note",
    });
    return;
  }
  const rows = countedRows(recipe);
  const gauged = rows.filter(({ set }) => GAUGED.has(set)).length;
  const which = [
    recipe.year === undefined ? "of any year" : "within evidence.window of the recipe's year",
    ...(recipe.cloth.fibre ? ["of the garment's fibre"] : []),
  ].join(" and ");
  sheet.choose("evidence.items", plain(rows.length), `the rows of evidence.csv ${which}, counted`);
  sheet.choose(
    "evidence.gauged",
    plain(gauged),
    "of these the ones set gauged or flat-front-gauged, counted",
  );
  if (rows.length < FEW) {
    say({
      code: "little-evidence",
      level: "warning",
      path: "evidence",
      text: `${rows.length === 0 ? "no original" : rows.length === 1 ? "only one original" : `only ${rows.length} originals`} in evidence.csv near this garment's year${recipe.cloth.fibre ? " and of its fibre" : ""}: under ${FEW} a share says little`,
      hint: "look at more dated originals, or read the interval and not the share",
    });
  }
  if (rows.length === 0) return;
  sheet.set("evidence.share", "evidence.gauged / evidence.items");
  sheet.assume(
    "evidence.z",
    Z,
    "decimal",
    "the normal deviate of a two-sided 95 % interval, taken as 1.959963984540054",
    "any table of the normal distribution",
  );
  sheet.choose(
    "evidence.spread",
    plain(middle(root(enclosed(sheet.evaluate(SQUARED).value)), 20)),
    `the square root of ${SQUARED}, to 20 places`,
  );
  const ends = (sign: "+" | "-"): string =>
    `round((evidence.share + evidence.z * evidence.z / (2 * evidence.items) ${sign} evidence.z * evidence.spread) / (1 + evidence.z * evidence.z / evidence.items), 1/10000)`;
  sheet.set("evidence.low", ends("-"));
  sheet.set("evidence.high", ends("+"));
}
