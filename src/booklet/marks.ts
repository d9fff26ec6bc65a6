/**
 * Number marks: what a template prints stands between private-use characters while the text is Markdown, with its value's
 * name where it is a value. So the Markdown's shape does not depend on what is printed: the HTML gets the text as it is,
 * a value as a <data> element, and the Markdown file gets it escaped. Recipes may not hold such characters.
 */
import { escapeMarkdown } from "./escape.ts";

const OPEN = "\uE000";
const MIDDLE = "\uE001";
const CLOSE = "\uE002";

const MARKED = /\uE000([^\uE001\uE002]*)\uE001([^\uE002]*)\uE002/g;
const SLOT = /\uE000(\d+)\uE002/g;

/** A printed text with its value's name; the name is empty where it is no value of the plan. */
export const marked = (name: string, text: string): string => `${OPEN}${name}${MIDDLE}${text}${CLOSE}`;

/** A text ready to be printed: what is not marked yet is marked as it stands. */
export const allMarked = (text: string): string =>
  runs(text)
    .map((run) => (run.text === "" ? "" : marked(run.name ?? "", run.text)))
    .join("");

/** The text alone. */
export const withoutMarks = (text: string): string => text.replace(MARKED, "$2");

/** Markdown for a file: what was marked is escaped, so that it stays text. */
export const escapedMarks = (markdown: string): string =>
  markdown.replace(MARKED, (_, _name, text: string) => escapeMarkdown(text));

/** A printed text; `name` where it is a value of the plan. */
export interface Run {
  readonly text: string;
  readonly name?: string;
}

const run = (name: string, text: string): Run => (name === "" ? { text } : { text, name });

/** Text cut into runs: plain ones, and numbers with their names. */
export function runs(text: string): Run[] {
  const found: Run[] = [];
  let at = 0;
  for (const match of text.matchAll(MARKED)) {
    if (match.index > at) found.push({ text: text.slice(at, match.index) });
    found.push(run(match[1] as string, match[2] as string));
    at = match.index + match[0].length;
  }
  if (at < text.length) found.push({ text: text.slice(at) });
  return found;
}

/** Markdown whose marks are numbered slots, and what stands in them: the shape stays the same while numbers change. */
export function skeleton(markdown: string): { readonly shape: string; readonly slots: readonly Run[] } {
  const slots: Run[] = [];
  const shape = markdown.replace(MARKED, (_, name: string, text: string) => {
    slots.push(run(name, text));
    return `${OPEN}${slots.length - 1}${CLOSE}`;
  });
  return { shape, slots };
}

/** A run, and the number of the slot it stood in. */
export interface FilledRun extends Run {
  readonly slot?: number;
}

/** Text of a parsed skeleton with its slots filled: runs of plain text and of printed ones. */
export function filled(text: string, slots: readonly Run[]): FilledRun[] {
  const found: FilledRun[] = [];
  let at = 0;
  for (const match of text.matchAll(SLOT)) {
    if (match.index > at) found.push({ text: text.slice(at, match.index) });
    const slot = Number(match[1]);
    const run = slots[slot];
    if (run) found.push({ ...run, slot });
    at = match.index + match[0].length;
  }
  if (at < text.length) found.push({ text: text.slice(at) });
  return found;
}
