/** What can be said while choosing the cloth. */
import type { Said } from "./said.ts";

export const CLOTH = {
  "border-and-selvedge": {
    means: "With the selvedge as the hem's edge the border lies where it is woven, and cannot be moved.",
    do: "Leave above-hem out, or write edge: cut.",
  },
  "border-down": {
    levels: ["warning"],
    means: "Cut down the body, the cloth brings its border into the seams and not to the hem.",
    do: "For a border at the hem write run: along.",
  },
  "dominant-and-round": {
    means: "Where the number of breadths is only worked out, it is not known what stands at centre front.",
    do: "Give breadths in place of round.",
  },
  "dominant-far": {
    means: "The first strong line lies further from the selvedge than one repeat.",
    do: "Measure to the strong line nearest the left selvedge.",
  },
  "flat-and-separate": {
    means: "A lining sewn up with the cloth cannot be joined at the waist alone.",
    do: "Write to: fold, or kind: hung.",
  },
  "half-and-dominant": {
    means: "The half breadth stands at centre front, and is cut through the pattern.",
    do: "Give whole breadths, or take dominant out.",
  },
  heavy: {
    levels: ["warning"],
    means: "The finished garment weighs more than 7 lb.",
    do: "Hang it from the bodice or a support, not from the soft waist.",
  },
  "interlining-joined": {
    levels: ["note"],
    means: "The interlining is narrower than what it has to cover, and is joined.",
    do: "Nothing has to be done; wider cloth would spare the joins.",
  },
  "lining-joined": {
    levels: ["note"],
    means: "The lining is narrower than what it has to cover, and is joined.",
    do: "Nothing has to be done; wider cloth would spare the joins.",
  },
  "match-along": {
    means:
      "Of cloth that runs along the body every length is cut to whole repeats, so that this key does nothing.",
    do: "Take the key out.",
  },
  "match-what": {
    means: "The seams are to meet on the pattern, and its repeat is not given.",
    do: "Measure the repeat from line to line and write it.",
  },
  "no-ground-below-border": {
    means: "Below the border there is less cloth than the hem takes.",
    do: "Take one of the ways that the message names.",
  },
  "no-half-width": {
    means: "Half a breadth has no width left between its seams.",
    do: "Take whole breadths, wider cloth or a narrower seam.",
  },
  "no-interlining": {
    means: "Below the rows no length is left for an interlining.",
    do: "Leave the interlining out.",
  },
  "no-match": {
    means: "This key does something only where the seams are to meet on the pattern.",
    do: "Write match: true beside it, or take it out.",
  },
  "no-repeat": {
    means: "The pleats are to follow the repeat, and none is given.",
    do: "Write the repeat, or follow-repeat: false.",
  },
  "no-repeat-left": {
    means: "No whole repeat is left between the seams of a breadth.",
    do: "Lose fewer repeats in the seams, take a narrower seam, or leave match or dominant out.",
  },
  "no-thickness": {
    means: "It is not known how thick the cloth is, so it cannot be told how close pleats stand.",
    do: "Measure ten layers and write ten-layers, or sew the trial.",
  },
  "no-width": {
    means: "Between selvedges and seams no width of cloth is left.",
    do: "Check width, selvedge and seam allowance.",
  },
  "piece-too-wide": {
    means: "A piece is wider than the cloth that it is cut from.",
    do: "Cut it from wider cloth, or make it narrower.",
  },
  "price-of-nothing": {
    means: "A lining or an interlining is priced, and the recipe has none.",
    do: "Describe it, or take its price out.",
  },
  "seams-miss-repeat": {
    levels: ["warning"],
    means:
      "A breadth between its seams is not a whole number of repeats, so that the pattern cannot meet in every seam.",
    do: "Follow what the message offers, or let the pattern break at the back.",
  },
  "second-border-flounces": {
    levels: ["note"],
    means: "The border of the other selvedge goes to the foot of the flounces.",
    do: "Nothing has to be done; cut the strips along that edge.",
  },
  "second-border-over": {
    levels: ["note"],
    means: "The border of the other selvedge is left over beside the lengths.",
    do: "Keep it for sleeves, a cape or a bodice's trimming.",
  },
  "second-border-shows": {
    levels: ["warning"],
    means: "The border of the other selvedge would show below the waist, upside down.",
    do: "Take cloth with one border, or wider cloth.",
  },
  "second-border-turned": {
    levels: ["note"],
    means: "Part of the other border is turned down with the top, where it does not show.",
    do: "Nothing has to be done.",
  },
  "shade-joins": {
    levels: ["warning"],
    means: "In some seams light cloth meets dark.",
    do: "Follow what the message offers, or let the change stand as stripes.",
  },
  "shade-unmeasured": {
    levels: ["warning"],
    means:
      "The cloth passes from light to dark along its length, and the length of one shading is not given.",
    do: "Measure from one light place to the next and write it as repeat down.",
  },
  "sheer-turn-down": {
    levels: ["warning"],
    means: "Through sheer cloth a turn-down of uneven depth shows as a shadow.",
    do: "After the third fitting trim it even and overcast it; this is the one exception to not trimming.",
  },
  "thickness-twice": {
    means: "The thickness is given of one layer and of ten.",
    do: "Keep ten-layers: it is the surer.",
  },
} as const satisfies Readonly<Record<string, Said>>;
