/** The numbers of a chapter that differ from size to size: each has a letter in the text and a row of the chapter's table. */
import { marked } from "../marks.ts";
import type { Print } from "./mask.ts";
import { sizesWord } from "./set.ts";

export interface KeyRow {
  readonly letter: string;
  /** What it is, or the words it stands among. */
  readonly about: string;
  /** What each size prints; nothing where it does not. */
  readonly prints: readonly (Print | undefined)[];
}

/** Without those that look like a figure. */
const LETTERS = [..."abcdefghjkmnpqrstuvwxyz"];

/**
 * Names of prints that only the form of all sizes has: `@row:2` a letter, `@col:2` a size's column, `@of:2:name` a size's value,
 * `@only:0,2` words that are for these sizes alone.
 */
export const ROW = "@row:";
export const COLUMN = "@col:";
export const OF = "@of:";
export const ONLY = "@only:";

export class Keys {
  readonly rows: KeyRow[] = [];
  private readonly letters: readonly string[];
  private readonly known = new Map<string, KeyRow>();

  /** @param taken letters that the chapter uses for other things */
  constructor(taken: ReadonlySet<string>) {
    const free = LETTERS.filter((letter) => !taken.has(letter));
    this.letters = [...free, ...LETTERS.flatMap((a) => LETTERS.map((b) => a + b))];
  }

  /** The letter for what each size prints, as a mark. */
  letter(about: string, prints: readonly (Print | undefined)[]): string {
    const named = prints.find((print) => print)?.name ?? "";
    const key = JSON.stringify([
      named,
      named === "" ? about : "",
      prints.map((print) => print?.text ?? null),
    ]);
    let row = this.known.get(key);
    if (!row) {
      row = { letter: this.letters[this.rows.length] as string, about, prints };
      this.rows.push(row);
      this.known.set(key, row);
    }
    return marked(`${ROW}${this.rows.indexOf(row)}`, `[${row.letter}]`);
  }
}

/** A size's print in its column. */
export const ofSize = (size: number, { name, text }: Print): string =>
  marked(name === "" ? "" : `${OF}${size}:${name}`, text);

/** "Sizes A to C", before what is for them alone. */
export const onlyFor = (sizes: readonly number[], names: readonly { readonly name: string }[]): string =>
  marked(`${ONLY}${sizes.join(",")}`, sizesWord(sizes, names));

/** The head of a size's column. */
export const columnHead = (size: number, name: string): string => marked(`${COLUMN}${size}`, name);
