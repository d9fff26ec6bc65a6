/** What is cut from the cloth, how it lies, and how much to buy. */
import { mul, type Quantity, sub, toCount } from "../quantity/quantity.ts";
import { attachPieces } from "./attach.ts";
import type { Work } from "./context.ts";
import { PLACKET_STRIP_WIDTH } from "./finish.ts";
import { layOnCloth, type Wanted } from "./layout.ts";
import type { Breadth, Layout } from "./plan.ts";

/** Every piece cut from the skirt's own cloth, in the order of cutting: breadths, band and piping, facing, placket. */
function piecesOf({ recipe, sheet }: Work, breadths: readonly Breadth[]): Wanted[] {
  const width = sheet.get("cloth.width");
  const allotted = sheet.get("breadths.allotted");
  const pieces: Wanted[] = breadths
    .toSorted((a, b) => Number(b.whole) - Number(a.whole))
    .map((breadth) => ({
      name: breadth.name,
      width: breadth.whole ? width : sheet.evaluate("cloth.width / 2"),
      length: allotted,
    }));
  pieces.push(...attachPieces({ recipe, sheet }));
  pieces.push(...facingStrips({ recipe, sheet }));
  pieces.push({ name: "placket strip", width: PLACKET_STRIP_WIDTH, length: sheet.get("placket.strip") });
  return pieces;
}

/** Facing strips run across, selvedge to selvedge; the last is only as long as it has to be. */
function facingStrips({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): Wanted[] {
  if (recipe.skirt.hem.kind !== "faced" || recipe.skirt.hem.cloth !== "own") return [];
  const count = toCount(sheet.get("facing.strips"));
  const length = sheet.get("facing.depth");
  const last = sheet.evaluate("facing.length - (facing.strips - 1) * breadths.usable + 2 * cloth.selvedge");
  return Array.from({ length: count }, (_, i) => ({
    name: `facing strip ${i + 1}`,
    width: i === count - 1 ? last : sheet.get("cloth.width"),
    length,
  }));
}

/** Lays the pieces out and sets the cloth's length, what to buy and the waste. Undefined, with an error said, if a piece is too wide. */
export function solveCloth(work: Work, breadths: readonly Breadth[]): Layout | undefined {
  const { sheet, say } = work;
  const pieces = piecesOf(work, breadths);
  const layout = layOnCloth(sheet.get("cloth.width"), pieces);
  if ("tooWide" in layout) {
    say({
      code: "piece-too-wide",
      level: "error",
      path: "cloth.width",
      text: `the ${layout.tooWide.name} is wider than the cloth`,
      hint: "cut it from wider cloth, or make it narrower",
    });
    return undefined;
  }
  sheet.choose("cloth.length", layout.length, "the shortest layout found that overlaps nothing");
  sheet.set("cloth.buy", "ceil(cloth.length / (1 - cloth.shrinkage), cloth.boughtBy)");
  sheet.choose("pieces.area", usedArea(layout), "the sum of width x length over the pieces");
  sheet.set("cloth.waste", "1 - pieces.area / (cloth.width * cloth.length)");
  return layout;
}

function usedArea(layout: Layout): Quantity {
  return sub(mul(layout.width, layout.length), layout.waste);
}
