/** Messages to the maker: data first, text made in one place. */
import type { Code } from "./messages/code.ts";
import type { Level } from "./messages/said.ts";

/** Where in a file something stands. Lines and columns count from 1; `length` is how many characters to underline. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

export type { Level };

/**
 * One finding. `text` says what was found, `expected` what should stand there, `hint` what to do.
 * `path` is the recipe's key it is about (`skirt.hem.depth`); `place` is filled in from it when the message is shown.
 */
export interface Message {
  readonly code: Code;
  readonly level: Level;
  readonly text: string;
  readonly path?: string;
  readonly place?: Place;
  readonly expected?: string;
  readonly hint?: string;
  /** The sizes that it is about, by name; absent where it is about all of them, or there are none. */
  readonly sizes?: readonly string[];
}

/** "size B: ", "sizes A, C: ", or nothing. */
const ofSizes = (sizes: readonly string[] = []): string =>
  sizes.length === 0 ? "" : `size${sizes.length > 1 ? "s" : ""} ${sizes.join(", ")}: `;

/** The lines of the text asked for last: its messages come one after the other. */
let last: { readonly source: string; readonly lines: readonly string[] } = { source: "", lines: [""] };

function linesOf(source: string): readonly string[] {
  if (last.source !== source) last = { source, lines: source.split(/\r?\n/) };
  return last.lines;
}

/** A message as text: place, level, code, what was found; the line with a caret; what was expected; what to do. */
export function messageText(message: Message, source?: string): string {
  const { place } = message;
  const head = place ? `${place.file}:${place.line}:${place.column}: ` : "";
  const lines = [`${head}${message.level} [${message.code}] ${ofSizes(message.sizes)}${message.text}`];
  const line = place && source !== undefined ? linesOf(source)[place.line - 1] : undefined;
  if (place && line !== undefined) lines.push(...caretLines(line, place));
  if (message.expected) lines.push(`  expected: ${message.expected}`);
  if (message.hint) lines.push(`  do: ${message.hint}`);
  return lines.join("\n");
}

/** What would move a terminal's cursor, colour it or turn the direction of writing. */
const UNSEEN = /[\p{Cc}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

/** Long lines are shown as a window round the place. */
const WINDOW = 100;

function caretLines(line: string, place: Place): string[] {
  const number = String(place.line);
  const from = place.column > WINDOW ? place.column - WINDOW / 2 : 0;
  const shown = line.slice(from, from + WINDOW).replace(UNSEEN, " ");
  const indent = " ".repeat(Math.max(0, place.column - 1 - from));
  const carets = "^".repeat(Math.max(1, Math.min(place.length, shown.length - indent.length)));
  return [`  ${number} | ${shown}`, `  ${" ".repeat(number.length)} | ${indent}${carets}`];
}
