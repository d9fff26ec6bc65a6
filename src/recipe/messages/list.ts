/**
 * Every message that the program can say, by what the maker was doing. It is one list, at the bottom, though solvers, notebooks
 * and the shelf say most of it: a code means the same in whichever layer says it, and a list of words looks up to nothing.
 */
import { ATTACH } from "./attach.ts";
import { CLOTH } from "./cloth.ts";
import { EVIDENCE } from "./evidence.ts";
import { FULLNESS } from "./fullness.ts";
import { NOTEBOOK } from "./notebook.ts";
import { ORIGINAL } from "./original.ts";
import { RECORD } from "./record.ts";
import type { Said } from "./said.ts";
import { SETS } from "./sets.ts";
import { SKIRT } from "./skirt.ts";
import { TEXT } from "./text.ts";
import { VALUES } from "./values.ts";
import { WEARER } from "./wearer.ts";

export interface Group {
  readonly title: string;
  readonly about: string;
  readonly codes: Readonly<Record<string, Said>>;
}

export const GROUPS: readonly Group[] = [
  {
    title: "Writing the file",
    about: "The file itself cannot be read as it stands, or something in its form is not a recipe's.",
    codes: TEXT,
  },
  {
    title: "Writing a measure, a word or a date",
    about: "The key is right, and what stands after it cannot be read or cannot be meant.",
    codes: VALUES,
  },
  { title: "Measuring the wearer", about: "Waist, lengths to the floor, the hoop.", codes: WEARER },
  {
    title: "Choosing the cloth",
    about: "Its width and thickness, its pattern, its border and its shading.",
    codes: CLOTH,
  },
  {
    title: "Planning breadths, hem, trimmings and pocket",
    about: "How the skirt is cut and made up, below its waist.",
    codes: SKIRT,
  },
  { title: "Setting the fullness", about: "Gauging, pleats, zones, rows and the trial.", codes: FULLNESS },
  {
    title: "Setting to the waist, and closing",
    about: "Band, bodice edge, opening, hooks, other waists.",
    codes: ATTACH,
  },
  {
    title: "Writing a notebook or a wording",
    about: "What stands below the measures, and files in templates/.",
    codes: NOTEBOOK,
  },
  {
    title: "Keeping a list of originals",
    about: "The file evidence.csv beside the recipe.",
    codes: EVIDENCE,
  },
  {
    title: "Measuring an original",
    about: "The sheet original.yaml, and what its measures say against each other.",
    codes: ORIGINAL,
  },
  {
    title: "Recording what was made",
    about: "The record that a booklet's page saves, and as-made.yaml.",
    codes: RECORD,
  },
  {
    title: "Making sizes, and a class",
    about: "Several sizes of one garment, and the class's sampler.",
    codes: SETS,
  },
];
