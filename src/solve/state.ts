/** How far a garment has come, by its recipe and its record. */
import { compare } from "../quantity/quantity.ts";
import { standing } from "../recipe/as-made/standing.ts";
import type { Plan } from "./plan.ts";

/**
 * `made`: a recorded entry says when it was finished. `in work`: something is recorded. `trial proved`: the recipe's trial
 * closes. `planned`: none of these.
 */
export type State = "planned" | "trial proved" | "in work" | "made";

export function stateOf({ recipe, values }: Plan): State {
  const { asMade } = recipe.recorded ?? {};
  if (asMade && standing(asMade).finished !== undefined) return "made";
  if (asMade && asMade.entries.length > 0) return "in work";
  const reaches = values.get("trial.reaches")?.quantity;
  const { trial } = recipe.fullness;
  return trial && reaches && compare(trial.closesTo, reaches) <= 0 ? "trial proved" : "planned";
}
