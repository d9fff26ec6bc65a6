/** What can be said while setting the fullness. */
import type { Said } from "./said.ts";

export const FULLNESS = {
  "back-share-less": {
    means: "The back would get less cloth than an even fullness gives it.",
    do: "Write a larger back-share, or leave it out.",
  },
  "back-share-one-zone": {
    means: "The back's share needs one gauged part that runs past the side.",
    do: "Give it such a zone, or leave back-share out and give the zones their own cloth.",
  },
  "back-share-step": {
    levels: ["warning"],
    means: "Before and behind the side the bites differ by more than one mark of the tape.",
    do: "It does not show; a slightly other back-share avoids it.",
  },
  "back-share-ungauged": {
    means: "The gauged cloth is to be thrown to the back, and nothing is gauged.",
    do: "Gauge a part, or lay deeper pleats behind.",
  },
  "bite-and-pitch": {
    means: "The deepest pleat wished is smaller than two of the finest bites.",
    do: "Make deepest-pitch larger or finest-bite smaller.",
  },
  "cloth-does-not-add-up": {
    means: "The zones do not use half the round of cloth.",
    do: "Change depths by what the message says, or leave one depth out.",
  },
  "cloth-twice-open": {
    means: "Two gauged zones leave their cloth out, and only one can take the rest.",
    do: "Give the cloth of all gauged zones but one.",
  },
  "deep-pitch": {
    levels: ["warning"],
    means: "One pleat takes more than 1 1/4 in of cloth, and deep pleats flop.",
    do: "Take thinner cloth, fewer breadths or a third row.",
  },
  "deep-rows": {
    levels: ["warning"],
    means: "The last row lies deep below the fold.",
    do: "Take two or three rows, 1/4 to 3/8 in apart.",
  },
  "edge-too-short": {
    levels: ["warning"],
    means: "The edge as it is made is shorter than the pleats need.",
    do: "Make the edge longer, or mark longer bites for the smaller waist.",
  },
  full: {
    levels: ["warning"],
    means: "Over seven of cloth to one of waist: it needs thin cloth and a trial.",
    do: "Sew the trial before cutting.",
  },
  gapes: {
    levels: ["warning"],
    means: "Under three of cloth to one of waist, gauging gapes.",
    do: "Take more breadths, or gauge less of the waist.",
  },
  "gauged-too-little": {
    means: "A gauged part gets no more cloth than waist.",
    do: "Take more breadths, shallower pleats elsewhere or a smaller back-share.",
  },
  "half-pleat-in-between": {
    means: "A half pleat stands in the middle of a half, and it can only lie astride a centre line.",
    do: "Give a whole count, or put the zone first or last.",
  },
  "lines-odd": {
    levels: ["note"],
    means: "The pleat would hold an odd number of the pattern's lines; an even number is taken.",
    do: "Nothing has to be done; the message names the even neighbour.",
  },
  "method-and-zones": { means: "A method and zones of your own are both given.", do: "Keep one of them." },
  "no-cloth-for-pleats": {
    means: "The other zones leave the pleats no cloth to be folded.",
    do: "Take more breadths, or less depth elsewhere.",
  },
  "no-effect": {
    levels: ["warning", "note"],
    means: "A key does nothing beside the method that is chosen.",
    do: "Leave it out, or choose what it belongs to.",
  },
  "no-wish": {
    means: "Just the wished number of pleats is asked for, and none is wished.",
    do: "Write pleats-per-inch beside it, or leave it out.",
  },
  "not-of-this-zone": {
    means: "A zone of this kind does not have this key.",
    do: "Leave it out, or set the zone in pleats.",
  },
  "nothing-fits": {
    means: "No number of pleats closes to this waist with bites that can be sewn.",
    do: "Take one of the ways that the message names: fewer breadths, a thinner stay, a part left flat.",
  },
  "pleats-stack": {
    levels: ["warning"],
    means: "The pleats lie over each other.",
    do: "Take shallower pleats, or gauge more of the cloth.",
  },
  "single-pleat": {
    means: "A gauged part makes one pleat only.",
    do: "Give it more waist or more cloth, lay it in pleats, or move an opening that cuts it short.",
  },
  "tape-too-coarse": {
    means: "The finest mark of your tape is longer than the finest bite.",
    do: "Give a finer tape, or a longer finest-bite.",
  },
  "tighter-than-easy": {
    levels: ["warning"],
    means: "So that no pleat is deeper than wished, they stand closer than is easy.",
    do: "Sew the trial before you mark the whole top.",
  },
  "too-many-pleats": {
    means: "There are more pleats than are reckoned with.",
    do: "Check thickness, finest bite, wished pleats an inch and the trial; of laid pleats take a wider face.",
  },
  "trial-not-drawn": {
    means: "The trial does not close to less than its cloth.",
    do: "Check the two measures, and which is which.",
  },
  "trial-tight": {
    levels: ["warning"],
    means: "The trial closes to hardly less than there is: it goes, and will be hard to even and to whip.",
    do: "In thin cloth keep the bites; else take longer ones from the trial's table.",
  },
  "trial-too-wide": {
    levels: ["note"],
    means: "The trial closes too wide, and longer bites are worked out from it.",
    do: "Mark by the new bites.",
  },
  "very-full": {
    levels: ["warning"],
    means: "Over eight of cloth to one of waist.",
    do: "Take fewer breadths or thinner cloth, and sew the trial before cutting.",
  },
  "waist-twice-open": {
    means: "Two zones leave their waist out, and only one can take the rest.",
    do: "Give the waist of all zones but one.",
  },
  "zones-do-not-add-up": {
    means: "The zones of one half do not come to half the waist seam.",
    do: "Add or take away what the message says, or leave one waist out.",
  },
  "zones-too-long": {
    means: "The other zones leave nothing for the one that takes the rest.",
    do: "Make a zone shorter: the zones are those of one half.",
  },
} as const satisfies Readonly<Record<string, Said>>;
