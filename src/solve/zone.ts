/** A zone: as asked for, and as solved. */
import type { Quantity } from "../quantity/quantity.ts";
import type { Zone } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";
import type { ZoneSet } from "./pleat.ts";

export interface SolvedZone {
  readonly set: ZoneSet;
  readonly waist: Quantity;
  /** The waist before the edge was made. */
  readonly planned: Quantity;
  readonly cloth: Quantity;
  /** Of a zone that `back-share` parts at the side: the part before it, and the part behind. */
  readonly parted?: "before" | "behind";
  readonly pleats?: {
    readonly count: Quantity;
    readonly face: Quantity;
    readonly depth: Quantity;
    readonly towards: "front" | "back";
  };
}

/** A zone as asked for: a recipe's own, or one that a method stands for. `even` takes cloth in proportion to its waist. */
export interface Asked extends Zone {
  readonly path: string;
  readonly even?: boolean;
}

/** The zones of one half, from centre front: the recipe's own, or those its method stands for. */
export function askedZones({ recipe, sheet }: Work): readonly Asked[] {
  const { zones, method } = recipe.fullness;
  if (zones) return zones.map((zone, i) => ({ ...zone, path: `fullness.zones.${i}` }));
  const path = "fullness.method";
  switch (method) {
    case "pleated":
      return [{ set: "knife", towards: "back", path }];
    case "flat-front-gauged":
      return [
        { set: "flat", waist: sheet.evaluate("fullness.flatFront / 2"), path: "fullness.flat-front" },
        { set: "gauged", path },
      ];
    case "pleated-gauged-back":
      return [
        { set: "knife", towards: "back", even: true, path },
        { set: "gauged", waist: sheet.evaluate("fullness.gaugedBack / 2"), path: "fullness.gauged-back" },
      ];
    default:
      return [{ set: "gauged", path }];
  }
}
