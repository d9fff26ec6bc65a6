/** What can be said while writing a measure, a word or a date. */
import type { Said } from "./said.ts";

export const VALUES = {
  "bad-text": {
    means: "A text holds a line break or a character that cannot be printed.",
    do: "Take it out.",
  },
  "cannot-print": {
    means: "A text in as-made.yaml holds a character that cannot be printed.",
    do: "Take it out.",
  },
  limit: {
    means: "The value can be read, and is too small, too large or not whole.",
    do: "Check the number and its unit against what the message expects.",
  },
  "not-a-choice": {
    means: "Only one of a few words can stand here, and this is none of them.",
    do: "Take one of the words in the message.",
  },
  "not-a-date": {
    means: "An entry has no date, or one that is not read.",
    do: "Write year, month and day, as 2026-11-25.",
  },
  "not-a-flag": { means: "Only true or false can stand here.", do: "Write true or false." },
  "not-a-length": {
    means: "This is not a length.",
    do: "Write a number and its unit, as 26 1/2 in or 67.3 cm.",
  },
  "not-a-number": { means: "This is not a number.", do: "Write a number without a unit." },
  "not-a-rate": { means: "This is not a pace of work.", do: "Write it like the example in the message." },
  "not-a-share": { means: "This is not a share.", do: "Write it as 3 %." },
  "not-a-time": { means: "This is not a length of time.", do: "Write hours and minutes, as 1 h 20 min." },
  "not-a-weight": {
    means: "This is not a weight.",
    do: "Write cloth as 120 g/m2, and a garment as 3 lb or 1.4 kg.",
  },
  "not-a-year": { means: "This is not a year.", do: "Write four figures, from 1000 to 2100." },
  "not-money": {
    means: "This is not a sum of money, or not a currency.",
    do: "Write it like the example in the message.",
  },
} as const satisfies Readonly<Record<string, Said>>;
