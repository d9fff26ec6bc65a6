/** The mark of a drawing whose lengths are estimated over a hoop, and not measured. */
import type { Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";

/** Says below the drawing that its lengths have to be measured before the cloth is cut. */
export function noteEstimate(drawing: Drawing, plan: Plan): void {
  if (plan.recipe.wearer.waistToFloor) return;
  drawing.note("Estimate: measure before cutting. The lengths are reckoned over the hoop.");
}
