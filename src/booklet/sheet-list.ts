/** The sheets of one printed page that a recipe may ask for. */
import type { Recipe } from "../recipe/recipe.ts";

/** One sheet: its template's name, its file, its name in words, and when it is made. */
export interface Sheet {
  readonly name: "commission" | "class";
  readonly file: string;
  readonly title: string;
  readonly isAsked: (recipe: Recipe) => boolean;
}

export const SHEETS: readonly Sheet[] = [
  {
    name: "commission",
    file: "commission.html",
    title: "Commission sheet",
    isAsked: ({ commission }) => commission !== undefined,
  },
  {
    name: "class",
    file: "class.html",
    title: "Class sheet",
    isAsked: ({ lesson }) => lesson !== undefined,
  },
];

/** The sheets that a recipe asks for. */
export const sheetsOf = (recipe: Recipe): readonly Sheet[] => SHEETS.filter(({ isAsked }) => isAsked(recipe));
