/** What is cut from the cloth, how it lies, and how much to buy. */
import { mul, type Quantity, sub } from "../quantity/quantity.ts";
import { attachPieces } from "./attach.ts";
import type { Work } from "./context.ts";
import { layWithFacing } from "./facing.ts";
import { PLACKET_STRIP_WIDTH } from "./finish.ts";
import { flouncePieces } from "./flounces.ts";
import type { Wanted } from "./layout.ts";
import type { Breadth, Layout } from "./plan.ts";
import { pocketPieces } from "./pocket.ts";
import { isAlong } from "./run.ts";

/** Every piece cut from the skirt's own cloth, in the order of cutting: breadths, band and piping, facing, placket. */
function piecesOf(
  { recipe, sheet }: Work,
  breadths: readonly Breadth[],
  facing: readonly Wanted[],
): Wanted[] {
  const width = sheet.get("cloth.width");
  const allotted = sheet.get("breadths.allotted");
  const startsOn = recipe.cloth.repeat?.down;
  const pieces: Wanted[] = isAlong(recipe)
    ? lengthsAlong({ recipe, sheet }, breadths)
    : breadths
        .toSorted((a, b) => Number(b.whole) - Number(a.whole))
        .map((breadth) => ({
          name: breadth.name,
          width: breadth.whole ? width : sheet.evaluate("cloth.width / 2"),
          length: allotted,
          ...(startsOn ? { startsOn } : {}),
        }));
  pieces.push(...attachPieces({ recipe, sheet }));
  pieces.push(...facing);
  pieces.push({ name: "placket strip", width: PLACKET_STRIP_WIDTH, length: sheet.get("placket.strip") });
  pieces.push(...flouncePieces({ recipe, sheet }), ...pocketPieces({ sheet }));
  return pieces;
}

/** Lengths that run along the body: from hem to top across the cloth, all at the same distance from its edge. */
const lengthsAlong = (
  { recipe, sheet }: Pick<Work, "recipe" | "sheet">,
  lengths: readonly Breadth[],
): Wanted[] =>
  lengths.map(({ name }) => ({
    name,
    width: sheet.get("breadths.cut"),
    length: sheet.get("run.length"),
    at: [sheet.get("run.start")],
    ...(recipe.cloth.repeat?.match && recipe.cloth.repeat.down ? { startsOn: recipe.cloth.repeat.down } : {}),
  }));

/** Lays the pieces out and sets the cloth's length, what to buy and the waste. Undefined, with an error said, if a piece is too wide. */
export function solveCloth(work: Work, breadths: readonly Breadth[]): Layout | undefined {
  const { sheet, say } = work;
  const layout = layWithFacing(work, (facing) => piecesOf(work, breadths, facing));
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
  sheet.set("breadths.whole", "floor(breadths.count)");
  sheet.choose("cloth.length", layout.length, "the shortest layout found that overlaps nothing");
  sheet.set("cloth.buy", "ceil(cloth.length / (1 - cloth.shrinkage), cloth.boughtBy)");
  sheet.choose("pieces.area", usedArea(layout), "the sum of width x length over the pieces");
  sheet.set("cloth.waste", "1 - pieces.area / (cloth.width * cloth.length)");
  return layout;
}

function usedArea(layout: Layout): Quantity {
  return sub(mul(layout.width, layout.length), layout.waste);
}
