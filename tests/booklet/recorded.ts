/** A garment of which everything that can be recorded is recorded, and another that is planned at its maker's pace. */
import { readAsMadeFile } from "../../src/recipe/as-made/file.ts";
import { pacesOf } from "../../src/recipe/as-made/pace.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { solve } from "../../src/solve/solve.ts";
import { type Keys, recipeText } from "../recipes.ts";

const RECORD = `- date: 2026-02-14
  hands: M. | the <elder>
  begun: 2 February
  trial: {cloth: 21 1/4 in, pleats: 24, closes-to: 3 7/8 in}
  hours: {seams: 2 h, gauging: 30 min, cutting: 1 h}
  counts: {seams: 1400, gauging: 540}
  measures: {skirt.placket: 11 in, wearer.over: ""}
  notes: {trial/3: "a | b <c> *d* {{e}}"}
- date: 2026-03-07
  finished: 7 March
  made: {round: 174 in, closed: 25 3/4 in, pleats: 140, bite: 5/8 in, thread: 9 yd, weight: 2 lb 1 oz}
  sections: [{name: left front quarter, pleats: 35, waist: 6 1/2 in}]
  off-floor: {centre-front: 2 in, left-side: 2 1/8 in, centre-back: 1 7/8 in}
  hung: {centre-back: 1 3/4 in}
  changed: "- no list"
  lessons: |
    Two
    lines.
  photographs: [photos/front.jpg]
`;

export function recordedPlan(keys: Keys = {}): Plan {
  const { recipe } = readRecipe("recipe.md", recipeText({ cloth: { weight: "120 g/m2" }, ...keys }));
  const { asMade } = readAsMadeFile("as-made.yaml", RECORD);
  if (!recipe || !asMade) throw new Error("the recorded garment cannot be read");
  const { plan } = solve({ ...recipe, recorded: { asMade, paces: pacesOf([asMade]) } });
  if (!plan) throw new Error("the recorded garment cannot be worked out");
  return plan;
}
