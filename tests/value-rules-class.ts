/** The rules of value-laws.ts for a class: one sampler in small, as the part nearest centre back is made, and so many of them. */
import type Fraction from "fraction.js";
import type { PleatedSection } from "../src/solve/plan.ts";
import { type Asked, downTo, F, least, most, nearest, type Rule, sum, upTo } from "./value-asked.ts";

const FOLDS = { knife: 2, box: 4, "double-box": 8 } as const;

const gauged = ({ plan }: Asked): boolean => plan.gauged.length > 0;
const follows = ({ plan }: Asked): boolean => plan.recipe.fullness.followRepeat === true;
/** The laid pleats nearest centre back, of the wearer's left: the ring begins at centre front and goes by the left. */
function laid({ plan }: Asked): PleatedSection {
  const left = plan.sections.filter(({ half }) => half === "left");
  const last = left.filter((each): each is PleatedSection => "faces" in each).at(-1);
  if (!last) throw new Error("no laid pleats");
  return last;
}
const inches = (q: { value: { toFraction(): string } }): Fraction => F(q.value.toFraction()).div("25.4");
/** Along the finished edge, and along the cloth: what one pleat takes. */
const spacing = (of: Asked): Fraction =>
  gauged(of) ? of.v("section.waist").div(of.v("section.pleats")) : of.v("class.face");
const pitch = (of: Asked): Fraction => {
  if (!gauged(of)) return of.v("class.face").add(of.v("class.folds").mul(of.v("class.fold")));
  return follows(of) ? of.v("section.pitch") : of.v("section.cloth").div(of.v("section.pleats"));
};
const withEnds = (of: Asked, length: Fraction): Fraction => length.add(of.v("class.ends").mul(2));
/** Times one for every pupil. */
const each = ({ v }: Asked, one: Fraction): Fraction => v("class.pupils").mul(one);
/** A sampler's edges: along its top, and the strip. */
const edges = ({ v }: Asked): Fraction => v("class.width").add(v("class.edgeLength"));

/** Counts of the stages, each over its rate. */
function hours(of: Asked, end: "low" | "high"): Fraction {
  const { v } = of;
  const at = (count: string, rate: string): Fraction => v(count).div(v(`rate.${rate}.${end}`));
  const common = [at("class.tacks", "running"), at("class.marks", "marking")];
  return sum(
    gauged(of)
      ? [...common, at("class.bites", "gauging"), at("class.stitches", "whip")]
      : [...common, at("class.stitches", "running")],
  );
}

export const CLASS_RULES: Readonly<Record<string, Rule>> = {
  "class.face": (of) => inches(laid(of).face),
  "class.fold": (of) => inches(laid(of).depth),
  "class.folds": (of) => F(FOLDS[laid(of).set]),
  "class.wished": (of) => most(F(2), nearest(of.v("class.sampler").div(spacing(of)))),
  "class.most": (of) => of.v("breadths.usable").sub(of.v("class.ends").mul(2)).div(pitch(of)).floor(),
  "class.pleats": ({ v }) => least(v("class.wished"), v("class.most")),
  "class.finished": (of) => of.v("class.pleats").mul(spacing(of)),
  // Where bites lie on marks of the tape the cloth does too; pleats on the pattern's lines and laid ones go by their own.
  "class.top": (of) => {
    const taken = of.v("class.pleats").mul(pitch(of));
    return gauged(of) && !follows(of) ? downTo(taken, of.v("tape")) : taken;
  },
  "class.bite": ({ v }) => v("class.top").div(v("class.pleats")).div(2),
  "class.width": (of) => withEnds(of, of.v("class.top")),
  "class.depth": (of) => (gauged(of) ? upTo(of.v("balance.least").mul(3), of.v("tape")) : F(8)),
  "class.across": ({ v }) => v("breadths.usable").div(v("class.width")).floor(),
  "class.tiers": ({ v }) => v("class.pupils").div(v("class.across")).ceil(),
  "class.edgeLength": (of) => upTo(withEnds(of, of.v("class.finished")), of.v("tape")),
  "class.edgeDepth": ({ v }) => v("attach.band.depth").add(v("attach.band.turning")).mul(2),
  // Strips lie side by side, their length along the cloth's.
  "class.edgeTiers": ({ v }) =>
    v("class.pupils")
      .div(v("breadths.usable").div(v("class.edgeDepth")).floor())
      .ceil(),
  "class.cloth": ({ v }) => {
    const samplers = v("class.tiers").mul(v("class.depth"));
    const strips = v("class.edgeTiers").mul(v("class.edgeLength"));
    return upTo(samplers.add(strips).div(F(1).sub(v("cloth.shrinkage"))), v("cloth.boughtBy"));
  },
  "class.marks": ({ v }) => v("class.pleats").mul(2),
  "class.bites": ({ v }) => v("class.pleats").mul(2).mul(v("fullness.rows")),
  "class.threadEach": (of) => {
    const { v, plan } = of;
    const runs = plan.recipe.fullness.thread === "drawn-along" ? v("class.finished") : v("class.top");
    return runs.add(v("fullness.threadEnds")).mul(v("fullness.strands"));
  },
  "class.thread": (of) => each(of, of.v("class.threadEach").mul(of.v("fullness.rows"))),
  // Whipped, every fourth twice; laid, eight an inch and two more at each pleat.
  "class.stitches": (of) => {
    const { v, plan } = of;
    if (!gauged(of)) return v("class.finished").mul(8).add(v("class.pleats").mul(2));
    const whipped =
      plan.recipe.attach.whip === "every-other" ? v("class.pleats").div(2).ceil() : v("class.pleats");
    return whipped.add(whipped.div(4).floor());
  },
  // 5/8 in a stitch; of a needleful 6 in are left.
  "class.needlefuls": ({ v }) => v("class.stitches").mul("5/8").div(v("whip.needleful").sub(6)).ceil(),
  "class.sewing": (of) => each(of, of.v("class.needlefuls").mul(of.v("whip.needleful"))),
  "class.tacking": (of) => each(of, edges(of).mul("3/2")),
  "class.sharps": (of) => each(of, gauged(of) ? of.v("needles.sharps") : F(2)),
  "class.betweens": (of) => each(of, F(1)),
  "class.needles": ({ v }) => v("class.sharps").add(v("class.betweens")),
  "class.pinsEach": (of) => (gauged(of) ? F(12) : of.v("class.pleats").mul(2).add(4)),
  "class.pins": (of) => each(of, of.v("class.pinsEach")),
  "class.wax": ({ v }) => v("class.pupils").div(4).ceil(),
  "class.tacks": (of) => edges(of).mul(8),
  "class.low": (of) => hours(of, "high"),
  "class.high": (of) => hours(of, "low"),
  "class.clockLow": ({ v }) => v("class.low").mul("65/60"),
  "class.clockHigh": ({ v }) => v("class.high").mul("70/60"),
};
