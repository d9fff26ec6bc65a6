/**
 * Number marks: a printed value carries its name through Markdown between private-use characters, so that the HTML
 * can make it a <data> element and the Markdown file can drop them. Recipes may not hold such characters.
 */
const OPEN = "\uE000";
const MIDDLE = "\uE001";
const CLOSE = "\uE002";

const MARKED = /\uE000([^\uE001]*)\uE001([^\uE002]*)\uE002/g;

/** A printed number with its value's name. */
export const marked = (name: string, text: string): string => `${OPEN}${name}${MIDDLE}${text}${CLOSE}`;

/** The text alone. */
export const withoutMarks = (text: string): string => text.replace(MARKED, "$2");

export type Run = { readonly text: string; readonly name?: string };

/** Text cut into runs: plain ones, and numbers with their names. */
export function runs(text: string): Run[] {
  const found: Run[] = [];
  let at = 0;
  for (const match of text.matchAll(MARKED)) {
    if (match.index > at) found.push({ text: text.slice(at, match.index) });
    found.push({ text: match[2] as string, name: match[1] as string });
    at = match.index + match[0].length;
  }
  if (at < text.length) found.push({ text: text.slice(at) });
  return found;
}
