/** Lengths that a rule fixes in inches, as a formula writes them: a recipe shown in centimetres writes the same length so. */
import type { Recipe } from "../recipe/recipe.ts";

const IN_CENTIMETRES = {
  "1/4 in": "0.635 cm",
  "1/2 in": "1.27 cm",
  "5/8 in": "1.5875 cm",
  "1 in": "2.54 cm",
  "2 in": "5.08 cm",
  "4 in": "10.16 cm",
  "6 in": "15.24 cm",
  "18 in": "45.72 cm",
} as const;

/** "1/4 in", or "0.635 cm", which is the same length: for formulas, so that the one shown has the maker's own units. */
export const fixed = ({ show }: Recipe, inches: keyof typeof IN_CENTIMETRES): string =>
  show === "cm" ? IN_CENTIMETRES[inches] : inches;
