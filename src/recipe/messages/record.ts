/** What can be said while recording what was made. */
import type { Said } from "./said.ts";

export const RECORD = {
  "another-garment": {
    means: "The record is of another garment.",
    do: "Give the folder of the garment that it is of.",
  },
  "cannot-add": {
    means: "Nothing can be added after what stands at the end of as-made.yaml.",
    do: "Write its entries one below the other, each after a hyphen, and end the file after the last.",
  },
  "damaged-record": { means: "The record breaks off or is damaged.", do: "Save it again from the page." },
  "not-a-record": {
    means: "The file is not a booklet's record.",
    do: "Save the record in the booklet's page, and give that file.",
  },
  "record-format": {
    means: "The record is of a format that this program does not read.",
    do: "Use the program that built the booklet, or a newer one.",
  },
  "record-unread": {
    levels: ["note"],
    means:
      "The record of another garment in the folder cannot be read, and your pace is reckoned without it.",
    do: "Check that garment to see what is wrong.",
  },
  "unknown-entry": {
    levels: ["warning"],
    means: "Something in the record is not known here, and was left out.",
    do: "Nothing has to be done; a newer program may know it.",
  },
} as const satisfies Readonly<Record<string, Said>>;
