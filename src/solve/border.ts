/**
 * A border along the selvedge, on cloth that runs along the body: where the hem has to be cut for it to lie as it is
 * wished, and what becomes of a second one (practice: border prints).
 */
import { printOnTape } from "../quantity/print.ts";
import { isNegative, less } from "../quantity/quantity.ts";
import type { Border } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";

/** Sets the border's place above the hem, by its wish or by where it is woven. Needs the hem's allowance. */
export function placeBorder({ recipe, sheet, say }: Work, border: Border): void {
  const woven = recipe.skirt.hem.edge === "selvedge";
  const wished = border.aboveHem;
  if (woven && wished && wished.value.compare(border.fromEdge.value) !== 0) {
    say({
      code: "border-and-selvedge",
      level: "error",
      path: "cloth.border.above-hem",
      text: `with the selvedge as hem edge the border lies where it is woven, ${sheet.shown("cloth.border.fromEdge")} above it`,
      hint: "leave above-hem out, or write edge: cut, inside hem",
    });
    return;
  }
  sheet.set(
    "border.above",
    woven
      ? "cloth.border.fromEdge"
      : wished
        ? "cloth.border.aboveHem"
        : "cloth.border.fromEdge - hem.allowance",
  );
  sheet.set("border.head", "border.above + cloth.border.depth");
}

/** Sets where the hem is cut. Needs the border's place and the cut length; an error where there is no ground for the hem. */
export function cutAtBorder(work: Work, border: Border): void {
  const { sheet } = work;
  if (!sheet.has("border.above")) return;
  const start = sheet.evaluate("cloth.border.fromEdge - border.above - hem.allowance");
  if (isNegative(start) || isNegative(sheet.get("border.above"))) {
    sayNoGround(work);
    return;
  }
  sheet.set("run.start", "cloth.border.fromEdge - border.above - hem.allowance");
  if (border.edge === "both") secondBorder(work);
}

function sayNoGround({ recipe, sheet, say }: Work): void {
  const { hem } = recipe.skirt;
  const needs = sheet.evaluate("max(border.above, 0 * border.above) + hem.allowance");
  const ways = [
    ...(hem.kind === "turned" ? ["face the hem: kind: faced, which takes a seam only"] : []),
    "let the selvedge be the hem edge: hem: {kind: faced, edge: selvedge}",
    ...(sheet.evaluate("border.above").value.compare(0) > 0
      ? ["let the border lie lower: a smaller above-hem"]
      : []),
  ];
  say({
    code: "no-ground-below-border",
    level: "error",
    path: "cloth.border",
    text: `below the border there are ${sheet.shown("cloth.border.fromEdge")} of cloth to its outer edge, and the hem asks for ${printOnTape(needs, sheet.showing)}`,
    hint: ways.join("; or "),
  });
}

/** The border of the other selvedge stands on its head: in the skirt, in the turn-down, or in what is left beside. */
function secondBorder({ sheet, say }: Work): void {
  sheet.set(
    "border.second",
    "cloth.width - cloth.border.fromEdge - cloth.border.depth - run.start - hem.allowance",
  );
  const second = sheet.get("border.second");
  const path = "cloth.border.edge";
  if (less(second, sheet.get("breadths.longest")))
    say({
      code: "second-border-shows",
      level: "warning",
      path,
      text: `the border of the other selvedge begins ${sheet.shown("border.second")} above the hem and shows below the waist, upside down`,
      hint: "take cloth with one border, or wider cloth; or let it run down and set the borders on as bands",
    });
  else if (less(second, sheet.get("breadths.hemmed")))
    say({
      code: "second-border-turned",
      level: "note",
      path,
      text: "part of the other selvedge's border is turned down with the top, where it does not show; the rest is cut away",
    });
}

/** Is the other selvedge's border whole in what is left beside the lengths? */
const isSpare = ({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): boolean =>
  recipe.cloth.border?.edge === "both" &&
  sheet.has("border.second", "run.beside") &&
  !less(sheet.get("border.second"), sheet.get("breadths.hemmed"));

/**
 * Puts the spare border on the flounces where they are cut along the cloth and deep enough for it, and sets how far
 * inside the outer edge they are cut; else says that it is left over. Needs the flounces' cut depth.
 */
export function useSpareBorder(work: Work): void {
  const { recipe, sheet, say } = work;
  if (!isSpare(work)) return;
  const { flounces } = recipe.skirt;
  const fits =
    flounces?.cut === "straight" &&
    sheet.evaluate("cloth.border.fromEdge - skirt.seam").value.compare(0) >= 0 &&
    [
      "run.beside - flounces.cut - max(cloth.border.fromEdge - border.above - skirt.seam, 0 * skirt.seam)",
      "skirt.flounces.depth - cloth.border.depth - border.above",
    ].every((room) => !isNegative(sheet.evaluate(room)));
  if (fits)
    sheet.set("border.flounces", "max(cloth.border.fromEdge - border.above - skirt.seam, 0 * skirt.seam)");
  say({
    code: fits ? "second-border-flounces" : "second-border-over",
    level: "note",
    path: "cloth.border.edge",
    text: fits
      ? "the border of the other selvedge goes to the foot of the flounces: every strip of them is cut along a bordered edge"
      : `the border of the other selvedge is left over in the strip ${sheet.shown("run.beside")} wide beside the lengths: for sleeves, a cape or a bodice's trimming`,
  });
}
