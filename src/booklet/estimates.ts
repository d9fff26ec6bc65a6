/** How a booklet marks what follows from lengths that were estimated and not measured. */
import type { Plan } from "../solve/plan.ts";

export const MARK = "estimate: measure before cutting";

const PLACES = [
  ["front", "centre front"],
  ["left", "left side"],
  ["back", "centre back"],
  ["right", "right side"],
] as const;

export const isEstimated = ({ recipe }: Plan): boolean => recipe.wearer.waistToFloor === undefined;

/** `estimate` stands behind a number that follows from an estimate, and is nothing where lengths are measured. */
export function estimatesContext(plan: Plan) {
  const shown = (name: string): string => plan.values.get(name)?.shown ?? "";
  const estimated = isEstimated(plan);
  return {
    estimate: estimated ? ` (${MARK})` : "",
    estimates: estimated
      ? PLACES.map(([station, place]) => ({
          place,
          straight: shown(`straight.${station}`),
          domed: shown(`domed.${station}`),
        }))
      : [],
  };
}
