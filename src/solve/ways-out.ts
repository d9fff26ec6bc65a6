/** When nothing fits: the numbers, and what would do, each solved for. */

import { printFine, printOnTape, vulgar } from "../quantity/print.ts";
import {
  div,
  fraction,
  inches,
  isNegative,
  less,
  mul,
  plain,
  type Quantity,
  sub,
  toInches,
} from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import type { Work } from "./context.ts";
import type { Count, Stretch } from "./gauging.ts";

/** Says that a section cannot be gauged, with every way out that has a number. */
export function sayNothingFits(work: Work, name: string, stretch: Stretch, count: Count): void {
  const { recipe, sheet, say } = work;
  const { show } = sheet.showing;
  const ways: string[] = [];
  const packed = sheet.get("gauging.packed");
  const byWaist = stretch.planned.value.div(packed.value).floor();
  if (byWaist.n > 0n) {
    const deepest = sheet.get("fullness.deepestPitch");
    const most = mul(plain(byWaist), deepest);
    const breadths = fewerBreadths({ sheet }, stretch, most);
    if (breadths)
      ways.push(`take ${vulgar(breadths.value)} breadths instead of ${sheet.shown("breadths.count")}`);
    const pitch = roundTo(div(stretch.cloth, plain(byWaist)), sheet.showing.tape, "up");
    if (less(deepest, pitch))
      ways.push(`allow a deeper pitch: deepest-pitch: ${printOnTape(pitch, sheet.showing)}`);
  }
  if (!recipe.fullness.trial && recipe.cloth.thickness && count.least > 0) {
    const wall = div(stretch.planned, plain(2 * count.least));
    const stay = sub(wall, mul(recipe.cloth.thickness, plain(2n)));
    if (recipe.fullness.stay && !isNegative(stay))
      ways.push(`take a stay of at most ${printFine(stay, show)}, or none`);
    else
      ways.push(
        `take thinner cloth: one layer of at most ${printFine(div(wall, plain(2n)), show)}${recipe.fullness.stay ? " and no stay" : ""}`,
      );
  }
  const pleated = pleatedPart(work, stretch);
  if (pleated) ways.push(pleated);
  say({
    code: "nothing-fits",
    level: "error",
    path: "fullness",
    text: `the ${name} cannot be gauged: ${printOnTape(stretch.cloth, sheet.showing)} of cloth has to go into ${printOnTape(stretch.planned, sheet.showing)}, it needs ${count.least} pleats at least, and ${Math.max(count.most, 0)} is all that fits`,
    expected: `pleats between a deepest pitch of ${sheet.shown("fullness.deepestPitch")}, a packed spacing of ${sheet.shown("gauging.packed")} and bites of ${sheet.shown("fullness.finestBite")} at least`,
    hint: ways.join("; or "),
  });
}

/**
 * How much of each half's waist, in stacked knife pleats twice as deep as their face (5 : 1), would leave gauging that can
 * be packed: w - 5x over l - x within what the deepest pitch lets a packed pleat hold. Undefined where even they take too little.
 */
function pleatedPart({ recipe, sheet }: Work, stretch: Stretch): string | undefined {
  const most = div(sheet.get("fullness.deepestPitch"), sheet.get("gauging.packed"));
  const five = plain(5n);
  if (recipe.fullness.zones || !less(most, five)) return undefined;
  const needed = div(sub(stretch.cloth, mul(most, stretch.planned)), sub(five, most));
  const share = div(needed, stretch.planned);
  if (!less(share, plain(1n)) || isNegative(needed)) return undefined;
  const onHalf = roundTo(mul(sheet.evaluate("waist.planned / 2"), share), sheet.showing.tape, "up");
  return `lay ${printOnTape(onHalf, sheet.showing)} of each half of the waist in knife pleats twice as deep as their face: zones: [{set: knife, waist: ${printOnTape(onHalf, sheet.showing)}, depth: ${sheet.showing.show === "in" ? "1 1/2 in" : "4 cm"}}, {set: gauged}]`;
}

/** The most half-breadths, fewer than there are, whose share of this section is no more than `most`. */
function fewerBreadths(
  { sheet }: Pick<Work, "sheet">,
  stretch: Stretch,
  most: Quantity,
): Quantity | undefined {
  const share = div(stretch.cloth, sheet.get("skirt.round"));
  const waist = sheet.get("waist.seam");
  for (
    let halves = toInches(inches(sheet.get("breadths.count").value.mul(2).sub(1))).n;
    halves >= 1n;
    halves -= 1n
  ) {
    const count = plain(fraction(halves, 2n));
    const round = sheet.evaluate("breadths.count * breadths.usable - breadths.seams * 2 * skirt.seam", {
      "breadths.count": count,
      "breadths.seams": plain((halves + 1n) / 2n),
    });
    if (less(round, waist)) return undefined;
    if (!less(most, mul(round, share))) return count;
  }
  return undefined;
}
