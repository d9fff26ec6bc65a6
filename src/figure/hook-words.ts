/** The further sets of eyes in words: for which waist, how far from the closing mark, on what. */
import type { Plan } from "../solve/plan.ts";
import { printer } from "./measure.ts";

/** "further eyes: to 28 1/2 in, 1 in out along the lap; to 26 in, …"; empty where the band closes to one waist alone. */
export function furtherEyes(plan: Plan): string {
  const { part, tape } = printer(plan);
  const sets = plan.hookSets.map(
    ({ waist, away, on }) =>
      `to ${part(waist)}, ${tape(away)} ${on === "lap" ? "out along the lap" : "back, over the gauging"}`,
  );
  return sets.length > 0 ? `further eyes: ${sets.join("; ")}` : "";
}
