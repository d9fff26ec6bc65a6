/** Keys of the recipe that can be read but are not worked out yet. Said plainly, so that nothing is left out in silence. */
import type { Recipe } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";

interface NotYet {
  readonly path: string;
  readonly asked: (recipe: Recipe) => boolean;
  readonly what: string;
  readonly instead: string;
}

const NOT_YET: readonly NotYet[] = [
  {
    path: "sizes",
    asked: (r) => r.places.has("sizes"),
    what: "a set of sizes",
    instead: "write one recipe a size, without sizes",
  },
];

/** Refuses what this version does not work out; true when everything asked for is. */
export function checkWorkedOut({ recipe, say }: Work): boolean {
  const asked = NOT_YET.filter((item) => item.asked(recipe));
  for (const { path, what, instead } of asked) {
    say({
      code: "not-yet",
      level: "error",
      path,
      text: `${what} is not worked out by this version`,
      hint: instead,
    });
  }
  const wordy = recipe.body.text.search(/\S/);
  if (wordy >= 0) {
    const line = recipe.body.line + (recipe.body.text.slice(0, wordy).match(/\n/g)?.length ?? 0);
    const length = recipe.body.text.slice(wordy).split(/[\r\n]/)[0]?.length ?? 1;
    say({
      code: "not-yet",
      level: "error",
      text: "a notebook of your own below the front matter is not worked in by this version",
      hint: "leave it empty for the standard booklet; keep notes as # comments between the --- lines",
      place: { file: recipe.places.get("title")?.file ?? "recipe.md", line, column: 1, length },
    });
  }
  return asked.length === 0 && wordy < 0;
}
