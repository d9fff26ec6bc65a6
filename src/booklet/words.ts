/**
 * The trade's words in a booklet. A template names one with `{{word "bite"}}`; the mark carries it through Markdown as a number's
 * mark carries the value's name, so that a file has the plain word and a page a link to where it is told.
 */
import type { ElementContent } from "hast";
import { MARKED, marked } from "./marks.ts";
import { html } from "./nodes.ts";

/** The chapter that tells them. */
export const WORDS_CHAPTER = "words";

/** A value's name begins with a letter. */
const WORD = "#";
const TERM = "##";

/** A word as the end of its anchor: `packed spacing` is `packed-spacing`. */
const slug = (word: string): string => word.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-");

/** `text` stands for the word `word`. */
export const wordMark = (word: string, text: string): string => marked(`${WORD}${slug(word)}`, text);

/** The place where a word is told. */
export const termMark = (word: string): string => marked(`${TERM}${slug(word)}`, word);

/** Is a mark's name a word's, and no value's? */
export const isWord = (name: string): boolean => name.startsWith(WORD);

/** The words that a chapter's Markdown tells. */
export const toldIn = (markdown: string): ReadonlySet<string> =>
  new Set(
    [...markdown.matchAll(MARKED)].flatMap(([, name = ""]) =>
      name.startsWith(TERM) ? [name.slice(TERM.length)] : [],
    ),
  );

/** Makes one chapter's words: each is a link where it is used first, if the booklet tells it, and plain after that. */
export class Words {
  /** What this chapter tells. */
  readonly told = new Set<string>();
  private readonly tells: boolean;
  private readonly linked = new Set<string>();
  private readonly known: ReadonlySet<string>;

  constructor(chapter: string, known: ReadonlySet<string> = new Set()) {
    this.tells = chapter === WORDS_CHAPTER;
    this.known = known;
  }

  /** @param name of the mark; `isWord` holds for it */
  node(name: string, text: string): ElementContent {
    if (name.startsWith(TERM)) return this.term(name.slice(TERM.length), text);
    const word = name.slice(WORD.length);
    if (this.tells || this.linked.has(word) || !this.known.has(word)) return { type: "text", value: text };
    this.linked.add(word);
    return html("a", { href: `#word-${word}` }, [text]);
  }

  private term(word: string, text: string): ElementContent {
    if (!this.tells || this.told.has(word)) return { type: "text", value: text };
    this.told.add(word);
    return html("dfn", { id: `word-${word}` }, [text]);
  }
}
