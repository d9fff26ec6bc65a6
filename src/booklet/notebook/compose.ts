/** Plan + notebook -> the booklet's sections as Markdown, and all that is wrong with the maker's text for this garment. Not in the page. */
import type { Level, Message, Place } from "../../recipe/message.ts";
import { messageOf, type Problem } from "../../recipe/problem.ts";
import { CHAPTERS, chaptersOf } from "../chapters.ts";
import { tidyMarkdown } from "../markdown.ts";
import { renderChapter, standardTemplate } from "../template/chapter.ts";
import type { Context } from "../template/evaluate.ts";
import { render } from "../template/render.ts";
import { TemplateError } from "../template/tree.ts";
import { carriesCaution } from "./caution-words.ts";
import { faultMessage } from "./fault.ts";
import { isFollowed } from "./followed.ts";
import { type Notebook, type OwnText, THE_REST } from "./notebook.ts";
import { CROSSED } from "./own-text.ts";
import { type SectionPart, sectionsOf } from "./sections.ts";
import { titlesIn } from "./titles.ts";
import type { Worked } from "./work.ts";

/** A part of the booklet as Markdown: a chapter by its name, or a note of the maker's own. */
export interface Section {
  readonly name: string;
  readonly markdown: string;
  readonly isNote: boolean;
}

export interface Written {
  readonly sections: readonly Section[];
  readonly messages: readonly Message[];
}

/**
 * Writes a booklet's sections. Every fault of the maker's own text and wordings is a message; one in a standard chapter
 * is a fault of the program and thrown.
 *
 * @param context what templates can ask for: `ownContext`
 */
export const writeSections = ({ plan }: Worked, notebook: Notebook, context: Context): Written =>
  new Composing(notebook, context).write(sectionsFor(plan, notebook, context));

interface Found {
  readonly parts: readonly SectionPart[];
  readonly messages: readonly Message[];
  readonly left: readonly string[];
}

function sectionsFor(plan: Worked["plan"], notebook: Notebook, context: Context): Found {
  const messages: Message[] = [];
  const parts = sectionsOf(plan, notebook, context, (level, at, problem) => {
    const [row, column, length] = at ?? [1, 1, 1];
    const place = { file: notebook.file, line: row + notebook.line - 1, column, length };
    messages.push(messageOf(problem, "", place, level));
  });
  const named = new Set(parts.filter(({ isForced }) => !isForced).map(({ name }) => name));
  return { parts, messages, left: chaptersOf(plan).filter((name) => !named.has(name)) };
}

class Composing {
  private readonly notebook: Notebook;
  private readonly context: Context;
  private readonly messages: Message[] = [];

  constructor(notebook: Notebook, context: Context) {
    this.notebook = notebook;
    this.context = context;
  }

  write({ parts, messages, left }: Found): Written {
    this.messages.push(...messages);
    if (this.notebook.body) this.warnOfCautions(left, parts);
    const sections = parts.map((part) => ({
      name: part.name,
      markdown: part.own ? this.own(part, part.own) : tidyMarkdown(renderChapter(part.name, this.context)),
      isNote: part.isNote,
    }));
    return { sections, messages: this.messages.sort(inFileOrder) };
  }

  /** A note or a wording of the project's own. */
  private own({ name, isNote }: SectionPart, own: OwnText): string {
    const before = this.messages.length;
    const markdown = tidyMarkdown(this.rendered(own));
    if (!isNote) this.checkWording(name, own, markdown);
    const isSound = this.messages.length === before;
    if (isSound && !isFollowed(own.shape, markdown, this.context)) this.say("error", own.place, CROSSED);
    return markdown;
  }

  private rendered({ template, place }: OwnText): string {
    const { file, line } = this.notebook;
    const base = place.file === file ? line : 1;
    const say = (fault: TemplateError): void =>
      void this.messages.push(faultMessage(fault, place.file, base));
    try {
      return render(template, this.context, undefined, say);
    } catch (error) {
      if (!(error instanceof TemplateError)) throw error;
      if (error.at) say(error);
      else
        this.say("error", place, {
          code: error.code,
          text: error.message,
          ...(error.hint ? { hint: error.hint } : {}),
        });
      return "";
    }
  }

  private checkWording(name: string, own: OwnText, markdown: string): void {
    const titles = titlesIn(markdown);
    if (titles !== 1) {
      this.say("error", own.place, {
        code: "chapter-title",
        text: titles === 0 ? "this chapter has no title" : `this chapter has ${titles} titles`,
        expected: "one line that begins with ##, the chapter's title",
        hint:
          titles === 0
            ? "write ## and the title on the first line"
            : "use ### for what stands below the title",
      });
    } else if (carriesCaution(standardTemplate(name)) && !carriesCaution(own.template)) {
      this.say("warning", own.place, {
        code: "cautions-left-out",
        text: `the standard chapter "${name}" carries a WARNING or a CAUTION, and this wording none`,
        hint: "put it before the step it belongs to; the general cautions stand in front all the same",
      });
    }
  }

  /** What carries a caution and is left out is said. */
  private warnOfCautions(left: readonly string[], parts: readonly SectionPart[]): void {
    const { start, file, line } = this.notebook;
    const place = start ?? { file, line, column: 1, length: 1 };
    const put = parts.filter(({ name, isNote }) => !isNote && !left.includes(name));
    if (put.length === 0) {
      this.say("warning", place, {
        code: "no-chapters",
        text: "no chapter of the standard booklet is named here: the booklet holds your own text and the general cautions only",
        hint: `write {{> ${THE_REST}}} on a line of its own where the standard chapters should stand`,
      });
      return;
    }
    const cautious = left.filter((name) => name === "cautions" || carriesCaution(standardTemplate(name)));
    if (cautious.length === 0) return;
    const names = CHAPTERS.filter((name) => cautious.includes(name)).join(", ");
    const first = cautious.includes("cautions") ? "; the general cautions are put first all the same" : "";
    this.say("warning", place, {
      code: "cautions-left-out",
      text: `chapters with a WARNING or a CAUTION are left out: ${names}${first}`,
      hint: `put them in, as {{> ${cautious[0] ?? ""}}}, or {{> ${THE_REST}}} for all that are not named elsewhere`,
    });
  }

  private say(level: Level, place: Place, problem: Problem): void {
    this.messages.push(messageOf(problem, "", place, level));
  }
}

const inFileOrder = ({ place: a }: Message, { place: b }: Message): number =>
  a === undefined || b === undefined || a.file !== b.file ? 0 : a.line - b.line || a.column - b.column;
