/**
 * Number marks: what a template prints stands between private-use characters while the text is Markdown, with its value's
 * name where it is a value. So the Markdown's shape does not depend on what is printed: the HTML gets the text as it is,
 * a value as a <data> element, and the Markdown file gets it escaped. Recipes may not hold such characters.
 */
import { escapeMarkdown } from "./escape.ts";

const OPEN = "\uE000";
const MIDDLE = "\uE001";
const CLOSE = "\uE002";

/** One printed text: its name, and the text. */
export const MARKED = /\uE000([^\uE001\uE002]*)\uE001([^\uE002]*)\uE002/g;

/** A printed text with its value's name; the name is empty where it is no value of the plan. */
export const marked = (name: string, text: string): string => `${OPEN}${name}${MIDDLE}${text}${CLOSE}`;

/** A text ready to be printed: what is not marked yet is marked as it stands. */
export const allMarked = (text: string): string =>
  runs(text)
    .map((run) => (run.text === "" ? "" : marked(run.name ?? "", run.text)))
    .join("");

/** The text alone. */
export const withoutMarks = (text: string): string =>
  text.includes(OPEN) ? text.replace(MARKED, "$2") : text;

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
  if (!text.includes(OPEN)) return text === "" ? [] : [{ text }];
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
