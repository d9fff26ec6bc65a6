/**
 * Strips of the skirt's own cloth for the hem facing. The rule takes the fewest, from selvedge to selvedge; narrower
 * ones, with a join or two more, are taken where they lie beside other pieces and save cloth worth buying less of.
 */
import { add, less, plain, type Quantity, sub, toCount } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { layOnCloth, type Wanted } from "./layout.ts";
import { facingAlong } from "./run.ts";

/** How many joins more than the fewest may be sewn to save cloth. */
const MORE_JOINS = 2;

type Cloth = Pick<Work, "recipe" | "sheet">;
type Laid = ReturnType<typeof layOnCloth>;

const isOwn = ({ recipe }: Cloth): boolean =>
  recipe.skirt.hem.kind === "faced" && recipe.skirt.hem.cloth === "own";

/**
 * The strips, across the cloth. The fewest are as wide as it, but for the last, which is only as long as it has to be;
 * of more all are alike. A strip narrower than the cloth has one selvedge at most.
 */
function strips(work: Cloth, count: number): Wanted[] {
  const { sheet } = work;
  if (facingAlong(work)) return stripsAlong(work, count);
  const selvedge = sheet.get("cloth.selvedge");
  const whole = sheet.get("cloth.width");
  const rest = sheet.evaluate("facing.length - (facing.strips - 1) * breadths.usable");
  const last = less(rest, sheet.get("breadths.usable")) ? add(rest, selvedge) : whole;
  const fewest = count === toCount(sheet.get("facing.strips"));
  const alike = sheet.evaluate(`ceil(skirt.round / ${count} + 2 * skirt.seam, tape) + cloth.selvedge`);
  return Array.from({ length: count }, (_, i) => ({
    name: `facing strip ${i + 1}`,
    width: !fewest ? alike : i < count - 1 ? whole : last,
    length: sheet.get("facing.depth"),
  }));
}

/** Strips along the cloth, one to each of the garment's lengths and as long as it. */
const stripsAlong = ({ sheet }: Cloth, count: number): Wanted[] =>
  Array.from({ length: count }, (_, i) => ({
    name: `facing strip ${i + 1}`,
    width: sheet.get("facing.depth"),
    length: sheet.get("run.length"),
  }));

/**
 * Lays the pieces out with the facing's strips among them (`others` gives them their place in the order of cutting) and
 * sets how many strips are cut and what they must give.
 */
export function layWithFacing(work: Cloth, others: (facing: readonly Wanted[]) => Wanted[]): Laid {
  const { sheet, recipe } = work;
  const width = sheet.get("cloth.width");
  const lay = (count: number): Laid => layOnCloth(width, others(isOwn(work) ? strips(work, count) : []));
  if (recipe.skirt.hem.kind !== "faced") return lay(0);
  const fewest = toCount(sheet.get("facing.strips"));
  let best = lay(fewest);
  let pieces = fewest;
  const worth: Quantity = sheet.get("cloth.boughtBy");
  for (
    let count = fewest + 1;
    isOwn(work) && !facingAlong(work) && count <= fewest + MORE_JOINS;
    count += 1
  ) {
    const laid = lay(count);
    if ("tooWide" in laid || "tooWide" in best || less(sub(best.length, laid.length), worth)) continue;
    best = laid;
    pieces = count;
  }
  sheet.choose(
    "facing.pieces",
    plain(pieces),
    facingAlong(work)
      ? "one along the cloth for each of the garment's lengths"
      : `the fewest strips, or up to ${MORE_JOINS} more where they lie beside other pieces and save ${sheet.shown("cloth.boughtBy")} of cloth at least`,
  );
  sheet.set("facing.joined", "skirt.round + facing.pieces * 2 * skirt.seam");
  return best;
}
