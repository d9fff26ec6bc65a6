/** Every key of a recipe's front matter, in the order of the reference. */
import type * as v from "valibot";
import { block, optional } from "../blocks.ts";
import { byDefault, choice, text } from "../fields.ts";
import { length, version, year } from "../measures.ts";
import { ATTACH } from "./attach.ts";
import { CLOTH } from "./cloth.ts";
import { EVIDENCE } from "./evidence.ts";
import { FULLNESS } from "./fullness.ts";
import { INTERLINING, LINING } from "./lining.ts";
import { PUBLISH } from "./publish.ts";
import { CLASS, COMMISSION } from "./sheets.ts";
import { SIZES } from "./sizes.ts";
import { SKIRT } from "./skirt.ts";
import { WEARER } from "./wearer.ts";
import { WORK } from "./work.ts";

/** The blocks of the front matter by their key. */
export const BLOCKS = {
  wearer: WEARER,
  cloth: CLOTH,
  lining: optional(LINING),
  interlining: optional(INTERLINING),
  skirt: SKIRT,
  fullness: FULLNESS,
  attach: ATTACH,
  work: WORK,
  evidence: optional(EVIDENCE),
  publish: optional(PUBLISH),
  commission: optional(COMMISSION),
  class: optional(CLASS),
  sizes: optional(SIZES),
} as const;

export const FRONT_MATTER = block("a recipe's measures", {
  recipe: version({ about: "number of the recipe's format", example: "1" }),
  title: text({ about: "what the garment is called", example: "Blue printed cotton" }),
  garment: choice(["skirt", "petticoat"], {
    about: "what is made",
    example: "skirt",
    byDefault: byDefault("skirt"),
  }),
  year: optional(year({ about: "the year it is made after", example: "1846" })),
  show: choice(["in", "cm"], {
    about: "how lengths are printed",
    example: "in",
    byDefault: byDefault("in"),
  }),
  tape: length({
    about: "smallest mark of the tape that is worked to",
    example: "1/16 in",
    byDefault: byDefault("1/16 in", "1 mm"),
    least: "1/128 in",
    most: "1 in",
  }),
  ...BLOCKS,
});

/** The front matter with every text read and every default filled in. */
export type Filled = v.InferOutput<typeof FRONT_MATTER>;
