/** The skirt below its waist: breadths, seams, hem and trimmings. */
import { block, optional } from "../blocks.ts";
import { byDefault, choice, flag } from "../fields.ts";
import { MOST_BREADTHS } from "../limits.ts";
import { count, halves, length, number } from "../measures.ts";

const TURNED = { path: "skirt.hem.kind", is: ["turned"] } as const;
const PETTICOAT = { path: "garment", is: ["petticoat"] } as const;
const ALONG = { path: "skirt.run", is: ["along"] } as const;
const POCKET = { path: "skirt.pocket", is: ["true"] } as const;

const HEM = block(
  "the hem",
  {
    kind: choice(["faced", "turned"], {
      about: "finished with a facing strip, or turned up on itself",
      example: "faced",
      byDefault: byDefault("faced"),
    }),
    depth: length({
      about: "finished depth of the facing or of the turned hem",
      example: "4 in",
      byDefault: [
        { in: "3 in", cm: "7.5 cm", when: TURNED },
        { in: "4 in", cm: "10 cm" },
      ],
      above: "0 in",
      most: "40 in",
    }),
    cloth: choice(["own", "other"], {
      about: "facing cut from the skirt's own cloth, or from another",
      example: "own",
      byDefault: byDefault("own"),
      when: { path: "skirt.hem.kind", is: ["faced"] },
    }),
    edge: choice(["cut", "selvedge"], {
      about:
        "where a faced hem of cloth that runs along the body ends: in a cut edge that is turned in, or in the selvedge as it is woven",
      example: "cut",
      byDefault: byDefault("cut"),
      when: ALONG,
    }),
    "turn-in": length({
      about: "turned in at the raw edge of a turned hem",
      example: "1/4 in",
      byDefault: byDefault("1/4 in", "6 mm"),
      when: TURNED,
      fixed: true,
    }),
  },
  { always: true },
);

const TUCKS = block("tucks above the hem", {
  count: count({ about: "how many", example: "3", least: "1", most: "50" }),
  depth: length({ about: "depth of one, folded", example: "1/2 in", above: "0 in", most: "20 in" }),
  clear: length({
    about: "clearance of the highest tuck below the opening and the pocket",
    example: "1 in",
    byDefault: byDefault("1 in", "2.5 cm"),
    fixed: true,
  }),
});

const FLOUNCES = block("flounces", {
  count: count({ about: "how many", example: "2", least: "1", most: "20" }),
  depth: length({ about: "finished depth of one", example: "11 in", above: "0 in", most: "60 in" }),
  fullness: number({
    about: "length of a flounce for one of the garment's round",
    example: "4/3",
    byDefault: byDefault("4/3"),
    least: "1",
    most: "6",
  }),
  cut: choice(["straight", "cross"], {
    about: "cut across the cloth on the straight grain, or on the true bias",
    example: "straight",
    byDefault: byDefault("straight"),
  }),
  "above-hem": length({
    about: "lowest edge of the lowest flounce, above the hem edge",
    example: "1/2 in",
    byDefault: byDefault("1/2 in", "12 mm"),
    fixed: true,
  }),
  lap: length({
    about: "how far a flounce hangs over the heading of the one below it",
    example: "1 1/4 in",
    byDefault: byDefault("1 1/4 in", "3 cm"),
    fixed: true,
  }),
  clear: length({
    about: "clearance of the highest heading below the opening and the pocket",
    example: "1 in",
    byDefault: byDefault("1 in", "2.5 cm"),
    fixed: true,
  }),
});

/** A measure of the pocket: it has an effect only where there is one. */
const ofPocket = (about: string, inInches: string, inCm: string) =>
  length({ about, example: inInches, byDefault: byDefault(inInches, inCm), fixed: true, when: POCKET });

export const SKIRT = block("the skirt", {
  run: choice(["down", "along"], {
    about:
      "which way the cloth's length runs: down the body in breadths, or along it, round the wearer, its width from hem to top",
    example: "down",
    byDefault: byDefault("down"),
  }),
  lengths: count({
    about: "lengths of cloth joined into the round, where the cloth runs along the body",
    example: "2",
    byDefault: byDefault("1"),
    least: "1",
    most: "20",
    when: ALONG,
  }),
  breadths: optional(
    halves({
      about: "breadths of cloth, whole or with a half",
      example: "4",
      least: "1/2",
      most: String(MOST_BREADTHS),
    }),
  ),
  round: optional(
    length({
      about: "wished round, in place of breadths: the fewest half breadths that reach it are taken",
      example: "165 in",
      least: "5 in",
      most: "3000 in",
    }),
  ),
  "centre-front": optional(
    choice(["seam", "breadth"], {
      about: "what stands at centre front; not given, a seam stands at centre back whenever it can",
      example: "seam",
    }),
  ),
  seam: length({
    about: "seam allowance, counted from inside the selvedge",
    example: "1/2 in",
    byDefault: byDefault("1/2 in", "1.5 cm"),
    above: "0 in",
    most: "4 in",
  }),
  "off-floor": length({
    about: "height of the finished hem above the floor, the same everywhere",
    example: "2 in",
    byDefault: [
      { in: "3 1/2 in", cm: "9 cm", when: PETTICOAT },
      { in: "2 in", cm: "5 cm" },
    ],
    least: "0 in",
    most: "75 in",
  }),
  hem: HEM,
  braid: flag({ about: "braid along the hem edge", byDefault: byDefault("false") }),
  "turn-down": optional(
    length({
      about: "least turn-down at the top; not given, it follows from the rows",
      example: "1 1/2 in",
      above: "0 in",
      most: "20 in",
    }),
  ),
  "least-turn-down": length({
    about: "least turn-down when none is given and the rows need no more",
    example: "1 in",
    byDefault: byDefault("1 in", "25 mm"),
    fixed: true,
  }),
  placket: length({
    about: "length of the finished opening",
    example: "10 in",
    byDefault: byDefault("10 in", "25 cm"),
    above: "0 in",
    most: "40 in",
  }),
  pocket: flag({ about: "a pocket in the seam", byDefault: byDefault("false") }),
  "pocket-below": ofPocket("head of the pocket's slit, below the waist seam", "2 1/2 in", "6.5 cm"),
  "pocket-slit": ofPocket("length of the pocket's slit", "6 in", "15 cm"),
  "pocket-length": ofPocket("finished length of the pocket's bag", "12 in", "30 cm"),
  "pocket-width": ofPocket("finished width of the pocket's bag", "6 in", "15 cm"),
  "pocket-facing": ofPocket("finished width of the facing inside the pocket's mouth", "2 in", "5 cm"),
  tucks: optional(TUCKS),
  flounces: optional(FLOUNCES),
});
