/** Pipe tables: read into cells, and written. */

/** Cells of a table, the head first. */
export interface PipeTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const cellsOf = (line: string): string[] =>
  line
    .trim()
    .replace(/^\||\|$/g, "")
    .split(/(?<!\\)\|/)
    .map((cell) => cell.trim());

/** A table's cells; number marks stay in them. */
export function readTable(text: string): PipeTable {
  const [head = "", , ...rows] = text.split("\n");
  const heads = cellsOf(head);
  return { head: heads, rows: rows.map((row) => heads.map((_, i) => cellsOf(row)[i] ?? "")) };
}

const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;

export const writeTable = ({ head, rows }: PipeTable): string =>
  [line(head), `|${" --- |".repeat(head.length)}`, ...rows.map(line)].join("\n");
