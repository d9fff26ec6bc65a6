/** Plan + notebook -> the booklet's sections as Markdown: chapters and the maker's own text, in her order. */
import type { Message, Place } from "../../recipe/message.ts";
import { messageOf, type Problem } from "../../recipe/problem.ts";
import { CHAPTERS, chaptersOf } from "../chapters.ts";
import { contextOf } from "../context.ts";
import { tidyMarkdown } from "../markdown.ts";
import { renderChapter, standardTemplate } from "../template/chapter.ts";
import { type Context, type Include, render } from "../template/render.ts";
import { type At, type Template, TemplateError } from "../template/tree.ts";
import { carriesCaution } from "./caution-words.ts";
import { faultMessage } from "./fault.ts";
import { type Notebook, type OwnTemplate, THE_REST } from "./notebook.ts";
import { withAnswers } from "./own-context.ts";
import { workingsTable } from "./show-workings.ts";
import { chapterSlot, cutAtChapters, fillWorkings } from "./slots.ts";
import { headingsIn, splitAtHeadings } from "./split.ts";
import type { Worked } from "./work.ts";

/** A part of the booklet: a chapter by its name, or a note of the maker's own, `note-1` and so on. */
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
 * Writes a booklet's sections. Every fault of the maker's own text and templates is a message; one in a standard chapter
 * is a fault of the program and thrown.
 *
 * @param figures the title of every figure that this garment has, by its name
 */
export function writeSections(
  worked: Worked,
  notebook: Notebook,
  figures: Readonly<Record<string, string>>,
): Written {
  const context = withAnswers({ ...contextOf(worked.plan), figures }, worked.answers);
  return new Composing(worked, notebook, context).write();
}

class Composing {
  private readonly worked: Worked;
  private readonly notebook: Notebook;
  private readonly context: Context;
  private readonly messages: Message[] = [];

  constructor(worked: Worked, notebook: Notebook, context: Context) {
    this.worked = worked;
    this.notebook = notebook;
    this.context = context;
  }

  write(): Written {
    const applying: readonly string[] = chaptersOf(this.worked.plan);
    const sections = this.notebook.body
      ? this.ownOrder(applying)
      : applying.map((name) => this.chapter(name));
    return { sections, messages: this.messages.sort(inFileOrder) };
  }

  private ownOrder(applying: readonly string[]): Section[] {
    const { text, named } = this.body(applying);
    const rest = applying.filter((name) => !named.has(name));
    const pieces = cutAtChapters(text).flatMap((piece) =>
      "chapter" in piece && piece.chapter === THE_REST ? rest.map((chapter) => ({ chapter })) : [piece],
    );
    const chapters = new Set(pieces.flatMap((piece) => ("chapter" in piece ? [piece.chapter] : [])));
    this.warnOfCautions(
      applying.filter((name) => !chapters.has(name)),
      chapters.size,
    );
    let notes = 0;
    const sections = pieces.flatMap((piece): Section[] => {
      if ("chapter" in piece) return [this.chapter(piece.chapter)];
      return splitAtHeadings(piece.prose).map((prose) => {
        notes += 1;
        return { name: `note-${notes}`, markdown: tidyMarkdown(prose), isNote: true };
      });
    });
    return chapters.has("cautions") ? sections : [this.chapter("cautions"), ...sections];
  }

  /** The body rendered, slots for its chapters in it, and the chapters that were named. */
  private body(applying: readonly string[]): { text: string; named: ReadonlySet<string> } {
    const { body = [], blocks, file, line } = this.notebook;
    const named = new Set<string>();
    const include = (name: string, at: At | undefined): string => {
      if (named.has(name)) {
        throw new TemplateError(`the chapter "${name}" stands here a second time`, {
          at,
          code: "chapter-twice",
          hint: "keep one of the two",
        });
      }
      named.add(name);
      if (name === THE_REST || applying.includes(name)) return chapterSlot(name);
      this.say("note", this.placeOf(at), {
        code: "chapter-does-not-apply",
        text: `the chapter "${name}" does not apply to this garment, and is left out`,
      });
      return "";
    };
    const text = this.rendered(body, file, line, include);
    const shown = fillWorkings(text, (block) => workingsTable(blocks[block] ?? [], this.worked));
    return { text: shown, named };
  }

  /** The maker's own text rendered; every fault is a message. */
  private rendered(template: Template, file: string, line: number, include?: Include): string {
    const say = (fault: TemplateError): void => void this.messages.push(faultMessage(fault, file, line));
    try {
      return render(template, this.context, include, say);
    } catch (error) {
      if (!(error instanceof TemplateError)) throw error;
      say(error);
      return "";
    }
  }

  private chapter(name: string): Section {
    const { templates } = this.notebook;
    const own = Object.hasOwn(templates, name) ? templates[name] : undefined;
    if (own && carriesCaution(standardTemplate(name)) && !carriesCaution(own.template)) {
      this.say(
        "warning",
        { file: own.file, line: 1, column: 1, length: 1 },
        {
          code: "cautions-left-out",
          text: `the standard chapter "${name}" carries a WARNING or a CAUTION, and this wording none`,
          hint: "put it before the step it belongs to; the general cautions stand in front all the same",
        },
      );
    }
    const markdown = own ? this.ownChapter(own) : renderChapter(name, this.context);
    return { name, markdown: tidyMarkdown(markdown), isNote: false };
  }

  private ownChapter({ file, template }: OwnTemplate): string {
    const markdown = this.rendered(template, file, 1);
    const titles = headingsIn(markdown);
    if (titles !== 1) {
      this.say(
        "error",
        { file, line: 1, column: 1, length: 1 },
        {
          code: "chapter-title",
          text: titles === 0 ? "this chapter has no title" : `this chapter has ${titles} titles`,
          expected: "one line that begins with ##, the chapter's title",
          hint:
            titles === 0
              ? "write ## and the title on the first line"
              : "use ### for what stands below the title",
        },
      );
    }
    return markdown;
  }

  /** What carries a caution and is left out is said, and the general cautions stand in front. */
  private warnOfCautions(left: readonly string[], chapters: number): void {
    const { start, file, line } = this.notebook;
    const place = start ?? { file, line, column: 1, length: 1 };
    if (chapters === 0) {
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

  private placeOf(at: At | undefined): Place {
    const [row, column, length] = at ?? [1, 1, 1];
    return { file: this.notebook.file, line: row + this.notebook.line - 1, column, length };
  }

  private say(level: Message["level"], place: Place, problem: Problem): void {
    this.messages.push(messageOf(problem, "", place, level));
  }
}

const inFileOrder = ({ place: a }: Message, { place: b }: Message): number =>
  a === undefined || b === undefined || a.file !== b.file ? 0 : a.line - b.line || a.column - b.column;
