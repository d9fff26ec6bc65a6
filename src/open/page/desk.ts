/**
 * The recipe's text -> its booklet, at every change. What has not changed is not made again: with another sentence only
 * its own section is, with another measure everything that follows from the measures.
 */
import type { Element } from "hast";
import { type Beside, type Examined, examine, recordedBeside } from "../../booklet/examine.ts";
import { measuresSection } from "../../booklet/fields.ts";
import type { Before } from "../../booklet/html.ts";
import { html } from "../../booklet/nodes.ts";
import type { Notebook } from "../../booklet/notebook/notebook.ts";
import type { FoundFile } from "../../booklet/notebook/photographs.ts";
import type { Pictures } from "../../booklet/notebook/picture.ts";
import { type ReadNotebook, readNotebook } from "../../booklet/notebook/read.ts";
import { ReadMemory } from "../../booklet/notebook/read-memory.ts";
import { type Worked, work } from "../../booklet/notebook/work.ts";
import { bookletParts, type Parts } from "../../booklet/parts.ts";
import { PartsMemory } from "../../booklet/parts-memory.ts";
import { TemplateError } from "../../booklet/template/tree.ts";
import type { Units } from "../../page/kept.ts";
import { READINGS } from "../../page/live/live.ts";
import { frontMatter } from "../../recipe/front-matter.ts";
import { Source } from "../../recipe/lines.ts";
import type { Message } from "../../recipe/message.ts";
import { readRecipe } from "../../recipe/read.ts";
import type { Plan } from "../../solve/plan.ts";
import { solve } from "../../solve/solve.ts";

export const RECIPE = "recipe.md";

/** A booklet's page as nodes. */
export interface Booklet {
  readonly plan: Plan;
  readonly main: Element;
  readonly contents: Element;
  readonly measures: Element;
}

export type Made =
  | { readonly booklet: Booklet; readonly messages: readonly Message[] }
  | { readonly booklet?: undefined; readonly messages: readonly Message[] };

/** The measures of one text, worked out. */
interface Front {
  readonly text: string;
  readonly beside: Beside;
  readonly units: Units;
  readonly plan?: Plan;
  readonly messages: readonly Message[];
}

const failed = (messages: readonly Message[]): boolean => messages.some(({ level }) => level === "error");

export class Desk {
  private beside: Beside = { templates: [], messages: [] };
  private pictures: Pictures = new Map();
  private units: Units = "";
  private front: Front | undefined;
  private body: { text: string; line: number; beside: Beside; read: ReadNotebook } | undefined;
  private worked: { plan: Plan; workings: string; is: Worked } | undefined;
  private readonly texts = new ReadMemory();
  private readonly memory = new PartsMemory();
  private before: Before | undefined;
  /** Made again only when a measure or the measures' texts change. */
  private measures: { plan: Plan; node: Element } | undefined;

  /** What stands beside the recipe, and how its photographs are shown where that has changed. */
  takeFiles(beside: Beside, pictures: Pictures = this.pictures): void {
    this.beside = beside;
    this.pictures = pictures;
  }

  /** Units to read in. What is marked as changed begins anew. */
  readIn(units: Units): void {
    this.units = units;
    this.before = undefined;
  }

  /** From now on what differs from this text's booklet is marked. Nothing is, while that cannot be made. */
  markFrom(text: string): void {
    this.before = undefined;
    const parts = this.parts(text);
    if ("parts" in parts) this.before = beforeOf(parts.worked.plan, parts.parts);
  }

  /** Does a text differ from the last one that was made in more than its body? */
  changesMeasures(text: string): boolean {
    const front = frontMatter(new Source(RECIPE, text));
    return "code" in front || this.front?.text !== text.slice(0, text.length - front.body.text.length);
  }

  /** The booklet of a text, or why there is none. Messages are not all that can be said: see `examine`. */
  make(text: string): Made {
    const made = this.parts(text);
    if (!("parts" in made)) return made;
    const { parts, worked, messages } = made;
    if (this.measures?.plan !== worked.plan)
      this.measures = { plan: worked.plan, node: measuresSection(worked.plan, "together") };
    return {
      messages,
      booklet: {
        plan: worked.plan,
        main: html("main", {}, parts.nodes),
        contents: parts.contents,
        measures: this.measures.node,
      },
    };
  }

  /** All that a build would say of a text. */
  examine(text: string, find: (path: string) => FoundFile): Examined {
    const found = examine(RECIPE, text, this.beside, find);
    return { ...found, messages: [...this.beside.messages, ...found.messages] };
  }

  private parts(text: string): { parts: Parts; worked: Worked; messages: readonly Message[] } | Made {
    const front = this.read(text);
    const { plan } = front;
    const { notebook, messages } = this.readBody(text);
    const all = [...front.messages, ...messages];
    if (!plan || failed(messages)) return { messages: all };
    const worked = this.work(plan, notebook);
    if (failed(worked.messages)) return { messages: [...all, ...worked.messages] };
    try {
      const own = { notebook, pictures: this.pictures };
      return { parts: bookletParts(worked, this.before, own, this.memory), worked, messages: all };
    } catch (error) {
      if (!(error instanceof TemplateError)) throw error;
      return { messages: [...all, { code: error.code, level: "error", text: error.message }] };
    }
  }

  private readBody(text: string): ReadNotebook {
    const split = frontMatter(new Source(RECIPE, text));
    const body = "body" in split ? split.body : { text: "", line: 1 };
    const { beside, body: last } = this;
    if (last && last.text === body.text && last.line === body.line && last.beside === beside)
      return last.read;
    const read = readNotebook(RECIPE, body, beside.templates, this.texts);
    this.body = { ...body, beside, read };
    return read;
  }

  private read(text: string): Front {
    const split = frontMatter(new Source(RECIPE, text));
    const front = "code" in split ? text : text.slice(0, text.length - split.body.text.length);
    const { beside, units, front: last } = this;
    if (last && last.text === front && last.beside === beside && last.units === units) return last;
    const read = readRecipe(RECIPE, text, beside.evidence);
    const reading = read.recipe && units !== "" && units !== read.recipe.show ? READINGS[units] : undefined;
    const solved =
      read.recipe && !failed(read.messages)
        ? solve({ ...read.recipe, recorded: recordedBeside(beside).recorded }, reading)
        : { messages: [] };
    const messages = [...read.messages, ...solved.messages];
    this.front = { text: front, beside, units, messages, ...(solved.plan ? { plan: solved.plan } : {}) };
    return this.front;
  }

  /** The same object again while neither the plan nor a working has changed. */
  private work(plan: Plan, notebook: Notebook): Worked {
    const workings = JSON.stringify(
      notebook.workings.map(({ name, formula, about }) => [name, formula, about]),
    );
    const last = this.worked;
    if (last?.plan === plan && last.workings === workings && last.is.messages.length === 0) return last.is;
    const is = work(plan, notebook);
    this.worked = { plan, workings, is };
    return is;
  }
}

/** A text of the maker's own is compared while it stands as it stood: when she changes it, that is no changed result. */
function beforeOf(plan: Plan, parts: Parts): Before {
  const own = [...parts.texts].map(([name, shape]) => [shape, parts.prints.get(name) ?? new Map()] as const);
  return {
    chapters: new Map([...parts.prints].filter(([name]) => !parts.texts.has(name))),
    texts: new Map(own),
    values: new Map([...plan.values].map(([name, { shown }]) => [name, shown])),
    figures: new Map([
      ...[...parts.figures].map(([name, figure]) => [`figures/${name}`, figure] as const),
      ...[...parts.guides].map(([name, guide]) => [`guides/${name}`, guide] as const),
    ]),
  };
}
