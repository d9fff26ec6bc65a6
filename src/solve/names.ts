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
const OURS = "this project's own modelling choice";

const entry = (as: Style, about: string, rule?: string): NameEntry =>
  rule === undefined ? { as, about } : { as, about, rule };

export const NAMES = {
  "waist.planned": entry("tape", "finished waist seam as first planned, closed"),
  "waist.seam": entry("tape", "finished waist seam, closed: the line the skirt is set to"),
  "waist.quarter": entry("part", "a quarter of the waist seam"),
  "breadths.count": entry("count", "breadths of cloth in the skirt"),
  "breadths.usable": entry("tape", "usable width of a breadth, inside the selvedges"),
  "breadths.whole": entry("count", "whole breadths, cut right across the cloth"),
  "breadths.pieces": entry("count", "pieces joined into the round"),
  "breadths.seams": entry("count", "seams in the round"),
  "breadths.finished": entry("tape", "width of a whole breadth between its seams"),
  "breadths.allotted": entry("tape", "cloth allotted to a breadth: its cut length in whole repeats"),
  "breadths.longest": entry("tape", "longest finished length"),
  "breadths.cut": entry("tape", "cut length of every breadth"),
  "seam.fromEdge": entry("tape", "where the needle runs on a breadth seam, from the outer edge"),
  "skirt.round": entry("tape", "round of the skirt at the top and at the hem"),
  "skirt.quarter": entry("part", "a quarter of the round"),
  "skirt.fullness": entry("ratio", "fullness: the round for one of waist seam"),
  "skirt.weight": entry("weight", "weight of the made skirt's cloth"),
  "hem.allowance": entry("tape", "what the hem takes of the cut length"),
  "facing.depth": entry("tape", "cut depth of the hem facing"),
  "facing.strips": entry("count", "fewest facing strips that go round, cut across the cloth"),
  "facing.pieces": entry("count", "facing strips really cut, and joins in the ring of them", OURS),
  "facing.joined": entry("tape", "length of facing really cut, its joins included"),
  "facing.length": entry("tape", "length of facing to cut in the fewest strips, joins included"),
  "braid.length": entry("cloth", "braid for the hem edge", PRACTICE),
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
  "placket.unsewn": entry("tape", "left unsewn from the cut top for the opening"),
  "placket.strip": entry("tape", "length of the placket strip, both edges in one"),
  "gauging.sections": entry("count", "sections, each drawn up on its own threads"),
  "gauging.waist": entry("tape", "waist that is gauged"),
  "gauging.cloth": entry("tape", "cloth that is gauged"),
  "gauging.wall": entry("thick", "everything the needle passes through once: one wall of a pleat"),
  "gauging.packed": entry("fine", "packed spacing: nothing closer fits"),
  "gauging.easy": entry("fine", "easy spacing: what sews and lies well", OURS),
  "gauging.lastRow": entry("tape", "the last row, below the fold"),
  "gauging.pleats": entry("count", "pleats in the whole skirt"),
  "gauging.perInch": entry("perLength", "pleats in an inch of waist seam"),
  "gauging.pitch": entry("fine", "mean pitch: the cloth in one pleat"),
  "gauging.bite": entry("fine", "mean bite: half the pitch"),
  "gauging.depth": entry("tape", "how deep a pleat stands: half its pitch"),
  "gauging.bites": entry("count", "bites of the needle, all rows"),
  "gauging.marks": entry("count", "marks of one row that this skirt's needle enters: two a pleat"),
  "gauging.threadEach": entry(
    "tape",
    "one gauging thread to cut, for one row of the section nearest centre back; doubled if doubled thread is used",
  ),
  "gauging.threads": entry("count", "gauging threads to cut: one a section and row"),
  "gauging.thread": entry("cloth", "gauging thread in all"),
  "section.cloth": entry("part", "cloth of the gauged section nearest centre back"),
  "section.planned": entry("part", "waist of that section as planned"),
  "section.waist": entry("part", "waist of that section, the edge as made where it is made"),
  "section.least": entry("count", "fewest pleats that section can have"),
  "section.most": entry("count", "most pleats that section can have"),
  "section.wanted": entry("count", "pleats aimed at in that section"),
  "section.lines": entry("count", "lines of the pattern in one pleat of that section"),
  "section.pitch": entry("tape", "cloth in one pleat of that section, on the lines"),
  "section.pleats": entry("count", "pleats of that section"),
  "trial.pitch": entry("fine", "cloth in one pleat of the sewn trial"),
  "trial.reaches": entry("part", "what the sewn trial's cloth has to close to"),
  "trial.cloth": entry("tape", "cloth of the sewn trial"),
  "trial.pleats": entry("count", "pleats of the sewn trial"),
  "trial.target": entry("tape", "width the trial must reach when drawn tight"),
  "trial.pass": entry(
    "tape",
    "width at which the trial passes with ease to spare: nine tenths of the target",
  ),
  "whip.pleats": entry("count", "pleats that are whipped"),
  "whip.doubled": entry("count", "doubled whip stitches, every fourth", PRACTICE),
  "whip.stitches": entry("count", "whip stitches in all"),
  "opening.fromFront": entry("part", "the opening on the waist seam, from centre front by the nearer way"),
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
  "hooks.count": entry("count", "hooks and eyes of the skirt: band and placket"),
  "hooks.edge": entry("count", "hooks that close the bodice edge over a part band", PRACTICE),
  "pins.count": entry("count", "pins to count out", PRACTICE),
  "cloth.length": entry("tape", "length of cloth that the layout takes"),
  "cloth.buy": entry("cloth", "cloth to buy"),
  "cloth.waste": entry("share", "share of the cloth that no piece takes"),
  "gauging.waistLeast": entry("tape", "least waist this gauging can serve without sewing its rows anew"),
  "gauging.waistMost": entry("tape", "most waist this gauging can serve: past it the pleats gape", PRACTICE),
  "pieces.area": entry("area", "area of all the pieces laid on the cloth"),
  "stitches.seams": entry("whole", "running stitches in the seams, eight an inch", PRACTICE),
  "stitches.hem": entry("whole", "stitches in the hem, twice round, six an inch", PRACTICE),
  "work.low": entry("time", "hand work, the quicker figure", OURS),
  "work.high": entry("time", "hand work, the slower figure", OURS),
} satisfies Record<string, NameEntry>;

export type Name = keyof typeof NAMES;
