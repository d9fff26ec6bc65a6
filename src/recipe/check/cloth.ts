/** The cloth: is any width left, and is its thickness known (trade: waist and breadths; gauging a section). */
import { mul, plain, sub } from "../../quantity/quantity.ts";
import type { Checking } from "./checking.ts";
import { isGauged } from "./gauged.ts";
import { isPositive } from "./wearer.ts";

export function checkCloth(checking: Checking): void {
  const { values, written, say, sayOfKey } = checking;
  const { width, selvedge } = values.cloth ?? {};
  if (width && selvedge && !isPositive(sub(width, mul(selvedge, plain(2n))))) {
    say("cloth.selvedge", {
      code: "no-width",
      text: "two selvedges leave no width",
      expected: "less than half the width",
      hint: "check the width and the selvedge; a selvedge that is sewn into the seam counts as 0",
    });
  }
  const once = written("cloth.thickness");
  const tenfold = written("cloth.ten-layers");
  if (once && tenfold) {
    sayOfKey("cloth.ten-layers", {
      code: "thickness-twice",
      text: "thickness and ten-layers are both given",
      expected: "one of the two",
      hint: "keep ten-layers if it is measured: it is the surer",
    });
  }
  if (!once && !tenfold && values.cloth && !written("fullness.trial") && isGauged(checking)) {
    sayOfKey("cloth", {
      code: "no-thickness",
      text: "neither thickness nor ten-layers is given, and there is no trial",
      expected: "one of them: how close pleats can stand follows from it",
      hint: "lay ten layers together, measure them and write ten-layers: 2.5 mm, inside cloth",
    });
  }
}
