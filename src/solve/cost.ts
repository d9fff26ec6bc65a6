/** What the garment costs: only from prices the recipe gives, each sum to the cent, so that they add up as printed. */
import { MONEY, quantity } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Name } from "./names.ts";

const CENT = quantity("1/100", MONEY);

/** Sets the cost of what is priced, and the sums `cost.low` and `cost.high`. Needs the cloth and the hours. */
export function solveCost({ recipe, sheet }: Work): void {
  const { price } = recipe.work;
  if (!price) return;
  const { cloth, lining, interlining, notions, hour } = price;
  if (!cloth && !lining && !interlining && !notions && !hour) return;
  sheet.assume(
    "cost.cent",
    CENT,
    "money",
    "the smallest coin that is reckoned with",
    "a hundredth of the currency",
  );
  const low: Name[] = [];
  const high: Name[] = [];
  const put = (name: Name, formula: string, ...into: Name[][]): void => {
    sheet.set(name, formula);
    for (const list of into) list.push(name);
  };
  if (price.cloth) put("cost.cloth", "round(cloth.buy * work.price.cloth, cost.cent)", low, high);
  if (lining) put("cost.lining", "round(lining.buy * work.price.lining, cost.cent)", low, high);
  if (interlining)
    put("cost.interlining", "round(interlining.buy * work.price.interlining, cost.cent)", low, high);
  if (price.notions) put("cost.notions", "work.price.notions", low, high);
  if (price.hour) {
    put("cost.workLow", "round(work.low * work.price.hour, cost.cent)", low);
    put("cost.workHigh", "round(work.high * work.price.hour, cost.cent)", high);
  }
  sheet.set("cost.low", low.join(" + "));
  sheet.set("cost.high", high.join(" + "));
}
