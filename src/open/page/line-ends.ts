/** Line ends of a file, kept as they are. An editor ends every line alike; a file from elsewhere may end them otherwise. */

export interface LineEnds {
  /** What parts lines in the editor; what does not, stays a character of its line. */
  readonly separator: "\n";
  /** The file's text as the editor holds it. */
  read(text: string): string;
  /** The editor's text as the file holds it. */
  written(text: string): string;
}

/** Half of a letter that takes two cannot be written to a file. */
const whole = (text: string): string => text.replace(/\p{Cs}/gu, "\uFFFD");

/** By a file's text: all `\r\n`, or otherwise `\n` and anything else as it stands. */
export function lineEndsOf(text: string): LineEnds {
  const isWindows = /\r\n/.test(text) && !/(?:^|[^\r])\n|\r(?!\n)/.test(text);
  return isWindows
    ? {
        separator: "\n",
        read: (text) => text.replaceAll("\r\n", "\n"),
        written: (text) => whole(text).replaceAll("\n", "\r\n"),
      }
    : { separator: "\n", read: (text) => text, written: whole };
}
