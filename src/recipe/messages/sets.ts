/** What can be said while making sizes, and a class. */
import type { Said } from "./said.ts";

export const SETS = {
  "class-nothing": {
    means: "Nothing is gauged or laid in pleats, so that there is no sampler to sew.",
    do: "Take the class out, or gauge or pleat a part.",
  },
  "sampler-narrower": {
    levels: ["warning", "note"],
    means: "The sampler comes out narrower than wished: one width of cloth gives no more pleats.",
    do: "Take wider cloth for the class if it is to be wider.",
  },
  "sampler-wide": {
    means: "Not two pleats of a sampler go into one width of cloth.",
    do: "Take the class out: its pleats are too deep for a sampler.",
  },
  "size-name": {
    means: "The name of a size cannot be a folder's, or two sizes would share one.",
    do: "Give each its own: letters, figures, spaces, full stops and hyphens.",
  },
} as const satisfies Readonly<Record<string, Said>>;
