/** What lies behind the cloth: a lining, and an interlining mounted on the cloth. */
import { block, optional } from "../blocks.ts";
import { byDefault, choice, text } from "../fields.ts";
import { length, share, weight } from "../measures.ts";

const SEPARATE = { path: "lining.to", is: ["separate"] } as const;

/** What is asked of either cloth. */
const ofCloth = (name: string, example: string) => ({
  name: text({ about: `what the ${name} is`, example, byDefault: byDefault(`the ${name}`) }),
  width: length({
    about: "its whole width, selvedge to selvedge",
    example: "36 in",
    least: "4 in",
    most: "120 in",
  }),
  selvedge: length({
    about: "width of one of its selvedges",
    example: "1/4 in",
    byDefault: byDefault("0 in", "0 cm"),
    least: "0 in",
    most: "60 in",
  }),
  thickness: length({ about: "thickness of one layer", example: "0.2 mm", above: "0 mm", most: "20 mm" }),
  shrinkage: share({
    about: "share of its length that it loses when it is first wetted",
    example: "3 %",
    byDefault: byDefault("0 %"),
    least: "0 %",
    most: "50 %",
  }),
});

const WEIGHT = { about: "weight by area", example: "110 g/m2", above: "0 g/m2", most: "3000 g/m2" } as const;

export const LINING = block("a lining", {
  kind: choice(["hung", "flat"], {
    about:
      "hung: sewn up in breadths of its own width and hung inside; flat: tacked to every breadth and sewn up with it as one cloth",
    example: "hung",
    byDefault: byDefault("hung"),
  }),
  to: choice(["fold", "turned", "separate"], {
    about:
      "where it ends at the top: at the fold, under the turn-down; turned down with the cloth; or separate, joined only at the waist (a hung one)",
    example: "fold",
    byDefault: byDefault("fold"),
  }),
  ...ofCloth("lining", "brown polished cotton"),
  weight: optional(weight(WEIGHT)),
  hem: length({
    about: "depth of its own hem, where it is joined only at the waist",
    example: "1 in",
    byDefault: byDefault("1 in", "2.5 cm"),
    above: "0 in",
    most: "20 in",
    when: SEPARATE,
  }),
  shorter: length({
    about: "how much shorter than the garment it hangs, where it is joined only at the waist",
    example: "1 in",
    byDefault: byDefault("1 in", "2.5 cm"),
    least: "0 in",
    most: "20 in",
    when: SEPARATE,
  }),
});

export const INTERLINING = block("an interlining, tacked to the wrong side of every breadth", {
  to: choice(["short", "fold", "turned"], {
    about:
      "where it ends at the top: short, below the rows and out of the pleats; at the fold; or turned down with the cloth",
    example: "short",
    byDefault: byDefault("short"),
  }),
  ...ofCloth("interlining", "cotton flannel"),
  weight: optional(weight(WEIGHT)),
});
