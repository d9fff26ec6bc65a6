/** Sizes of one garment: each its own booklet. A size is laid over the recipe; what is written in it is read and checked there. */
import { block, list, optional } from "../blocks.ts";
import { text } from "../fields.ts";
import { MOST_SIZES } from "../limits.ts";
import { length, number } from "../measures.ts";
import { EASE, HOOP_ROUND, HOOP_STEEL, OVER, WAIST, WAIST_HEIGHT, WAIST_LENGTHS } from "./wearer.ts";

/** The wearer's keys that a size writes short, without their block. */
export const SHORT = ["waist", "ease", "waist-to-floor", "waist-height", "over", "hoop"] as const;

/** The blocks of the recipe that a size may write keys of. */
export const LAID = ["cloth", "skirt", "fullness", "attach", "work"] as const;

/** A block of the recipe in a size: any of its keys. */
const keysOf = (name: (typeof LAID)[number]) =>
  optional(block(`any keys of ${name} that differ in this size`, {}, { anyOf: name }));

const { front, side, left, right, back } = WAIST_LENGTHS;

export const SIZES = list(
  "sizes of the garment: what differs from the recipe in each, the wearer's measures by their own keys, all else in its block",
  block(
    "one size",
    {
      name: text({
        about: "its name; its folder is size- and the name in small letters",
        example: "B",
      }),
      waist: optional(WAIST),
      ease: optional(EASE),
      "waist-to-floor": optional(
        block("lengths to the floor that differ in this size", {
          front: optional(length(front)),
          side,
          left,
          right,
          back: optional(length(back)),
        }),
      ),
      "waist-height": optional(WAIST_HEIGHT),
      over: optional(OVER),
      hoop: optional(
        block("the hoop, where it differs in this size", {
          round: optional(length(HOOP_ROUND)),
          height: HOOP_STEEL.height,
          shape: optional(number(HOOP_STEEL.shape)),
          offset: optional(length(HOOP_STEEL.offset)),
        }),
      ),
      cloth: keysOf("cloth"),
      skirt: keysOf("skirt"),
      fullness: keysOf("fullness"),
      attach: keysOf("attach"),
      work: keysOf("work"),
    },
    { own: ["name"] },
  ),
  { most: MOST_SIZES, apart: true },
);
