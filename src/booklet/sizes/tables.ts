/** Tables of several sizes as tables with a column for each size. */
import { withoutMarks } from "../marks.ts";
import type { Block } from "./blocks.ts";
import { columnHead, ofSize, onlyFor } from "./keys.ts";
import { keyOf, piecesOf } from "./mask.ts";
import { type PipeTable, readTable, writeTable } from "./pipe.ts";

type Names = readonly { readonly name: string }[];

/**
 * The blocks that stand for one table of several sizes. Sizes whose rows say the same but for numbers go together: one table
 * where a single column differs, one for each column where more do; sizes whose rows differ have tables of their own.
 *
 * @param tables each size's table, where it has one
 * @param whole sizes that need no label, since the chapter is theirs alone
 */
export function tablesBySize(
  tables: readonly (string | undefined)[],
  names: Names,
  whole: readonly number[],
): Block[] {
  const groups = new Map<string, { sizes: number[]; tables: PipeTable[] }>();
  tables.forEach((text, size) => {
    if (text === undefined) return;
    const table = readTable(text);
    const key = JSON.stringify([table.head, table.rows].flat(2).map(keyOf));
    const group = groups.get(key) ?? { sizes: [], tables: [] };
    group.sizes.push(size);
    group.tables.push(table);
    groups.set(key, group);
  });
  return [...groups.values()].flatMap(({ sizes, tables: ofGroup }) => {
    const label = sizes.length === whole.length ? "" : onlyFor(sizes, names);
    return oneGroup(ofGroup, sizes, label, names);
  });
}

const block = (kind: Block["kind"], text: string): Block => ({ kind, indent: "", marker: "", text });

function oneGroup(
  tables: readonly PipeTable[],
  sizes: readonly number[],
  label: string,
  names: Names,
): Block[] {
  const [first] = tables as readonly [PipeTable, ...PipeTable[]];
  const cell = (table: PipeTable, row: number, column: number): string => table.rows[row]?.[column] ?? "";
  const differs = first.head.map((_, column) =>
    first.rows.some((_, row) =>
      tables.some((table) => shown(cell(table, row, column)) !== shown(cell(first, row, column))),
    ),
  );
  const columns = differs.flatMap((one, column) => (one ? [column] : []));
  const alike = differs.flatMap((one, column) => (one ? [] : [column]));
  if (columns.length === 0) {
    return [...(label === "" ? [] : [block("text", `**${label}**`)]), block("table", writeTable(first))];
  }
  return columns.flatMap((column) => {
    const title = [label, columns.length > 1 ? (first.head[column] ?? "") : ""].filter(
      (words) => words !== "",
    );
    return [
      ...(title.length === 0 ? [] : [block("text", `**${title.join(": ")}**`)]),
      block(
        "table",
        writeTable({
          head: [
            ...alike.map((i) => first.head[i] ?? ""),
            ...sizes.map((size) => columnHead(size, names[size]?.name ?? "")),
          ],
          rows: first.rows.map((_, row) => [
            ...alike.map((i) => cell(first, row, i)),
            ...tables.map((table, i) => forSize(cell(table, row, column), sizes[i] as number)),
          ]),
        }),
      ),
    ];
  });
}

const shown = (cell: string): string => withoutMarks(cell);

/** A cell whose values are one size's own. */
const forSize = (cell: string, size: number): string =>
  piecesOf(cell)
    .map((piece) => (typeof piece === "string" ? piece : ofSize(size, piece)))
    .join("");
