/** What the YAML parser found wrong, in words for a maker. */
import type { Document } from "yaml";
import type { FrontMatter } from "./front-matter.ts";
import type { Source } from "./lines.ts";
import type { Message } from "./message.ts";
import { messageOf } from "./problem.ts";

/** One broken bracket can break everything after it: more than this many are not told. */
const MOST_TOLD = 20;

const WORDS: Readonly<Record<string, readonly [text: string, hint: string]>> = {
  TAB_AS_INDENT: ["there is a tab in the indent", "indent with spaces"],
  BLOCK_AS_IMPLICIT_KEY: [
    "a second key stands where the value of one should be",
    "put each key on a line of its own, the keys of one block equally far in, so look at the next line too; a value that holds a colon and a space goes in quotes",
  ],
  MULTILINE_IMPLICIT_KEY: ["a key runs over more than one line", "put a key and its colon on one line"],
  MISSING_CHAR: ["a quote, bracket, comma or colon is missing", "close what was opened; write key: value"],
  BAD_SCALAR_START: [
    "a value cannot begin with this character",
    "put the value in quotes, or take the character out",
  ],
  BAD_INDENT: ["the indent does not fit the lines round it", "close brackets; keep one block to one indent"],
  BAD_DQ_ESCAPE: ["there is no such escape in double quotes", "write \\\\ for a backslash"],
  UNEXPECTED_TOKEN: ["this cannot stand here", "check quotes, brackets and the indent"],
  MULTIPLE_DOCS: ["a second document starts here", "keep one front matter, with no --- or ... inside it"],
  RESOURCE_EXHAUSTION: ["brackets nest too deeply to be read", "take brackets out"],
};

/** Tags are refused by tree.ts, which sees all of them. */
const TOLD_ELSEWHERE = new Set(["TAG_RESOLVE_FAILED"]);

/** Errors and warnings of a parsed document as messages, the first of each line. */
export function yamlMessages(parsed: Document.Parsed, source: Source, front: FrontMatter): Message[] {
  // What is missing at the end is missing after the last thing written, not at the fence.
  const end = front.text.trimEnd().length;
  const found = new Map<number, Message>();
  for (const { code, message, pos } of [...parsed.errors, ...parsed.warnings]) {
    if (TOLD_ELSEWHERE.has(code) || found.size >= MOST_TOLD) continue;
    const [text, hint] = WORDS[code] ?? [
      lowerFirst(message),
      "check quotes, brackets, colons and the indent",
    ];
    const start = Math.min(pos[0], end);
    const place = source.place(front.offset + start, front.offset + Math.max(pos[1], start + 1));
    if (found.has(place.line)) continue;
    const kind = code === "MULTIPLE_DOCS" ? "several-documents" : "yaml";
    found.set(place.line, messageOf({ code: kind, text, hint }, "", place));
  }
  return [...found.values()];
}

const lowerFirst = (text: string): string => text.replace(/^./, (letter) => letter.toLowerCase());
