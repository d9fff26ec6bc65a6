/** The stay: cut before the top is gauged, so it is as long as the gauged cloth, not as the waist. */
import { printOnTape } from "../quantity/print.ts";
import { add, inches, LENGTH, type Quantity, quantity } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";

/** What a stay reaches below the last row: 3/8 in, or 1 cm (common practice). */
const BELOW: Record<"in" | "cm", Quantity> = { in: inches("3/8"), cm: quantity(10n, LENGTH) };

/** The depth a stay is cut, from the fold to below the last row. Undefined without a stay or without gauging. */
export function stayDepth({ recipe, values }: Plan): string | undefined {
  const lastRow = values.get("gauging.lastRow")?.quantity;
  if (!recipe.fullness.stay || !lastRow) return undefined;
  return printOnTape(add(lastRow, BELOW[recipe.show]), { show: recipe.show, tape: recipe.tape });
}
