/** What a template can ask to be done with values: drawings, plurals, words, other units, comparison. */
import { nearest } from "../../quantity/nearest.ts";
import { KindError, more } from "../../quantity/quantity.ts";
import { escapeMarkdown } from "../escape.ts";
import { allMarked, withoutMarks } from "../marks.ts";
import { Printed } from "../printed.ts";
import { termMark, wordMark } from "../words.ts";
import { exactly, inUnits, onTape, upTo } from "./otherwise.ts";
import { Ready } from "./ready.ts";
import { TemplateError } from "./tree.ts";

export { Ready } from "./ready.ts";

/** What a helper is given: the name of a figure or of one of the trade's words in quotes, a value of the plan, or anything. */
type Taken = "figure" | "word" | "value" | "any";

/** A helper: what it takes, what it comes to, how it is written, and what it does with what it is given and the whole context. */
export interface Helper {
  readonly takes: readonly Taken[];
  /** How many of these it can do without, from the first. */
  readonly spare?: number;
  readonly gives: "words" | "flag";
  readonly example: string;
  readonly run: (given: readonly unknown[], context: Readonly<Record<string, unknown>>) => unknown;
}

const WORDS = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

const asText = (n: unknown): string => (n instanceof Printed ? n.toString() : allMarked(String(n)));
const bare = (n: unknown): string => (n instanceof Printed ? n.value.shown : String(n));

/** The title a figure is named by in the text; the context carries those there are, under `figures`. */
function figureTitle(name: string, titles: Readonly<Record<string, string>>): string {
  const title = Object.hasOwn(titles, name) ? titles[name] : undefined;
  if (title !== undefined) return escapeMarkdown(title);
  const near = nearest(name, Object.keys(titles));
  throw new TemplateError(`this garment has no figure "${name}"${near ? `; did you mean "${near}"?` : ""}`, {
    code: "no-figure",
  });
}

/** Helpers by name. */
export const HELPERS: Readonly<Record<string, Helper>> = {
  figure: {
    takes: ["figure"],
    gives: "words",
    example: '{{figure "balance"}}',
    run: ([name], context) =>
      new Ready(
        `![${figureTitle(String(name), (context.figures ?? {}) as Record<string, string>)}](figures/${String(name)}.svg)`,
      ),
  },
  guide: {
    takes: ["any", "any"],
    gives: "words",
    example: '{{guide "strip" "The marking strip"}}',
    run: ([name, title]) => new Ready(`![${escapeMarkdown(String(title))}](guides/${String(name)}.svg)`),
  },
  word: {
    takes: ["any", "word"],
    spare: 1,
    gives: "words",
    example: '{{word "bite"}} or {{word "bites" "bite"}}',
    run: (given) => new Ready(wordMark(String(given.at(-1)), withoutMarks(String(given[0])))),
  },
  term: {
    takes: ["any"],
    gives: "words",
    example: '{{term "bite"}}',
    run: ([word]) => new Ready(termMark(withoutMarks(String(word)))),
  },
  counted: {
    takes: ["any", "any"],
    gives: "words",
    example: '{{counted hooks.count "hook"}}',
    run: ([n, noun]) => {
      const word = String(noun);
      const plural = bare(n) === "1" ? word : /(?:[cs]h|s|x)$/.test(word) ? `${word}es` : `${word}s`;
      return new Ready(`${asText(n)} ${plural}`);
    },
  },
  words: {
    takes: ["any"],
    gives: "words",
    example: "{{words breadths.count}}",
    run: ([n]) => WORDS[Number(bare(n))] ?? bare(n),
  },
  in: { takes: ["value", "any"], gives: "words", example: '{{in cloth.width "cm"}}', run: inUnits },
  onTape: { takes: ["value"], gives: "words", example: "{{onTape skirt.round}}", run: onTape },
  upTo: { takes: ["value", "any"], gives: "words", example: '{{upTo skirt.round "1/4 in"}}', run: upTo },
  exactly: { takes: ["value"], gives: "words", example: "{{exactly waist.quarter}}", run: exactly },
  more: {
    takes: ["value", "value"],
    gives: "flag",
    example: "{{#if (more skirt.round hoop.width)}} … {{/if}}",
    run: (given) => {
      const [x, y] = given.map((n) => (n instanceof Printed ? n.value.quantity : undefined));
      if (!x || !y) throw new TemplateError("(more a b) takes two values that this garment has");
      try {
        return more(x, y);
      } catch (error) {
        throw error instanceof KindError ? new TemplateError(error.message) : error;
      }
    },
  },
};
