/** Plan + notebook -> the sections of the booklet in the maker's order. The same for the Markdown and for the page. */
import type { Level } from "../../recipe/message.ts";
import type { Problem } from "../../recipe/problem.ts";
import type { Plan } from "../../solve/plan.ts";
import { chaptersOf } from "../chapters.ts";
import { answer, type Context, holds, outermost } from "../template/evaluate.ts";
import { render } from "../template/render.ts";
import { type At, TemplateError } from "../template/tree.ts";
import { type Notebook, type OwnText, type Segment, THE_REST } from "./notebook.ts";

/** A chapter by its name, in the standard wording where it has no own text; or a note, `note-1` and so on. */
export interface SectionPart {
  readonly name: string;
  readonly isNote: boolean;
  readonly own?: OwnText;
  /** Put first although it is named nowhere. */
  readonly isForced?: true;
}

/** Takes what there is to say of the order; `at` is a place in the body. */
export type Say = (level: Level, at: At | undefined, problem: Problem) => void;

/** The sections, cautions first where they are named nowhere. */
export function sectionsOf(
  plan: Plan,
  { body, templates }: Notebook,
  context: Context,
  say: Say = () => {},
): readonly SectionPart[] {
  const applying: readonly string[] = chaptersOf(plan);
  const chapter = (name: string): SectionPart => {
    const own = Object.hasOwn(templates, name) ? templates[name] : undefined;
    return own ? { name, isNote: false, own } : { name, isNote: false };
  };
  if (!body) return applying.map(chapter);
  const taken = new Map<string, boolean>();
  const places = new Map<string, At | undefined>();
  const walked = walk(body, context, say, (name, at) => {
    if (taken.has(name)) {
      say("error", at, {
        code: "chapter-twice",
        text: `the chapter "${name}" stands here a second time`,
        hint: "keep one of the two",
      });
      return false;
    }
    const applies = name === THE_REST || applying.includes(name);
    taken.set(name, applies);
    places.set(name, at);
    if (!applies) {
      say("note", at, {
        code: "chapter-does-not-apply",
        text: `the chapter "${name}" does not apply to this garment, and is left out`,
      });
    }
    return applies;
  });
  let notes = 0;
  const parts = walked.flatMap((one): SectionPart[] => {
    if (typeof one === "string") {
      return one === THE_REST ? applying.filter((name) => !taken.has(name)).map(chapter) : [chapter(one)];
    }
    notes += 1;
    return [{ name: `note-${notes}`, isNote: true, own: one }];
  });
  sayOrder(parts, places, say);
  return parts.some(({ name }) => name === "cautions")
    ? parts
    : [{ ...chapter("cautions"), isForced: true }, ...parts];
}

/** Chapters whose work needs that of the one before; the others may be read anywhere. */
const WORK = ["cutting", "seams", "hem", "balance", "marking", "gauging", "setting", "whipping", "closing"];

/** Says the first chapter that stands before one whose work comes first: the page is sewn from top to bottom. */
function sayOrder(
  parts: readonly SectionPart[],
  places: ReadonlyMap<string, At | undefined>,
  say: Say,
): void {
  const work = parts.map(({ name }) => name).filter((name) => WORK.includes(name));
  const early = work.find((name, i) =>
    work.slice(i + 1).some((later) => WORK.indexOf(later) < WORK.indexOf(name)),
  );
  if (!early) return;
  const first = WORK.find((name) => work.indexOf(name) > work.indexOf(early));
  const rest = first && places.has(first) ? "" : `; {{> ${THE_REST}}} holds it now`;
  say("note", places.get(early) ?? places.get(THE_REST), {
    code: "chapter-order",
    text: `the chapter "${early}" stands before "${first}", whose work comes first`,
    hint: `name {{> ${first}}} above it, if the booklet is to be sewn from top to bottom${rest}`,
  });
}

/** Chapters taken and notes that are not blank, in order. */
function walk(
  segments: readonly Segment[],
  context: Context,
  say: Say,
  take: (name: string, at: At | undefined) => boolean,
): (string | OwnText)[] {
  return segments.flatMap((segment): (string | OwnText)[] => {
    if ("note" in segment) return isBlank(segment.note, context) ? [] : [segment.note];
    if ("chapter" in segment) return take(segment.chapter, segment.at) ? [segment.chapter] : [];
    return walk(isHeld(segment.if, context, say) ? segment.do : segment.else, context, say, take);
  });
}

function isHeld(about: Parameters<typeof answer>[0], context: Context, say: Say): boolean {
  try {
    return holds(answer(about, outermost(context), context));
  } catch (error) {
    if (!(error instanceof TemplateError)) throw error;
    const { code, message, hint, at } = error;
    say("error", at, { code, text: message, ...(hint === undefined ? {} : { hint }) });
    return false;
  }
}

/** Nothing stands in it for this garment. What cannot be rendered is not blank: it is told where it is written. */
function isBlank({ template }: OwnText, context: Context): boolean {
  let hasFault = false;
  try {
    const text = render(template, context, undefined, () => {
      hasFault = true;
    });
    return !hasFault && text.trim() === "";
  } catch (error) {
    if (!(error instanceof TemplateError)) throw error;
    return false;
  }
}
