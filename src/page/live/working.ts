/** How one value of a plan was worked out, ready to be shown. */
import { printExactly } from "../../quantity/print.ts";
import { LENGTH } from "../../quantity/quantity.ts";
import { formulaOf } from "../../solve/formulas.ts";
import type { Plan, Value } from "../../solve/plan.ts";

/** One value as the page shows it. */
export interface Working {
  readonly name: string;
  readonly shown: string;
  readonly about: string;
  readonly how: string;
  readonly inNumbers: string;
  readonly rule: string;
  readonly source: Value["source"];
  /** The value before it is rounded for printing, where printing rounds it. */
  readonly exactly: string;
  /** The recipe's key, for a measure. */
  readonly path: string;
  /** The values its formula names. */
  readonly from: readonly string[];
}

/** A length as it is, where it is printed on the nearest mark. */
function unrounded({ quantity, shown }: Value, show: "in" | "cm"): string {
  if (quantity.dim !== LENGTH) return "";
  const exactly = printExactly(quantity, show);
  return exactly === shown ? "" : exactly;
}

/** The working of a value by its name; undefined where the plan has none of that name. */
export function workingOf({ values, recipe }: Plan, name: string): Working | undefined {
  const value = values.get(name);
  if (!value) return undefined;
  const { shown, about, how, inNumbers, source, rule = "", path = "" } = value;
  const from =
    source === "formula" || source === "workings"
      ? formulaOf(how).names.filter((one) => values.has(one))
      : [];
  return {
    name,
    shown,
    about,
    how,
    inNumbers,
    rule,
    source,
    path,
    from,
    exactly: unrounded(value, recipe.show),
  };
}
