/** What is wrong with one value, before its place in the file is known. */

import type { Level, Message, Place } from "./message.ts";
import type { Code } from "./messages/code.ts";

export interface Problem {
  readonly code: Code;
  readonly text: string;
  readonly expected?: string;
  readonly hint?: string;
  /** Where in the value's own text, from 0; without it the whole value is meant. */
  readonly at?: number;
}

/** A value that was read, or what is wrong with it. */
export type Read<T> = { readonly value: T } | { readonly problem: Problem };

/** Texts longer than this are shortened in messages. */
const SHOWN = 60;

/** Leaves out what would break a line of text or cannot be shown, and shortens it to `most` characters. */
export function clipped(text: string, most = SHOWN): string {
  const clean = text.replace(/[\p{Cc}\p{Co}\p{Cs}\u2028\u2029]+/gu, " ");
  return clean.length > most ? `${clean.slice(0, most).replace(/[\ud800-\udbff]$/, "")}…` : clean;
}

export const quoted = (text: string): string => `"${clipped(text)}"`;

/** The longest message text; what quantities say may quote the value. */
const LONGEST_TEXT = 300;

/** A problem as a message, with its level, path and place. */
export function messageOf(problem: Problem, path: string, place: Place, level: Level = "error"): Message {
  const { code, text, expected, hint } = problem;
  return {
    code,
    level,
    text: clipped(text, LONGEST_TEXT),
    ...(path === "" ? {} : { path }),
    place,
    ...(expected === undefined ? {} : { expected: clipped(expected, 600) }),
    ...(hint === undefined ? {} : { hint: clipped(hint, LONGEST_TEXT) }),
  };
}
