/**
 * How flat and pleated parts are set: turned down and whipped like the gauging, or trimmed to one layer and sewn in the
 * seam of the band or piping itself, where turned down they would be too thick to whip (practice).
 */
import { decimal } from "../quantity/print.ts";
import { add, less, millimetres, mul, plain, type Quantity } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { BACKINGS, inPleats, layersOf as liningLayers, wallFormula, wallOf } from "./lining.ts";
import type { FlatSection, Plan, PleatedSection, Section } from "./plan.ts";
import { PLEAT_NAMES } from "./pleat.ts";

/** Cloths at the seam thicker than this cannot well be whipped. */
const THICKEST = millimetres(5n);

const thick = (q: Quantity): string => `${decimal(q.value, 1)} mm`;

/** Sets what the parts' seam holds, and says which way it is sewn where that is not plain. Undefined where all is gauged. */
export function solveFlatParts(work: Work, sections: readonly Section[]): Plan["flatParts"] {
  const { recipe, sheet, say } = work;
  const asked = recipe.attach.flatParts;
  const parts = sections.filter(
    (section): section is FlatSection | PleatedSection => section.set !== "gauged",
  );
  if (parts.length === 0) {
    if (asked)
      say({
        code: "no-effect",
        level: "note",
        path: "attach.flat-parts",
        text: "flat-parts does nothing here: no part is left flat or laid in pleats",
        hint: "leave it out",
      });
    return undefined;
  }
  const layersOf = (part: FlatSection | PleatedSection): number => (part.set === "flat" ? 1 : part.layers);
  const thickest = parts.reduce((a, b) => (layersOf(b) > layersOf(a) ? b : a));
  const layers = layersOf(thickest);
  const { thickness } = recipe.cloth;
  const wall = wallOf(work);
  const turned = wall && mul(wall, plain(layers));
  const tooThick = turned !== undefined && less(THICKEST, turned);
  const way = asked ?? (tooThick ? "seam" : "whip");
  const what = thickest.set === "flat" ? "flat parts" : PLEAT_NAMES[thickest.set];
  const path = recipe.fullness.zones ? "fullness.zones" : "fullness.method";
  if (tooThick && way === "whip")
    say({
      code: "thick-at-seam",
      level: "warning",
      path: "attach.flat-parts",
      text: `turned down, the ${what} are ${2 * layers} cloths${liningCloths(recipe, layers)}, ${thick(turned)}: too thick to whip`,
      hint: "write flat-parts: seam, and they are set in one layer, in the seam of the edge itself",
    });
  else if (tooThick && !asked)
    say({
      code: "thick-at-seam",
      level: "warning",
      path,
      text: `turned down, the ${what} are ${2 * layers} cloths${liningCloths(recipe, layers)}, ${thick(turned)}: too thick to whip`,
      hint: "they are set in one layer, in the band's own seam: the top is trimmed to a seam above the balance line there. Write flat-parts: whip inside attach to turn them down all the same",
    });
  const one = [
    "cloth.thickness",
    ...BACKINGS.filter((which) => liningLayers(recipe, which) === 2n).map((which) => `${which}.thickness`),
  ].join(" + ");
  const single = thickness && mul(sheet.evaluate(one), plain(layers));
  if (way === "seam" && single && less(THICKEST, single))
    say({
      code: "thick-in-seam",
      level: "warning",
      path,
      text: `even in one layer the ${what} are ${layers} cloths in the seam, ${thick(single)}`,
      hint: "take shallower pleats, or gauge more of the cloth",
    });
  sheet.choose("plain.layers", plain(layers), "the layers of the thickest flat or pleated part");
  sheet.choose(
    "plain.waist",
    parts.map(({ waist }) => waist).reduce(add),
    "the waists of all flat and pleated parts together",
  );
  sheet.set("plain.cloths", way === "whip" ? "2 * plain.layers" : "plain.layers");
  if (thickness) sheet.set("plain.thick", `plain.layers * (${way === "whip" ? wallFormula(recipe) : one})`);
  sheet.set("plain.stitches", "ceil(plain.waist * 8 / (1 in))");
  if (way === "seam") sheet.set("plain.above", "attach.band.turning");
  return way;
}

/** What lies in the layers beside the cloth. */
function liningCloths(recipe: Work["recipe"], layers: number): string {
  const behind = inPleats(recipe).map(
    (which) => `${layers * Number(liningLayers(recipe, which))} of ${which}`,
  );
  return behind.length > 0 ? ` and ${behind.join(" and ")}` : "";
}
