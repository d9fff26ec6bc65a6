/** What every solver is handed: the recipe, the sheet to fill, and where to put what it has to say. */
import type { Message } from "../recipe/message.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Sheet } from "./sheet.ts";

export interface Work {
  readonly recipe: Recipe;
  readonly sheet: Sheet;
  say(message: Message): void;
}
