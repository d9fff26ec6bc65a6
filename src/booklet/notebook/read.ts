/** Reads a recipe's body and a project's own templates into a notebook, with everything that is wrong in them whatever the garment. */
import { FIGURE_NAMES } from "../../figure/figure.ts";
import { nearest } from "../../quantity/nearest.ts";
import type { Message, Place } from "../../recipe/message.ts";
import { messageOf, type Problem, quoted } from "../../recipe/problem.ts";
import { CHAPTERS } from "../chapters.ts";
import { checkTemplate } from "../template/check.ts";
import { readTemplate } from "../template/read.ts";
import { type Named, treeOf } from "../template/shape.ts";
import { type Template, TemplateError } from "../template/tree.ts";
import { VOCABULARY } from "../template/vocabulary.ts";
import { WORDS_CHAPTER } from "../words.ts";
import { missingSignals } from "./caution-words.ts";
import { faultMessage } from "./fault.ts";
import { findImages } from "./images.ts";
import { lift, putIn } from "./lift.ts";
import { locator } from "./locate.ts";
import { type Notebook, type OwnText, THE_REST } from "./notebook.ts";
import { CROSSED, ownText } from "./own-text.ts";
import type { ReadMemory } from "./read-memory.ts";
import { type ReadWorkings, readWorkings } from "./read-workings.ts";
import { scan } from "./scan.ts";
import { segmentsOf } from "./segments.ts";
import { tagFaults } from "./tags.ts";
import { fenceProblem, lineFault, type Span, textFault } from "./text-faults.ts";

export interface ReadNotebook {
  readonly notebook: Notebook;
  readonly messages: readonly Message[];
}

/** A file of the project: its path beside the recipe, and its text. */
export interface ProjectText {
  readonly file: string;
  readonly text: string;
}

/**
 * Reads a notebook. Never throws for anything that stands in the texts; a blank body is the standard booklet.
 *
 * @param file the recipe's name, for messages
 * @param body what stands below the front matter, and the line of the file that it starts on
 * @param own the files of the project's `templates/`
 * @param quick what was read before; with it, pictures, links and HTML are not looked into and no photograph is listed, so
 *   that a text can be read again at every key. What it finds is true, but it is not all.
 */
export function readNotebook(
  file: string,
  body: { readonly text: string; readonly line: number },
  own: readonly ProjectText[] = [],
  quick?: ReadMemory,
): ReadNotebook {
  const reader = new Reader(file, body.line, termsIn(own), quick);
  const found = reader.body(body.text.replaceAll("\r\n", "\n"));
  const templates = reader.templates(own);
  const photographs = Object.fromEntries(reader.photographs);
  return {
    notebook: { file, line: body.line, ...found, templates, photographs },
    messages: [...reader.messages],
  };
}

/** The words that the project's own wording of their chapter tells. */
const termsIn = (own: readonly ProjectText[]): string[] =>
  own
    .filter(({ file }) => file.endsWith(`/${WORDS_CHAPTER}.md`))
    .flatMap(({ text }) => [...text.matchAll(/\{\{term "([^"]{1,60})"\}\}/g)])
    .map(([, word = ""]) => word.toLowerCase());

class Reader {
  readonly messages: Message[] = [];
  readonly photographs = new Map<string, Place>();
  private readonly file: string;
  private readonly line: number;
  private readonly given = new Map<string, Named>();
  private readonly words: readonly string[];
  private readonly quick: ReadMemory | undefined;

  constructor(file: string, line: number, words: readonly string[], quick: ReadMemory | undefined) {
    this.file = file;
    this.line = line;
    this.words = words;
    this.quick = quick;
  }

  body(text: string): Pick<Notebook, "body" | "start" | "workings"> {
    if (text.trim() === "") return { workings: [] };
    const span: Span = (line, column, length) => ({
      file: this.file,
      line: line + this.line - 1,
      column,
      length,
    });
    const start = startOf(text, span);
    if (this.isUnusable(text, span)) return { body: [], start, workings: [] };
    const { lines, fences } = scan(text);
    const workings = fences.filter(({ info }) => info === "workings");
    for (const fence of fences) {
      const problem = fenceProblem(fence);
      if (problem) this.say(span(fence.open.number, 1, fence.open.text.length), problem);
    }
    this.add(lines.flatMap((line, i) => lineFault(line, lines[i - 1], span) ?? []));
    const make = (): ReadWorkings =>
      readWorkings(workings, VOCABULARY, (line, column, length) => span(line.number, column, length));
    const read = this.quick?.readWorkings([this.line, workings], make) ?? make();
    for (const [name, kind] of read.given) this.given.set(name, kind);
    const lifted = lift(text, workings);
    const template = this.template(lifted, this.file, this.line, [...CHAPTERS, THE_REST]);
    const faults = tagFaults(template, lines);
    this.add([...read.messages, ...faults.map((fault) => faultMessage(fault, this.file, this.line))]);
    this.images(lifted, span);
    const placeOf = locator(lines, span);
    const isSound = !this.messages.some(({ level }) => level === "error");
    const body = isSound
      ? segmentsOf(putIn(template, read.blocks), (note) => ({ note: this.own(note, placeOf(note)) }))
      : [];
    this.messages.sort(inOrder);
    return { body, start, workings: read.inOrder };
  }

  templates(own: readonly ProjectText[]): Notebook["templates"] {
    const templates: Record<string, OwnText> = {};
    for (const { file, text } of own) {
      const name = /([^/]+)\.md$/.exec(file)?.[1] ?? file;
      const span: Span = (line, column, length) => ({ file, line, column, length });
      const first = span(1, 1, 1);
      if (!(CHAPTERS as readonly string[]).includes(name)) {
        const near = nearest(name, CHAPTERS);
        const hint = near ? `did you mean ${near}.md?` : `there are ${CHAPTERS.join(", ")}`;
        this.say(first, { code: "unknown-chapter", text: `there is no chapter ${quoted(name)}`, hint });
        continue;
      }
      const clean = text.replace(/^\uFEFF/, "").replaceAll("\r\n", "\n");
      if (this.isUnusable(clean, span)) continue;
      const { fences } = scan(clean);
      for (const { info, open } of fences) {
        if (info !== "workings") continue;
        const text = "workings stand in the recipe, not in a chapter's wording";
        this.say(span(open.number, 1, open.text.length), {
          code: "workings-line",
          text,
          hint: "move the block to recipe.md; its names can be used here",
        });
      }
      const template = this.template(clean, file, 1);
      this.images(clean, span);
      const missing = name === "cautions" ? missingSignals(template) : [];
      if (missing.length > 0) {
        this.say(first, {
          code: "cautions-left-out",
          text: `this wording of the cautions has no ${missing.join(" and no ")}`,
          hint: "keep the standard cautions, and write your own in recipe.md; or keep what they say here",
        });
      }
      templates[name] = this.own(template, first);
    }
    return templates;
  }

  /** A tree, checked; nothing where it cannot be read. */
  private template(text: string, file: string, line: number, chapters?: readonly string[]): Template {
    try {
      const template = readTemplate(text);
      const names = treeOf(this.given, VOCABULARY);
      const known = {
        names,
        figures: FIGURE_NAMES,
        words: this.words,
        text,
        ...(chapters ? { chapters } : {}),
      };
      this.add(checkTemplate(template, known).map((fault) => faultMessage(fault, file, line)));
      return template;
    } catch (error) {
      if (!(error instanceof TemplateError)) throw error;
      this.add([faultMessage(error, file, line)]);
      return [];
    }
  }

  private own(template: Template, place: Place): OwnText {
    return ownText(template, place, () => this.say(place, CROSSED), this.quick?.shapes);
  }

  private images(text: string, span: Span): void {
    if (this.quick) return;
    try {
      const found = findImages(text, span);
      this.add(found.messages);
      for (const [path, place] of found.photographs) {
        if (!this.photographs.has(path)) this.photographs.set(path, place);
      }
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this.say(span(1, 1, 1), {
        code: "too-deep",
        text: "quotes or lists nest too deeply to be read",
        hint: "take some of the > or - away",
      });
    }
  }

  /** Nothing more is read of such a text. */
  private isUnusable(text: string, span: Span): boolean {
    const fault = textFault(text, span);
    if (fault) this.add([fault]);
    return fault !== undefined;
  }

  private add(messages: readonly Message[]): void {
    this.messages.push(...messages);
  }

  private say(place: Place, problem: Problem): void {
    this.messages.push(messageOf(problem, "", place));
  }
}

const inOrder = (a: Message, b: Message): number =>
  (a.place?.line ?? 0) - (b.place?.line ?? 0) || (a.place?.column ?? 0) - (b.place?.column ?? 0);

/** The first line that is not blank. */
function startOf(text: string, span: Span): Place {
  const lines = text.split("\n");
  const at = lines.findIndex((line) => line.trim() !== "");
  return span(at + 1, 1, Math.max(1, (lines[at] ?? "").trimEnd().length));
}
