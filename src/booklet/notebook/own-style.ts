/** How a value of the maker's own is printed: by its kind. */
import {
  AREA,
  AREAL,
  type Dim,
  dim,
  LENGTH,
  MASS,
  MONEY,
  PLAIN,
  RATE,
  TIME,
} from "../../quantity/quantity.ts";
import type { Style } from "../../solve/plan.ts";

const STYLES = new Map<Dim, Style>([
  [PLAIN, "count"],
  [LENGTH, "tape"],
  [AREA, "area"],
  [MASS, "weight"],
  [TIME, "time"],
  [AREAL, "areal"],
  [RATE, "rate"],
  [MONEY, "money"],
  [dim(-1), "perLength"],
  [dim(-1, 0, 0, 1), "price"],
  [dim(0, 0, -1, 1), "hourly"],
]);

/** The style of a kind; undefined for a kind that nobody measures. */
export const ownStyle = (kind: Dim): Style | undefined => STYLES.get(kind);
