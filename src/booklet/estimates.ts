/** How a booklet marks what follows from lengths that were estimated and not measured. */
import type { Plan } from "../solve/plan.ts";

const MARK = "estimate: measure before cutting";

/** Behind a number in a table; the chapter says the whole mark once. */
export const SHORT_MARK = " (est.)";

const PLACES = [
  ["front", "centre front"],
  ["left", "left side"],
  ["back", "centre back"],
  ["right", "right side"],
] as const;

export const isEstimated = ({ recipe }: Plan): boolean => recipe.wearer.waistToFloor === undefined;

/**
 * `estimate` stands behind a number in a table that follows from an estimate, `estimateInFull` once in a chapter that has no notice of its
 * own; both are nothing where lengths are measured.
 */
export function estimatesContext(plan: Plan) {
  const shown = (name: string): string => plan.values.get(name)?.shown ?? "";
  const estimated = isEstimated(plan);
  return {
    estimate: estimated ? SHORT_MARK : "",
    estimateInFull: estimated ? ` (${MARK})` : "",
    estimates: estimated
      ? PLACES.map(([station, place]) => ({
          place,
          straight: shown(`straight.${station}`),
          domed: shown(`domed.${station}`),
        }))
      : [],
  };
}
