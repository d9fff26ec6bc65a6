/** Finds the front matter: what stands between a first line `---` and the next line `---`. */

import { LARGEST_FRONT, LARGEST_RECIPE, LONGEST_LINE } from "./limits.ts";
import type { Source } from "./lines.ts";
import type { Message } from "./message.ts";
import type { Code } from "./messages/code.ts";
import { messageOf } from "./problem.ts";

export interface FrontMatter {
  readonly text: string;
  /** Offset of its first character in the file. */
  readonly offset: number;
  readonly body: { readonly text: string; readonly line: number };
}

const FENCE = /^---[ \t]*\r?$/;

const failed = (source: Source, code: Code, text: string, hint: string, offset = 0): Message =>
  messageOf({ code, text, hint }, "", source.place(offset, offset + 3));

/** Splits a recipe into front matter and body, or says why it cannot. A byte order mark at the start is passed over. */
export function frontMatter(source: Source): FrontMatter | Message {
  const { text } = source;
  const bytes = bytesOf(text, LARGEST_RECIPE);
  if (bytes > LARGEST_RECIPE) {
    const found = `the recipe is ${bytes} bytes long; at most ${LARGEST_RECIPE}`;
    return failed(source, "too-large", found, "keep pictures in photos/, not in the text");
  }
  const begin = text.startsWith("\ufeff") ? 1 : 0;
  if (text.slice(begin).trim() === "") {
    return failed(source, "empty-file", "the file is empty", "start with the line --- and then recipe: 1");
  }
  const firstEnd = lineEnd(text, begin);
  if (!FENCE.test(text.slice(begin, firstEnd))) {
    const hint = "put the measures at the top of the file, between two lines that hold only ---";
    return failed(source, "no-front-matter", "the first line is not ---", hint, begin);
  }
  const offset = Math.min(firstEnd + 1, text.length);
  for (let at = offset; at < text.length; at = lineEnd(text, at) + 1) {
    const end = lineEnd(text, at);
    if (!FENCE.test(text.slice(at, end))) continue;
    return sized(source, {
      text: text.slice(offset, at),
      offset,
      body: { text: text.slice(end + 1), line: source.lineAt(at) + 1 },
    });
  }
  const hint = "end the measures with a line that holds only ---";
  return failed(source, "open-front-matter", "the front matter that starts here does not end", hint, begin);
}

function lineEnd(text: string, from: number): number {
  const end = text.indexOf("\n", from);
  return end < 0 ? text.length : end;
}

/** How many bytes a text has; where it has more characters than `most`, how many characters: it is too long either way. */
function bytesOf(text: string, most: number): number {
  return text.length > most ? text.length : new TextEncoder().encode(text).length;
}

function sized(source: Source, found: FrontMatter): FrontMatter | Message {
  const bytes = bytesOf(found.text, LARGEST_FRONT);
  if (bytes > LARGEST_FRONT) {
    const text = `the front matter has ${bytes} bytes, more than the ${LARGEST_FRONT} that are read`;
    return failed(source, "too-long", text, "keep measures in it and put prose below it");
  }
  let at = found.offset;
  for (const line of found.text.split("\n")) {
    if (line.length > LONGEST_LINE) {
      const text = `this line has ${line.length} characters; at most ${LONGEST_LINE}`;
      return failed(source, "long-line", text, "put each key on a line of its own", at);
    }
    at += line.length + 1;
  }
  return found;
}
