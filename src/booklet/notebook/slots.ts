/** Places in a body's text that are filled after it is rendered: workings blocks and chapters. No recipe may hold these characters. */

const WORKINGS = "\uE010";
const CHAPTER = "\uE011";
const END = "\uE012";

export const workingsSlot = (block: number): string => `${WORKINGS}${block}${END}`;

/** A chapter stands between blank lines. */
export const chapterSlot = (name: string): string => `\n\n${CHAPTER}${name}${END}\n\n`;

/** Text with every workings block put in, between blank lines. */
export const fillWorkings = (text: string, show: (block: number) => string): string =>
  text.replace(/\uE010(\d+)\uE012/g, (_, block: string) => `\n\n${show(Number(block))}\n\n`);

export type Piece = { readonly prose: string } | { readonly chapter: string };

/** A text cut at its chapters: prose and names of chapters in turn; prose that is blank is left out. */
export function cutAtChapters(text: string): Piece[] {
  return text.split(/(\uE011[^\uE012]*\uE012)/).flatMap((piece): Piece[] => {
    if (piece.startsWith(CHAPTER)) return [{ chapter: piece.slice(1, -1) }];
    return piece.trim() === "" ? [] : [{ prose: piece }];
  });
}

/** Characters that texts may not hold: they carry marks and slots, or cannot be printed. */
export const FORBIDDEN = /[\p{Co}\p{Cs}\u2028\u2029]|[^\P{Cc}\t\r\n]/u;
