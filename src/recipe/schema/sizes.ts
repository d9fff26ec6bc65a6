/** Other sizes of the same garment: each its own booklet. */
import { block, list, optional } from "../blocks.ts";
import { text } from "../fields.ts";
import { EASE, HOOP, WAIST, WAIST_HEIGHT, WAIST_TO_FLOOR } from "./wearer.ts";

export const SIZES = list(
  "other sizes: what differs from the wearer above",
  block("one size", {
    name: text({ about: "its name, which its folder gets too", example: "A" }),
    waist: optional(WAIST),
    ease: optional(EASE),
    "waist-to-floor": optional(WAIST_TO_FLOOR),
    "waist-height": optional(WAIST_HEIGHT),
    hoop: optional(HOOP),
  }),
  { most: 50, apart: true },
);
