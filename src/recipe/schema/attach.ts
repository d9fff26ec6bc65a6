/** What the skirt is set to, and how it closes. */
import { block, list, optional } from "../blocks.ts";
import { byDefault, choice, flag } from "../fields.ts";
import { length } from "../measures.ts";

/** Only these have a band. */
const BANDED = { path: "attach.to", is: ["waistband", "part-band"] };

const BAND = block(
  "the waistband, or the short band of a part band",
  {
    depth: length({
      about: "finished depth",
      example: "1 1/4 in",
      byDefault: byDefault("1 1/4 in", "3 cm"),
      above: "0 in",
      most: "12 in",
    }),
    lap: length({
      about: "band that passes under or over at the closing",
      example: "1 in",
      byDefault: byDefault("1 in", "2.5 cm"),
      least: "0 in",
      most: "40 in",
      when: BANDED,
    }),
    turning: length({
      about: "turned in at each edge",
      example: "1/2 in",
      byDefault: byDefault("1/2 in", "1.2 cm"),
      above: "0 in",
      most: "4 in",
    }),
    from: choice(["one-piece", "faced"], {
      about: "folded from one piece, or two pieces",
      example: "one-piece",
      byDefault: byDefault("one-piece"),
      when: BANDED,
    }),
    "hook-sets": optional(
      list(
        "further waists that the band hooks to, each with eyes of its own; only on a waistband",
        block("one further set of eyes", {
          waist: length({
            about: "finished waist that it closes the band to",
            example: "26 in",
            least: "5 in",
            most: "100 in",
          }),
        }),
        { most: 4 },
      ),
    ),
  },
  { always: true },
);

const PIPING = block(
  "a corded edge: on a bodice edge always, on a waistband only if given",
  {
    cord: length({
      about: "thickness of the cord",
      example: "1/16 in",
      byDefault: byDefault("1/16 in", "1.5 mm"),
      above: "0 in",
      most: "1 in",
    }),
    turning: length({
      about: "turning of the strip that covers the cord",
      example: "1/2 in",
      sameAs: "attach.band.turning",
      above: "0 in",
      most: "4 in",
    }),
    join: length({
      about: "what a join takes of the strip's length, both turnings",
      example: "1/2 in",
      byDefault: byDefault("1/2 in", "1.2 cm"),
      fixed: true,
    }),
  },
  { alwaysWhen: { path: "attach.to", is: ["bodice-edge", "part-band"] } },
);

/** Where the opening may be. */
export const OPENINGS = [
  "centre-front",
  "centre-back",
  "side-left",
  "side-right",
  "front-left",
  "front-right",
] as const;

const OPENING = block(
  "where the garment opens",
  {
    at: choice(OPENINGS, {
      about: "at which place; left and right are the wearer's",
      example: "centre-back",
      byDefault: byDefault("centre-back"),
    }),
    "from-centre": optional(
      length({
        about: "with front-left or front-right: how far from centre front on the waist seam",
        example: "5 in",
        above: "0 in",
        most: "100 in",
      }),
    ),
    "under-fold": optional(
      flag({
        about:
          "where the opening falls on the face of a laid pleat: move it under the nearest fold, away from a seam too; not given, a slit is moved and a seam is not",
      }),
    ),
  },
  { always: true },
);

const WAIST_EDGE = block("a bodice edge that drops to a point at centre front; only with to: bodice-edge", {
  shape: choice(["point"], { about: "its shape", example: "point", byDefault: byDefault("point") }),
  depth: length({
    about: "how far the point drops below the straight waist",
    example: "2 in",
    above: "0 in",
    most: "12 in",
  }),
  "from-centre": length({
    about: "how far from centre front, along the straight waist, its slant begins",
    example: "4 in",
    above: "0 in",
    most: "30 in",
  }),
  set: choice(["edge", "straight"], {
    about:
      "the garment is set to the pointed edge, or to the straight waist within it, the point hanging over",
    example: "edge",
    byDefault: byDefault("edge"),
  }),
});

export const ATTACH = block(
  "what the pleats are set to, and how it closes",
  {
    to: choice(["waistband", "bodice-edge", "part-band"], {
      about: "a waistband, the edge of a bodice, or a bodice edge with a short band from centre front",
      example: "waistband",
      byDefault: byDefault("waistband"),
    }),
    made: optional(
      length({
        about: "closed length of the band or bodice edge as measured, once it is made",
        example: "27 1/4 in",
        least: "5 in",
        most: "100 in",
      }),
    ),
    "other-waists": optional(
      list(
        "other waist seams that this gauging is to serve, set again on another edge without sewing its rows anew",
        block("one other waist seam", {
          waist: length({
            about: "finished waist seam, closed",
            example: "29 in",
            least: "5 in",
            most: "100 in",
          }),
        }),
        { most: 12 },
      ),
    ),
    band: BAND,
    "waist-edge": optional(WAIST_EDGE),
    piping: optional(PIPING),
    "flat-parts": optional(
      choice(["seam", "whip"], {
        about:
          "flat and pleated parts: one layer in the seam of the band or piping itself, or turned down and whipped; not given, in the seam where turned down they are more than 5 mm thick",
        example: "seam",
      }),
    ),
    whip: choice(["every", "every-other"], {
      about: "whip every pleat, or every other",
      example: "every",
      byDefault: byDefault("every"),
    }),
    "placket-hooks": choice(["one", "all-along"], {
      about: "one hook at the middle of the placket, or hooks all along",
      example: "one",
      byDefault: byDefault("one"),
    }),
    "hook-spacing": length({
      about: "from one hook to the next",
      example: "1 1/4 in",
      byDefault: byDefault("1 1/4 in", "3 cm"),
      fixed: true,
    }),
    opening: OPENING,
  },
  { always: true },
);
