/**
 * Lining and interlining: how long they are cut, and how many layers of them the needle meets in one wall of a pleat
 * (practice: lined silks and wools; what is reckoned with them is this project's own choice).
 */
import { plain, type Quantity } from "../quantity/quantity.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";
import { fixed } from "./fixed.ts";
import { topOf } from "./trims.ts";

export const BACKINGS = ["lining", "interlining"] as const;
export type Backing = (typeof BACKINGS)[number];

const LAYERS = { separate: 0n, short: 0n, fold: 1n, turned: 2n } as const;
const WHY = {
  separate: "it is joined only at the waist: none of it lies in the pleats",
  short: "it ends below the rows: none of it lies in the pleats",
  fold: "it ends at the fold: one layer",
  turned: "it is turned down with the cloth: two layers",
} as const;

/** Layers of it in one wall of a pleat: none, one or two. */
export const layersOf = (recipe: Recipe, which: Backing): bigint => {
  const backing = recipe[which];
  return backing ? LAYERS[backing.to] : 0n;
};

/** Those of them that lie in the pleats. */
export const inPleats = (recipe: Recipe): readonly Backing[] =>
  BACKINGS.filter((which) => layersOf(recipe, which) > 0n);

/** One wall of a pleat without its stay, as a formula: the cloth turned down, and what lies behind it. */
export const wallFormula = (recipe: Recipe): string =>
  ["2 * cloth.thickness", ...inPleats(recipe).map((which) => `${which}.layers * ${which}.thickness`)].join(
    " + ",
  );

/**
 * What they add to the easy spacing, as a formula's ending: one that is turned down has a round back, as the cloth has,
 * and counts three times; one that ends at the fold lies like a stay, and counts as it is.
 */
export const easyFormula = (recipe: Recipe): string =>
  inPleats(recipe)
    .map((which) => ` + ${layersOf(recipe, which) === 2n ? 12 : 2} * ${which}.thickness`)
    .join("");

/** One wall without its stay, in cloth and lining together; undefined where the cloth's thickness is unknown. */
export const wallOf = ({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): Quantity | undefined =>
  recipe.cloth.thickness && sheet.evaluate(wallFormula(recipe));

/** Layers in a wall, and cut lengths. Needs the finished lengths. */
export function solveLining(work: Work): void {
  const { recipe, sheet } = work;
  for (const which of BACKINGS) {
    const backing = recipe[which];
    if (!backing) continue;
    sheet.choose(`${which}.layers`, plain(LAYERS[backing.to]), WHY[backing.to]);
    sheet.set(`${which}.usable`, `${which}.width - 2 * ${which}.selvedge`);
  }
  if (recipe.lining) cutLining(work, recipe.lining);
  if (recipe.interlining) cutInterlining(work, recipe.interlining.to);
}

/** It lies level with the cloth's hem: caught in the facing's seam, or up to the fold of a turned hem; a separate one has its own. */
function cutLining({ recipe, sheet }: Work, { kind, to }: NonNullable<Recipe["lining"]>): void {
  const quarter = fixed(recipe, "1/4 in");
  if (to === "separate") sheet.set("lining.foot", `lining.hem + ${quarter}`);
  else if (recipe.skirt.hem.kind === "turned" || recipe.skirt.hem.edge === "selvedge")
    sheet.choose(
      "lining.foot",
      sheet.evaluate("0 * skirt.seam"),
      recipe.skirt.hem.kind === "turned"
        ? "it ends in the fold of the turned hem"
        : "it ends at the selvedge, under the facing",
    );
  else sheet.set("lining.foot", "skirt.seam");
  const inch = fixed(recipe, "1 in");
  const up =
    kind === "flat"
      ? "breadths.hemmed"
      : {
          fold: `breadths.longest + ${inch}`,
          turned: topOf(recipe),
          separate: "breadths.longest - lining.shorter + balance.least",
        }[to];
  sheet.set("lining.cut", `ceil(${up} + lining.foot, tape)`);
}

/** It begins at the hem's fold line. What is tucked is tucked with it. */
function cutInterlining({ recipe, sheet, say }: Work, to: "short" | "fold" | "turned"): void {
  const tucks = recipe.skirt.tucks ? " + tucks.takeUp" : "";
  const rows = sheet.has("gauging.lastRow") ? " - gauging.lastRow" : "";
  const up = {
    short: `breadths.longest${tucks}${rows} - ${fixed(recipe, "1/2 in")}`,
    fold: `breadths.longest${tucks} + ${fixed(recipe, "1 in")}`,
    turned: "breadths.hemmed",
  }[to];
  sheet.set("interlining.cut", `ceil(${up}, tape)`);
  if (sheet.get("interlining.cut").value.compare(0) > 0) return;
  say({
    code: "no-interlining",
    level: "error",
    path: "interlining.to",
    text: "below the rows no length is left for an interlining",
    hint: "leave the interlining out",
  });
}
