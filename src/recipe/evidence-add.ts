/** Adds one dated original to the text of evidence.csv; what stands there stays byte for byte. */
import { readCsv } from "./csv.ts";
import { readEvidence } from "./evidence.ts";
import { COLUMNS, type Column } from "./evidence-row.ts";
import type { Message } from "./message.ts";
import type { EvidenceRow } from "./recipe.ts";

export type Added =
  | { readonly text: string }
  /** It stands there already. */
  | { readonly same: true }
  /** What is there cannot be read: nothing is added. */
  | { readonly messages: readonly Message[] };

/**
 * The list with a row at its end, in the order of its own columns; a new list names all of them. The same row twice adds
 * nothing.
 *
 * @param file its name in messages
 * @param text the list as it is; undefined where there is none
 */
export function withRow(file: string, text: string | undefined, row: EvidenceRow): Added {
  const cells: Record<Column, string> = {
    year: String(row.year),
    fibre: row.fibre ?? "",
    sheer: row.sheer === undefined ? "" : row.sheer ? "yes" : "no",
    set: row.set,
    seen: row.seen ?? "",
    note: row.note ?? "",
  };
  if (text === undefined || text.trim() === "")
    return { text: `${COLUMNS.join(",")}\n${COLUMNS.map((name) => csv(cells[name])).join(",")}\n` };
  const before = readEvidence(file, text);
  const errors = before.messages.filter(({ level }) => level === "error");
  if (errors.length > 0) return { messages: errors };
  if (before.rows.some((each) => isSame(each, row))) return { same: true };
  const columns = (readCsv(text).rows[0] ?? []).map((cell) => cell.text.toLowerCase() as Column);
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  const gap = /[\r\n]$/.test(text) ? "" : newline;
  return { text: `${text}${gap}${columns.map((name) => csv(cells[name] ?? "")).join(",")}${newline}` };
}

/** By what both rows say; a list without a column cannot tell by it. */
const isSame = (a: EvidenceRow, b: EvidenceRow): boolean =>
  a.year === b.year &&
  a.set === b.set &&
  (["fibre", "sheer", "seen", "note"] as const).every((name) => a[name] === undefined || a[name] === b[name]);

const csv = (text: string): string =>
  /[",\r\n]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;
