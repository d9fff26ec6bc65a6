/**
 * The catalogue of worked-out values: every name, how it is printed, what it means, where its rule comes from.
 * A solver may only set a name that stands here; a chapter may only print one.
 */
import type { Style } from "./plan.ts";

export interface NameEntry {
  readonly about: string;
  readonly as: Style;
  readonly rule?: string;
}

const PRACTICE = "common practice, no source";
const WILSON = "Wilson's interval (1927), as in R. G. Newcombe, Statistics in Medicine 17 (1998), method 3";
const OURS = "this project's own modelling choice";

const entry = (as: Style, about: string, rule?: string): NameEntry =>
  rule === undefined ? { as, about } : { as, about, rule };

const AT = {
  front: "at centre front",
  left: "at the left side",
  right: "at the right side",
  back: "at centre back",
} as const;

type AtStations<First extends string> = Readonly<Record<`${First}.${keyof typeof AT}`, NameEntry>>;

/** One name a measured station. */
const forStations = <First extends string>(
  first: First,
  make: (at: string) => NameEntry,
): AtStations<First> =>
  Object.fromEntries(
    Object.entries(AT).map(([station, at]) => [`${first}.${station}`, make(at)]),
  ) as AtStations<First>;

/** What lining and interlining both have. */
const forBacking = <W extends "lining" | "interlining">(which: W) => {
  const names: Record<string, NameEntry> = {
    [`${which}.layers`]: entry("count", `layers of the ${which} in one wall of a pleat`, OURS),
    [`${which}.usable`]: entry("tape", `width of the ${which} inside its selvedges`),
    [`${which}.each`]: entry("tape", `width of one breadth that the ${which} has to cover`),
    [`${which}.perBreadth`]: entry("count", `pieces of the ${which} joined for one breadth`),
    [`${which}.cut`]: entry("tape", `cut length of the ${which}`),
    [`${which}.pieces`]: entry("count", `pieces of the ${which} to cut`),
    [`${which}.length`]: entry("tape", `length of its own cloth that the ${which} takes`),
    [`${which}.buy`]: entry("cloth", `cloth to buy for the ${which}`),
    [`${which}.area`]: entry("area", `area of all the pieces of the ${which}`),
    [`${which}.weighs`]: entry("weight", `weight of the ${which}`),
    [`stitches.${which}`]: entry(
      "whole",
      `stitches in the ${which}: seams at eight an inch, tacking at two`,
      OURS,
    ),
  };
  type Own =
    | "layers"
    | "usable"
    | "each"
    | "perBreadth"
    | "cut"
    | "pieces"
    | "length"
    | "buy"
    | "area"
    | "weighs";
  return names as Readonly<Record<`${W}.${Own}` | `stitches.${W}`, NameEntry>>;
};

export const NAMES = {
  "waist.planned": entry("tape", "finished waist seam as first planned, closed"),
  "waist.seam": entry("tape", "finished waist seam, closed: the line the pleats are set to"),
  "waist.quarter": entry("part", "a quarter of the waist seam"),
  "edge.slant": entry(
    "tape",
    "pointed edge from the point at centre front to where it meets the straight waist",
  ),
  "edge.gain": entry("tape", "what the point adds to the waist, both sides together"),
  "edge.length": entry("tape", "pointed edge of the bodice, closed"),
  "edge.alongTop": entry("tape", "where the slant of the point ends, along the cut top from centre front"),
  "turnDown.shoulder": entry("tape", "turn-down where the slant of the point ends"),
  "finished.level": entry("tape", "length at centre front from the straight waist, above the point"),
  "breadths.count": entry(
    "count",
    "breadths of cloth in the round, or lengths where the cloth runs along the body",
  ),
  "breadths.usable": entry("tape", "usable width of the cloth, inside the selvedges"),
  "breadths.whole": entry("count", "whole breadths, cut right across the cloth"),
  "breadths.pieces": entry("count", "pieces joined into the round"),
  "breadths.seams": entry("count", "seams in the round"),
  "breadths.finished": entry(
    "tape",
    "width of a whole breadth between its seams; along the body, what one length gives to the round",
  ),
  "breadths.allotted": entry("tape", "cloth allotted to a breadth: its cut length in whole repeats"),
  "breadths.longest": entry("tape", "longest finished length"),
  "breadths.cut": entry("tape", "cut length of every breadth, from hem to top"),
  "breadths.shortest": entry("tape", "shortest finished length"),
  "breadths.hemmed": entry("tape", "from the finished hem to the cut top, before any tuck is sewn"),
  "run.length": entry(
    "tape",
    "cut length of one of the lengths that run along the body, round the wearer",
    OURS,
  ),
  "run.start": entry(
    "tape",
    "from the outer edge of the cloth to the cut hem, where the cloth runs along the body",
  ),
  "run.room": entry(
    "tape",
    "width from there to inside the other selvedge: the most that hem, skirt and turn-down can take",
  ),
  "run.beside": entry("tape", "width of the strip left beside the lengths, its selvedge included"),
  "shade.joins": entry("count", "seams that join the light edge of one piece to the dark edge of the next"),
  "border.above": entry("tape", "lower edge of the border, above the finished hem"),
  "border.head": entry("tape", "upper edge of the border, above the finished hem"),
  "border.second": entry("tape", "where the other selvedge's border begins, above the finished hem"),
  "border.flounces": entry(
    "tape",
    "from the outer edge of the cloth to a bordered flounce strip's cut foot",
    OURS,
  ),
  "seam.fromEdge": entry("tape", "where the needle runs on a breadth seam, from the outer edge"),
  "repeat.most": entry("count", "most whole repeats that can stand between two seams"),
  "repeat.between": entry("count", "whole repeats between two seams of a breadth"),
  "repeat.lost": entry("count", "repeats of the pattern lost in each seam"),
  "repeat.roundFree": entry("tape", "round if the seams took no more than the seam allowance"),
  "seam.lost": entry("part", "what each seam takes of the round, so that the pattern meets"),
  "seam.left": entry("part", "of that, at the left edge of every breadth, inside the selvedge"),
  "seam.right": entry("part", "of that, at the right edge of every breadth, inside the selvedge"),
  "seam.fromLeft": entry("part", "where the needle runs at the left edge of a breadth, from the outer edge"),
  "seam.fromRight": entry(
    "part",
    "where the needle runs at the right edge of a breadth, from the outer edge",
  ),
  ...forBacking("lining"),
  ...forBacking("interlining"),
  "lining.foot": entry("tape", "what the lining's lower edge takes of its cut length"),
  "lining.finished": entry("tape", "width of a breadth of the lining between its seams"),
  "lining.breadths": entry("count", "breadths of the lining, the last of them narrower where need be"),
  "lining.last": entry("part", "width of its last breadth between its seams"),
  "cost.lining": entry("money", "the lining to buy at its price"),
  "cost.interlining": entry("money", "the interlining to buy at its price"),
  "skirt.round": entry("tape", "round at the top and at the hem"),
  "skirt.quarter": entry("part", "a quarter of the round"),
  "skirt.fullness": entry("ratio", "fullness: the round for one of waist seam"),
  "skirt.weight": entry("weight", "weight of the made garment's cloth"),
  "skirt.weightInAll": entry("weight", "weight of cloth and lining together"),
  "hem.allowance": entry("tape", "what the hem takes of the cut length"),
  "facing.depth": entry("tape", "cut depth of the hem facing"),
  "facing.strips": entry("count", "fewest facing strips that go round, cut across the cloth"),
  "facing.pieces": entry("count", "facing strips really cut, and joins in the ring of them", OURS),
  "facing.joined": entry("tape", "length of facing really cut, its joins included"),
  "facing.buy": entry(
    "cloth",
    "facing cloth to buy, reckoned as wide as the garment's own and as shrinking by as much",
    OURS,
  ),
  "facing.length": entry("tape", "length of facing to cut in the fewest strips, joins included"),
  "braid.length": entry("cloth", "braid for the hem edge", PRACTICE),
  "tucks.each": entry("tape", "cloth that one tuck takes, twice its depth"),
  "tucks.takeUp": entry("tape", "cloth that all the tucks take of the cut length"),
  "tucks.step": entry("tape", "from the seam of one tuck to the next, on the made garment", OURS),
  "tucks.lowest": entry("tape", "seam of the lowest tuck, above the finished hem", OURS),
  "tucks.top": entry("tape", "seam of the highest tuck, above the finished hem"),
  "tucks.left": entry("tape", "from the finished hem to the cut top once the tucks are sewn"),
  "tucks.crossing": entry("count", "tucks that are sewn across the opening"),
  "flounces.step": entry("tape", "from the heading of one flounce to the next", PRACTICE),
  "flounces.top": entry("tape", "heading of the highest flounce, above the finished hem"),
  "flounces.round": entry("tapeUp", "round of one flounce for the fullness wished"),
  "flounces.strips": entry("count", "strips joined for one flounce"),
  "flounces.pieces": entry("count", "flounce strips to cut"),
  "flounces.cut": entry("tape", "cut depth of a flounce strip"),
  "flounces.along": entry("tape", "what one flounce strip takes of the cloth in its depth"),
  "flounces.strip": entry(
    "tape",
    "length of a strip: on the cross inside the selvedges; along the cloth as cut",
  ),
  "flounces.block": entry("tape", "cloth for all the strips on the cross, with the corner at each end"),
  "flounces.each": entry("tape", "what one strip gives to the round, between its joins"),
  "flounces.ring": entry("tape", "round of one flounce as its whole strips make it"),
  "flounces.quarter": entry("tape", "a quarter of that round"),
  "flounces.drawn": entry(
    "tape",
    "what a quarter of a flounce is drawn up to: a quarter of the garment's round",
  ),
  "flounces.fullness": entry(
    "ratio",
    "fullness of a flounce as it comes: its round for one of the garment's",
  ),
  "flounces.thread": entry("cloth", "gathering thread for the flounces, a length to each quarter", PRACTICE),
  "hoop.width": entry("tape", "width of the hoop from side to side", OURS),
  "hoop.depth": entry("tape", "depth of the hoop from front to back", OURS),
  ...forStations("reach", (at) => entry("tape", `how far the hoop stands out beyond the waist ${at}`, OURS)),
  ...forStations("straight", (at) =>
    entry("tape", `waist seam to floor ${at}, straight to the lowest steel: an estimate`, OURS),
  ),
  ...forStations("domed", (at) =>
    entry("tape", `waist seam to floor ${at}, over a domed hoop: an estimate, and what is cut for`, OURS),
  ),
  "finished.front": entry("tape", "finished length at centre front"),
  "finished.left": entry("tape", "finished length at the left side"),
  "finished.right": entry("tape", "finished length at the right side"),
  "finished.back": entry("tape", "finished length at centre back"),
  "balance.least": entry("tape", "least turn-down at the top"),
  "turnDown.front": entry("tape", "turn-down at centre front"),
  "turnDown.left": entry("tape", "turn-down at the left side"),
  "turnDown.right": entry("tape", "turn-down at the right side"),
  "turnDown.back": entry("tape", "turn-down at centre back"),
  "turnDown.opening": entry("tape", "turn-down at the opening"),
  "turnDown.pocket": entry("tape", "turn-down at the pocket"),
  "pocket.fromFront": entry("tape", "the pocket's seam, along the top from centre front by the nearer way"),
  "pocket.from": entry("tape", "head of the pocket's slit, from the cut top", PRACTICE),
  "pocket.to": entry("tape", "foot of the pocket's slit, from the cut top"),
  "pocket.foot": entry("tape", "foot of the pocket's slit, above the finished hem"),
  "pocket.bagTop": entry("tape", "cut top of the pocket's bag, from the cut top of the breadth", OURS),
  "pocket.bagLength": entry("tape", "cut length of a pocket piece"),
  "pocket.bagWidth": entry("tape", "cut width of a pocket piece"),
  "pocket.facingLength": entry("tape", "cut length of a pocket facing", OURS),
  "pocket.facingWidth": entry("tape", "cut width of a pocket facing"),
  "pocket.strapRun": entry("tape", "finished strap: from the top of the pocket's bag up to the waist seam"),
  "pocket.strap": entry("tape", "tape for the strap that holds the pocket up", OURS),
  "placket.foot": entry("tape", "foot of the opening, above the finished hem"),
  "placket.unsewn": entry("tape", "left unsewn from the cut top for the opening"),
  "placket.passes": entry("tape", "what the opened waist goes over: waist seam and twice the opening"),
  "placket.strip": entry("tape", "length of the placket strip, both edges in one, up to the cut top"),
  "gauging.sections": entry("count", "sections, each drawn up on its own threads"),
  "gauging.waist": entry("tape", "waist that is gauged"),
  "gauging.cloth": entry("tape", "cloth that is gauged"),
  "gauging.wall": entry("thick", "everything the needle passes through once: one wall of a pleat"),
  "gauging.packed": entry("fine", "packed spacing: nothing closer fits"),
  "gauging.easy": entry("fine", "easy spacing: what sews and lies well", OURS),
  "gauging.lastRow": entry("tape", "the last row, below the fold"),
  "gauging.pleats": entry("count", "gauged pleats in the whole garment"),
  "gauging.perInch": entry("perLength", "pleats along the gauged waist seam"),
  "gauging.pitch": entry("fine", "mean pitch: the cloth in one pleat"),
  "gauging.bite": entry("fine", "mean bite: half the pitch"),
  "gauging.depth": entry("tape", "how deep a pleat stands: half its pitch"),
  "gauging.bites": entry("count", "bites of the needle, all rows"),
  "gauging.marks": entry("count", "marks of one row that the needle enters: two a pleat"),
  "gauging.threadEach": entry(
    "tape",
    "one gauging thread to cut, for one row of the section nearest centre back; doubled if doubled thread is used",
  ),
  "gauging.threads": entry("count", "gauging threads to cut: one a section and row"),
  "gauging.thread": entry("cloth", "gauging thread in all"),
  "gauging.largest": entry("part", "largest waist seam that this gauging is to serve"),
  "gauging.longest": entry("part", "waist of the longest gauged section"),
  "gauging.tail": entry(
    "tapeUp",
    "tail that each gauging thread keeps, so that its section can be let out to the largest waist asked for",
    OURS,
  ),
  "backShare.even": entry("share", "share of the gauged waist that lies behind the sides"),
  "backShare.cloth": entry("tape", "gauged cloth of one half"),
  "backShare.waist": entry("tape", "gauged waist of one half, as planned"),
  "backShare.behind": entry("tape", "gauged cloth of one half behind the side"),
  "backShare.before": entry("tape", "gauged cloth of one half before the side"),
  "gauging.pleatsFront": entry("count", "gauged pleats before the sides, both halves together"),
  "gauging.pleatsBack": entry("count", "gauged pleats behind the sides, both halves together"),
  "gauging.waistFront": entry("part", "gauged waist before the sides, both halves together"),
  "gauging.waistBack": entry("part", "gauged waist behind the sides, both halves together"),
  "gauging.pitchFront": entry("fine", "mean pitch before the sides: the cloth in one pleat"),
  "gauging.pitchBack": entry("fine", "mean pitch behind the sides: the cloth in one pleat"),
  "gauging.perInchFront": entry("perLength", "pleats along the gauged waist seam before the sides"),
  "gauging.perInchBack": entry("perLength", "pleats along the gauged waist seam behind the sides"),
  "plain.layers": entry("count", "layers of cloth of the thickest flat or pleated part, as it is laid"),
  "plain.cloths": entry(
    "count",
    "cloths of that part in its seam: twice the layers where the top is turned down",
  ),
  "plain.thick": entry("thick", "thickness of those cloths together"),
  "plain.waist": entry("tape", "waist that is flat or laid in pleats"),
  "plain.stitches": entry(
    "count",
    "stitches that sew the flat and pleated parts to the edge, eight an inch",
    PRACTICE,
  ),
  "plain.above": entry("tape", "what stands above the balance line where the top is set in one layer"),
  "section.cloth": entry("part", "cloth of the gauged section nearest centre back"),
  "section.planned": entry("part", "waist of that section as planned"),
  "section.waist": entry("part", "waist of that section, the edge as made where it is made"),
  "section.least": entry("count", "fewest pleats that section can have"),
  "section.most": entry("count", "most pleats that section can have"),
  "section.wanted": entry("count", "pleats aimed at in that section"),
  "section.lines": entry("count", "lines of the pattern in one pleat of that section"),
  "section.pitch": entry("tape", "cloth in one pleat of that section, on the lines"),
  "section.pleats": entry("count", "pleats of that section"),
  "pleating.count": entry("count", "pleats laid, both halves together"),
  "trial.pitch": entry("fine", "cloth in one pleat of the sewn trial"),
  "trial.reaches": entry("part", "what the sewn trial's cloth has to close to"),
  "trial.cloth": entry("tape", "cloth of the sewn trial"),
  "trial.pleats": entry("count", "pleats of the sewn trial"),
  "trial.target": entry("tapeDown", "width the trial must reach when drawn tight"),
  "trial.pass": entry(
    "tape",
    "width at which the trial passes with ease to spare: nine tenths of the target",
  ),
  "whip.pleats": entry("count", "pleats that are whipped"),
  "whip.doubled": entry("count", "doubled whip stitches, every fourth", PRACTICE),
  "whip.stitches": entry("count", "whip stitches in all"),
  "whip.needleful": entry("tape", "one needleful of thread for whipping and setting", PRACTICE),
  "whip.needlefuls": entry(
    "count",
    "needlefuls for the whipping, 5/8 in to a stitch and 6 in lost in each",
    PRACTICE,
  ),
  "whip.thread": entry("cloth", "thread for the whipping", PRACTICE),
  "setting.waist": entry("part", "waist that is set flat or in pleats"),
  "setting.stitches": entry("whole", "stitches there: eight an inch, and two at every pleat", OURS),
  "setting.needlefuls": entry("count", "needlefuls for them, 5/8 in to a stitch and 6 in lost in each", OURS),
  "setting.thread": entry("cloth", "thread for setting the flat and pleated parts", OURS),
  "thread.seams": entry(
    "cloth",
    "thread for the breadth seams, half as long again as they are: an estimate",
    PRACTICE,
  ),
  "thread.hem": entry(
    "cloth",
    "thread for the hem, half as long again as what is sewn: an estimate",
    PRACTICE,
  ),
  "thread.edge": entry(
    "cloth",
    "thread for placket and waist edge, half as long again as what is sewn: an estimate",
    PRACTICE,
  ),
  "thread.trims": entry(
    "cloth",
    "thread for tucks, flounces and pocket, by their stitches: an estimate",
    OURS,
  ),
  "thread.sewing": entry(
    "cloth",
    "sewing thread in all, gauging and whipping not counted: an estimate",
    PRACTICE,
  ),
  "thread.tacking": entry("cloth", "tacking thread in all colours together: an estimate", PRACTICE),
  "opening.fromFront": entry("part", "the opening on the waist seam, from centre front by the nearer way"),
  "opening.planned": entry(
    "part",
    "the opening on the waist seam as planned, from centre front by the nearer way",
  ),
  "band.length": entry("tape", "cut length of the waistband, or of the part band"),
  "band.depth": entry("tape", "cut depth of the waistband, or of the part band"),
  "piping.run": entry("part", "the edge that the piping runs along, finished"),
  "piping.length": entry("tape", "length of bias strip for the piping, its end turnings included"),
  "piping.width": entry("tape", "cut width of the bias strip that covers the cord"),
  "piping.alongSelvedge": entry("tape", "what that width takes along the selvedge, on the true bias"),
  "piping.square": entry("tape", "side of the square that the strips are cut from", OURS),
  "piping.strips": entry("count", "bias strips to cut and join for the piping"),
  "piping.most": entry("tape", "most strip that the square's area can give: more is never claimed"),
  "hooks.band": entry("count", "hooks at the end of the band"),
  "hooks.placket": entry("count", "hooks down the placket"),
  "hooks.count": entry("count", "hooks and eyes: band and placket"),
  "hooks.sets": entry("count", "further waists that the band hooks to"),
  "hooks.eyes": entry("count", "eyes in all, those of the further sets with them", PRACTICE),
  "hooks.bandFirst": entry(
    "part",
    "from the long edge of the finished band to its first hook, half of what lies between two",
    OURS,
  ),
  "hooks.placketFirst": entry("part", "from the waist seam down to the one hook of the placket"),
  "hooks.placketApart": entry("part", "from one hook of the placket to the next", OURS),
  "hooks.edge": entry("count", "hooks that close the bodice edge over a part band", PRACTICE),
  "pins.count": entry(
    "count",
    "pins to count out: four, eight a quarter or section, one at each of the eight places, two a pleat laid",
    PRACTICE,
  ),
  "needles.sharps": entry(
    "count",
    "sharps: one a row of gauging or for the seams, and one to spare",
    PRACTICE,
  ),
  "needles.count": entry("count", "needles to count out: the sharps, and two short betweens", PRACTICE),
  "cloth.length": entry("tape", "length of cloth that the layout takes"),
  "cloth.buy": entry("cloth", "cloth to buy"),
  "cloth.waste": entry("share", "share of the cloth that no piece takes"),
  "gauging.waistPacked": entry("tapeUp", "least waist that this gauging can be drawn to at all"),
  "gauging.waistLeast": entry("tapeUp", "least waist this gauging can serve without sewing its rows anew"),
  "gauging.waistMost": entry(
    "tapeDown",
    "most waist this gauging can serve: past it the pleats gape",
    PRACTICE,
  ),
  "pieces.area": entry("area", "area of all the pieces laid on the cloth"),
  "redo.bites": entry(
    "count",
    "bites to run again when one thread breaks, in the section nearest centre back",
  ),
  "redo.low": entry("minutes", "time for that, the quicker hand", OURS),
  "redo.high": entry("minutes", "time for that, the slower hand", OURS),
  "redo.roundLess": entry("tape", "the round with half a breadth taken out"),
  "redo.roundRepeat": entry("tape", "the round with one repeat of the pattern lost in a seam"),
  "redo.seams": entry("whole", "stitches in the two seams of one breadth"),
  "redo.seamsLow": entry("minutes", "time to sew two breadth seams again, the quicker hand"),
  "redo.seamsHigh": entry("minutes", "time to sew two breadth seams again, the slower hand"),
  "redo.staySaves": entry(
    "tape",
    "width that leaving out the stay saves in the section nearest centre back, drawn tight",
  ),
  "redo.moved": entry(
    "count",
    "pleats to let pass behind each side mark, so that five in a hundred more stand behind",
    OURS,
  ),
  "stitches.seams": entry("whole", "running stitches in the seams, eight an inch", PRACTICE),
  "stitches.hem": entry("whole", "stitches in the hem, twice round, six an inch", PRACTICE),
  "stitches.tucks": entry("whole", "running stitches in the tucks, eight an inch", OURS),
  "stitches.flounces": entry(
    "whole",
    "stitches in the flounces: joined at eight an inch, hemmed, gathered and sewn on at six",
    OURS,
  ),
  "stitches.pocket": entry("whole", "stitches in the pocket, eight an inch", OURS),
  "evidence.items": entry(
    "count",
    "dated originals counted: near the year, and of the fibre where it is given",
  ),
  "evidence.gauged": entry("count", "of these, gauged all round or behind a flat front"),
  "evidence.share": entry("shareWhole", "share of the counted originals that is gauged"),
  "evidence.spread": entry("shareFine", "half the width of the interval before it is drawn in", WILSON),
  "evidence.low": entry("shareWhole", "lower end of the 95 % interval for that share", WILSON),
  "evidence.high": entry("shareWhole", "upper end of the 95 % interval for that share", WILSON),
  "work.low": entry("time", "hand work, the quicker figure", OURS),
  "work.high": entry("time", "hand work, the slower figure", OURS),
  "work.clockLow": entry("time", "the same by the clock, five minutes' rest to every hour of work"),
  "work.clockHigh": entry("time", "the same by the clock, ten minutes' rest to every hour of work"),
  "cost.cloth": entry("money", "the cloth to buy at its price"),
  "cost.notions": entry("money", "notions together, as priced"),
  "cost.workLow": entry("money", "hand work at its price an hour, the quicker figure"),
  "cost.workHigh": entry("money", "hand work at its price an hour, the slower figure"),
  "cost.low": entry("money", "everything that the recipe prices, the quicker figure"),
  "cost.high": entry("money", "everything that the recipe prices, the slower figure"),
} satisfies Record<string, NameEntry>;

export type Name = keyof typeof NAMES;
