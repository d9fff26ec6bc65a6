/**
 * Cloth that runs along the body: its length goes round the wearer, its width from hem to top, in one length or several
 * joined end to end (practice: border prints and wide cloth; the even lengths are this project's own choice).
 */
import { printOnTape } from "../quantity/print.ts";
import { compare, less, plain, type Quantity } from "../quantity/quantity.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { cutAtBorder } from "./border.ts";
import type { Work } from "./context.ts";

/** Does the cloth run along the body? */
export const isAlong = ({ skirt }: Pick<Recipe, "skirt">): boolean => skirt.run === "along";

/** The repeat of the pattern that goes round the body, by its name in formulas. */
export const repeatRound = (recipe: Recipe): "cloth.repeat.across" | "cloth.repeat.down" =>
  isAlong(recipe) ? "cloth.repeat.down" : "cloth.repeat.across";

/** The same, as the recipe gives it. */
export const roundRepeatOf = (recipe: Recipe): Quantity | undefined =>
  isAlong(recipe) ? recipe.cloth.repeat?.down : recipe.cloth.repeat?.across;

/** Do seams across the cloth's width take more, so that the pattern meets? Along the body a length is cut to meet. */
export const takesMore = (recipe: Recipe): boolean => recipe.cloth.repeat?.match === true && !isAlong(recipe);

/** Sets how many lengths, what each gives and the round they make. Needs the wished round. */
export function solveRoundAlong({ recipe, sheet }: Work): void {
  sheet.set("breadths.count", "skirt.lengths");
  sheet.set("breadths.pieces", "breadths.count");
  sheet.set("breadths.seams", "breadths.count");
  if (recipe.cloth.repeat?.match) {
    sheet.set("repeat.between", "ceil(skirt.roundWished / (breadths.count * cloth.repeat.down))");
    sheet.set("breadths.finished", "repeat.between * cloth.repeat.down");
  } else sheet.set("breadths.finished", "ceil(skirt.roundWished / breadths.count, tape)");
  sheet.set("run.length", "ceil(breadths.finished + 2 * skirt.seam, tape)");
  sheet.set("skirt.round", "breadths.count * breadths.finished");
  sheet.set("seam.fromEdge", "skirt.seam");
}

/** Where hem and top lie across the cloth, and what is left beside them. Needs the cut length; an error where it is too wide. */
export function solveAcross(work: Work): void {
  const { recipe, sheet, say } = work;
  if (!isAlong(recipe)) {
    if (recipe.cloth.border)
      say({
        code: "border-down",
        level: "warning",
        path: "cloth.border",
        text: "run down, the cloth brings its border to the seams, upright from hem to waist, and not to the hem",
        hint: "for a border at the hem write run: along, inside skirt",
      });
    return;
  }
  if (recipe.cloth.border) cutAtBorder(work, recipe.cloth.border);
  else if (recipe.skirt.hem.edge === "selvedge") sheet.set("run.start", "0 * cloth.selvedge");
  else sheet.set("run.start", "cloth.selvedge");
  if (!sheet.has("run.start")) return;
  sheet.set("run.room", "cloth.width - cloth.selvedge - run.start");
  if (less(sheet.get("run.room"), sheet.get("breadths.cut"))) sayTooNarrow(work);
  else sheet.set("run.beside", "cloth.width - run.start - breadths.cut");
}

/** Is the hem's own facing cut along the cloth, in the strip that is left beside the lengths? Needs its cut depth. */
export const facingAlong = ({
  recipe,
  sheet,
}: {
  readonly recipe: Recipe;
  readonly sheet: { has(...names: string[]): boolean; get(name: string): Quantity };
}): boolean =>
  sheet.has("run.beside") &&
  recipe.skirt.hem.cloth === "own" &&
  !less(sheet.get("run.beside"), sheet.get("facing.depth"));

/** The cloth is not wide enough from hem to top: the numbers, and every way out that has one. */
function sayTooNarrow({ recipe, sheet, say }: Work): void {
  const { hem, tucks } = recipe.skirt;
  const print = (q: Quantity): string => printOnTape(q, sheet.showing);
  const over = sheet.evaluate("breadths.cut - run.room");
  const ways: string[] = [];
  if (hem.kind === "turned") {
    const saved = sheet.evaluate("hem.allowance - skirt.seam");
    const narrow = sheet.evaluate("skirt.hem.depth - (breadths.cut - run.room)");
    if (narrow.value.compare(0) > 0) ways.push(`turn up a narrower hem, ${print(narrow)} at most`);
    if (compare(saved, over) >= 0)
      ways.push("face the hem with other cloth: hem: {kind: faced, cloth: other}");
  } else if (hem.edge === "cut" && !recipe.cloth.border) {
    if (!less(sheet.evaluate("hem.allowance + cloth.selvedge"), over))
      ways.push("let the selvedge be the hem edge: edge: selvedge, inside hem");
  }
  if (tucks && !less(sheet.get("tucks.takeUp"), over)) ways.push("take fewer or shallower tucks");
  if (recipe.skirt.turnDown) ways.push(`turn down less than ${sheet.shown("skirt.turnDown")} at the top`);
  ways.push(`take cloth ${print(sheet.evaluate("breadths.cut + cloth.width - run.room"))} wide`);
  const halves = sheet.evaluate("2 * skirt.roundWished / (breadths.usable - 2 * skirt.seam)").value.ceil();
  const breadths = sheet.evaluate("h / 2", { h: plain(halves) });
  ways.push(`let it run down, in about ${breadths.value.ceil().toFraction()} breadths: run: down`);
  say({
    code: "too-narrow-along",
    level: "error",
    path: "skirt.run",
    text: `run along the body, the cloth has to be ${sheet.shown("breadths.cut")} wide from cut hem to cut top, and has ${sheet.shown("run.room")}: ${print(over)} too little`,
    hint: ways.join("; or "),
  });
}
