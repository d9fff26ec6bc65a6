/** A small reader of comma-separated text: quotes, doubled quotes inside them, line breaks inside quotes. */

export interface CsvCell {
  readonly text: string;
  /** Offset of its first character in the file, and how long it is as written. */
  readonly start: number;
  readonly length: number;
}

/**
 * The rows of a text, each a list of cells trimmed of white space. Lines with nothing on them are left out. Never
 * throws: a quote that is not closed runs to the end, and `open` tells where it began.
 */
export function readCsv(text: string): {
  readonly rows: readonly (readonly CsvCell[])[];
  readonly open?: number;
} {
  const rows: CsvCell[][] = [];
  let row: CsvCell[] = [];
  let at = text.startsWith("\uFEFF") ? 1 : 0;
  let open: number | undefined;
  const endRow = (): void => {
    if (row.length > 1 || row[0]?.text !== "") rows.push(row);
    row = [];
  };
  while (at <= text.length) {
    const cell = /[ \t]*"/y;
    cell.lastIndex = at;
    let value = "";
    let end = at;
    if (cell.test(text)) {
      const quote = cell.lastIndex;
      const inside = /(?:[^"]|"")*/y;
      inside.lastIndex = quote;
      inside.test(text);
      value = text.slice(quote, inside.lastIndex).replaceAll('""', '"');
      end = inside.lastIndex;
      if (text[end] === '"') end += 1;
      else open = quote - 1;
    }
    const rest = /[^,\r\n]*/y;
    rest.lastIndex = end;
    rest.test(text);
    value += text.slice(end, rest.lastIndex);
    const written = text.slice(at, rest.lastIndex);
    const lead = written.length - written.trimStart().length;
    row.push({ text: value.trim(), start: at + lead, length: written.trim().length });
    at = rest.lastIndex;
    if (text[at] === ",") {
      at += 1;
      continue;
    }
    endRow();
    if (at >= text.length) break;
    at += text.startsWith("\r\n", at) ? 2 : 1;
  }
  return open === undefined ? { rows } : { rows, open };
}
