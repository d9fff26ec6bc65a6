/** How the list of dated originals beside the recipe is counted. */
import { block } from "../blocks.ts";
import { byDefault, flag } from "../fields.ts";
import { count } from "../measures.ts";

export const EVIDENCE = block("how the originals in evidence.csv are counted", {
  window: count({
    about: "years before and after the recipe's year that are counted",
    example: "5",
    byDefault: byDefault("5"),
    least: "0",
    most: "100",
  }),
  "skip-bad-rows": flag({
    about: "leave out rows that cannot be read, with a warning, instead of refusing them",
    byDefault: byDefault("false"),
  }),
});
