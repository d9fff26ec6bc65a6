/** What can be said while setting to the waist, and closing. */
import type { Said } from "./said.ts";

export const ATTACH = {
  "from-centre": {
    means: "The distance of the opening does not go with its place.",
    do: "Leave it out, or give a place for which it counts; check it against half the waist.",
  },
  "hook-set-far": {
    levels: ["warning"],
    means: "The band's end would lie far over the skirt, thick and askew.",
    do: "Set the gauging to a smaller band.",
  },
  "hook-set-off-lap": {
    means: "So large a waist would draw the band's end out of its lap.",
    do: "Make the lap longer, or plan for the larger waist.",
  },
  "hook-set-same": {
    means: "This set of hooks closes to the planned waist.",
    do: "Give another waist, or take the set out.",
  },
  "hook-set-too-far": {
    means: "The band's end would lie a quarter of the waist and more over the skirt.",
    do: "Give a nearer waist, or a band of its own.",
  },
  "hook-sets-off-band": {
    means: "Several sets of hooks need a waistband.",
    do: "Leave hook-sets out; other waists are for gauging set again.",
  },
  "no-band": {
    levels: ["note"],
    means: "A bodice edge has no band: only its depth and turning are used.",
    do: "Leave the band out, or let it stand.",
  },
  "no-from-centre": {
    means: "An opening beside centre front needs its distance from it.",
    do: "Write from-centre: 5 in.",
  },
  "no-part-band": {
    means: "A seam draws the opening to centre front, so that nothing is left for a part band.",
    do: "Put the opening further from the seam, or take a bodice edge.",
  },
  "opening-moved": {
    levels: ["note"],
    means: "A seam stands near, and the opening goes to it.",
    do: "Nothing has to be done.",
  },
  "opening-off-bodice": {
    levels: ["warning"],
    means: "The skirt opens where its bodice seldom does.",
    do: "If the bodice opens in front take a part band, with the opening front-left or front-right.",
  },
  "opening-on-face": {
    levels: ["warning"],
    means: "The opening shows on the face of a pleat.",
    do: "Write under-fold: true, or move it as the message says.",
  },
  "opening-under-fold": {
    levels: ["note"],
    means: "The opening would show on a pleat, and goes under the nearest fold.",
    do: "Nothing has to be done; under-fold: false leaves it where it was.",
  },
  "opening-under-layers": {
    levels: ["warning"],
    means: "The opening lies under pleats that are several layers thick or point the other way.",
    do: "Take shallower pleats there, or move the opening.",
  },
  "other-waist-gapes": {
    levels: ["warning"],
    means: "For this waist the gauging is under three to one, and gapes.",
    do: "Take more breadths, or leave what is over plain in front.",
  },
  "other-waist-tight": {
    levels: ["warning"],
    means: "For this waist the gauging stands closer than is easy.",
    do: "Sew the trial, or take fewer pleats or thinner cloth.",
  },
  "other-waist-too-small": {
    means: "Drawn as close as it goes, the gauging is wider than this waist.",
    do: "Take fewer pleats or thinner cloth, or sew the rows anew for it.",
  },
  "other-waists-ungauged": {
    means: "Other waists are listed, and laid pleats are laid anew for each.",
    do: "Leave other-waists out.",
  },
  "part-band-opening": {
    means: "A part band needs the opening at the side of the front.",
    do: "Put the opening front-left or front-right, or take another edge.",
  },
  "piping-too-long": {
    means: "So long a piping strip cannot be cut from this cloth.",
    do: "Take a thinner cord, a smaller turning or wider cloth.",
  },
  "thick-at-seam": {
    levels: ["warning"],
    means: "Turned down, the flat or pleated parts are too thick to whip.",
    do: "Set them in one layer, with flat-parts: seam.",
  },
  "thick-in-seam": {
    levels: ["warning"],
    means: "Even in one layer the pleats are thick in the seam.",
    do: "Take shallower pleats, or gauge more of the cloth.",
  },
  "under-fold-none": {
    levels: ["note"],
    means: "The opening does not fall on a pleat's face, and stays.",
    do: "Nothing has to be done.",
  },
  "waist-edge-off-bodice": {
    means: "A pointed waist is given, and only a bodice edge has one.",
    do: "Write to: bodice-edge, or leave waist-edge out.",
  },
  "waist-edge-wide": {
    means: "The slant of the point would begin at the side or behind it.",
    do: "Measure from centre front to one side.",
  },
  "whip-every-other": {
    levels: ["warning", "error"],
    means: "Whipping only every other pleat is weak.",
    do: "Whip every pleat.",
  },
} as const satisfies Readonly<Record<string, Said>>;
