/** src/recipe/README.md with its tables of keys renewed: the rest of the file is written by hand. */
import { keyTables } from "./tables.ts";

const BEGIN =
  "<!-- The tables from here are made by `npm run reference` out of the schema: change the schema, not them. -->";
const END = "<!-- The tables end here. -->";

/** The file's text with the tables of today. Throws where the two marks are not there. */
export function renewed(text: string): string {
  const begin = text.indexOf(BEGIN);
  const end = text.indexOf(END);
  if (begin < 0 || end < begin) throw new Error("README.md has lost the marks round its tables");
  return `${text.slice(0, begin + BEGIN.length)}\n\n${keyTables()}\n\n${text.slice(end)}`;
}
