/** What a page wishes to be written. */
import type { IncomingMessage } from "node:http";

export interface Asset {
  readonly file: string;
  readonly type: string;
}

export interface Wish {
  /** Checksum of the version that the text was made of; "" where there was no file. */
  readonly base: string;
  readonly text: string;
  /** The file that keeps an older state of this text. */
  readonly kept?: string;
}

export type ReadWish = Wish | { readonly refused: number; readonly why: string };

/**
 * Reads a wish; takes in no more than `most` bytes, whatever is announced.
 *
 * @param longest how many bytes the text itself may have
 */
export async function readWish(asked: IncomingMessage, most: number, longest: number): Promise<ReadWish> {
  const refused = (status: number, why: string): ReadWish => ({ refused: status, why });
  const [type = ""] = (asked.headers["content-type"] ?? "").split(";");
  if (type.trim().toLowerCase() !== "application/json")
    return refused(415, "Only application/json is read here.");
  if (Number(asked.headers["content-length"] ?? 0) > most) return refused(413, "This is too much.");
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of asked as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > most) return refused(413, "This is too much.");
    chunks.push(chunk);
  }
  return wishOf(Buffer.concat(chunks), longest) ?? refused(400, "This is not a text to be saved.");
}

function wishOf(bytes: Buffer, longest: number): ReadWish | undefined {
  let data: unknown;
  try {
    data = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
  if (typeof data !== "object" || data === null) return undefined;
  const { base, text, kept } = data as Record<string, unknown>;
  if (typeof text !== "string" || typeof base !== "string" || !/^[0-9a-f]{0,64}$/.test(base))
    return undefined;
  if (kept !== undefined && (typeof kept !== "string" || !/^[\w.-]{1,200}$/.test(kept))) return undefined;
  // Half a letter cannot be written as UTF-8: it would come back as another text.
  if (/\p{Cs}/u.test(text)) return undefined;
  if (Buffer.byteLength(text, "utf8") > longest)
    return { refused: 413, why: `A recipe may have ${longest} bytes; this text has more.` };
  return { base, text, ...(kept === undefined ? {} : { kept }) };
}
