/** What can be said while measuring the wearer. */
import type { Said } from "./said.ts";

export const WEARER = {
  "estimated-lengths": {
    levels: ["warning"],
    means: "The lengths follow from waist height and hoop, and are not measured.",
    do: "Dress the hoop and measure before you cut; never finish a hem on an estimate.",
  },
  "front-longer": {
    levels: ["warning"],
    means: "The front is longer than the back.",
    do: "Measure again over all the supports; if it is so, go on.",
  },
  "hem-must-shape": {
    levels: ["warning"],
    means:
      "The back is so much longer than the front that turning down the top alone does not balance it well.",
    do: "Measure again; past that the hem itself has to be shaped, which straight breadths do not do.",
  },
  "hem-near-hoop": {
    levels: ["warning"],
    means: "The hem is less than a fifth larger than the hoop: steels show and steps are hobbled.",
    do: "Take another breadth, or a smaller hoop.",
  },
  "hem-under-hoop": {
    levels: ["warning"],
    means: "The hem is smaller than the hoop, and will not go over it.",
    do: "Take more breadths or a smaller hoop.",
  },
  "hoop-above-waist": {
    means: "The lowest steel of the hoop is given as high as the waist.",
    do: "Measure both from the floor.",
  },
  "hoop-behind": {
    means: "The hoop is set back so far that no part of it stands in front of the waist's middle.",
    do: "Give a smaller offset, or measure over the hoop.",
  },
  "hoop-inside-waist": {
    levels: ["warning"],
    means: "Somewhere the hoop does not stand out beyond the waist, and the skirt would hang straight down.",
    do: "Check the hoop's round, shape and offset.",
  },
  "lengths-twice": {
    means: "Lengths are both measured and to be estimated.",
    do: "Keep waist-to-floor where it is measured, else waist-height.",
  },
  "no-hoop": {
    means: "Lengths are to be estimated over a hoop, and there is none.",
    do: "Give the hoop, or measure waist-to-floor.",
  },
  "no-length": { means: "So far off the floor no skirt is left.", do: "Check off-floor and the lengths." },
  "no-lengths": {
    means: "No length from waist to floor is given, and nothing to estimate it from.",
    do: "Measure waist-to-floor at front, sides and back.",
  },
  "one-side": {
    means: "The length is given at one side only.",
    do: "Measure the other side too; write side if they are alike.",
  },
  "side-outside": {
    levels: ["warning"],
    means: "A side is shorter, or longer, than front and back both, by more than two readings may differ.",
    do: "Measure the sides again; in a recipe with sizes look whether a size that changes front and back forgot the sides.",
  },
  "sides-twice": {
    means: "The length at the side is given for both sides alike and for one of them too.",
    do: "Keep side, or keep left and right.",
  },
  "waist-and-ease": {
    means: "Waist and ease together come to nothing.",
    do: "Check the ease: it is added to the waist, and a minus takes it off.",
  },
} as const satisfies Readonly<Record<string, Said>>;
