/** What can be said while measuring an original. */
import type { Said } from "./said.ts";

export const ORIGINAL = {
  "bites-and-pitch": {
    levels: ["warning"],
    means: "The stitches that are seen do not make the pleat that the cloth gives.",
    do: "Measure over several; the recipe follows cloth and count.",
  },
  "hem-and-waist": {
    means: "The hem is not longer than the waist seam.",
    do: "Check which is which, and the units.",
  },
  "lengths-and-folds": {
    levels: ["warning"],
    means: "Lengths and depths of the fold do not agree.",
    do: "Check whether the edge is straight; the recipe follows the lengths.",
  },
  "lengths-assumed": {
    levels: ["note"],
    means: "Lengths at sides or back are not known, and taken as in front.",
    do: "Measure them if the original can be hung.",
  },
  "many-halves": {
    levels: ["warning"],
    means: "Several breadths are narrower than the others.",
    do: "Nothing has to be done: the recipe takes as much cloth in breadths alike.",
  },
  "no-pleats": {
    means: "It is gauged, and neither pleats nor whip stitches are counted.",
    do: "Count them at front, side or back, or all round.",
  },
  "part-of-waist": {
    means: "A part of the waist is given as long as the whole.",
    do: "Measure both along the skirt's edge.",
  },
  "pleats-and-waist": {
    levels: ["warning"],
    means: "The count all round and the count in an inch do not agree.",
    do: "Count again; the recipe follows the count all round.",
  },
  "pleats-uneven": {
    levels: ["note"],
    means: "More pleats stand in an inch at one place than at another.",
    do: "Write back-share into the recipe to follow the original.",
  },
  "rows-and-fold": {
    levels: ["warning"],
    means: "The last row lies below the edge of the turned layer.",
    do: "Measure both again; the recipe takes the fold that its rows need.",
  },
  "seam-and-width": {
    levels: ["warning"],
    means: "The seams that are seen are not those that width and round ask for.",
    do: "Measure again; the recipe follows width and round.",
  },
  "whips-and-pleats": {
    levels: ["warning", "note"],
    means: "Whip stitches and pleats do not go together.",
    do: "Count both again along the same inch.",
  },
  "width-and-round": {
    means: "Breadths of this width cannot make this hem.",
    do: "Count the breadths again; measure width and round again.",
  },
} as const satisfies Readonly<Record<string, Said>>;
