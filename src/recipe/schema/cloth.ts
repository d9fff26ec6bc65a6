/** The cloth of the skirt. */
import { block, optional } from "../blocks.ts";
import { byDefault, choice, flag, text } from "../fields.ts";
import { count, length, share, weight } from "../measures.ts";

const REPEAT = { example: "3/4 in", above: "0 in", most: "100 in" } as const;

export const CLOTH = block("the cloth", {
  name: text({ about: "what the cloth is", example: "printed cotton", byDefault: byDefault("the cloth") }),
  fibre: optional(
    choice(["cotton", "linen", "wool", "silk", "mixed"], { about: "what it is made of", example: "cotton" }),
  ),
  "one-way": flag({
    about: "has it a nap, a shading or a print that runs one way, so that nothing may be turned end for end?",
    byDefault: byDefault("false"),
  }),
  shaded: optional(
    choice(["across", "along"], {
      about:
        "does its colour pass from light to dark, and which way: across the cloth from one selvedge to the other, or along it",
      example: "across",
    }),
  ),
  sheer: flag({ about: "can it be seen through?", byDefault: byDefault("false") }),
  width: length({
    about: "whole width, selvedge to selvedge",
    example: "44 in",
    least: "4 in",
    most: "120 in",
  }),
  selvedge: length({
    about: "width of one selvedge; 0 for a selvedge that is sewn into the seam",
    example: "1/4 in",
    byDefault: byDefault("0 in", "0 cm"),
    least: "0 in",
    most: "60 in",
  }),
  border: optional(
    block("a border woven or printed along the selvedge, where the cloth runs along the body", {
      depth: length({ about: "depth of the border", example: "9 in", above: "0 in", most: "100 in" }),
      edge: choice(["one", "both"], {
        about: "has one selvedge a border, or have both?",
        example: "one",
        byDefault: byDefault("one"),
      }),
      at: choice(["hem"], { about: "where it lies", example: "hem", byDefault: byDefault("hem") }),
      "from-edge": length({
        about: "from the outer edge of the cloth, its selvedge included, to the border's lower edge",
        example: "1 1/2 in",
        sameAs: "cloth.selvedge",
        least: "0 in",
        most: "100 in",
      }),
      "above-hem": optional(
        length({
          about:
            "the border's lower edge above the finished hem; not given, all the ground below the border is used",
          example: "1 in",
          least: "0 in",
          most: "100 in",
        }),
      ),
    }),
  ),
  thickness: optional(
    length({ about: "thickness of one layer", example: "0.25 mm", above: "0 mm", most: "20 mm" }),
  ),
  "ten-layers": optional(
    length({
      about: "thickness of ten layers laid together, in place of thickness",
      example: "2.5 mm",
      above: "0 mm",
      most: "200 mm",
    }),
  ),
  weight: optional(
    weight({ about: "weight by area", example: "120 g/m2", above: "0 g/m2", most: "3000 g/m2" }),
  ),
  repeat: optional(
    block("repeat of the checks, stripes or print", {
      across: optional(length({ about: "from one to the next across the cloth", ...REPEAT })),
      down: optional(length({ about: "from one to the next along the cloth", ...REPEAT })),
      match: flag({
        about: "shall every seam take so much that the pattern meets across it?",
        byDefault: byDefault("false"),
      }),
      "lines-lost": optional(
        count({
          about: "repeats lost in each seam at least, where the pattern meets",
          example: "2",
          least: "0",
          most: "100",
        }),
      ),
      dominant: optional(
        length({
          about:
            "the first dominant line, from inside the left selvedge, right side up: it is brought to centre front, where the pattern meets",
          example: "1/4 in",
          least: "0 in",
          most: "100 in",
        }),
      ),
    }),
  ),
  shrinkage: share({
    about: "share of its length that the cloth loses when it is first wetted",
    example: "3 %",
    byDefault: byDefault("0 %"),
    least: "0 %",
    most: "50 %",
  }),
  "bought-by": length({
    about: "the step that cloth is sold by",
    example: "1/8 yd",
    byDefault: byDefault("1/8 yd", "10 cm"),
    fixed: true,
  }),
});
