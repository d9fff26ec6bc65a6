/** Examples of the recipe reference: a notebook's text, and what it shows or says. */

import { escapedMarks } from "../../src/booklet/marks.ts";
import { writeSections } from "../../src/booklet/notebook/compose.ts";
import { ownContext } from "../../src/booklet/notebook/own-context.ts";
import { readPhotographs } from "../../src/booklet/notebook/photographs.ts";
import { readNotebook } from "../../src/booklet/notebook/read.ts";
import { work } from "../../src/booklet/notebook/work.ts";
import { drawFigure, figuresOf } from "../../src/figure/index.ts";
import { frontMatter } from "../../src/recipe/front-matter.ts";
import { Source } from "../../src/recipe/lines.ts";
import { type Message, messageText } from "../../src/recipe/message.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { solve } from "../../src/solve/solve.ts";

export interface Example {
  readonly body: string;
  readonly shows?: string;
  readonly says?: string;
  readonly sections?: string;
}

const FENCE = /^(`{3,})(?:md|text) (recipe|example|shows|says|sections)\n([\s\S]*?)^\1$/gm;

/** The recipe on top and the examples under it, in the order of the file. */
export function examplesIn(readme: string): { recipe: string; examples: Example[] } {
  let recipe = "";
  const examples: Example[] = [];
  for (const [, , kind, text = ""] of readme.matchAll(FENCE)) {
    if (kind === "recipe") recipe = text;
    else if (kind === "example") examples.push({ body: text });
    else Object.assign(examples.at(-1) ?? {}, { [kind as string]: text });
  }
  return { recipe, examples };
}

/** Said of nearly every example, since they are no whole booklets. */
const UNSAID = new Set(["no-chapters"]);

/** What a notebook under a recipe shows, says, and the sections it has. */
export function tryExample(recipe: string, body: string): Required<Omit<Example, "body">> {
  const text = `${recipe}${body}`;
  const front = frontMatter(new Source("recipe.md", text));
  if (!("body" in front)) throw new Error("the example's recipe has no front matter");
  const { notebook, messages: ofText } = readNotebook("recipe.md", front.body);
  const pictures = readPhotographs(notebook.photographs, () => "missing");
  const { recipe: read } = readRecipe("recipe.md", text);
  const { plan } = read ? solve(read) : {};
  if (!plan) throw new Error("the example's recipe cannot be solved");
  const worked = work(plan, notebook);
  const messages: Message[] = [...ofText, ...pictures.messages, ...worked.messages];
  const titles = Object.fromEntries(figuresOf(plan).map((name) => [name, drawFigure(name, plan).title]));
  const isSound = !messages.some(({ level }) => level === "error");
  const written = isSound
    ? writeSections(worked, notebook, ownContext(worked, titles))
    : { sections: [], messages: [] };
  const said = [...messages, ...written.messages].filter(({ code }) => !UNSAID.has(code));
  return {
    says: said.map((message) => `${messageText(message, text)}\n`).join(""),
    shows: written.sections
      .filter(({ isNote }) => isNote)
      .map(({ markdown }) => `${escapedMarks(markdown)}\n`)
      .join("\n"),
    sections: written.sections.map(({ name }) => `${name}\n`).join(""),
  };
}
