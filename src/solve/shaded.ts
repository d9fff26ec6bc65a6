/**
 * Shaded cloth, whose colour passes from light to dark: which breadths are turned end for end so that light joins light,
 * and what is said of seams that cannot (practice: nap, one-way, shaded cloth; where the odd seam goes is this project's own choice).
 */
import { isWhole, toCount } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { isAlong } from "./run.ts";

/** May breadths be turned end for end? Only plain cloth shaded from selvedge to selvedge: a nap or a pattern forbids it. */
export const mayTurn = ({ cloth, skirt }: Work["recipe"]): boolean =>
  cloth.shaded === "across" && !isAlong({ skirt }) && !cloth.oneWay && !cloth.repeat;

/**
 * Is the nth piece of the ring turned? Every other one; of an odd number the two at centre back, or next behind it, lie
 * alike, so that the seam that cannot match stands there. With a half breadth that seam is at its cut edge.
 */
export function isTurned({ recipe, sheet }: Pick<Work, "recipe" | "sheet">, n: number): boolean {
  if (!mayTurn(recipe)) return false;
  const pieces = toCount(sheet.get("breadths.pieces"));
  const odd = n % 2 === 1;
  const shifted = pieces % 2 === 1 && isWhole(sheet.get("breadths.count")) && n >= (pieces + 1) / 2;
  return shifted ? !odd : odd;
}

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
  else if (mayTurn(recipe))
    sheet.set(
      "shade.joins",
      isWhole(sheet.get("breadths.count"))
        ? "breadths.seams - 2 * floor(breadths.seams / 2)"
        : "breadths.seams / breadths.seams",
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
  const hint = along
    ? "give one whole shading or more to each length: match: true in repeat, with the length of one shading as down"
    : mayTurn(recipe)
      ? "take an even number of whole breadths, or run: along, with the shading from hem to waist; as it is that seam is where it shows least"
      : recipe.cloth.oneWay || recipe.cloth.repeat
        ? "run: along, with the shading from hem to waist, joins like to like; or let the change of colour stand as stripes, one to a breadth"
        : "take an even number of whole breadths";
  say({
    code: "shade-joins",
    level: "warning",
    path: "cloth.shaded",
    text: `the cloth is shaded, and ${joins === 1 ? "one seam joins" : `${joins} seams join`} light to dark`,
    hint,
  });
}
