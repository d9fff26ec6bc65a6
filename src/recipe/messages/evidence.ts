/** What can be said while keeping a list of originals. */
import type { Said } from "./said.ts";

export const EVIDENCE = {
  "bad-row": {
    levels: ["error", "warning"],
    means: "A row cannot be read; where the recipe says so, it is passed over.",
    do: "Mend the cell that is shown.",
  },
  "column-twice": { means: "A column stands twice.", do: "Take one of the two out." },
  "csv-quote": {
    means: "A quote is opened and not closed.",
    do: "Close it; a quote inside a text is doubled.",
  },
  "little-evidence": {
    levels: ["warning"],
    means: "Few originals near this garment's year are in the list.",
    do: "Look at more, or read the interval and not the share.",
  },
  "no-columns": {
    means: "The first line does not name the columns that the list needs.",
    do: "Write year,fibre,sheer,set,seen,note as its first line.",
  },
  "no-evidence": {
    levels: ["warning"],
    means: "The recipe says how originals are counted, and there is no evidence.csv.",
    do: "Put the list beside the recipe.",
  },
  "unknown-column": {
    means: "The list does not know this column.",
    do: "Take the name that is offered, or put it into note.",
  },
} as const satisfies Readonly<Record<string, Said>>;
