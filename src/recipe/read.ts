/** Reads recipe.md: its measures into a typed recipe, and everything that is wrong with them, in one pass. */

import { type ReadRecipe, recipeFromTree } from "./from-tree.ts";
import { frontMatter } from "./front-matter.ts";
import { Source } from "./lines.ts";
import type { EvidenceText } from "./recipe.ts";
import { hasSizes, readSizes } from "./sizes/read.ts";
import { readTree } from "./tree.ts";

export type { ReadRecipe } from "./from-tree.ts";
export type { EvidenceText } from "./recipe.ts";

/**
 * Reads a recipe.
 *
 * Never throws for anything that stands in `text`. Lengths are exact; what is left out gets the default for inches or
 * for centimetres, as `show` says. With `sizes`, each of them is read whole, laid over the rest.
 *
 * @param file the file's name, for messages
 * @param text the whole file: front matter and body
 * @param evidence the list of dated originals beside it, if there is one; what is wrong with it is told after the recipe
 */
export function readRecipe(file: string, text: string, evidence?: EvidenceText): ReadRecipe {
  const source = new Source(file, text);
  const front = frontMatter(source);
  if ("code" in front) return { messages: [front] };
  const tree = readTree(source, front);
  const read = hasSizes(tree) ? readSizes : recipeFromTree;
  return read(tree, source.place(0, 3), front.body, evidence);
}
