/** The rules of value-laws.ts for what is sewn: trimmings, pocket, gauging, bands, thread, time. */
import type Fraction from "fraction.js";
import {
  type Asked,
  downTo,
  F,
  least,
  lostInSeam,
  most,
  nearest,
  type Rule,
  roundRepeat,
  sum,
  topOf,
  upTo,
} from "./value-asked.ts";

type Gauged = Extract<Asked["json"]["sections"][number], { bites: unknown }>;
const gaugedOf = ({ json }: Asked): Gauged[] =>
  json.sections.flatMap((section) => ("bites" in section ? [section] : []));
const laidOf = ({ json }: Asked) => json.sections.filter(({ set }) => set !== "gauged");

/** Gauged sections before the sides or behind them, by the middle of each on the waist. */
function parted(of: Asked, behind: boolean): Gauged[] {
  let from = F(0);
  const waist = of.v("waist.seam");
  return of.json.sections.flatMap((section) => {
    const middle = from.add(F(section.waist).div(2)).div(waist);
    from = from.add(section.waist);
    const back = middle.compare("1/4") > 0 && middle.compare("3/4") < 0;
    return "bites" in section && back === behind ? [section] : [];
  });
}
const pleats = (sections: readonly Gauged[]): Fraction => F(sections.reduce((n, s) => n + s.pleats, 0));
const waists = (sections: readonly { waist: string }[]): Fraction => sum(sections.map((s) => F(s.waist)));
const cloths = (sections: readonly { cloth: string }[]): Fraction => sum(sections.map((s) => F(s.cloth)));
/** Two allowances more. */
const cut = ({ v }: Asked, finished: Fraction): Fraction => finished.add(v("skirt.seam").mul(2));
/** The root of 2 times a side, up to a mark: by trying marks. */
function slantUp(side: Fraction, step: Fraction): Fraction {
  const target = side.mul(side).mul(2);
  let marks = F(Math.floor((side.valueOf() * Math.SQRT2) / step.valueOf()) - 1);
  while (marks.mul(step).mul(marks.mul(step)).compare(target) < 0) marks = marks.add(1);
  return marks.mul(step);
}
const onCross = ({ plan }: Asked): boolean => plan.recipe.skirt.flounces?.cut === "cross";
const throwsBack = ({ has }: Asked): boolean => has("fullness.backShare");
/** Sewn once, half as much again for fastening and for what is left over. */
const sewn = (length: Fraction): Fraction => length.mul("3/2");
const rests = ({ v, has }: Asked, ...limits: readonly Fraction[]): Fraction =>
  most(least(...limits), has("section.least") ? v("section.least") : F(1));
const byCloth = ({ v }: Asked): Fraction => v("section.cloth").div(v("fullness.finestBite").mul(2)).floor();

export const SEWING_RULES: Readonly<Record<string, Rule>> = {
  "tucks.each": ({ v }) => v("skirt.tucks.depth").mul(2),
  "tucks.takeUp": ({ v }) => v("skirt.tucks.count").mul(v("skirt.tucks.depth")).mul(2),
  "tucks.step": ({ v }) => v("skirt.tucks.depth").mul(2),
  "tucks.lowest": ({ v, or0 }) =>
    most(v("skirt.hem.depth"), or0("flounces.top"), or0("border.head")).add(v("skirt.tucks.depth").mul(2)),
  "tucks.top": ({ json }) => F(json.tucks.at(-1)?.seam ?? "0"),
  "tucks.left": topOf,
  "flounces.step": ({ v }) => v("skirt.flounces.depth").sub(v("skirt.flounces.lap")),
  "flounces.top": ({ json }) => F(json.flounces.at(-1)?.heading ?? "0"),
  "flounces.round": ({ v }) => v("skirt.flounces.fullness").mul(v("skirt.round")),
  "flounces.cut": (of) => cut(of, of.v("skirt.flounces.depth")),
  "flounces.strip": ({ v }) => slantUp(v("breadths.usable"), v("tape")),
  "flounces.block": ({ v }) => v("cloth.width").add(v("flounces.pieces").mul(v("flounces.along"))),
  "flounces.each": (of) => {
    const straight = of.v("breadths.usable").sub(lostInSeam(of));
    return onCross(of) ? slantUp(straight, of.v("tape")) : straight;
  },
  "flounces.ring": ({ v }) => v("flounces.strips").mul(v("flounces.each")),
  "flounces.spare": ({ v }) =>
    v("flounces.strips")
      .mul(v("flounces.each"))
      .sub(upTo(v("skirt.flounces.fullness").mul(v("skirt.round")), v("tape"))),
  "flounces.quarter": ({ v }) => v("flounces.strips").mul(v("flounces.each")).div(4),
  "flounces.drawn": ({ v }) => v("skirt.round").div(4),
  "flounces.fullness": ({ v }) => v("flounces.strips").mul(v("flounces.each")).div(v("skirt.round")),
  "flounces.thread": ({ v }) =>
    v("flounces.ring").div(4).add(v("fullness.threadEnds")).mul(4).mul(v("skirt.flounces.count")),
  "stitches.tucks": ({ v }) => v("skirt.tucks.count").mul(v("skirt.round")).mul(8),
  "stitches.flounces": ({ v }) =>
    sum([
      v("flounces.pieces").mul(v("flounces.cut")).mul(8),
      v("skirt.flounces.count").mul(v("flounces.ring")).mul(2).mul(6),
      v("skirt.flounces.count").mul(v("skirt.round")).mul(6),
    ]),
  "pocket.foot": (of) => topOf(of).sub(of.v("pocket.from")).sub(of.v("skirt.pocketSlit")),
  "pocket.bagTop": ({ v }) => v("pocket.from").sub(v("skirt.pocketFacing").div(2)),
  "pocket.bagLength": (of) => cut(of, of.v("skirt.pocketLength")),
  "pocket.bagWidth": (of) => cut(of, of.v("skirt.pocketWidth")),
  // Half of the facing's width stands over each end of the slit.
  "pocket.facingLength": ({ v }) => v("skirt.pocketSlit").add(v("skirt.pocketFacing")),
  "pocket.facingWidth": (of) => cut(of, of.v("skirt.pocketFacing")),
  // From the seam at the top of the bag to the waist seam, where the top is turned down.
  "pocket.strapRun": ({ v }) => v("pocket.bagTop").add(v("skirt.seam")).sub(v("turnDown.pocket")),
  "pocket.strap": (of) => cut(of, of.v("pocket.strapRun")),
  "stitches.pocket": ({ v }) =>
    sum([v("pocket.bagLength"), v("pocket.facingLength")])
      .mul(4)
      .mul(8),
  "placket.foot": (of) => topOf(of).sub(of.v("turnDown.opening")).sub(of.v("skirt.placket")).sub("1/4"),
  "placket.strip": ({ v }) => v("placket.unsewn").add(1).mul(2),

  "gauging.lastRow": ({ json }) => F(json.rows.at(-1)?.below ?? "0"),
  "gauging.sections": (of) => F(gaugedOf(of).length),
  "gauging.waist": (of) => waists(gaugedOf(of)),
  "gauging.cloth": (of) => cloths(gaugedOf(of)),
  "gauging.perInch": (of) => pleats(gaugedOf(of)).div(waists(gaugedOf(of))),
  "gauging.pitch": (of) => cloths(gaugedOf(of)).div(pleats(gaugedOf(of))),
  "gauging.bite": (of) => cloths(gaugedOf(of)).div(pleats(gaugedOf(of)).mul(2)),
  "gauging.depth": (of) => cloths(gaugedOf(of)).div(pleats(gaugedOf(of)).mul(2)),
  "gauging.marks": (of) => pleats(gaugedOf(of)).mul(2),
  "gauging.bites": (of) => pleats(gaugedOf(of)).mul(2).mul(of.v("fullness.rows")),
  "gauging.threadEach": ({ v, plan }) =>
    v(plan.recipe.fullness.thread === "drawn-along" ? "section.waist" : "section.cloth")
      .add(v("fullness.threadEnds"))
      .mul(v("fullness.strands")),
  "gauging.easy": ({ v, or0, plan }) => {
    const { fullness, lining, interlining } = plan.recipe;
    if (fullness.trial) return v("fullness.trial.closesTo").div(v("fullness.trial.pleats")).mul("1.1");
    // A round back takes three times its two layers on both sides of the needle; what lies flat takes its own thickness.
    const behind = (to: string | undefined): number => (to === "turned" ? 12 : to === "fold" ? 2 : 0);
    const folded = sum([
      v("cloth.thickness").mul(12),
      or0("lining.thickness").mul(behind(lining?.to)),
      or0("interlining.thickness").mul(behind(interlining?.to)),
      fullness.stay ? v("fullness.stay.thickness").mul(2) : F(0),
    ]);
    return fullness.pleatsPerInch ? folded : most(folded, v("fullness.closestEasy"));
  },
  "gauging.waistPacked": (of) => (throwsBack(of) ? behindTo(of, "packed") : drawnTo(of, "packed")),
  "gauging.waistLeast": (of) => (throwsBack(of) ? behindTo(of, "easy") : drawnTo(of, "easy")),
  "gauging.waistMost": (of) => {
    const kept = of.v("waist.seam").sub(waists(gaugedOf(of)));
    const front = parted(of, false);
    const cloth = throwsBack(of)
      ? cloths(front)
          .div(waists(front))
          .mul(waists(gaugedOf(of)))
      : cloths(gaugedOf(of));
    return cloth.div(3).add(kept);
  },
  "gauging.largest": ({ v, plan }) =>
    most(
      v("waist.seam"),
      ...(plan.recipe.attach.otherWaists ?? []).map((_, i) => v(`attach.otherWaists.${i}.waist`)),
    ),
  "gauging.longest": (of) => most(...gaugedOf(of).map((section) => F(section.waist))),
  "gauging.tail": (of) => {
    const grows = of
      .v("gauging.largest")
      .sub(of.v("waist.seam"))
      .div(waists(gaugedOf(of)));
    return most(...gaugedOf(of).map((section) => F(section.waist)))
      .mul(grows)
      .add(1);
  },
  "backShare.cloth": (of) => cloths(gaugedOf(of)).div(2),
  "backShare.waist": (of) => (of.has("attach.made") ? undefined : waists(gaugedOf(of)).div(2)),
  "backShare.even": (of) =>
    of.has("attach.made") ? undefined : waists(parted(of, true)).div(waists(gaugedOf(of))),
  "backShare.behind": (of) => cloths(parted(of, true)).div(2),
  "backShare.before": (of) => cloths(parted(of, false)).div(2),
  "gauging.pleatsFront": (of) => pleats(parted(of, false)),
  "gauging.pleatsBack": (of) => pleats(parted(of, true)),
  "gauging.waistFront": (of) => waists(parted(of, false)),
  "gauging.waistBack": (of) => waists(parted(of, true)),
  "gauging.pitchFront": (of) => cloths(parted(of, false)).div(pleats(parted(of, false))),
  "gauging.pitchBack": (of) => cloths(parted(of, true)).div(pleats(parted(of, true))),
  "gauging.perInchFront": (of) => pleats(parted(of, false)).div(waists(parted(of, false))),
  "gauging.perInchBack": (of) => pleats(parted(of, true)).div(waists(parted(of, true))),
  "section.least": ({ v }) => v("section.cloth").div(v("fullness.deepestPitch")).ceil(),
  "section.most": (of) => {
    const waist = of.v(of.plan.recipe.fullness.trial ? "section.waist" : "section.planned");
    return least(waist.div(of.v("gauging.packed")).floor(), byCloth(of));
  },
  "section.wanted": (of) => {
    const { v, plan } = of;
    if (plan.recipe.fullness.trial || throwsBack(of)) return undefined;
    if (!plan.recipe.fullness.pleatsPerInch)
      return rests(of, v("section.planned").div(v("gauging.easy")).floor(), byCloth(of));
    const wished = nearest(v("fullness.pleatsPerInch").mul(v("section.planned")));
    return least(most(wished, v("section.least")), v("section.most"));
  },
  "section.pitch": (of) => of.v("section.lines").mul(roundRepeat(of)),
  "trial.pitch": ({ v }) => v("fullness.trial.cloth").div(v("fullness.trial.pleats")),
  "trial.reaches": ({ v }) => v("fullness.trial.cloth").div(v("section.cloth")).mul(v("section.waist")),
  "trial.cloth": ({ v, has }) =>
    has("section.lines")
      ? v("trial.pleats").mul(v("section.pitch"))
      : most(v("section.cloth").div(2), v("fullness.leastTrial")),
  "trial.pleats": ({ v, has }) =>
    has("section.lines")
      ? undefined
      : nearest(v("section.pleats").mul(v("trial.cloth")).div(v("section.cloth")).mul(2)).div(2),
  "trial.target": ({ v }) => v("trial.cloth").div(v("section.cloth")).mul(v("section.waist")),
  "trial.pass": ({ v }) => downTo(v("trial.target").mul("0.9"), v("tape")),

  "plain.layers": ({ plan }) =>
    F(plan.sections.reduce((n, s) => Math.max(n, s.set === "gauged" ? 0 : "layers" in s ? s.layers : 1), 0)),
  "plain.waist": (of) => waists(laidOf(of)),
  "plain.stitches": (of) => waists(laidOf(of)).mul(8).ceil(),
  "plain.above": ({ v }) => v("attach.band.turning"),
  "plain.thick": ({ v, or0, plan }) => {
    const { lining, interlining } = plan.recipe;
    const whip = plan.flatParts === "whip";
    // Turned down everything counts as often as it lies there; trimmed to one layer, what is turned down once.
    const times = (to: string | undefined): number =>
      whip ? (to === "turned" ? 2 : to === "fold" ? 1 : 0) : to === "turned" ? 1 : 0;
    return sum([
      v("cloth.thickness").mul(whip ? 2 : 1),
      or0("lining.thickness").mul(times(lining?.to)),
      or0("interlining.thickness").mul(times(interlining?.to)),
    ]).mul(v("plain.layers"));
  },
  "pleating.count": ({ plan }) =>
    sum(plan.sections.flatMap((s) => ("faces" in s ? [F(s.count.value.toFraction())] : []))),
  "band.depth": ({ v, plan }) =>
    v("attach.band.depth")
      .mul(plan.recipe.attach.band.from === "one-piece" ? 2 : 1)
      .add(v("attach.band.turning").mul(2)),
  "piping.most": ({ v }) => v("piping.square").mul(v("piping.square")).div(v("piping.width")),
  "hooks.band": ({ v }) => most(F(2), nearest(v("attach.band.depth").div(v("attach.hookSpacing"))).add(1)),
  "hooks.placket": ({ v, plan }) =>
    plan.recipe.attach.placketHooks === "one"
      ? F(1)
      : nearest(v("skirt.placket").div(v("attach.hookSpacing"))).add(1),
  "hooks.sets": ({ json }) => F(json.hookSets.length),
  "hooks.eyes": ({ v, json }) => v("hooks.count").add(v("hooks.band").mul(json.hookSets.length)),

  "thread.seams": ({ v }) => sewn(v("breadths.pieces").mul(v("breadths.cut"))),
  "thread.hem": ({ v, plan }) => {
    const { hem, braid } = plan.recipe.skirt;
    return sewn(v("skirt.round").mul((hem.kind === "faced" ? 2 : 1) + (braid ? 2 : 0)));
  },
  "thread.edge": ({ v }) => sewn(v("placket.strip").mul(2).add(v("waist.seam").mul(4))),
  "thread.trims": ({ or0 }) =>
    sewn(sum([or0("stitches.tucks").div(8), or0("stitches.pocket").div(8), or0("stitches.flounces").div(6)])),
  "thread.tacking": ({ v }) => v("skirt.round").add(v("waist.seam")).mul(2).add(48).mul("1.25"),
  "needles.sharps": (of) => (gaugedOf(of).length > 0 ? of.v("fullness.rows").add(1) : F(2)),
  "stitches.seams": ({ v }) => v("breadths.pieces").mul(v("breadths.cut")).mul(8),
  "stitches.hem": ({ v }) => v("skirt.round").mul(2).mul(6),
  "redo.roundRepeat": (of) => of.v("skirt.round").sub(roundRepeat(of)),
  // Two seams from hem to top, or the one there is.
  "redo.seams": ({ v }) => least(F(2), v("breadths.pieces")).mul(v("breadths.cut")).mul(8),
  "redo.seamsLow": ({ v }) => v("redo.seams").div(v("rate.running.high")),
  "redo.seamsHigh": ({ v }) => v("redo.seams").div(v("rate.running.low")),
  "redo.bites": ({ v }) => v("section.pleats").mul(2),
  "redo.low": ({ v }) => v("redo.bites").div(v("rate.gauging.high")),
  "redo.high": ({ v }) => v("redo.bites").div(v("rate.gauging.low")),
  "redo.staySaves": ({ v }) => v("section.pleats").mul(v("fullness.stay.thickness")).mul(2),
  "work.clockLow": ({ v }) => v("work.low").mul("65/60"),
  "work.clockHigh": ({ v }) => v("work.high").mul("70/60"),
};

/** All pleats at a spacing, and what is not gauged. */
function drawnTo(of: Asked, spacing: "packed" | "easy"): Fraction {
  const kept = of.v("waist.seam").sub(waists(gaugedOf(of)));
  return pleats(gaugedOf(of))
    .mul(of.v(`gauging.${spacing}`))
    .add(kept);
}

/** The pleats behind at a spacing; the part before grows and shrinks with them. */
function behindTo(of: Asked, spacing: "packed" | "easy"): Fraction {
  const back = parted(of, true);
  const grows = pleats(back)
    .mul(of.v(`gauging.${spacing}`))
    .div(waists(back));
  const kept = of.v("waist.seam").sub(waists(gaugedOf(of)));
  return waists(gaugedOf(of)).mul(grows).add(kept);
}
