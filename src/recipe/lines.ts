/** Offsets in a file's text to lines and columns, both from 1. Columns count UTF-16 units, as editors' carets do. */
import type { Place } from "./message.ts";

/** Offsets at which the lines of a text start; a line ends with \n or \r\n. */
export function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return starts;
}

/** A file's text with its lines found once. */
export class Source {
  readonly file: string;
  readonly text: string;
  private readonly starts: readonly number[];

  constructor(file: string, text: string) {
    this.file = file;
    this.text = text;
    this.starts = lineStarts(text);
  }

  /** Which line an offset lies on, from 1. */
  lineAt(offset: number): number {
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((this.starts[middle] as number) <= offset) low = middle;
      else high = middle - 1;
    }
    return low + 1;
  }

  /** The place of the characters from `start` to `end`, cut at the end of its first line; one character at least. */
  place(start: number, end: number): Place {
    const from = Math.max(0, Math.min(start, this.text.length));
    const line = this.lineAt(from);
    const lineStart = this.starts[line - 1] as number;
    const next = this.starts[line] ?? this.text.length + 1;
    const lineEnd = next - (this.text[next - 2] === "\r" ? 2 : 1);
    const length = Math.max(1, Math.min(end, lineEnd) - from);
    return { file: this.file, line, column: from - lineStart + 1, length };
  }
}
