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
  return asked.length === 0;
}
