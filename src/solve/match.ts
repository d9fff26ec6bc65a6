/**
 * Seams that meet on the pattern: each takes so much of the two breadths it joins that whole repeats are left between the
 * seams; and the dominant line brought to centre front by taking more at one edge of every breadth than at the other
 * (practice: checks; the choice of the edges is this project's own).
 */
import { printPart } from "../quantity/print.ts";
import { fraction, less, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";
import { isAlong, takesMore } from "./run.ts";

/** What one seam takes of the round, as a formula: both its allowances, or what the pattern asks for. */
export const seamLoss = (recipe: Recipe): string => (takesMore(recipe) ? "seam.lost" : "2 * skirt.seam");

/** Does a seam stand at centre front? As asked for; else for an even number of breadths, and never where the cloth runs along. */
export function seamInFront({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): boolean {
  const count = sheet.get("breadths.count").value;
  const free = count.mod(2).equals(0) && !isAlong(recipe) ? "seam" : "breadth";
  return (recipe.skirt.centreFront ?? free) === "seam";
}

/** A length less whole repeats: where it stands in one of them. */
const within = (q: Quantity, repeat: Quantity): Quantity =>
  sub(q, mul(repeat, plain(q.value.div(repeat.value).floor())));

/**
 * Sets how many repeats stand between the seams and what a seam takes, where the seams are to meet. Needs the usable
 * width. False, with an error said, where nothing is left.
 */
export function solveMatch({ recipe, sheet, say }: Work): boolean {
  const { repeat } = recipe.cloth;
  if (!repeat?.match) return true;
  const lines = repeat.linesLost ? "cloth.repeat.linesLost" : "0";
  const most = `floor(min((breadths.usable - 2 * skirt.seam) / cloth.repeat.across, breadths.usable / cloth.repeat.across - ${lines}))`;
  sheet.set("repeat.most", most);
  if (sheet.get("repeat.most").value.compare(1) < 0) {
    say({
      code: "no-repeat-left",
      level: "error",
      path: "cloth.repeat",
      text: `of ${sheet.shown("breadths.usable")} between the selvedges no whole repeat of ${sheet.shown("cloth.repeat.across")} is left between the seams`,
      hint: "lose fewer repeats in the seams, or leave match out",
    });
    return false;
  }
  if (repeat.dominant === undefined) {
    sheet.set("repeat.between", "repeat.most");
    sheet.set("seam.lost", "breadths.usable - repeat.between * cloth.repeat.across");
  }
  return true;
}

/**
 * Puts the dominant line at centre front: of the fewest repeats lost that allow it, the left edge's allowance that lies
 * nearest the middle of what the seam takes. Needs the number of breadths.
 */
export function placeDominant({ recipe, sheet, say }: Work): void {
  const { repeat } = recipe.cloth;
  if (!repeat?.match) return;
  const { across, dominant } = repeat;
  if (dominant && across) {
    const seam = sheet.get("skirt.seam");
    const inFront = seamInFront({ recipe, sheet });
    for (let between = sheet.get("repeat.most").value; ; between = between.sub(1)) {
      if (between.compare(1) < 0) {
        sheet.choose("seam.lost", sheet.get("breadths.usable"), "nothing is left");
        return void say({
          code: "no-repeat-left",
          level: "error",
          path: "cloth.repeat.dominant",
          text: "with a dominant line at centre front no whole repeat is left between the seams",
          hint: "take dominant out, or a narrower seam",
        });
      }
      const lost = sub(sheet.get("breadths.usable"), mul(across, plain(between)));
      const half = mul(across, plain(inFront ? fraction(0n) : between.div(2)));
      const left = nearMiddle(within(sub(dominant, half), across), seam, sub(lost, seam), across);
      if (!left) continue;
      sheet.choose(
        "repeat.between",
        plain(between),
        "the most whole repeats between two seams with which a dominant line comes to centre front",
      );
      sheet.set("seam.lost", "breadths.usable - repeat.between * cloth.repeat.across");
      sheet.choose(
        "seam.left",
        left,
        "of the allowances with which a dominant line comes to centre front, the one nearest half of what the seam takes",
      );
      break;
    }
  } else sheet.set("seam.left", "seam.lost / 2");
  sheet.set("seam.right", "seam.lost - seam.left");
  sheet.set("seam.fromLeft", "cloth.selvedge + seam.left");
  sheet.set("seam.fromRight", "cloth.selvedge + seam.right");
  sheet.set("repeat.lost", "seam.lost / cloth.repeat.across");
}

/** Of the places `at` + whole repeats from `low` to `high` the one nearest their middle; undefined where there is none. */
function nearMiddle(at: Quantity, low: Quantity, high: Quantity, repeat: Quantity): Quantity | undefined {
  const steps = low.value.sub(at.value).div(repeat.value).ceil();
  let place = sub(at, mul(repeat, plain(steps.neg())));
  let best: Quantity | undefined;
  const off = (q: Quantity) => q.value.mul(2).sub(low.value).sub(high.value).abs();
  for (; !less(high, place); place = sub(place, mul(repeat, plain(-1n)))) {
    if (!best || off(place).compare(off(best)) < 0) best = place;
  }
  return best;
}

/** What matching would cost: the fewest repeats lost, the seam and both rounds, in words for a warning's hint. */
export function offerOfMatch({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): string | undefined {
  if (isAlong(recipe)) return offerAlong({ recipe, sheet });
  const across = recipe.cloth.repeat?.across;
  if (!across) return undefined;
  const between = sheet.evaluate("floor(breadths.finished / cloth.repeat.across)");
  if (between.value.compare(1) < 0) return undefined;
  const scope = { between };
  const print = (q: Quantity): string => printPart(q, sheet.showing);
  const width = sheet.evaluate("between * cloth.repeat.across", scope);
  const round = sheet.evaluate(
    "breadths.count * breadths.usable - breadths.seams * (breadths.usable - width)",
    {
      width,
    },
  );
  const seam = sheet.evaluate("(breadths.usable - between * cloth.repeat.across) / 2", scope);
  return `${print(width)} of a breadth would show, ${between.value.toFraction()} repeats, in seams that take ${print(seam)} at each edge, and the round would be ${print(round)} instead of ${sheet.shown("skirt.round")}: write match: true in repeat`;
}

/** The same for cloth that runs along the body: the lengths are cut a little longer, and no cloth goes into the seams. */
function offerAlong({ sheet }: Pick<Work, "recipe" | "sheet">): string {
  const round = sheet.evaluate(
    "ceil(skirt.roundWished / (breadths.count * cloth.repeat.down)) * cloth.repeat.down * breadths.count",
  );
  return `with lengths of whole repeats the round would be ${printPart(round, sheet.showing)} instead of ${sheet.shown("skirt.round")}: write match: true in repeat`;
}
