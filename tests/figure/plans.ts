/** Invented garments that the figures are tried on: usual ones, and those that crowd a drawing. */

import type { Plan } from "../../src/solve/plan.ts";
import { type Keys, planOf } from "../recipes.ts";

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
};

export const garment = (name: string): Plan => planOf(GARMENTS[name] as Keys);
