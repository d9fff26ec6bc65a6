/**
 * Shaded cloth, whose colour passes from light to dark: how many seams join light to dark, and what is said of them. Nothing
 * is turned end for end to make them meet (practice W14: nothing in nap, one-way or shaded cloth).
 */
import { toCount } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { isAlong } from "./run.ts";

/** Sets how many seams join light to dark, and says what to do about them. Needs the pieces. */
export function solveShade(work: Work): void {
  const { recipe, sheet } = work;
  const { shaded, repeat } = recipe.cloth;
  if (!shaded) return;
  const along = isAlong(recipe);
  const level = (shaded === "across") === along;
  const meets = along && repeat?.match === true;
  if (level || meets)
    sheet.choose(
      "shade.joins",
      sheet.evaluate("0 * breadths.seams"),
      level
        ? "the shading runs from hem to waist, alike in every piece"
        : "every length is whole shadings, and begins where the last one ends",
    );
  else sheet.set("shade.joins", "breadths.seams");
  warnOfShade(work);
}

function warnOfShade({ recipe, sheet, say }: Work): void {
  const along = isAlong(recipe);
  if (recipe.cloth.shaded === "along" && !along && !recipe.cloth.repeat?.down)
    say({
      code: "shade-unmeasured",
      level: "warning",
      path: "cloth.shaded",
      text: "the colour passes from light to dark along the cloth, and the length of one shading is not given: breadths cut one below the other would differ",
      hint: "write repeat: {down: 45 in}, from one light place to the next, inside cloth",
    });
  const joins = toCount(sheet.get("shade.joins"));
  if (joins === 0) return;
  say({
    code: "shade-joins",
    level: "warning",
    path: "cloth.shaded",
    text: `the cloth is shaded, and ${joins === 1 ? "one seam joins" : `${joins} seams join`} light to dark`,
    hint: along
      ? "give one whole shading or more to each length: match: true in repeat, with the length of one shading as down"
      : "run: along, with the shading from hem to waist, joins like to like; or let the change of colour stand as stripes, one to a breadth; shaded cloth is not turned end for end",
  });
}
