/** The weight of the made skirt's cloth; band, placket and piping are not counted. */
import { fraction, type Quantity } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { BACKINGS } from "./lining.ts";
import { isAlong } from "./run.ts";

/** Above this many grams (7 lb) the skirt should not hang from a soft waist. */
const HEAVY = fraction("453.59237").mul(7);

/** Sets `skirt.weight` where the cloth's weight is known, and warns of a heavy one. */
export function solveWeight({ recipe, sheet, say }: Work): void {
  if (!recipe.cloth.weight) return;
  const ownFacing = recipe.skirt.hem.kind === "faced" && recipe.skirt.hem.cloth === "own";
  const along = isAlong(recipe);
  const strip = along && recipe.skirt.flounces?.cut === "straight" ? "flounces.strip" : "cloth.width";
  const flounces = recipe.skirt.flounces ? ` + flounces.pieces * ${strip} * flounces.along` : "";
  const breadths = `breadths.count * ${along ? "run.length" : "cloth.width"} * breadths.cut${flounces}`;
  const weight = sheet.set(
    "skirt.weight",
    `cloth.weight * (${ownFacing ? `${breadths} + facing.length * facing.depth` : breadths})`,
  );
  const total = inAll({ recipe, sheet }) ?? weight;
  if (total.value.compare(HEAVY) <= 0) return;
  say({
    code: "heavy",
    level: "warning",
    path: "cloth.weight",
    text: `the ${recipe.garment} weighs ${sheet.shown(sheet.has("skirt.weightInAll") ? "skirt.weightInAll" : "skirt.weight")}, more than 7 lb`,
    hint: "hang it from the bodice or a support, not from the soft waist",
  });
}

/** With lining and interlining, where each of them there is has its weight given. */
function inAll({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): Quantity | undefined {
  const backings = BACKINGS.filter((which) => recipe[which]);
  if (backings.length === 0 || backings.some((which) => !recipe[which]?.weight)) return undefined;
  return sheet.set(
    "skirt.weightInAll",
    ["skirt.weight", ...backings.map((which) => `${which}.weighs`)].join(" + "),
  );
}
