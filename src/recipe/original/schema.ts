/** Every key of original.yaml: what can be measured of a garment that survives, without undoing a stitch. */
import type * as v from "valibot";
import { block, list, optional } from "../blocks.ts";
import { byDefault, choice, flag, text } from "../fields.ts";
import { count, halves, length, year } from "../measures.ts";
import { OPENINGS } from "../schema/attach.ts";

const ROUND = { above: "0 in", most: "1200 in" } as const;
const TALL = { least: "5 in", most: "80 in" } as const;
const WAIST = { least: "5 in", most: "100 in" } as const;
const SMALL = { above: "0 in", most: "4 in" } as const;

/** One length at the front, the sides and the back. */
const atFour = (
  about: string,
  of: { readonly example: string; above?: string; least?: string; most: string },
) =>
  block(about, {
    front: length({ about: "at centre front", ...of }),
    side: optional(length({ about: "at both sides", ...of })),
    left: optional(length({ about: "at the wearer's left, for unlike sides", ...of })),
    right: optional(length({ about: "at the wearer's right, for unlike sides", ...of })),
    back: optional(length({ about: "at centre back", ...of })),
  });

/** Things counted along a short length at three places. */
const counted = (what: string) => {
  const at = (place: string) =>
    optional(halves({ about: `${what} in that length, ${place}`, example: "9", least: "1/2", most: "400" }));
  return block(`${what}, counted along the waist seam`, {
    over: length({
      about: "along which length each count is taken",
      example: "1 in",
      byDefault: byDefault("1 in", "2 cm"),
      above: "0 in",
      most: "20 in",
    }),
    front: at("near centre front"),
    side: at("at the side"),
    back: at("near centre back"),
  });
};

const BREADTHS = list(
  "the breadths round the hem from centre front by the wearer's left, each from seam to seam",
  block("breadths of one width", {
    width: length({
      about: "from seam to seam along the hem",
      example: "43 in",
      above: "0 in",
      most: "200 in",
    }),
    count: count({
      about: "how many of this width stand side by side",
      example: "4",
      byDefault: byDefault("1"),
      least: "1",
      most: "40",
    }),
  }),
  { most: 40 },
);

export const ORIGINAL = block("what was measured of an original", {
  original: choice(["1"], { about: "number of the sheet's format", example: "1" }),
  title: text({ about: "what the original is called here", example: "Brown print, town museum" }),
  year: year({ about: "the year it is dated to", example: "1846" }),
  seen: optional(text({ about: "where it was seen, and its number there", example: "town museum, 1-23" })),
  note: optional(text({ about: "what else was seen", example: "hem faced with brown cotton" })),
  garment: choice(["skirt", "petticoat"], {
    about: "what it is",
    example: "skirt",
    byDefault: byDefault("skirt"),
  }),
  show: choice(["in", "cm"], { about: "how lengths are printed", example: "in", byDefault: byDefault("in") }),
  tape: length({
    about: "smallest mark of the tape it was measured with",
    example: "1/16 in",
    byDefault: byDefault("1/16 in", "1 mm"),
    least: "1/128 in",
    most: "1 in",
  }),
  cloth: block(
    "the cloth",
    {
      fibre: optional(
        choice(["cotton", "linen", "wool", "silk", "mixed"], {
          about: "what it is spun of",
          example: "cotton",
        }),
      ),
      sheer: flag({ about: "can it be seen through?", byDefault: byDefault("false") }),
      width: optional(
        length({
          about: "from selvedge to selvedge, where both are seen",
          example: "44 in",
          above: "0 in",
          most: "200 in",
        }),
      ),
      selvedge: optional(
        length({ about: "width of one selvedge", example: "1/4 in", least: "0 in", most: "10 in" }),
      ),
      thickness: optional(
        length({
          about: "one layer, where it can be told",
          example: "0.25 mm",
          above: "0 mm",
          most: "20 mm",
        }),
      ),
    },
    { always: true },
  ),
  breadths: BREADTHS,
  seam: optional(
    length({ about: "seam allowance, seen inside, from inside the selvedge", example: "1/2 in", ...SMALL }),
  ),
  "hem-round": length({ about: "round the hem, along its edge", example: "172 in", ...ROUND }),
  set: choice(["gauged", "flat-front-gauged", "pleated-gauged-back", "pleated"], {
    about: "how the fullness is set to the waist",
    example: "gauged",
    byDefault: byDefault("gauged"),
  }),
  "flat-front": optional(
    length({
      about: "with flat-front-gauged: waist left plain, both halves together",
      example: "5 in",
      above: "0 in",
      most: "100 in",
    }),
  ),
  "gauged-back": optional(
    length({
      about: "with pleated-gauged-back: waist gauged, both halves together",
      example: "6 in",
      above: "0 in",
      most: "100 in",
    }),
  ),
  face: optional(length({ about: "what shows of one laid pleat at the waist", example: "3/4 in", ...SMALL })),
  pleats: optional(counted("gauged pleats")),
  "pleats-in-all": optional(
    count({ about: "gauged pleats all round, counted one by one", example: "220", least: "2", most: "4000" }),
  ),
  whips: optional(counted("whip stitches")),
  bite: optional(
    block("stitches of the gauging, where a thread is seen", {
      inside: length({ about: "one stitch seen inside", example: "1/4 in", ...SMALL }),
      outside: optional(length({ about: "one stitch seen outside", example: "1/4 in", ...SMALL })),
    }),
  ),
  rows: optional(count({ about: "rows of gauging", example: "2", least: "2", most: "6" })),
  "first-row": optional(length({ about: "first row below the fold", example: "1/4 in", ...SMALL })),
  "between-rows": optional(length({ about: "from one row to the next", example: "1/4 in", ...SMALL })),
  waist: length({ about: "waist seam, closed, along the skirt's edge", example: "27 1/2 in", ...WAIST }),
  lengths: atFour("from the waist seam to the hem's edge", { example: "38 in", ...TALL }),
  fold: optional(
    atFour("how deep the top is folded in, from the fold to its raw edge", {
      example: "3 1/2 in",
      above: "0 in",
      most: "40 in",
    }),
  ),
  hem: block(
    "the hem",
    {
      kind: optional(choice(["faced", "turned"], { about: "how it is finished", example: "faced" })),
      depth: optional(
        length({ about: "depth of facing or turning", example: "4 in", above: "0 in", most: "40 in" }),
      ),
      facing: choice(["own", "other"], {
        about: "is it faced with its own cloth?",
        example: "own",
        byDefault: byDefault("own"),
      }),
      braid: flag({ about: "is there braid at its edge?", byDefault: byDefault("false") }),
    },
    { always: true },
  ),
  edge: block(
    "what the skirt is set to",
    {
      to: choice(["waistband", "bodice-edge", "part-band"], {
        about: "a band, the bodice's edge, or both",
        example: "waistband",
        byDefault: byDefault("waistband"),
      }),
      depth: optional(
        length({ about: "finished depth of the band", example: "1 1/4 in", above: "0 in", most: "12 in" }),
      ),
      lap: optional(
        length({ about: "band that passes under or over", example: "1 in", least: "0 in", most: "40 in" }),
      ),
      cord: optional(
        length({ about: "thickness of a piping's cord", example: "1/16 in", above: "0 in", most: "1 in" }),
      ),
      opening: choice(OPENINGS, {
        about: "where it opens; left and right are the wearer's",
        example: "centre-back",
        byDefault: byDefault("centre-back"),
      }),
      "from-centre": optional(
        length({
          about: "with front-left or front-right: how far from centre front",
          example: "5 in",
          above: "0 in",
          most: "100 in",
        }),
      ),
      placket: optional(
        length({ about: "length of the opening", example: "10 in", above: "0 in", most: "60 in" }),
      ),
      closing: optional(text({ about: "how it closes", example: "three hooks and thread eyes" })),
    },
    { always: true },
  ),
  wearer: optional(
    block("another body that it is to be carried to", {
      name: optional(text({ about: "a code for her", example: "W-14" })),
      waist: length({ about: "her waist over everything worn beneath", example: "30 in", ...WAIST }),
      ease: length({
        about: "added to her waist",
        example: "1/2 in",
        byDefault: byDefault("0 in", "0 cm"),
        least: "-100 in",
        most: "100 in",
      }),
      lengths: atFour("from her waist seam to where the hem is to hang", { example: "39 in", ...TALL }),
      keep: choice(["pitch", "breadths", "ratio"], {
        about:
          "what stays as it was: the bites and the pleats an inch, the breadths, or the fullness; the recipe is written by it",
        example: "pitch",
        byDefault: byDefault("pitch"),
      }),
    }),
  ),
  "off-floor": length({
    about: "assumed height of the hem above the floor",
    example: "2 in",
    byDefault: byDefault("2 in", "5 cm"),
    least: "0 in",
    most: "40 in",
  }),
});

/** original.yaml with every text read and every default filled in. */
export type Original = v.InferOutput<typeof ORIGINAL>;
