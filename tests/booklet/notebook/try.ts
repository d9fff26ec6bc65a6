/** A notebook under a recipe of the tests, read, worked out and written. */
import { makeBooklet, type Own } from "../../../src/booklet/booklet.ts";
import { type Section, writeSections } from "../../../src/booklet/notebook/compose.ts";
import { ownContext } from "../../../src/booklet/notebook/own-context.ts";
import { type ProjectText, readNotebook } from "../../../src/booklet/notebook/read.ts";
import { type Worked, work } from "../../../src/booklet/notebook/work.ts";
import { figuresOf } from "../../../src/figure/index.ts";
import type { Message } from "../../../src/recipe/message.ts";
import type { Plan } from "../../../src/solve/plan.ts";
import { planOf } from "../../recipes.ts";

export interface TriedNotebook {
  readonly messages: readonly Message[];
  readonly sections: readonly Section[];
  readonly worked: Worked;
  readonly own: Own;
}

/** Messages as "line:column code", for comparing. */
export const brief = (messages: readonly Message[]): string[] =>
  messages.map(({ place, code }) => `${place?.line}:${place?.column} ${code}`);

/** The body begins on line 1. */
export function tryNotebook(
  body: string,
  plan: Plan = planOf(),
  templates: readonly ProjectText[] = [],
): TriedNotebook {
  const { notebook, messages: read } = readNotebook("recipe.md", { text: body, line: 1 }, templates);
  const worked = work(plan, notebook);
  const messages = [...read, ...worked.messages];
  const titles = Object.fromEntries(figuresOf(plan).map((name) => [name, `Title of ${name}`]));
  const isSound = !messages.some(({ level }) => level === "error");
  const written = isSound
    ? writeSections(worked, notebook, ownContext(worked, titles))
    : { sections: [], messages: [] };
  return {
    messages: [...messages, ...written.messages],
    sections: written.sections,
    worked,
    own: { notebook, photographs: new Map() },
  };
}

/** The page of a notebook without errors. */
export const pageOf = ({ own }: TriedNotebook, plan: Plan = planOf()): string =>
  makeBooklet(plan, own).get("booklet.html") ?? "";
