/**
 * The fields of a booklet: every measure that the recipe gives, the trial and the made edge where their work happens. A
 * field's name is the recipe's path. They can be read and printed without script; with it they work everything out again.
 */
import type { Element } from "hast";
import type { Field } from "../recipe/recipe.ts";
import type { Plan } from "../solve/plan.ts";
import { meaningOf } from "../solve/sheet.ts";
import type { Chapter } from "./chapters.ts";
import { html } from "./nodes.ts";

const BLOCKS: Readonly<Record<string, string>> = {
  wearer: "The wearer",
  cloth: "The cloth",
  skirt: "The skirt",
  fullness: "The fullness",
  attach: "Band, edge and opening",
  work: "Hands and prices",
};

const TRIAL = ["fullness.trial.cloth", "fullness.trial.pleats", "fullness.trial.closes-to"] as const;
const MADE = "attach.made";

/** Paths whose field stands in a chapter, not among the measures. */
const ELSEWHERE: ReadonlySet<string> = new Set([...TRIAL, MADE]);

const idOf = (path: string): string => `field-${path.replaceAll(".", "-")}`;

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a measure is, its own part first: "at centre front (from the waist seam to the floor …)". */
function labelOf(path: string): string {
  const [block, own] = meaningOf(path).split(/: (?!.*: )/);
  return own === undefined ? (block as string) : `${own} (${block})`;
}

function field({ path, text }: Field): Element {
  const id = idOf(path);
  return html("p", { className: ["field"] }, [
    html("label", { htmlFor: [id] }, [upperFirst(labelOf(path))]),
    html("input", {
      id,
      name: path,
      type: "text",
      value: text,
      readOnly: true,
      autoComplete: ["off"],
      spellCheck: "false",
    }),
  ]);
}

const group = (label: string, children: readonly Element[]): Element =>
  html("div", { className: ["fields"], role: "group", ariaLabel: label }, children);

/** What a change in the fields does to the recipe: in a built booklet, and in one that is open beside its text. */
const OF_THE_RECIPE = {
  apart: ". The recipe itself stays as it is.",
  together: ". It is changed in the text of the recipe as well.",
} as const;

const OTHERS = "Other measures";

/** Fields by block, but for those that are entered in a chapter. */
function byBlock(fields: readonly Field[], label: string): Element {
  const groups = new Map<string, Field[]>();
  for (const one of fields) {
    if (ELSEWHERE.has(one.path)) continue;
    const step = one.path.includes(".") ? one.path.slice(0, one.path.indexOf(".")) : "";
    const block = BLOCKS[step] ?? OTHERS;
    groups.set(block, [...(groups.get(block) ?? []), one]);
  }
  // What belongs to no block, as the tape, comes after the wearer and her cloth.
  const ordered = [...groups].sort(([a], [b]) => Number(a === OTHERS) - Number(b === OTHERS));
  return group(
    label,
    ordered.map(([block, fields]) =>
      html("fieldset", {}, [html("legend", {}, [block]), ...fields.map((one) => field(one))]),
    ),
  );
}

/**
 * All measures of the recipe that are not entered in a chapter, by block.
 *
 * @param text does the recipe's text stay as it is, or go along with the fields?
 */
export function measuresSection(plan: Plan, text: keyof typeof OF_THE_RECIPE = "apart"): Element {
  return html("section", { id: "your-measures", ariaLabelledBy: ["your-measures-title"] }, [
    html("h2", { id: "your-measures-title" }, ["Change a measure"]),
    html("p", {}, [
      "These are the measures this booklet was worked out from. Change one here, or touch any number in the text, and everything that follows from it is worked out again; what has changed is marked ◆. Write a length with its unit, as ",
      html("code", {}, ["26 1/2 in"]),
      " or ",
      html("code", {}, ["67.3 cm"]),
      OF_THE_RECIPE[text],
    ]),
    html("noscript", {}, [
      "Your browser runs no scripts here: the booklet is complete as published, and the fields only show what it was made from.",
    ]),
    byBlock(plan.recipe.fields, "Measures of the recipe"),
  ]);
}

/** The measures that a reader is asked for, empty, at the head of a page that is made for her. */
export function askSection(asks: readonly string[]): Element {
  return html("section", { id: "ask", ariaLabelledBy: ["ask-title"] }, [
    html("h2", { id: "ask-title" }, ["Your measures"]),
    html("p", {}, [
      "Enter your own measures, each with its unit, as ",
      html("code", {}, ["26 1/2 in"]),
      " or ",
      html("code", {}, ["67.3 cm"]),
      ". When all of them are there, your booklet stands below: your numbers, your drawings, your guides at true size. Nothing leaves this page; what you enter is kept in this browser.",
    ]),
    html("p", {}, [
      "Dress in everything worn beneath, in the shoes, and tie a firm tape as deep as the band where the band will lie. Take the waist over it, closed as the band will be. Take the lengths from its lower edge, straight down to the floor, with a helper who reads the tape.",
    ]),
    html("noscript", {}, [
      "Your browser runs no scripts here, and without them this page cannot work out a booklet. The booklets of the sizes need none.",
    ]),
    group("Your measures", [
      html("fieldset", {}, [
        html("legend", {}, ["Taken on you"]),
        ...asks.map((path) => field({ path, text: "" })),
      ]),
    ]),
  ]);
}

/** What the pattern chooses; a reader may choose otherwise. */
export function choicesSection(fields: readonly Field[]): Element {
  return html("section", { id: "your-measures", ariaLabelledBy: ["your-measures-title"] }, [
    html("h2", { id: "your-measures-title" }, ["The pattern’s own choices"]),
    html("p", {}, [
      "These are filled in as the pattern has them. Put in your own cloth where it is another one: its width and its thickness decide most. What you change is marked ◆.",
    ]),
    byBlock(fields, "The pattern’s own choices"),
  ]);
}

const textOf = (plan: Plan, path: string): string =>
  plan.recipe.fields.find((one) => one.path === path)?.text ?? "";

/** What is entered in a chapter while the work is done; undefined for most. */
export function chapterFields(chapter: Chapter | string, plan: Plan): Element | undefined {
  const entry = (legend: string, paths: readonly string[]): Element =>
    group(legend, [
      html("fieldset", {}, [
        html("legend", {}, [legend]),
        ...paths.map((path) => field({ path, text: textOf(plan, path) })),
      ]),
    ]);
  if (chapter === "trial") return entry("Enter the trial", TRIAL);
  const edge = plan.recipe.attach.to === "waistband" ? "band" : "bodice-edge";
  if (chapter === edge) return entry("Enter the made edge", [MADE]);
  return undefined;
}
