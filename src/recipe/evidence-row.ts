/** One row of evidence.csv: a dated original. */
import { nearest } from "../quantity/nearest.ts";
import type { CsvCell } from "./csv.ts";
import { type Problem, quoted } from "./problem.ts";
import type { EvidenceRow, Fibre, Setting } from "./recipe.ts";

export const COLUMNS = ["year", "fibre", "sheer", "set", "seen", "note"] as const;
export type Column = (typeof COLUMNS)[number];

const SETTINGS: readonly Setting[] = [
  "gauged",
  "flat-front-gauged",
  "pleated-gauged-back",
  "pleated",
  "knife",
  "box",
  "double-box",
  "gathered",
  "flat",
  "other",
];
const FIBRES: readonly Fibre[] = ["cotton", "linen", "wool", "silk", "mixed"];
const YES_NO: readonly string[] = ["true", "false", "yes", "no"];
const CANNOT_PRINT = /[\p{Cc}\p{Co}\p{Cs}\u2028\u2029]/u;

export type Found =
  | { readonly row: EvidenceRow }
  | { readonly problems: readonly { readonly cell: CsvCell | undefined; readonly problem: Problem }[] };

/** A row by the places of its columns, or everything that is wrong with it. */
export function rowOf(cells: readonly CsvCell[], columns: ReadonlyMap<Column, number>): Found {
  const problems: { cell: CsvCell | undefined; problem: Problem }[] = [];
  const cellOf = (name: Column): CsvCell | undefined => cells[columns.get(name) ?? -1];
  const textOf = (name: Column): string => cellOf(name)?.text ?? "";
  const wrong = (name: Column, text: string, expected: string, hint: string): void => {
    problems.push({ cell: cellOf(name) ?? cells[0], problem: { code: "bad-row", text, expected, hint } });
  };
  if (cells.length > columns.size) {
    problems.push({
      cell: cells[columns.size],
      problem: {
        code: "bad-row",
        text: `this row has ${cells.length} cells and the first line ${columns.size}`,
        hint: 'put quotes round a text with a comma in it: "Museum, case 4"',
      },
    });
  }
  const yearText = textOf("year");
  const year = /^\d{4}$/.test(yearText) ? Number(yearText) : 0;
  if (year < 1000 || year > 2100) {
    wrong(
      "year",
      `${quoted(yearText)} is not a year`,
      "one year of four digits",
      "for a span write its middle year",
    );
  }
  const oneOf = <T extends string>(name: Column, words: readonly T[], needed: boolean): T | undefined => {
    const written = textOf(name).toLowerCase();
    const found = words.find((word) => word === written);
    if (found !== undefined || (written === "" && !needed)) return found;
    const near = nearest(written, words);
    const hint = near
      ? `did you mean ${near}?`
      : needed
        ? "write other when none fits"
        : "leave it empty when it is not known";
    wrong(name, `${quoted(textOf(name))} cannot stand under ${name}`, words.join(", "), hint);
    return undefined;
  };
  const fibre = oneOf("fibre", FIBRES, false);
  const sheer = oneOf("sheer", YES_NO, false);
  const set = oneOf("set", SETTINGS, true);
  for (const name of ["seen", "note"] as const) {
    if (CANNOT_PRINT.test(textOf(name))) {
      wrong(
        name,
        "there is a line break or a character that cannot be printed in this text",
        "one line of plain text",
        "take it out",
      );
    }
  }
  if (problems.length > 0 || set === undefined) return { problems };
  const [seen, note] = [textOf("seen"), textOf("note")];
  return {
    row: {
      year,
      set,
      ...(fibre ? { fibre } : {}),
      ...(sheer ? { sheer: sheer === "true" || sheer === "yes" } : {}),
      ...(seen ? { seen } : {}),
      ...(note ? { note } : {}),
    },
  };
}
