/** Invented garments that the figures are tried on: usual ones, and those that crowd a drawing. */

import type { FigureName } from "../../src/figure/figure.ts";
import { figuresOf } from "../../src/figure/index.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { solve } from "../../src/solve/solve.ts";
import { type Keys, planOf, recipeText } from "../recipes.ts";

const METRIC: Keys = {
  show: "cm",
  wearer: {
    waist: "72 cm",
    "waist-to-floor": { front: "101 cm", side: null, left: "102.5 cm", right: "104 cm", back: "107 cm" },
  },
  cloth: { width: "140 cm", selvedge: "1 cm", thickness: "0.6 mm", fibre: "wool" },
  skirt: { breadths: "3 1/2", hem: { kind: "turned" } },
  fullness: { stay: { name: "glazed cotton", thickness: "0.3 mm" }, rows: "3" },
  attach: { opening: { at: "front-left", "from-centre": "11 cm" } },
};

export const GARMENTS: Readonly<Record<string, Keys>> = {
  "four breadths, even bites": {
    wearer: { waist: "27 in", ease: "1/2 in", over: "three petticoats" },
    cloth: { width: "44 in", selvedge: "1/4 in" },
    fullness: { "pleats-per-inch": "8" },
  },
  "metric wool, a slit, unlike sides, a stay": METRIC,
  "eight narrow breadths, long and short bites, a hoop": {
    wearer: { hoop: { round: "110 in", height: "9 in" } },
    cloth: { width: "22 in", thickness: "0.2 mm" },
    skirt: { breadths: "8" },
    fullness: { "pleats-per-inch": "4" },
    attach: { opening: { at: "centre-front" } },
  },
  "turned down alike, thin cloth, a sewn trial, every other pleat": {
    wearer: { "waist-to-floor": { front: "40 in", side: "40 in", back: "40 in" } },
    cloth: { thickness: "0.12 mm", weight: "50 g/m2", repeat: { down: "3/4 in" } },
    skirt: { breadths: "3" },
    fullness: { trial: '{cloth: "12 in", pleats: "24", closes-to: "1 3/4 in"}' },
    attach: { whip: "every-other", opening: { at: "side-right" } },
  },
  "very long words": {
    title: "W".repeat(200),
    wearer: { over: "m".repeat(200) },
    attach: { opening: { at: "front-right", "from-centre": "6 1/4 in" } },
  },
  "a bodice edge, long and short, a stay, a braid": {
    cloth: { thickness: "0.25 mm" },
    skirt: { breadths: "5", braid: "true" },
    fullness: { "pleats-per-inch": "5", stay: { name: "organdy", thickness: "0.15 mm" } },
    attach: { to: "bodice-edge", "placket-hooks": "all-along" },
  },
  "a part band, the opening at the wearer's front left": {
    attach: { to: "part-band", opening: { at: "front-left", "from-centre": "5 in" } },
  },
  "a piped band, every other pleat whipped": {
    cloth: { weight: "50 g/m2" },
    attach: { piping: { cord: "1/8 in" }, whip: "every-other" },
  },
  "flat, knife, gauged": {
    fullness: {
      zones: "[{set: flat, waist: 2 in}, {set: knife, waist: 4 in, face: 1 in, depth: 1 in}, {set: gauged}]",
    },
  },
  "pleats only": { fullness: { method: "pleated" } },
  "pleats towards the front only": { fullness: { zones: "[{set: knife, towards: front}]" } },
  "pleated, gauged back": { fullness: { method: "pleated-gauged-back" } },
  "a half box in front, a part band, the opening among knife pleats": {
    fullness: {
      zones:
        "[{set: box, waist: 5 1/4 in, count: 3 1/2, depth: 3/4 in}, {set: knife, waist: 4 in, towards: front, depth: 2 in}, {set: gauged}]",
    },
    attach: { to: "part-band", opening: { at: "front-right", "from-centre": "6 in" } },
  },
  "a pointed bodice edge, a pocket, fuller behind": {
    skirt: { pocket: "true" },
    fullness: { "back-share": "56 %" },
    attach: { to: "bodice-edge", "waist-edge": { depth: "1 3/4 in", "from-centre": "4 in" } },
  },
  "a point that hangs free, centimetres": {
    show: "cm",
    attach: { to: "bodice-edge", "waist-edge": { depth: "7 cm", "from-centre": "6 cm", set: "straight" } },
  },
  "a separate lining, an interlining, checks that meet, one way": {
    cloth: { "one-way": "true", repeat: { across: "4 1/2 in", match: "true", dominant: "2 in" } },
    lining: { to: "separate", width: "30 in", thickness: "0.15 mm" },
    interlining: { to: "turned", width: "36 in", thickness: "0.2 mm" },
    skirt: { braid: "true" },
  },
  "a flat lining, joined and turned down, a turned hem": {
    lining: { kind: "flat", to: "turned", width: "27 in", thickness: "0.1 mm" },
    skirt: { hem: { kind: "turned" } },
  },
  "run along, two borders, the selvedge as hem edge, bordered flounces": {
    cloth: { width: "60 in", border: { depth: "7 in", edge: "both", "from-edge": "3/4 in" } },
    skirt: {
      run: "along",
      breadths: null,
      round: "160 in",
      lengths: "2",
      braid: "true",
      pocket: "true",
      hem: { edge: "selvedge" },
      flounces: { count: "2", depth: "9 in" },
    },
    lining: { to: "fold", width: "36 in", thickness: "0.1 mm" },
  },
  "run along in one length, a turned hem, centimetres, checks that meet": {
    show: "cm",
    cloth: { width: "150 cm", selvedge: "1 cm", repeat: { down: "4 cm", across: "4 cm", match: "true" } },
    skirt: { run: "along", breadths: null, round: "380 cm", hem: { kind: "turned" } },
    interlining: { to: "turned", width: "90 cm", thickness: "0.2 mm" },
  },
  "shaded from selvedge to selvedge, five breadths": {
    cloth: { shaded: "across" },
    skirt: { breadths: "5" },
  },
  "checks level at the hem": {
    cloth: { width: "44 in", repeat: { across: "6 in", down: "6 in", match: "true", dominant: "1 in" } },
    skirt: { breadths: "5" },
  },
  "a list of originals, crowded at one year": { year: "1850" },
  "double boxes, the opening at the right side, centimetres": {
    show: "cm",
    fullness: { zones: "[{set: double-box}]" },
    attach: { opening: { at: "side-right" } },
  },
};

/** The garments that have a figure; there is one for every figure. */
export const garmentsWith = (figure: FigureName): readonly string[] =>
  Object.keys(GARMENTS).filter((name) => figuresOf(garment(name)).includes(figure));

/** An invented list, crowded at one year. */
const ORIGINALS = [
  "year,set",
  ...Array.from({ length: 40 }, () => "1850,gauged"),
  "1846,pleated",
  "1855,knife",
  "1851,flat-front-gauged",
].join("\n");
const WITH_ORIGINALS = "a list of originals, crowded at one year";

export const garment = (name: string): Plan =>
  name === WITH_ORIGINALS ? withOriginals(GARMENTS[name] as Keys) : planOf(GARMENTS[name] as Keys);

function withOriginals(keys: Keys): Plan {
  const { recipe } = readRecipe("recipe.md", recipeText(keys), { file: "evidence.csv", text: ORIGINALS });
  const plan = recipe && solve(recipe).plan;
  if (!plan) throw new Error("the list is not read");
  return plan;
}
