/**
 * What measured numbers of an original come to: breadths and cloth lost in seams, fullness, pleats and pitch, lengths from the
 * folds. Inverse of the rules by which a garment is planned, so that a garment's own measures give it back.
 */
import { fraction, inches, less, millimetres, min, plain, type Quantity } from "../../quantity/quantity.ts";
import { roundTo } from "../../quantity/tape.ts";
import type { Original } from "../../recipe/original/schema.ts";
import { Findings } from "./findings.ts";

export const STATIONS = ["front", "left", "right", "back"] as const;
export type StationName = (typeof STATIONS)[number];

/** A breadth under this share of the widest is taken for half a one. */
const HALF_UNDER = fraction(3n, 4n);

type AtFour = Original["lengths"];

/** The four places' own lengths: one for both sides is left and right. */
export const fourOf = ({ front, side, left = side, right = side, back }: AtFour) => ({
  front,
  left,
  right,
  back,
});

/** Works everything out that needs no other body. */
export function derive(original: Original): Findings {
  const found = new Findings(original);
  found.measure("tape", original.tape, "part", "smallest mark of the tape");
  found.measure("hem.round", original["hem-round"], "part", "round of the hem");
  found.measure("waist.seam", original.waist, "part", "waist seam, closed");
  found.set("fullness.ratio", "hem.round / waist.seam", "ratio", "fullness: the round for one of waist seam");
  deriveBreadths(original, found);
  derivePleats(original, found);
  deriveStitches(original, found);
  deriveLengths(original, found);
  return found;
}

function deriveBreadths(original: Original, found: Findings): void {
  const { breadths, cloth, seam, show } = original;
  const widest = breadths.map(({ width }) => width).reduce((a, b) => (less(a, b) ? b : a));
  const halves = breadths.map(({ width }) => width.value.compare(widest.value.mul(HALF_UNDER)) < 0);
  const count = (which: (half: boolean) => boolean): Quantity =>
    plain(
      breadths.reduce(
        (sum, each, i) => (which(halves[i] === true) ? sum.add(each.count.value) : sum),
        fraction(0n),
      ),
    );
  const sum = breadths.reduce((all, { width, count: n }) => all.add(width.value.mul(n.value)), fraction(0n));
  found.measure("breadths.sum", millimetres(sum), "part", "the breadths' widths together, from seam to seam");
  found.measure(
    "breadths.whole",
    count((half) => !half),
    "count",
    "whole breadths",
  );
  found.measure(
    "breadths.half",
    count((half) => half),
    "count",
    "breadths under three quarters of the widest, taken for halves",
  );
  found.set(
    "breadths.count",
    "breadths.whole + breadths.half / 2",
    "count",
    "breadths, halves counted as such",
  );
  found.set("breadths.seams", "ceil(breadths.count)", "count", "seams in a ring of so many");
  if (cloth.selvedge) found.measure("cloth.selvedge", cloth.selvedge, "part", "one selvedge");
  else
    found.assume(
      "cloth.selvedge",
      inches(0n),
      "part",
      "one selvedge",
      "not seen: taken as sewn into the seam",
    );
  if (seam) found.measure("seam.seen", seam, "part", "seam allowance, seen inside");
  if (cloth.width) {
    found.measure("cloth.width", cloth.width, "part", "width of the cloth");
    found.set("breadths.usable", "cloth.width - 2 * cloth.selvedge", "part", "usable width");
    found.set(
      "seam.taken",
      "(breadths.count * breadths.usable - hem.round) / (2 * breadths.seams)",
      "part",
      "seam allowance that makes the measured round",
    );
  } else {
    if (seam) found.set("seam.taken", "seam.seen", "part", "seam allowance");
    else
      found.assume(
        "seam.taken",
        show === "in" ? inches("1/2") : millimetres(15n),
        "part",
        "seam allowance",
        "not seen: the usual one",
      );
    found.set(
      "cloth.width",
      "(hem.round + 2 * breadths.seams * seam.taken) / breadths.count + 2 * cloth.selvedge",
      "part",
      "width of cloth that makes the measured round",
    );
    found.set("breadths.usable", "cloth.width - 2 * cloth.selvedge", "part", "usable width");
  }
  found.set("seam.lost", "2 * breadths.seams * seam.taken", "part", "cloth lost in the seams, all round");
}

/** Means of the counts, and what they come to all round. */
function derivePleats(original: Original, found: Findings): void {
  const { set } = original;
  if (set === "flat-front-gauged")
    found.measure("flat.waist", original["flat-front"], "part", "waist left plain in front");
  if (set === "pleated-gauged-back")
    found.measure("gauged.waist", original["gauged-back"], "part", "waist that is gauged");
  meanOf("pleats", "pleats", original.pleats, found);
  meanOf("whips", "whip stitches", original.whips, found);
  if (found.has("whips.seen", "pleats.seen"))
    found.set("whips.perPleat", "whips.seen / pleats.seen", "decimal", "whip stitches to a pleat");
  if (set === "pleated") return;
  if (set === "gauged") found.set("gauged.waist", "waist.seam", "part", "waist that is gauged");
  if (set === "flat-front-gauged")
    found.set("gauged.waist", "waist.seam - flat.waist", "part", "waist that is gauged");
  const cloth = {
    gauged: "hem.round",
    "flat-front-gauged": "hem.round - flat.waist",
    "pleated-gauged-back": "hem.round * gauged.waist / waist.seam",
  };
  found.set("gauged.cloth", cloth[set], "part", "cloth that is gauged");
  const all = original["pleats-in-all"];
  if (all) found.measure("pleats.all", all, "count", "gauged pleats all round, counted");
  else
    found.set(
      "pleats.all",
      `round(${found.has("pleats.seen") ? "pleats.seen" : "whips.seen * 4/5"} * gauged.waist)`,
      "count",
      found.has("pleats.seen")
        ? "gauged pleats all round, by the counts"
        : "gauged pleats all round, by the whips: five to four pleats, every fourth doubled",
    );
  found.set("pleats.perInch", "pleats.all / gauged.waist", "perLength", "gauged pleats along the waist");
  found.set("pleat.pitch", "gauged.cloth / pleats.all", "fine", "pitch: the cloth in one pleat");
  found.set("pleat.bite", "pleat.pitch / 2", "fine", "mean bite: half the pitch");
  found.set("pleat.depth", "pleat.pitch / 2", "tape", "how deep a pleat stands");
  found.set(
    "cloth.thickest",
    "gauged.waist / (4 * pleats.all)",
    "thick",
    "thickest that one layer can be, for so many pleats to lie there",
  );
}

function meanOf(name: string, what: string, counts: Original["pleats"], found: Findings): void {
  if (!counts) return;
  found.measure(`${name}.over`, counts.over, "part", `length along which ${what} were counted`);
  // The sides are two of the four quarters.
  const terms: string[] = [];
  let weight = 0;
  for (const [place, times] of [
    ["front", 1],
    ["side", 2],
    ["back", 1],
  ] as const) {
    const at = counts[place];
    if (!at) continue;
    found.measure(`${name}.${place}`, at, "count", `${what} counted there, ${place}`);
    terms.push(times === 1 ? `${name}.${place}` : `${times} * ${name}.${place}`);
    weight += times;
  }
  if (terms.length > 0)
    found.set(
      `${name}.seen`,
      `(${terms.join(" + ")}) / (${weight} * ${name}.over)`,
      "perLength",
      `${what} along the waist, the mean of what was counted, the sides twice`,
    );
}

function deriveStitches({ bite, rows, ...rest }: Original, found: Findings): void {
  if (bite) {
    found.measure("bite.inside", bite.inside, "part", "one stitch seen inside");
    if (bite.outside) found.measure("bite.outside", bite.outside, "part", "one stitch seen outside");
    else if (found.has("pleat.pitch"))
      found.set(
        "bite.outside",
        "pleat.pitch - bite.inside",
        "fine",
        "one stitch outside: the rest of the pitch",
      );
    if (found.has("bite.outside"))
      found.set("bite.pitch", "bite.inside + bite.outside", "fine", "pitch by the two stitches");
  }
  found.measure("rows.count", rows, "count", "rows of gauging");
  found.measure("rows.first", rest["first-row"], "part", "first row below the fold");
  found.measure("rows.between", rest["between-rows"], "part", "from one row to the next");
  if (found.has("rows.count", "rows.first") && found.has("rows.between"))
    found.set("rows.last", "rows.first + (rows.count - 1) * rows.between", "part", "last row below the fold");
}

/** Lengths at the four places; where one is missing the folds give it, since the cut edge is straight. */
function deriveLengths({ lengths, fold }: Original, found: Findings): void {
  const measured = fourOf(lengths);
  const folds = fold ? fourOf(fold) : undefined;
  for (const at of STATIONS) {
    found.measure(`length.${at}`, measured[at], "part", `length at the ${at}`);
    found.measure(`fold.${at}`, folds?.[at], "part", `fold at the ${at}`);
  }
  for (const at of STATIONS) {
    if (found.has("fold.front", `fold.${at}`) && at !== "front")
      found.set(
        `longer.${at}`,
        `fold.front - fold.${at}`,
        "part",
        `longer at the ${at} than in front, by the folds`,
      );
    if (found.has(`length.${at}`)) continue;
    if (found.has(`longer.${at}`))
      found.set(`length.${at}`, `length.front + longer.${at}`, "part", `length at the ${at}, by the folds`);
    else
      found.assume(
        `length.${at}`,
        found.get("length.front"),
        "part",
        `length at the ${at}`,
        "not measured: as in front",
      );
  }
  const longest = STATIONS.reduce((a, b) =>
    less(found.get(`length.${a}`), found.get(`length.${b}`)) ? b : a,
  );
  if (found.has(`fold.${longest}`))
    found.set("fold.least", `fold.${longest}`, "part", "fold where it is longest, which is the least");
}

/** Thickness to plan with: measured, or the usual, no thicker than the original's own pleats prove. */
export function thicknessFor({ cloth }: Original, found: Findings): Quantity {
  if (cloth.thickness) return cloth.thickness;
  const usual = millimetres("1/4");
  if (!found.has("cloth.thickest")) return usual;
  return min(usual, roundTo(found.get("cloth.thickest"), millimetres("1/100"), "down"));
}
