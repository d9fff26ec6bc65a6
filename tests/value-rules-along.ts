/**
 * The rules of value-laws.ts for cloth that runs along the body, its borders and shading: the cloth lies on its side, so what
 * goes round is measured along it, and hem, skirt and turn-down lie across it (practice: nap, shaded cloth, border prints).
 */
import type Fraction from "fraction.js";
import { type Asked, along, F, most, type Rule, upTo } from "./value-asked.ts";

/** Two allowances, one at each end of a piece. */
const bothSeams = ({ v }: Asked): Fraction => v("skirt.seam").mul(2);
const lengths = ({ v }: Asked): Fraction => v("skirt.lengths");
/** Ends meet on a tape mark, or on a line of the pattern. */
const stepOf = ({ v, plan }: Asked): Fraction =>
  v(plan.recipe.cloth.repeat?.match ? "cloth.repeat.down" : "tape");
/** What one length gives to the round. */
const given = (of: Asked): Fraction => upTo(of.v("skirt.roundWished").div(lengths(of)), stepOf(of));
/** From the cloth's outer edge to the finished hem, which is where a selvedge is sewn as it is. */
const hemInside = ({ v }: Asked): Fraction => v("run.start").add(v("hem.allowance"));
const onCross = ({ plan }: Asked): boolean => plan.recipe.skirt.flounces?.cut === "cross";

/** Where the cloth runs along, in place of the usual rules. */
const INSTEAD: Readonly<Record<string, Rule>> = {
  "breadths.count": lengths,
  "breadths.whole": lengths,
  "breadths.pieces": lengths,
  "breadths.seams": lengths,
  "breadths.finished": given,
  "breadths.allotted": ({ v }) => v("breadths.cut"),
  "repeat.between": (of) => given(of).div(of.v("cloth.repeat.down")),
  "skirt.round": (of) => given(of).mul(lengths(of)),
  "seam.fromEdge": ({ v }) => v("skirt.seam"),
  // One strip along each length where it fits beside it; else across the cloth, from selvedge to selvedge.
  "facing.strips": (of) => {
    const { v, plan } = of;
    const beside = v("cloth.width").sub(v("run.start")).sub(v("breadths.cut"));
    const fits = beside.compare(v("skirt.hem.depth").add(bothSeams(of))) >= 0;
    if (plan.recipe.skirt.hem.cloth === "own" && fits) return lengths(of);
    const inside = v("cloth.width").sub(v("cloth.selvedge").mul(2));
    return v("skirt.round")
      .div(inside.sub(bothSeams(of)))
      .ceil();
  },
  "lining.each": (of) => given(of).add(bothSeams(of)),
};

/** Straight flounces lie along the cloth, in strips no longer than the skirt's lengths. */
const STRAIGHT: Readonly<Record<string, Rule>> = {
  "flounces.strips": (of) => of.v("flounces.round").div(given(of)).ceil(),
  "flounces.each": (of) => upTo(of.v("flounces.round").div(of.v("flounces.strips")), of.v("tape")),
  "flounces.strip": (of) => of.v("flounces.each").add(bothSeams(of)),
};

/** Values that only such cloth has, and its shading, which any may have. */
const BESIDE: Readonly<Record<string, Rule>> = {
  "run.length": (of) => upTo(given(of).add(bothSeams(of)), of.v("tape")),
  // The selvedge is cut off unless it is the hem; with a border the hem goes by that.
  "run.start": ({ v, plan }) => {
    const { cloth, skirt } = plan.recipe;
    if (cloth.border) return v("cloth.border.fromEdge").sub(v("border.above")).sub(v("hem.allowance"));
    return skirt.hem.edge === "selvedge" ? F(0) : v("cloth.selvedge");
  },
  "run.room": ({ v }) => v("cloth.width").sub(v("cloth.selvedge")).sub(v("run.start")),
  "run.beside": ({ v }) => v("cloth.width").sub(v("run.start")).sub(v("breadths.cut")),
  // As wished; else on all the ground there is below it, less what the hem takes of that.
  "border.above": ({ v, has }) =>
    has("cloth.border.aboveHem")
      ? v("cloth.border.aboveHem")
      : v("cloth.border.fromEdge").sub(v("hem.allowance")),
  "border.head": ({ v }) => v("border.above").add(v("cloth.border.depth")),
  // The other border lies as far inside its own edge.
  "border.second": (of) =>
    of.v("cloth.width").sub(of.v("cloth.border.fromEdge")).sub(of.v("cloth.border.depth")).sub(hemInside(of)),
  // On a flounce it lies as high as on the skirt, or as high as the ground below it lets it.
  "border.flounces": ({ v }) =>
    most(F(0), v("cloth.border.fromEdge").sub(v("border.above")).sub(v("skirt.seam"))),
  "shade.joins": (of) => {
    const { shaded, repeat } = of.plan.recipe.cloth;
    // Shaded from hem to waist nothing changes along a hem.
    if ((shaded === "across") === along(of)) return F(0);
    // Shaded round the body: a length that holds whole shadings ends as it begins.
    if (along(of) && repeat?.match) return F(0);
    // Nothing is turned: every piece ends dark where the next begins light.
    return of.v("breadths.pieces");
  },
};

/** The rules with these before them: which one holds goes by the way the cloth runs. */
export const alongFirst = (rules: Readonly<Record<string, Rule>>): Readonly<Record<string, Rule>> => {
  const other = Object.entries({ ...INSTEAD, ...STRAIGHT }).map(([name, rule]): [string, Rule] => [
    name,
    (of) => {
      const holds = along(of) && !(name in STRAIGHT && onCross(of));
      return holds ? rule(of) : rules[name]?.(of);
    },
  ]);
  return { ...rules, ...Object.fromEntries(other), ...BESIDE };
};
