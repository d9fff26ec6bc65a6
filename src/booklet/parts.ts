/** Plan -> the parts of a booklet's page: drawings and HTML nodes. The same in Node and in the page. */
import shapes from "plainwork:shapes";
import type { Element } from "hast";
import type { Figure } from "../figure/figure.ts";
import { drawFigure, figuresOf } from "../figure/index.ts";
import { guidesOf } from "../guide/index.ts";
import { contents } from "./contents.ts";
import { chapterFields } from "./fields.ts";
import { type Before, type ChapterNodes, chapterNodes, type Prints } from "./html.ts";
import { asNote } from "./notebook/note.ts";
import { type Notebook, STANDARD } from "./notebook/notebook.ts";
import { ownContext } from "./notebook/own-context.ts";
import { type Pictures, withPhotographs } from "./notebook/picture.ts";
import { apart } from "./notebook/repeated-figures.ts";
import { type SectionPart, sectionsOf } from "./notebook/sections.ts";
import type { Worked } from "./notebook/work.ts";
import { type Drawn, PartsMemory } from "./parts-memory.ts";
import type { Shape } from "./shape/tree.ts";
import type { Context } from "./template/evaluate.ts";
import { WORDS_CHAPTER } from "./words.ts";

export interface Parts {
  readonly figures: ReadonlyMap<string, Figure>;
  /** Pages at true size. */
  readonly guides: ReadonlyMap<string, Figure>;
  /** What templates can ask for. */
  readonly context: Context;
  /** One section a chapter. */
  readonly nodes: readonly Element[];
  readonly contents: Element;
  readonly prints: ReadonlyMap<string, Prints>;
  /** The maker's own texts: their shapes by the name of their section. */
  readonly texts: ReadonlyMap<string, Shape>;
}

/** The maker's own part: her notebook, and what stands in the page for each photograph. */
export interface OwnPart {
  readonly notebook: Notebook;
  readonly pictures: Pictures;
}

/** The chapter of the words leads to none. */
const NO_WORDS: ReadonlySet<string> = new Set();

const NOTHING: OwnPart = { notebook: STANDARD, pictures: new Map() };

/**
 * Makes a booklet's parts. Throws TemplateError when a chapter asks for what is not there.
 *
 * @param worked the plan with the notebook's workings: `work(plan, notebook)`
 * @param before the booklet as it was published: what differs from it is marked
 * @param memory what was made before: what is made of the same things is the same object again
 */
export function bookletParts(
  worked: Worked,
  before?: Before,
  { notebook, pictures }: OwnPart = NOTHING,
  memory: PartsMemory = new PartsMemory(),
): Parts {
  const { plan } = worked;
  const { figures, guides, context } = memory.drawn(worked, () => drawn(worked));
  const prints = new Map<string, Prints>();
  const texts = new Map<string, Shape>();
  const make = ({ name, isNote, own }: SectionPart, words: ReadonlySet<string> = NO_WORDS): ChapterNodes => {
    const shape = own?.shape ?? shapes[name] ?? [];
    if (own) texts.set(name, shape);
    const was = own && before?.texts && !before.texts.has(shape) ? undefined : before;
    const from = [name, shape, isNote, worked, was, own && pictures, words] as const;
    return memory.section(from, () => {
      const made = chapterNodes(name, shape, { plan, context, figures, guides, before: was, words });
      const children = own ? withPhotographs(made.node.children, pictures) : made.node.children;
      if (isNote) return { ...made, node: asNote({ ...made.node, children }) };
      const fields = chapterFields(name, plan);
      return { ...made, node: { ...made.node, children: fields ? [...children, fields] : children } };
    });
  };
  const sections = sectionsOf(plan, notebook, context);
  const last = sections.find(({ name }) => name === WORDS_CHAPTER);
  const words = last && make(last);
  const made = sections.map((section) => {
    const { node, prints: printed } = words && section === last ? words : make(section, words?.told);
    prints.set(section.name, printed);
    return node;
  });
  const nodes = notebook.body ? apart(made) : made;
  return { figures, guides, context, nodes, contents: contents(nodes), prints, texts };
}

function drawn(worked: Worked): Drawn {
  const { plan } = worked;
  const figures = new Map<string, Figure>(figuresOf(plan).map((name) => [name, drawFigure(name, plan)]));
  const guides = new Map<string, Figure>(
    guidesOf(plan).map(({ name, title, description, draw }) => [
      name,
      { name, title, description, svg: draw() },
    ]),
  );
  const titles = Object.fromEntries([...figures].map(([name, { title }]) => [name, title]));
  return { figures, guides, context: ownContext(worked, titles) };
}
