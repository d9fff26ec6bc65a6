/** How wide words are, judged on the safe side (no font is asked), and how they are broken into lines. */

/** Widths in parts of the lettering's size, a little over those of the widest common sans-serif. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[ijl' \u00a0]/, 0.36],
  [/[I.,;f|!]/, 0.43],
  [/[tr()[\]/:\-"]/, 0.47],
  [/[mMW@%]/, 1],
  [/[wA-Z+=<>~×]/, 0.84],
  [/[ -~–½¼¾·]/, 0.645],
];
const UNKNOWN = 1.1;
const BOLD = 1.12;

/** An estimate of a line's width that real lettering does not pass. */
export function widthOf(text: string, size: number, bold = false): number {
  let width = 0;
  for (const letter of text) {
    width += WIDTHS.find(([letters]) => letters.test(letter))?.[1] ?? UNKNOWN;
  }
  return width * size * (bold ? BOLD : 1);
}

/** Words that must stay on one line: a number and its fraction and unit. */
const JOINED = /(\d) (?=\d+\/\d|in\b|cm\b|mm\b|yd\b|m\b|lb\b|%)/g;
const HARD_SPACE = "\u00a0";

/** Breaks text into lines no wider than `limit`; a word that is too long by itself is broken between letters. */
export function linesOf(text: string, limit: number, size: number, bold = false): string[] {
  const lines: string[] = [];
  let line = "";
  const fits = (words: string): boolean => widthOf(words, size, bold) <= limit;
  for (const word of text.replace(JOINED, `$1${HARD_SPACE}`).split(" ").filter(Boolean)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    line = "";
    for (const letter of word) {
      if (line !== "" && !fits(line + letter)) {
        lines.push(line);
        line = "";
      }
      line += letter;
    }
  }
  lines.push(line);
  return lines.map((done) => done.replaceAll(HARD_SPACE, " "));
}
