/** The record of a garment: what was entered in its booklet, as one file that leaves and comes back. */
import { type Kept, NOTHING_KEPT, readKept } from "./kept.ts";

/** The record's own format. */
export const RECORD_FORMAT = 1;

/** The text of a record.json, saved on a day (2026-11-25). */
export function recordText(garment: string, kept: Kept, date: string): string {
  const { notebook, changes, ticked, notes, seconds, said } = kept;
  const record = {
    "plainwork-record": RECORD_FORMAT,
    garment,
    date,
    notebook,
    changes,
    ticked,
    notes,
    seconds,
    said,
  };
  return `${JSON.stringify(record, null, 1)}\n`;
}

export type RecordRead = { readonly kept: Kept } | { readonly fault: string };

/** Reads a record for this garment; anything else is told. Units and size of type are the reader's own and stay. */
export function readRecord(text: string, garment: string, now: Kept = NOTHING_KEPT): RecordRead {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { fault: "This file is damaged, or it is no record: it cannot be read. Nothing was changed." };
  }
  const format = (data as Record<string, unknown> | null)?.["plainwork-record"];
  if (format === undefined) return { fault: "This file is not a booklet's record. Nothing was changed." };
  if (format !== RECORD_FORMAT)
    return {
      fault: `This record is of format ${String(format).slice(0, 20)}; this page reads ${RECORD_FORMAT}. Nothing was changed.`,
    };
  const of = (data as { garment?: unknown }).garment;
  if (of !== garment)
    return {
      fault: `This record is of another garment, “${String(of).slice(0, 100)}”. Nothing was changed.`,
    };
  const kept = readKept(data);
  if (!kept) return { fault: "This record is damaged. Nothing was changed." };
  return { kept: { ...kept, units: now.units, large: now.large } };
}
