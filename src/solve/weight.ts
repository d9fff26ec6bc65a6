/** The weight of the made skirt's cloth; band, placket and piping are not counted. */
import { fraction } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";

/** Above this many grams (7 lb) the skirt should not hang from a soft waist. */
const HEAVY = fraction("453.59237").mul(7);

/** Sets `skirt.weight` where the cloth's weight is known, and warns of a heavy one. */
export function solveWeight({ recipe, sheet, say }: Work): void {
  if (!recipe.cloth.weight) return;
  const ownFacing = recipe.skirt.hem.kind === "faced" && recipe.skirt.hem.cloth === "own";
  const flounces = recipe.skirt.flounces ? " + flounces.pieces * cloth.width * flounces.along" : "";
  const breadths = `breadths.count * cloth.width * breadths.cut${flounces}`;
  const weight = sheet.set(
    "skirt.weight",
    `cloth.weight * (${ownFacing ? `${breadths} + facing.length * facing.depth` : breadths})`,
  );
  if (weight.value.compare(HEAVY) <= 0) return;
  say({
    code: "heavy",
    level: "warning",
    path: "cloth.weight",
    text: `the ${recipe.garment} weighs ${sheet.shown("skirt.weight")}, more than 7 lb`,
    hint: "hang it from the bodice or a support, not from the soft waist",
  });
}
