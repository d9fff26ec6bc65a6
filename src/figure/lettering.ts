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
/** Widths already looked up: of common letters by their code, of others by letter. */
const COMMON = new Float64Array(256);
const KNOWN = new Map<string, number>();
const BOLD = 1.12;

/** An estimate of a line's width that real lettering does not pass. */
export function widthOf(text: string, size: number, bold = false): number {
  let width = 0;
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    if (code < COMMON.length) width += COMMON[code] || lookedUp(text[i] as string);
    else {
      const letter = String.fromCodePoint(text.codePointAt(i) as number);
      width += KNOWN.get(letter) ?? lookedUp(letter);
      i += letter.length - 1;
    }
  }
  return width * size * (bold ? BOLD : 1);
}

function lookedUp(letter: string): number {
  const width = WIDTHS.find(([letters]) => letters.test(letter))?.[1] ?? UNKNOWN;
  if (letter.charCodeAt(0) < COMMON.length) COMMON[letter.charCodeAt(0)] = width;
  else KNOWN.set(letter, width);
  return width;
}

/** Words that must stay on one line: a number and its fraction and unit. */
const JOINED = /(\d) (?=\d+\/\d|in\b|cm\b|mm\b|yd\b|m\b|lb\b|%)/g;
const HARD_SPACE = "\u00a0";

/** A text whose numbers stay on one line with their fractions and units. */
export const unbroken = (text: string): string => text.replace(JOINED, `$1${HARD_SPACE}`);

/** What a line may be broken between; a number with its fraction and unit is one word. */
const wordsOf = (text: string): string[] => unbroken(text).split(" ").filter(Boolean);

/** The width of the widest word in a text: below it lines cannot be broken without breaking a word. */
export const widestWord = (text: string, size: number, bold = false): number =>
  Math.max(0, ...wordsOf(text).map((word) => widthOf(word, size, bold)));

/** The longest number with its unit that there is: it is never broken, whatever the limit. */
const MEASURE = /^\d{1,4}(\u00a0\d{1,2}\/\d{1,2}|\/\d{1,2}|\.\d{1,3})?(\u00a0(in|cm|mm|yd|m|lb|%))?[,:;.]?$/;

/**
 * Breaks text into lines no wider than `limit`. A word that is too long by itself is broken between letters, but a
 * measure never is: a line of its own may then be wider.
 */
export function linesOf(text: string, limit: number, size: number, bold = false): string[] {
  const lines: string[] = [];
  let line = "";
  // Widths add up, so a line's own is kept while it grows; only what is too wide is looked at again.
  let width = 0;
  const space = widthOf(" ", size, bold);
  const fits = (words: string): boolean => widthOf(words, size, bold) <= limit || MEASURE.test(words);
  for (const word of wordsOf(text)) {
    const own = widthOf(word, size, bold);
    const longer = line === "" ? own : width + space + own;
    if (longer <= limit || (line === "" && MEASURE.test(word))) {
      line = line === "" ? word : `${line} ${word}`;
      width = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    line = "";
    width = 0;
    if (fits(word)) {
      line = word;
      width = own;
      continue;
    }
    for (const letter of word) {
      if (line !== "" && !fits(line + letter)) {
        lines.push(line);
        line = "";
      }
      line += letter;
    }
    width = widthOf(line, size, bold);
  }
  lines.push(line);
  return lines.map((done) => done.replaceAll(HARD_SPACE, " "));
}
