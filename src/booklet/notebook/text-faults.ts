/** What is wrong with a text before its tags are read: its length, its depth, its characters, its fences and headings. */
import { nearest } from "../../quantity/nearest.ts";
import {
  DEEPEST_LISTS,
  LONGEST_BODY,
  LONGEST_LINE,
  MOST_BODY_LINES,
  MOST_LIST_MARKS,
  MOST_MARKS,
} from "../../recipe/limits.ts";
import type { Message, Place } from "../../recipe/message.ts";
import { messageOf, type Problem, quoted } from "../../recipe/problem.ts";
import { FORBIDDEN } from "./lift.ts";
import { type Fence, type Line, scan } from "./scan.ts";

/** A place in the file from a line of the text, a column and a length. */
export type Span = (line: number, column: number, length: number) => Place;

/** Why nothing more can be read of a text: too long, too deep, or with characters that cannot stand in one. */
export function textFault(text: string, span: Span): Message | undefined {
  const say = (place: Place, problem: Problem): Message => messageOf(problem, "", place);
  if (text.length > LONGEST_BODY) {
    return say(span(1, 1, 1), {
      code: "too-long",
      text: `this text has ${text.length} characters; at most ${LONGEST_BODY}`,
      hint: "make it shorter, or make two projects of it",
    });
  }
  const { lines } = scan(text);
  const many = lines[MOST_BODY_LINES];
  if (many) {
    return say(span(many.number, 1, 1), {
      code: "too-long",
      text: `this text has ${lines.length} lines; at most ${MOST_BODY_LINES}`,
      hint: "make it shorter, or make two projects of it",
    });
  }
  const long = lines.find((line) => line.text.length > LONGEST_LINE);
  if (long) {
    return say(span(long.number, 1, 1), {
      code: "long-line",
      text: `this line has ${long.text.length} characters; at most ${LONGEST_LINE}`,
      hint: "break it into paragraphs",
    });
  }
  const deep = lines.find((line) => !line.fenced && containers(line.text) > DEEPEST_LISTS);
  if (deep) {
    return say(span(deep.number, 1, 1), {
      code: "too-deep",
      text: "quotes or lists nest too deeply here",
      expected: `at most ${DEEPEST_LISTS} inside each other`,
    });
  }
  const crowd = crowded(lines);
  if (crowd) return say(span(crowd.line.number, 1, 1), crowd.problem);
  const odd = FORBIDDEN.exec(text);
  if (!odd) return undefined;
  const before = text.slice(0, odd.index).split("\n");
  const point = (odd[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
  return say(span(before.length, (before.at(-1) ?? "").length + 1, 1), {
    code: "bad-text",
    text: `there is a character in this text that cannot be printed (U+${point})`,
    hint: "take it out",
  });
}

/** The line on which there are more marks than are read, and what to say of it. */
function crowded(lines: readonly Line[]): { readonly line: Line; readonly problem: Problem } | undefined {
  let [ofLists, inside] = [0, 0];
  for (const line of lines) {
    const lead = LEAD.exec(line.text)?.[0] ?? "";
    if (!line.fenced) ofLists += /[>*+.)-]/.test(lead) ? containers(line.text) : 0;
    inside += line.text.slice(lead.length).replace(/[^*_[\]`|<]/g, "").length;
    const [what, most] =
      ofLists > MOST_LIST_MARKS
        ? ["quotes and list items", MOST_LIST_MARKS]
        : ["stars, brackets and such", MOST_MARKS];
    if (ofLists <= MOST_LIST_MARKS && inside <= MOST_MARKS) continue;
    const text = `there are more than ${most} marks of ${what} up to here`;
    return {
      line,
      problem: { code: "too-many", text, hint: "make the text plainer, or make two projects of it" },
    };
  }
  return undefined;
}

/** Quotes and lists that a line begins with. */
const LEAD = /^(?:[ \t]|>|[-*+](?=[ \t])|\d{1,9}[.)](?=[ \t]))*/;

/** How many quotes and lists a line may stand in, by what it begins with. */
function containers(line: string): number {
  const lead = LEAD.exec(line)?.[0] ?? "";
  return lead.replace(/[ \t]+/g, (gap) => "~".repeat(Math.floor(gap.length / 2))).replace(/\d+/g, "").length;
}

/** What is wrong with a fenced block of a recipe's body by its fences. */
export function fenceProblem({ info, isClosed }: Fence): Problem | undefined {
  if (info === "workings") {
    return isClosed
      ? undefined
      : {
          code: "open-workings",
          text: "the workings that start here do not end",
          hint: "end them with a line that holds only ```",
        };
  }
  return info !== "" && nearest(info.toLowerCase(), ["workings"])
    ? {
        code: "workings-line",
        text: `a block named ${quoted(info)} is not calculated`,
        hint: "did you mean workings?",
      }
    : undefined;
}

/** What is wrong with a line outside fenced blocks; `before` is the line above it. */
export function lineFault(line: Line, before: Line | undefined, span: Span): Message | undefined {
  const { text, number, fenced } = line;
  if (fenced) return undefined;
  if (
    /^ {0,3}(?:-+|=+)[ \t]*$/.test(text) &&
    before &&
    !before.fenced &&
    /^ {0,3}[^\s|#>*+-]/.test(before.text)
  ) {
    const problem: Problem = {
      code: "heading",
      text: "the line above is underlined, and would become a heading",
      hint: "write ## before a heading; leave a line empty above a rule",
    };
    return messageOf(problem, "", span(number, 1, text.length));
  }
  if (/^ {0,3}#(?:[ \t]|$)/.test(text)) {
    const problem: Problem = {
      code: "heading",
      text: "a heading with one # is the booklet's title, which stands in the front matter",
      hint: "write ## for a section of your own, ### inside one",
    };
    return messageOf(problem, "", span(number, text.indexOf("#") + 1, 1));
  }
  if (!/^(?:\s{4,}|\s*(?:[-*+>]|\d+[.)])\s*)(?:`{3,}|~{3,})\s*workings\s*$/.test(text)) return undefined;
  const problem: Problem = {
    code: "workings-line",
    text: "a workings block stands inside a list or a quote here",
    hint: "begin it at the left margin",
  };
  return messageOf(problem, "", span(number, 1, text.length));
}
