/** The wearer's measures, and what is worn beneath. */
import { block, optional } from "../blocks.ts";
import { byDefault, text } from "../fields.ts";
import { length, number } from "../measures.ts";

const FLOOR = { least: "5 in", most: "80 in", example: "40 in" } as const;

export const WAIST = length({
  about: "waist, taken over everything worn beneath, closed as it will be worn",
  example: "27 in",
  least: "5 in",
  most: "100 in",
});

const EASE_FIELD = {
  about: "added to the waist; less than nothing for a band that is cut smaller, as under a bodice",
  example: "1/2 in",
  least: "-100 in",
  most: "100 in",
} as const;

/** Ease without a default, for other sizes. */
export const EASE = length(EASE_FIELD);

/** The lengths to the floor; front and back must be given. */
export const WAIST_LENGTHS = {
  front: { about: "at centre front", ...FLOOR },
  side: optional(length({ about: "at both sides", ...FLOOR })),
  left: optional(length({ about: "at the wearer's left, for unlike sides", ...FLOOR })),
  right: optional(length({ about: "at the wearer's right, for unlike sides", ...FLOOR })),
  back: { about: "at centre back", ...FLOOR },
};

export const WAIST_TO_FLOOR = block(
  "from the waist seam to the floor over all supports, in the shoes, from the lower edge of a tape as deep as the band",
  { ...WAIST_LENGTHS, front: length(WAIST_LENGTHS.front), back: length(WAIST_LENGTHS.back) },
);

export const HOOP_ROUND = {
  about: "round of its lowest steel",
  example: "110 in",
  least: "10 in",
  most: "400 in",
} as const;

/** What else is known of a hoop; `shape` and `offset` without their defaults. */
export const HOOP_STEEL = {
  height: optional(
    length({ about: "its lowest steel above the floor", example: "9 in", above: "0 in", most: "80 in" }),
  ),
  shape: {
    about: "depth to width of the hoop seen from above; 1 is round",
    example: "1",
    least: "1/4",
    most: "4",
  },
  offset: {
    about: "how far the hoop's middle is set back",
    example: "2 in",
    least: "0 in",
    most: "100 in",
  },
} as const;

export const HOOP = block("the hoop worn beneath", {
  round: length(HOOP_ROUND),
  height: HOOP_STEEL.height,
  shape: number({ ...HOOP_STEEL.shape, byDefault: byDefault("1") }),
  offset: length({ ...HOOP_STEEL.offset, byDefault: byDefault("0 in", "0 cm") }),
});

export const WAIST_HEIGHT = length({
  about: "height of the waist above the floor: with a hoop, lengths are estimated from it",
  ...FLOOR,
});

export const OVER = text({ about: "what is worn beneath", example: "three petticoats" });

export const WEARER = block("the wearer's measures", {
  name: optional(text({ about: "who it is for; a code is enough", example: "W-12" })),
  waist: WAIST,
  ease: length({ ...EASE_FIELD, byDefault: byDefault("0 in", "0 cm") }),
  "waist-to-floor": optional(WAIST_TO_FLOOR),
  "waist-height": optional(WAIST_HEIGHT),
  over: optional(OVER),
  hoop: optional(HOOP),
});
