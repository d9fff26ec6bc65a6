/** What can be said while planning breadths, hem, trimmings and pocket. */
import type { Said } from "./said.ts";

export const SKIRT = {
  "breadths-along": {
    means: "Cloth that runs along the body goes round in lengths, and has no breadths.",
    do: "Give the round, and how many lengths it is joined from.",
  },
  "breadths-and-round": {
    levels: ["error", "warning"],
    means:
      "Breadths and round are both given; on an original's sheet: the widths of its breadths and its hem do not come to the same.",
    do: "Keep one of them; of an original count and measure again.",
  },
  "flounce-too-shallow": {
    means: "Flounces that lap so far over the next do not climb the skirt.",
    do: "Make them deeper than their lap, or take one only.",
  },
  "flounces-over-opening": {
    levels: ["warning"],
    means: "The highest flounce comes too near the foot of the opening, or above it.",
    do: "Take fewer or shallower flounces, a shorter placket, or leave the flounce open there.",
  },
  "flounces-over-pocket": {
    levels: ["warning"],
    means: "The highest flounce would lie over the pocket's slit.",
    do: "Take fewer or shallower flounces, or leave a heading unsewn there for the hand.",
  },
  "flounces-too-high": {
    means: "The highest flounce does not fit below the waist seam.",
    do: "Take fewer or shallower flounces.",
  },
  gores: {
    levels: ["note"],
    means: "From about 1863 skirts are gored, and this program cuts straight breadths only.",
    do: "Nothing has to be done; look at dated originals.",
  },
  "half-breadth-front": {
    means: "A half breadth always stands at centre front, and centre-front says otherwise.",
    do: "Leave centre-front out, or take whole breadths.",
  },
  "half-in-front": {
    means:
      "The round comes to a half breadth, which stands at centre front, and centre-front says otherwise.",
    do: "Leave centre-front out, or give whole breadths.",
  },
  "hem-too-deep": { means: "Hem or facing is as deep as the garment is long.", do: "Make it shallower." },
  "no-breadths": {
    means: "Neither breadths nor round is given.",
    do: "Write breadths: 4, or the round you wish for.",
  },
  "no-pocket-seam": {
    means: "No free seam stands near enough to a side for a pocket.",
    do: "Take another number of breadths or the other centre-front, or hang a pocket beneath.",
  },
  "placket-too-long": { means: "The opening would reach the hem.", do: "Make the placket shorter." },
  "pocket-too-long": { means: "A pocket's bag would hang below the hem.", do: "Write pocket: false." },
  "round-below-waist": {
    means: "The skirt's round is smaller than the waist seam.",
    do: "Take more breadths, wider cloth or a larger round.",
  },
  "round-too-large": {
    means: "The round needs more breadths than are reckoned with.",
    do: "Check the round and the cloth's width.",
  },
  "too-narrow-along": {
    means: "Run along the body, the cloth is not wide enough from hem to top.",
    do: "Take one of the ways that the message names, or run: down.",
  },
  "tucks-over-opening": {
    levels: ["warning"],
    means: "The highest tuck comes too near the foot of the opening, or above it.",
    do: "Take fewer or shallower tucks, a shorter placket, or stop the tucks at its edges.",
  },
  "tucks-over-pocket": {
    means: "The highest tuck would sew up the pocket's slit.",
    do: "Take fewer or shallower tucks, or no pocket.",
  },
  "tucks-too-high": {
    means: "The highest tuck does not fit below the waist seam.",
    do: "Take fewer or shallower tucks.",
  },
  "turn-down-and-rows": {
    means: "The turn-down does not reach below the last row, which would miss the turned layer.",
    do: "Deepen the turn-down, put the rows closer or leave one out.",
  },
} as const satisfies Readonly<Record<string, Said>>;
