/** When nothing fits: the numbers, and what would do, each solved for. */

import { printFine, printOnTape, vulgar } from "../quantity/print.ts";
import {
  add,
  div,
  fraction,
  inches,
  isNegative,
  isZero,
  less,
  millimetres,
  mul,
  plain,
  type Quantity,
  sub,
  toInches,
} from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import { roundFormula } from "./breadths.ts";
import type { Work } from "./context.ts";
import type { Count, Stretch } from "./gauging.ts";
import { wallOf } from "./lining.ts";
import { clothOf } from "./pleat.ts";
import { isAlong } from "./run.ts";

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
    const breadths = fewerBreadths({ recipe, sheet }, stretch, most);
    if (isAlong(recipe)) ways.push(...smallerRound({ recipe, sheet }, stretch, most));
    else if (breadths)
      ways.push(
        `take ${vulgar(breadths.value)} ${breadths.value.compare(1) > 0 ? "breadths" : "breadth"} instead of ${sheet.shown("breadths.count")}`,
      );
    const pitch = roundTo(div(stretch.cloth, plain(byWaist)), sheet.showing.tape, "up");
    if (less(deepest, pitch))
      ways.push(`allow a deeper pitch: deepest-pitch: ${printOnTape(pitch, sheet.showing)}`);
  }
  if (!recipe.fullness.trial && recipe.cloth.thickness && count.least > 0) {
    const wall = div(stretch.planned, plain(2 * count.least));
    const within = sub(wallOf({ recipe, sheet }) as Quantity, mul(recipe.cloth.thickness, plain(2n)));
    const lined = !isZero(within);
    const stay = sub(wall, wallOf({ recipe, sheet }) as Quantity);
    const thin = sub(wall, within);
    if (recipe.fullness.stay && !isNegative(stay))
      ways.push(`take a stay of at most ${printFine(stay, show)}, or none`);
    else if (!isNegative(thin) && !isZero(thin))
      ways.push(
        `take thinner cloth: one layer of at most ${printFine(div(thin, plain(2n)), show)}${recipe.fullness.stay ? " and no stay" : ""}`,
      );
    if (lined)
      ways.push("keep the lining out of the pleats: a hung one to: separate, an interlining to: short");
  }
  const pleated = pleatedPart(work);
  if (pleated) ways.push(pleated);
  if (ways.length === 0) {
    const least = roundTo(mul(packed, plain(Math.max(count.least, 2))), sheet.showing.tape, "up");
    ways.push(
      `give this part ${printOnTape(least, sheet.showing)} of the waist at least (zones:), or let the opening fall where two parts meet`,
    );
  }
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
 * The least part of each half's waist that, laid in stacked knife pleats twice as deep as their face (5 : 1), leaves
 * gauging that fits. Undefined where even they take too little: gauging itself can take more than 5 : 1 in most cloth.
 */
function pleatedPart({ recipe, sheet }: Work): string | undefined {
  if (recipe.fullness.zones || recipe.fullness.method === "pleated-gauged-back") return undefined;
  const half = { waist: sheet.evaluate("waist.planned / 2"), cloth: sheet.evaluate("skirt.round / 2") };
  const wished = recipe.show === "in" ? inches(fraction(3n, 4n)) : millimetres(20n);
  const { tape } = sheet.showing;
  for (let x = wished; less(x, half.waist); x = add(x, wished)) {
    const count = div(x, wished);
    const depth = roundTo(mul(wished, plain(2n)), tape);
    const rest = { waist: sub(half.waist, x), cloth: sub(half.cloth, clothOf("knife", x, count, depth)) };
    if (!gauges(sheet, rest)) continue;
    const print = (q: Quantity): string => printOnTape(q, sheet.showing);
    return `lay ${print(x)} of each half of the waist in stacked knife pleats: zones: [{set: knife, waist: ${print(x)}, face: ${print(wished)}, depth: ${print(depth)}}, {set: gauged}]`;
  }
  return undefined;
}

/** Can this waist, in the fewest sections of a quarter, hold this cloth between the deepest pitch and the packed spacing? */
function gauges(sheet: Work["sheet"], { waist, cloth }: Pick<Stretch, "waist" | "cloth">): boolean {
  if (less(cloth, waist)) return false;
  const sections = plain(div(waist, sheet.evaluate("waist.planned / 4")).value.ceil());
  const most = div(div(waist, sections), sheet.get("gauging.packed")).value.floor();
  const least = div(div(cloth, sections), sheet.get("fullness.deepestPitch")).value.ceil();
  return most.n > 0n && least.compare(most) <= 0;
}

/** Along the body the round is as it is wished: the largest whose share of this section is no more than `most`. */
function smallerRound({ sheet }: Pick<Work, "recipe" | "sheet">, stretch: Stretch, most: Quantity): string[] {
  const share = div(stretch.cloth, sheet.get("skirt.round"));
  const round = roundTo(div(most, share), sheet.showing.tape, "down");
  return less(round, sheet.get("waist.seam")) || !less(round, sheet.get("skirt.roundWished"))
    ? []
    : [`wish for a round of ${printOnTape(round, sheet.showing)} at most`];
}

/** The most half-breadths, fewer than there are, whose share of this section is no more than `most`. */
function fewerBreadths(
  { recipe, sheet }: Pick<Work, "recipe" | "sheet">,
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
    const round = sheet.evaluate(roundFormula(recipe), {
      "breadths.count": count,
      "breadths.seams": plain((halves + 1n) / 2n),
    });
    if (less(round, waist)) return undefined;
    if (!less(most, mul(round, share))) return count;
  }
  return undefined;
}
