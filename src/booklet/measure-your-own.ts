/** A published page that asks a reader for her own measures: the living page with nothing filled in but the pattern's choices. */

import type { Recipe } from "../recipe/recipe.ts";
import { patternOf } from "../recipe/sizes/own-measures.ts";
import type { Data } from "../recipe/written.ts";
import { treeOf } from "../recipe/written.ts";
import { contents } from "./contents.ts";
import { askSection, choicesSection } from "./fields.ts";
import { framedPage, pageData } from "./page.ts";
import type { OwnPart } from "./parts.ts";
import { nodesToHtml } from "./stringify.ts";

/** The file it is written to. */
export const MEASURE_YOUR_OWN = "measure-your-own.html";

/** Is such a page wanted? With sizes it is, unless the recipe says no. */
export const isAsked = ({ measureYourOwn }: Recipe, hasSizes: boolean): boolean => measureYourOwn ?? hasSizes;

/** The page's HTML. @param recipe a whole recipe, whose wearer is taken out */
export function ownMeasuresPage(recipe: Recipe, version: string, own: OwnPart): string {
  const { written, asks } = patternOf(recipe.written);
  const { places } = treeOf(written as Data);
  const { size: _, recorded: __, ...pattern } = { ...recipe, written };
  return framedPage(
    {
      title: `${recipe.title}, to your own measures`,
      show: recipe.show,
      before: nodesToHtml([askSection(asks), contents([])]),
      main: "",
      after: nodesToHtml([choicesSection(recipe.fields.filter(({ path }) => places.has(path)))]),
      data: { ...pageData({ recipe: pattern }, own, ""), asks },
    },
    version,
  );
}
