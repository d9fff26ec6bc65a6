/** What a template can ask to be done with values: drawings, plurals, words, other units, comparison. */
import { nearest } from "../../quantity/nearest.ts";
import { printExactly } from "../../quantity/print.ts";
import { KindError, LENGTH, more, type Quantity } from "../../quantity/quantity.ts";
import { escapeMarkdown } from "../escape.ts";
import { allMarked } from "../marks.ts";
import { Printed } from "../printed.ts";
import { TemplateError } from "./tree.ts";

/** Markdown that is ready to stand as it is. */
export class Ready {
  private readonly markdown: string;
  constructor(markdown: string) {
    this.markdown = markdown;
  }
  toString(): string {
    return this.markdown;
  }
}

/** A helper: what it is given, in order, and the whole context. */
export type Helper = (given: readonly unknown[], context: Readonly<Record<string, unknown>>) => unknown;

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

const inUnits = ([n, unit]: readonly unknown[]): string => {
  if (!(n instanceof Printed) || n.value.quantity.dim !== LENGTH || (unit !== "in" && unit !== "cm"))
    throw new TemplateError('{{in value "cm"}} takes a length and "in" or "cm"');
  return printExactly(n.value.quantity, unit);
};

/** Helpers by name. */
export const HELPERS: Readonly<Record<string, Helper>> = {
  figure: ([name], context) =>
    new Ready(
      `![${figureTitle(String(name), (context.figures ?? {}) as Record<string, string>)}](figures/${String(name)}.svg)`,
    ),
  guide: ([name, title]) => new Ready(`![${escapeMarkdown(String(title))}](guides/${String(name)}.svg)`),
  counted: ([n, noun]) => {
    const word = String(noun);
    const plural = bare(n) === "1" ? word : /(?:[cs]h|s|x)$/.test(word) ? `${word}es` : `${word}s`;
    return new Ready(`${asText(n)} ${plural}`);
  },
  words: ([n]) => WORDS[Number(bare(n))] ?? bare(n),
  in: inUnits,
  more: (given) => {
    const [x, y] = given.map((n): Quantity | undefined =>
      n instanceof Printed ? n.value.quantity : undefined,
    );
    if (!x || !y) throw new TemplateError("(more a b) takes two values");
    try {
      return more(x, y);
    } catch (error) {
      throw error instanceof KindError ? new TemplateError(error.message) : error;
    }
  },
};
