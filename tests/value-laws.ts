/**
 * Double entry: what a named value has to be by the rule of the trade, worked once more from the values it hangs on in
 * fraction.js, in no formula's words. Rules, one a line; those of whole plans stand in laws.ts and its companions.
 */
import Fraction from "fraction.js";
import type { Plan } from "../src/solve/plan.ts";
import {
  type Asked,
  F,
  type Json,
  least,
  lostInSeam,
  most,
  type Rule,
  sum,
  topOf,
  upTo,
} from "./value-asked.ts";
import { alongFirst } from "./value-rules-along.ts";
import { CLASS_RULES } from "./value-rules-class.ts";
import { SEWING_RULES } from "./value-rules-sewing.ts";

const lengths = ["finished.front", "finished.left", "finished.right", "finished.back"];
const turned =
  (place: string): Rule =>
  (of) =>
    topOf(of).sub(of.v(`finished.${place}`));
const hung = ({ plan }: Asked): boolean => plan.recipe.lining?.kind === "hung";
const separate = ({ plan }: Asked): boolean => plan.recipe.lining?.to === "separate";

const CUTTING_RULES: Readonly<Record<string, Rule>> = {
  "waist.planned": ({ v, plan }) =>
    plan.recipe.attach.waistEdge?.set === "edge" ? undefined : v("wearer.waist").add(v("wearer.ease")),
  "waist.seam": ({ v, has }) => v(has("attach.made") ? "attach.made" : "waist.planned"),
  "edge.gain": ({ v }) => v("edge.slant").sub(v("attach.waistEdge.fromCentre")).mul(2),
  "breadths.usable": ({ v }) => v("cloth.width").sub(v("cloth.selvedge").mul(2)),
  "breadths.whole": ({ v }) => v("breadths.count").floor(),
  "breadths.pieces": ({ v }) => v("breadths.count").ceil(),
  "breadths.seams": ({ v }) => v("breadths.count").ceil(),
  "breadths.finished": (of) => of.v("breadths.usable").sub(lostInSeam(of)),
  "breadths.longest": ({ v, has }) =>
    most(...lengths.map(v), ...(has("finished.level") ? [v("finished.level")] : [])),
  "breadths.shortest": ({ v }) => least(...lengths.map(v)),
  "breadths.hemmed": ({ v }) => v("breadths.cut").sub(v("hem.allowance")),
  "breadths.allotted": ({ v, has }) =>
    has("cloth.repeat.down") ? upTo(v("breadths.cut"), v("cloth.repeat.down")) : v("breadths.cut"),
  // A selvedge is a finished edge already.
  "hem.allowance": ({ v, plan }) => {
    const { kind, edge } = plan.recipe.skirt.hem;
    if (kind === "turned") return v("skirt.hem.depth").add(v("skirt.hem.turnIn"));
    return edge === "selvedge" ? F(0) : v("skirt.seam");
  },
  "balance.least": ({ v, or0, has, json }) => {
    if (has("skirt.turnDown")) return v("skirt.turnDown");
    const rows = json.rows.at(-1);
    return most(v("skirt.leastTurnDown"), rows ? F(rows.below).add(or0("fullness.margin")) : F(0));
  },
  "turnDown.front": turned("front"),
  "turnDown.left": turned("left"),
  "turnDown.right": turned("right"),
  "turnDown.back": turned("back"),
  "finished.front": ({ v, has }) =>
    has("finished.level") ? v("finished.level").sub(v("attach.waistEdge.depth")) : undefined,
  "seam.fromEdge": (of) => of.v("cloth.selvedge").add(lostInSeam(of).div(2)),
  "seam.fromLeft": ({ v }) => v("cloth.selvedge").add(v("seam.left")),
  "seam.fromRight": ({ v }) => v("cloth.selvedge").add(v("seam.right")),
  "seam.left": ({ v, plan }) => (plan.recipe.cloth.repeat?.dominant ? undefined : v("seam.lost").div(2)),
  "repeat.lost": ({ v }) => v("seam.lost").div(v("cloth.repeat.across")),
  "repeat.most": ({ v, or0 }) => {
    // So many repeats as leave the seam allowances, and the lines that are to be lost, between selvedge and selvedge.
    const taken = most(v("skirt.seam").mul(2), or0("cloth.repeat.linesLost").mul(v("cloth.repeat.across")));
    return v("breadths.usable").sub(taken).div(v("cloth.repeat.across")).floor();
  },
  "repeat.between": ({ v, plan }) => (plan.recipe.cloth.repeat?.dominant ? undefined : v("repeat.most")),
  "repeat.roundFree": ({ v }) =>
    v("breadths.count")
      .mul(v("breadths.usable"))
      .sub(v("breadths.count").ceil().mul(v("skirt.seam")).mul(2)),
  "facing.depth": ({ v }) => v("skirt.hem.depth").add(v("skirt.seam").mul(2)),
  "facing.strips": ({ v }) =>
    v("skirt.round")
      .div(v("breadths.usable").sub(v("skirt.seam").mul(2)))
      .ceil(),
  "facing.length": ({ v }) => v("skirt.round").add(v("facing.strips").mul(v("skirt.seam")).mul(2)),
  "facing.joined": ({ v }) => v("skirt.round").add(v("facing.pieces").mul(v("skirt.seam")).mul(2)),
  "facing.buy": ({ v }) =>
    upTo(
      v("facing.strips")
        .mul(v("facing.depth"))
        .div(F(1).sub(v("cloth.shrinkage"))),
      v("cloth.boughtBy"),
    ),
  "braid.length": ({ v }) => v("skirt.round").mul("1.03").add(4),
  "cloth.buy": ({ v }) => upTo(v("cloth.length").div(F(1).sub(v("cloth.shrinkage"))), v("cloth.boughtBy")),
  "cloth.waste": ({ json }) => {
    const all = F(json.layout.width).mul(F(json.layout.length));
    const used = sum(json.layout.pieces.map((piece) => F(piece.width).mul(F(piece.length))));
    return F(1).sub(used.div(all));
  },
  "lining.usable": ({ v }) => v("lining.width").sub(v("lining.selvedge").mul(2)),
  "lining.foot": (of) =>
    separate(of)
      ? of.v("lining.hem").add("1/4")
      : of.plan.recipe.skirt.hem.kind === "faced" && of.plan.recipe.skirt.hem.edge !== "selvedge"
        ? of.v("skirt.seam")
        : F(0),
  "lining.cut": (of) => {
    const { v, plan } = of;
    const up = () => {
      if (plan.recipe.lining?.kind === "flat") return v("breadths.hemmed");
      if (separate(of)) return v("breadths.longest").sub(v("lining.shorter")).add(v("balance.least"));
      return plan.recipe.lining?.to === "fold" ? v("breadths.longest").add(1) : topOf(of);
    };
    return upTo(up().add(v("lining.foot")), v("tape"));
  },
  "lining.finished": ({ v }) => v("lining.usable").sub(v("skirt.seam").mul(2)),
  "lining.breadths": ({ v }) => v("skirt.round").div(v("lining.finished")).ceil(),
  "lining.last": ({ v }) => v("skirt.round").sub(v("lining.breadths").sub(1).mul(v("lining.finished"))),
  "lining.each": ({ v }) => v("breadths.usable"),
  // Whole widths, each joined taking both seam allowances of the ones before it.
  "lining.perBreadth": (of) => widths(of, "lining", of.v("skirt.seam").mul(2)),
  "lining.buy": ({ v }) => upTo(v("lining.length").div(F(1).sub(v("lining.shrinkage"))), v("cloth.boughtBy")),
  "stitches.lining": (of) =>
    hung(of)
      ? of
          .v("lining.pieces")
          .mul(of.v("lining.cut"))
          .mul(8)
          .add(separate(of) ? of.v("skirt.round").mul(6) : 0)
      : tackedIn(of, "lining"),
  "interlining.usable": ({ v }) => v("interlining.width").sub(v("interlining.selvedge").mul(2)),
  "interlining.cut": ({ v, or0, plan }) => {
    const tucked = v("breadths.longest").add(or0("tucks.takeUp"));
    const up = {
      short: tucked.sub(or0("gauging.lastRow")).sub("1/2"),
      fold: tucked.add(1),
      turned: v("breadths.hemmed"),
    }[plan.recipe.interlining?.to ?? "short"];
    return upTo(up, v("tape"));
  },
  "interlining.each": ({ v }) => v("breadths.finished"),
  "interlining.perBreadth": (of) => widths(of, "interlining", of.v("skirt.seam")),
  "interlining.buy": ({ v }) =>
    upTo(v("interlining.length").div(F(1).sub(v("interlining.shrinkage"))), v("cloth.boughtBy")),
  "stitches.interlining": (of) => tackedIn(of, "interlining"),
};

/** So many widths, each after the first lapped by `join`, cover a breadth. */
function widths({ v }: Asked, which: string, join: Fraction): Fraction {
  let [count, covered] = [1, v(`${which}.usable`)];
  while (covered.compare(v(`${which}.each`)) < 0) {
    count += 1;
    covered = covered.add(v(`${which}.usable`)).sub(join);
  }
  return F(count);
}

/** Joins sewn at eight an inch, and both long edges of every breadth caught down at two. */
function tackedIn({ v }: Asked, which: string): Fraction {
  const joins = v(`${which}.pieces`).sub(v("breadths.pieces"));
  return joins
    .mul(8)
    .add(v("breadths.pieces").mul(2).mul(2))
    .mul(v(`${which}.cut`));
}

const RULES: Readonly<Record<string, Rule>> = {
  ...alongFirst({ ...CUTTING_RULES, ...SEWING_RULES }),
  ...CLASS_RULES,
};

export const RULE_NAMES = Object.keys(RULES);

/** Every value that is not what its rule makes of the others, in words. */
export function brokenValues(json: Json, plan: Plan): string[] {
  const has = (name: string): boolean => json.values[name] !== undefined;
  const v = (name: string): Fraction => {
    const found = json.values[name];
    if (!found) throw new Error(`no value ${name}`);
    return new Fraction(found.exact);
  };
  const or0 = (name: string): Fraction => (has(name) ? v(name) : F(0));
  return Object.entries(RULES).flatMap(([name, rule]) => {
    if (!has(name)) return [];
    const wanted = rule({ plan, json, v, has, or0 });
    const held = wanted === undefined || wanted.equals(v(name));
    return held ? [] : [`${name} by its rule: ${v(name).toFraction()} is not ${wanted?.toFraction()}`];
  });
}
