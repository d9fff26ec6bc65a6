/** The worked changes of DEVELOPERS.md, read and made: `+` a new line, `-` one that goes, ` ` one that stands, `@@` between two places. */
import { fencesOf } from "./papers.ts";

export interface Place {
  /** The lines as they are found, and as they stand afterwards. */
  readonly from: string;
  readonly to: string;
}

export interface Change {
  readonly file: string;
  readonly isNew: boolean;
  readonly places: readonly Place[];
}

function placeOf(lines: readonly string[]): Place {
  const those = (signs: string): string =>
    lines
      .filter((line) => signs.includes(line[0] ?? " "))
      .map((line) => `${line.slice(1)}\n`)
      .join("");
  return { from: those(" -"), to: those(" +") };
}

function changeOf(text: string): Change {
  const [head = "", ...lines] = text.replace(/\n$/, "").split("\n");
  const places: string[][] = [[]];
  for (const line of lines)
    if (line === "@@") places.push([]);
    else places.at(-1)?.push(line);
  return { file: head.slice(4), isNew: head.startsWith("+++"), places: places.map(placeOf) };
}

/** Every listing of the paper, as the changes of its files. */
export const worked = (paper: string): readonly (readonly Change[])[] =>
  fencesOf(paper)
    .filter(({ kind }) => kind === "diff")
    .map(({ text }) => text.split(/^(?=(?:---|\+\+\+) )/m).map(changeOf));

/** A file's text with a change made; a place that is not there, or not there alone, is an error. */
export function made(text: string, { file, isNew, places }: Change): string {
  if (isNew) {
    if (text !== "") throw new Error(`${file} is there already`);
    return places[0]?.to ?? "";
  }
  return places.reduce((now, { from, to }) => {
    const [before, after, ...more] = now.split(from);
    if (before === undefined || after === undefined) throw new Error(`${file} has no such place:\n${from}`);
    if (more.length > 0) throw new Error(`${file} has several such places:\n${from}`);
    return `${before}${to}${after}`;
  }, text);
}

/** All listings one after the other: the files they touch, as they stand in the end. */
export function allMade(paper: string, read: (file: string) => string): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const change of worked(paper).flat())
    files.set(change.file, made(files.get(change.file) ?? (change.isNew ? "" : read(change.file)), change));
  return files;
}
