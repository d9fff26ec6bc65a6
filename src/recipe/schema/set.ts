/** Parts of how the fullness is set: one zone, the stay, the trial. */
import { block, optional } from "../blocks.ts";
import { choice, text } from "../fields.ts";
import { MOST_LAID } from "../limits.ts";
import { halves, length } from "../measures.ts";

/** Limits of a length on the waist seam. */
export const OF_WAIST = { above: "0 in", most: "100 in" } as const;

export const ZONE = block("one zone of a half, from centre front towards centre back", {
  set: choice(["flat", "knife", "box", "double-box", "gauged"], {
    about: "how the cloth is set in it",
    example: "gauged",
  }),
  waist: optional(
    length({
      about: "its length on the waist seam; one zone may leave it out",
      example: "8 in",
      ...OF_WAIST,
    }),
  ),
  cloth: optional(
    length({ about: "its length along the flat top", example: "40 in", above: "0 in", most: "3000 in" }),
  ),
  face: optional(
    length({ about: "wished width of a pleat as it shows", example: "3/4 in", above: "0 in", most: "40 in" }),
  ),
  depth: optional(
    length({
      about: "depth of the fold behind a pleat",
      example: "1 1/2 in",
      above: "0 in",
      most: "40 in",
    }),
  ),
  count: optional(
    halves({
      about: "how many pleats; a half puts a pleat astride the centre",
      example: "3 1/2",
      least: "1/2",
      most: String(MOST_LAID),
    }),
  ),
  towards: optional(choice(["front", "back"], { about: "which way knife pleats turn", example: "back" })),
});

export const STAY = block("a strip laid in the turn-down to firm it", {
  name: optional(text({ about: "what the stay is", example: "polished cotton" })),
  thickness: length({ about: "its thickness", example: "0.3 mm", above: "0 mm", most: "20 mm" }),
});

export const TRIAL = block("the trial, once it is sewn", {
  cloth: length({
    about: "cloth of the trial, half a space beyond its first and last pleat",
    example: "21 1/4 in",
    above: "0 in",
    most: "1000 in",
  }),
  pleats: halves({ about: "pleats in it", example: "40", least: "1/2", most: "2000" }),
  "closes-to": length({
    about: "its width drawn as tight as it goes without force",
    example: "3 3/4 in",
    above: "0 in",
    most: "1000 in",
  }),
});
