/**
 * Tucks and flounces: where they lie above the finished hem, and whether they fit (trade: hem, trimmings; practice).
 * Both go on before the top is gauged. Heights are on the made skirt; a crease is marked on the flat cloth, before any
 * tuck is sewn, and so lies higher by what the tucks below it take. The spacing of tucks is this project's own choice.
 */

import { printExactly } from "../quantity/print.ts";
import { add, less, mul, plain, type Quantity, sub, toCount } from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";
import { fixed } from "./fixed.ts";
import type { FlouncePlace, Tuck } from "./plan.ts";

/** The length from the finished hem to the cut top, all trimmings on: what the turn-down is taken from. */
export const topOf = ({ skirt }: Recipe): "tucks.left" | "breadths.hemmed" =>
  skirt.tucks ? "tucks.left" : "breadths.hemmed";

/** Heights of flounces and tucks, and the cloth that the tucks take. Needs the border's place; flounces lie below tucks. */
export function solveHeights({ recipe, sheet, say }: Work): void {
  const { tucks, flounces } = recipe.skirt;
  if (flounces) {
    sheet.set("flounces.step", "skirt.flounces.depth - skirt.flounces.lap");
    sheet.set(
      "flounces.top",
      "skirt.flounces.aboveHem + skirt.flounces.depth + (skirt.flounces.count - 1) * flounces.step",
    );
    if (sheet.evaluate("min(skirt.flounces.count - 1, 1)").value.n !== 0n) {
      if (sheet.get("flounces.step").value.compare(0) <= 0) {
        say({
          code: "flounce-too-shallow",
          level: "error",
          path: "skirt.flounces.depth",
          text: `flounces ${sheet.shown("skirt.flounces.depth")} deep that lap ${sheet.shown("skirt.flounces.lap")} over the next do not climb`,
          hint: `make them deeper than ${sheet.shown("skirt.flounces.lap")}, or take one only`,
        });
      }
    }
  }
  if (!tucks) return;
  sheet.set("tucks.each", "2 * skirt.tucks.depth");
  sheet.set("tucks.takeUp", "skirt.tucks.count * tucks.each");
  sheet.set("tucks.step", "2 * skirt.tucks.depth");
  // Nothing is sewn through a border, or hangs over it.
  const below = [
    "skirt.hem.depth",
    ...(flounces ? ["flounces.top"] : []),
    ...(sheet.has("border.head") ? ["border.head"] : []),
  ];
  sheet.set(
    "tucks.lowest",
    `${below.length > 1 ? `max(${below.join(", ")})` : below[0]} + 2 * skirt.tucks.depth`,
  );
  sheet.set("tucks.top", "tucks.lowest + (skirt.tucks.count - 1) * tucks.step");
}

/** Refuses trimmings that do not fit below the waist seam at the shortest length, and says what would. */
export function checkHeights({ recipe, sheet, say }: Work): void {
  const { tucks, flounces } = recipe.skirt;
  const down = (q: Quantity): string =>
    printExactly(roundTo(q, sheet.showing.tape, "down"), sheet.showing.show);
  const refuse = (kind: "tucks" | "flounces", fits: Quantity, deep: Quantity): void => {
    const room = sheet.evaluate(`breadths.shortest - skirt.${kind}.clear`);
    if (!less(room, sheet.get(`${kind}.top`))) return;
    const depth = roundTo(deep, sheet.showing.tape, "down");
    const ways = [
      ...(fits.value.compare(0) > 0 ? [`take at most ${fits.value.toFraction()} of this depth`] : []),
      ...(depth.value.compare(0) > 0 ? [`make them at most ${down(deep)} deep`] : []),
    ];
    say({
      code: `${kind}-too-high`,
      level: "error",
      path: `skirt.${kind}`,
      text: `the highest of the ${kind} would be sewn ${sheet.shown(`${kind}.top`)} above the hem, and at its shortest the ${recipe.garment} has room to ${down(room)}: its finished length of ${sheet.shown("breadths.shortest")} less ${sheet.shown(`skirt.${kind}.clear`)}`,
      hint: ways.length > 0 ? ways.join(", or ") : `leave the ${kind} out`,
    });
  };
  if (flounces && sheet.get("flounces.step").value.compare(0) > 0) {
    refuse(
      "flounces",
      sheet.evaluate(
        "floor((breadths.shortest - skirt.flounces.clear - skirt.flounces.aboveHem - skirt.flounces.depth) / flounces.step) + 1",
      ),
      sheet.evaluate(
        "(breadths.shortest - skirt.flounces.clear - skirt.flounces.aboveHem + (skirt.flounces.count - 1) * skirt.flounces.lap) / skirt.flounces.count",
      ),
    );
  }
  if (tucks) {
    refuse(
      "tucks",
      sheet.evaluate("floor((breadths.shortest - skirt.tucks.clear - tucks.lowest) / tucks.step) + 1"),
      sheet.evaluate(
        "(breadths.shortest - skirt.tucks.clear - tucks.lowest + 2 * skirt.tucks.depth) / (2 * skirt.tucks.count)",
      ),
    );
  }
}

/** The opening's foot above the hem, and how many tucks are sewn across the opening. Needs turnDown.opening. */
export function solveCrossing({ recipe, sheet, say }: Work): void {
  const { tucks, flounces } = recipe.skirt;
  if (!tucks && !flounces) return;
  sheet.set(
    "placket.foot",
    `${topOf(recipe)} - turnDown.opening - skirt.placket - ${fixed(recipe, "1/4 in")}`,
  );
  if (tucks) {
    sheet.set(
      "tucks.crossing",
      "min(skirt.tucks.count, max(0, floor((tucks.top - placket.foot) / tucks.step) + 1))",
    );
  }
  for (const kind of ["tucks", "flounces"] as const) {
    if (!recipe.skirt[kind]) continue;
    const room = sheet.evaluate(`placket.foot - ${kind}.top`);
    if (!less(room, sheet.get(`skirt.${kind}.clear`))) continue;
    const crossed =
      kind === "tucks"
        ? "; or stop each tuck that meets the opening at its two edges: the opening is left unsewn by what they take"
        : "; or leave each flounce that meets the opening unjoined there, its two ends hemmed";
    say({
      code: `${kind}-over-opening`,
      level: "warning",
      path: `skirt.${kind}`,
      text: `the highest of the ${kind} is sewn ${sheet.shown(`${kind}.top`)} above the hem, and the opening comes down to ${sheet.shown("placket.foot")}: it should stay ${sheet.shown(`skirt.${kind}.clear`)} clear`,
      hint: `take fewer or shallower ones, or a shorter placket${room.value.compare(0) <= 0 ? crossed : ""}`,
    });
  }
}

/** Every tuck, the lowest first. */
export function tuckList({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): Tuck[] {
  const { tucks } = recipe.skirt;
  if (!tucks) return [];
  return Array.from({ length: toCount(tucks.count) }, (_, i) => {
    const n = plain(i);
    const seam = add(sheet.get("tucks.lowest"), mul(sheet.get("tucks.step"), n));
    const taken = mul(sheet.get("tucks.each"), n);
    return { seam, edge: sub(seam, tucks.depth), crease: add(add(seam, tucks.depth), taken) };
  });
}

/** Every flounce, the lowest first. */
export function flounceList({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): FlouncePlace[] {
  const { flounces } = recipe.skirt;
  if (!flounces) return [];
  return Array.from({ length: toCount(flounces.count) }, (_, i) => {
    const edge = add(sheet.get("skirt.flounces.aboveHem"), mul(sheet.get("flounces.step"), plain(i)));
    return { edge, heading: add(edge, flounces.depth) };
  });
}
