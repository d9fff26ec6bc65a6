/** Where the entries of a block begin and end in the text. */
import { isMap, isScalar, isSeq, type Node } from "yaml";
import type { Entry } from "./entry.ts";

/** Behind the last character that belongs to a node: not the comments and blank lines that follow it. */
export function endOf(node: Node | null, otherwise: number): number {
  if (!node?.range) return otherwise;
  if (!isScalar(node) && (node as { flow?: boolean }).flow !== true) {
    if (isMap(node)) {
      const last = (node.items as Entry[]).at(-1);
      if (last) return endOfEntry(last);
    }
    if (isSeq(node)) {
      const last = node.items.at(-1) as Node | undefined;
      if (last) return endOf(last, otherwise);
    }
  }
  return node.range[1];
}

export const startOf = ({ key }: Entry): number => key.range?.[0] ?? 0;

/** Behind an entry's last character. */
export function endOfEntry({ key, value }: Entry): number {
  const end = key.range?.[1] ?? 0;
  return Math.max(end, endOf(value, end));
}

/** Where the line of an offset ends: before its line end. */
export function lineEnd(text: string, at: number): number {
  // A block of text ends behind its own line end.
  if (at > 0 && text[at - 1] === "\n") return at - (text[at - 2] === "\r" ? 2 : 1);
  const end = text.indexOf("\n", at);
  if (end < 0) return text.length;
  return text[end - 1] === "\r" ? end - 1 : end;
}

export const lineStart = (text: string, at: number): number => text.lastIndexOf("\n", at - 1) + 1;

/** How lines end in this text. */
export const breakOf = (text: string): string => (text.includes("\r\n") ? "\r\n" : "\n");
