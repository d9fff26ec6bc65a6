/** Sheets of one page that are made beside the booklet: for a client, and for a class. */
import { block, optional } from "../blocks.ts";
import { byDefault, text } from "../fields.ts";
import { count, length } from "../measures.ts";
import { money } from "../money.ts";

const WITHIN = {
  example: "1/4 in",
  byDefault: byDefault("1/4 in", "6 mm"),
  above: "0 in",
  most: "4 in",
} as const;

/** Its keys hold without being written where the sheet is asked for in `publish`. */
const asked = (sheet: string) => ({ alwaysWhen: { path: `publish.${sheet}`, is: ["true"] } });

export const COMMISSION = block(
  "a commission sheet: what client and maker agree, on one page; written, it is made unless publish says no",
  {
    use: optional(
      text({ about: "what the garment is to be worn for", example: "dancing indoors, two evenings" }),
    ),
    brings: optional(
      text({
        about: "what the client brings to every fitting, beside the shoes and what is worn beneath",
        example: "the bodice",
      }),
    ),
    "hem-within": length({ about: "how far the finished hem may be out, either way", ...WITHIN }),
    "waist-within": length({ about: "how far the closed waist may be out, either way", ...WITHIN }),
    deposit: optional(
      money({ about: "paid before the cloth is cut, in the currency of the prices", example: "60.00" }),
    ),
  },
  asked("commission"),
);

export const CLASS = block(
  "a class sheet: a sampler by this garment's own numbers for so many pupils, on one page; written, it is made unless publish says no",
  {
    pupils: count({
      about: "pupils in the class",
      example: "12",
      byDefault: byDefault("8"),
      least: "1",
      most: "200",
    }),
    sampler: length({
      about: "finished width of each pupil's sampler, to the nearest whole pleat",
      example: "5 in",
      byDefault: byDefault("6 in", "15 cm"),
      above: "0 in",
      most: "40 in",
    }),
    ends: length({
      about: "plain cloth left beside the pleats at each end of a sampler",
      example: "1 in",
      byDefault: byDefault("1 in", "2.5 cm"),
      fixed: true,
    }),
  },
  asked("class"),
);
