/** What of a text with number marks is the same in every size: its words, whatever its numbers. */
import { MARKED, marked } from "../marks.ts";

/** A piece of a text: the template's own words, or what it printed. */
export type Piece = string | Print;

export interface Print {
  /** The value's name; "" where it is no value of the plan. */
  readonly name: string;
  readonly text: string;
}

/** A text with number marks cut into its pieces. */
export function piecesOf(text: string): Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  for (const match of text.matchAll(MARKED)) {
    if (match.index > at) pieces.push(text.slice(at, match.index));
    pieces.push({ name: match[1] as string, text: match[2] as string });
    at = match.index + match[0].length;
  }
  if (at < text.length) pieces.push(text.slice(at));
  return pieces;
}

export const printsOf = (text: string): Print[] =>
  piecesOf(text).filter((piece): piece is Print => typeof piece !== "string");

/** A text of pieces again. */
export const textOf = (pieces: readonly Piece[]): string =>
  pieces.map((piece) => (typeof piece === "string" ? piece : marked(piece.name, piece.text))).join("");

const NUMBER = /\d+(?:[ \u00a0]\d+\/\d+|\/\d+|\.\d+)?/g;
/** Numbers with their units, several of them side by side, are one number. */
const MEASURES =
  /#(?:[ \u00a0]?(?:ft|in|yd|cm|mm|m|lb|kg|oz\/yd2|g\/m2|g|h|min|s|%|: #)(?![\p{L}\d]))*(?:[ \u00a0]\(?#(?:[ \u00a0]?(?:in|cm|kg|lb|min)(?![\p{L}\d]))*\)?)*/gu;

/** "about 10" is a number as 11 is; so is a list of so many of each. */
const ABOUT = /\b(?:about|nearly|under|over|up to) (?=#)/g;
const LIST = /# of #(?:(?:, | and )# of #)+/g;

/** The words of a print, its numbers as #. */
export const wordsOf = (text: string): string =>
  text.replace(NUMBER, "#").replace(MEASURES, "#").replace(ABOUT, "").replace(LIST, "# of #");

/** A text as a key: the same wherever only numbers differ. */
export const keyOf = (text: string): string =>
  textOf(
    piecesOf(text).map((piece) =>
      typeof piece === "string" ? piece : { name: piece.name, text: wordsOf(piece.text) },
    ),
  );
