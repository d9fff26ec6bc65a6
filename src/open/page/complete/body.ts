/** What may stand in the notebook's tags and workings: chapters, drawings, values, helpers, each with its meaning. */
import type { Completion, CompletionContext, CompletionResult } from "@codemirror/autocomplete";
import { CHAPTERS, chaptersOf } from "../../../booklet/chapters.ts";
import { THE_REST } from "../../../booklet/notebook/notebook.ts";
import { HELPERS } from "../../../booklet/template/helpers.ts";
import { FLAGS, LISTS } from "../../../booklet/template/names.ts";
import { WORD_LIST } from "../../../booklet/template/word-list.ts";
import { FIGURE_NAMES } from "../../../figure/figure.ts";
import { drawFigure, figuresOf } from "../../../figure/index.ts";
import { FUNCTIONS } from "../../../quantity/formula-functions.ts";
import { NAMES } from "../../../solve/names.ts";
import type { Plan } from "../../../solve/plan.ts";
import { chapterTitle } from "./chapter-title.ts";
import { describe } from "./describe.ts";

const PARTS = /\{\{[^{}\n]*$/;

/** Completes below the second `---`. `plan` gives the last booklet's, for the values of this very garment. */
export const completeBody =
  (plan: () => Plan | undefined) =>
  (context: CompletionContext): CompletionResult | null => {
    const { state, pos } = context;
    const text = state.doc.sliceString(0, pos);
    const body = /\n---[ \t]*\n/.exec(text);
    if (!body) return null;
    const line = state.doc.lineAt(pos);
    const before = line.text.slice(0, pos - line.from);
    const tag = PARTS.exec(before)?.[0];
    if (tag !== undefined) return inTag(tag, pos, plan());
    const fences = text.slice(body.index).match(/^ {0,3}(?:`{3,}|~{3,}).*$/gm) ?? [];
    return fences.length % 2 === 1 && /(?:`|~) *workings/.test(fences.at(-1) ?? "")
      ? inWorkings(before, pos, plan(), context.explicit)
      : null;
  };

function inTag(tag: string, pos: number, plan: Plan | undefined): CompletionResult | null {
  const chapter = /^\{\{> *([\w-]*)$/.exec(tag);
  if (chapter) return result(pos, chapter[1], chapters(plan), /^[\w-]*$/);
  const figure = /^\{\{figure +"([\w-]*)$/.exec(tag);
  if (figure) return result(pos, figure[1], figures(plan), /^[\w-]*$/);
  const word = /^\{\{word +"(?:[^"]*" +")?([\p{L} -]*)$/u.exec(tag);
  if (word) return result(pos, word[1], words(), /^[\p{L} -]*$/u);
  const name = /(?:^\{\{(?:#if |#unless |else if )?|[\s(])([\w.]*)$/.exec(tag);
  if (!name) return null;
  const isChoice = /^\{\{#(?:if|unless)/.test(tag);
  const isList = /^\{\{#each/.test(tag);
  const options = isList
    ? lists()
    : [...(isChoice ? flags() : []), ...values(plan), ...helpers(isChoice), ...(isChoice ? [] : blocks(tag))];
  return result(pos, name[1], options, /^[\w.]*$/);
}

const result = (
  pos: number,
  written: string | undefined,
  options: Completion[],
  validFor: RegExp,
): CompletionResult => ({ from: pos - (written ?? "").length, options, validFor });

function chapters(plan: Plan | undefined): Completion[] {
  const has: readonly string[] = plan ? chaptersOf(plan) : CHAPTERS;
  const rest: Completion = {
    label: THE_REST,
    detail: "all that are named nowhere else",
    info: "Every chapter of this garment that is named nowhere else, in the order of the work.",
    apply: `${THE_REST}}}`,
    boost: 50,
  };
  return [
    ...CHAPTERS.map((name, i): Completion => {
      const title = chapterTitle(name);
      const applies = has.includes(name);
      return {
        label: name,
        detail: applies ? title : "not in this garment’s booklet",
        info: applies ? `The chapter “${title}”.` : `The chapter “${title}”; this garment does not need it.`,
        apply: `${name}}}`,
        boost: (applies ? 40 : -40) - i / 10,
      };
    }),
    rest,
  ];
}

const figures = (plan: Plan | undefined): Completion[] =>
  (plan ? figuresOf(plan) : FIGURE_NAMES).map((label) => ({
    label,
    ...(plan ? { info: () => describe({ means: drawFigure(label, plan).title }) } : {}),
    apply: `${label}"}}`,
  }));

const words = (): Completion[] =>
  WORD_LIST.map((label) => ({ label, detail: "a word of the trade", apply: `${label}"}}` }));

/** The garment's own values with what they come to; without a plan all that there are. */
function values(plan: Plan | undefined): Completion[] {
  if (plan) {
    return [...plan.values.values()].map(({ name, shown, about, rule = "" }) => ({
      label: name,
      detail: shown,
      info: () => describe({ means: about, now: shown, rule }),
      type: "variable",
    }));
  }
  return Object.entries(NAMES).map(([label, { about }]) => ({ label, info: about, type: "variable" }));
}

const flags = (): Completion[] =>
  FLAGS.trim()
    .split(/\s+/)
    .map((name) => ({ label: `is.${name}`, detail: "yes or no", type: "constant" }));

const lists = (): Completion[] =>
  Object.entries(LISTS)
    .filter(([name]) => !name.includes("."))
    .map(([label, items]) => ({ label, detail: "a list", info: `each has: ${items}`, type: "variable" }));

const helpers = (isChoice: boolean): Completion[] =>
  Object.entries(HELPERS)
    .filter(([, { gives }]) => isChoice || gives === "words")
    .map(([label, { example }]) => ({
      label,
      detail: "helper",
      info: `written as ${example}`,
      type: "function",
    }));

/** What a tag may begin with. */
const blocks = (tag: string): Completion[] =>
  /^\{\{[\w.]*$/.test(tag)
    ? [
        { label: "#if", detail: "a choice", info: "{{#if is.piped}} … {{else}} … {{/if}}", type: "keyword" },
        { label: "#each", detail: "a list", info: "{{#each stations}} … {{/each}}", type: "keyword" },
        { label: "> ", detail: "a chapter", info: "{{> balance}} on a line of its own", type: "keyword" },
      ]
    : [];

function inWorkings(
  before: string,
  pos: number,
  plan: Plan | undefined,
  explicit: boolean,
): CompletionResult | null {
  if (!before.includes("=") || before.includes("#")) return null;
  const written = /[\w.]*$/.exec(before)?.[0] ?? "";
  if (written === "" && !explicit) return null;
  if (/^\d/.test(written)) return null;
  const functions = [...FUNCTIONS.keys()].map(
    (label): Completion => ({ label, detail: "function", type: "function" }),
  );
  return result(pos, written, [...values(plan), ...functions], /^[\w.]*$/);
}
