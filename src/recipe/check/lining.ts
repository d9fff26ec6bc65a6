/** Lining and interlining: is any width left, and does how it is made agree with where it ends. */
import { mul, plain, sub } from "../../quantity/quantity.ts";
import type { Checking } from "./checking.ts";
import { isPositive } from "./wearer.ts";

export function checkLining({ values, written, say }: Checking): void {
  for (const which of ["lining", "interlining"] as const) {
    const { width, selvedge } = values[which] ?? {};
    if (width && selvedge && !isPositive(sub(width, mul(selvedge, plain(2n)))))
      say(`${which}.selvedge`, {
        code: "no-width",
        text: "two selvedges leave no width",
        expected: "less than half the width",
        hint: "check the width and the selvedge",
      });
    if (written(`work.price.${which}`) && !written(which))
      say(`work.price.${which}`, {
        code: "price-of-nothing",
        text: `the ${which} is priced, and the recipe has none`,
        hint: `say what it is under ${which}, or take its price out`,
      });
  }
  if (values.lining?.kind === "flat" && values.lining.to === "separate")
    say("lining.to", {
      code: "flat-and-separate",
      text: "a flat lining is sewn up with the cloth: it cannot be joined at the waist alone",
      expected: "fold or turned",
      hint: "write to: fold, or kind: hung",
    });
}
