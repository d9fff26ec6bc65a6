/** A chapter's shape -> HTML nodes: numbers become <data>, drawings stand at their places, what has changed says what it was. */
import type { Element, ElementContent, Properties, Text } from "hast";
import type { Figure } from "../figure/figure.ts";
import { unbroken } from "../figure/lettering.ts";
import { exact } from "../solve/json.ts";
import type { Plan } from "../solve/plan.ts";
import { shapeChapter } from "./chapter-shape.ts";
import { type Run, runs, withoutMarks } from "./marks.ts";
import { html } from "./nodes.ts";
import { fillShape, type Maker } from "./shape/fill.ts";
import type { Folder, Shape } from "./shape/tree.ts";
import type { Context } from "./template/evaluate.ts";
import { TemplateError } from "./template/tree.ts";
import { isWord, Words } from "./words.ts";

/** What a chapter printed, by the place of each print. */
export type Prints = ReadonlyMap<string, string>;

/** A booklet to compare with: what each chapter printed, each value's text, each drawing. */
export interface Before {
  readonly chapters: ReadonlyMap<string, Prints>;
  /** What the maker's own texts printed, by their shape, where she may change them: one that is not here is not compared. */
  readonly texts?: ReadonlyMap<Shape, Prints>;
  readonly values: ReadonlyMap<string, string>;
  /** By folder and name: `figures/balance`. */
  readonly figures: ReadonlyMap<string, Figure>;
}

/** What a chapter's nodes are made with. */
export interface Making {
  readonly plan: Plan;
  readonly context: Context;
  readonly figures: ReadonlyMap<string, Figure>;
  readonly guides: ReadonlyMap<string, Figure>;
  readonly before?: Before | undefined;
  /** The words that the booklet tells, so that they can be led to. */
  readonly words?: ReadonlySet<string>;
}

export interface ChapterNodes {
  readonly node: Element;
  readonly prints: Prints;
  /** The words that this chapter tells. */
  readonly told: ReadonlySet<string>;
}

/** One chapter as HTML nodes. Throws TemplateError when it asks for what is not there. */
export function chapterNodes(name: string, shape: Shape, making: Making): ChapterNodes {
  const old = making.before?.texts?.get(shape) ?? making.before?.chapters.get(name);
  const words = new Words(name, making.words);
  const maker = new NodeMaker(making, old, words);
  try {
    const node = shapeChapter(name, fillShape(shape, making.context, maker));
    return { node, prints: maker.prints, told: words.told };
  } catch (error) {
    if (!(error instanceof TemplateError)) throw error;
    throw new TemplateError(`in the chapter "${name}": ${error.message}`, { code: error.code });
  }
}

class NodeMaker implements Maker {
  readonly prints = new Map<string, string>();
  private readonly making: Making;
  private readonly old: Prints | undefined;
  private readonly words: Words;

  constructor(making: Making, old: Prints | undefined, words: Words) {
    this.making = making;
    this.old = old;
    this.words = words;
  }

  printed(text: string, key: string): ElementContent[] {
    const plain = withoutMarks(text);
    this.prints.set(key, plain);
    const all = runs(text);
    const [first] = all;
    const old = this.old?.get(key);
    if (all.length === 1 && first?.name !== undefined) return [this.run(first, old)];
    const nodes = all.map((run) => this.run(run, undefined));
    return old === undefined || old === plain || old === "" ? nodes : [html("span", { dataWas: old }, nodes)];
  }

  private run({ text, name }: Run, old: string | undefined): ElementContent {
    if (name !== undefined && isWord(name)) return this.words.node(name, text);
    const value = name === undefined ? undefined : this.making.plan.values.get(name);
    if (!value) return { type: "text", value: unbroken(text) };
    const was = old ?? this.making.before?.values.get(value.name);
    const properties = { value: exact(value.quantity), dataName: value.name };
    return html("data", was === undefined || was === text ? properties : { ...properties, dataWas: was }, [
      text,
    ]);
  }

  drawing(folder: Folder, name: string): ElementContent[] {
    const figure = this.making[folder].get(name);
    if (!figure)
      throw new TemplateError(`this garment has no ${folder === "guides" ? "guide" : "figure"} "${name}"`, {
        code: "no-figure",
      });
    const { before } = this.making;
    const old = before?.figures.get(`${folder}/${name}`);
    const changed = before !== undefined && !(old && isSame(old.svg, figure.svg));
    const classes = [...(folder === "guides" ? ["guide"] : []), ...(changed ? ["changed"] : [])];
    return [
      html(
        "figure",
        {
          id: `${folder === "guides" ? "" : "figure-"}${name}`,
          ...(classes.length > 0 ? { className: classes } : {}),
        },
        [figure.svg, html("figcaption", {}, [withoutMarks(figure.title)])],
      ),
    ];
  }
}

/** Are two nodes the same drawing? */
export function isSame(a: ElementContent, b: ElementContent): boolean {
  if (a === b) return true;
  if (a.type !== b.type) return false;
  if (a.type !== "element" || b.type !== "element") return (a as Text).value === (b as Text).value;
  if (a.tagName !== b.tagName || a.children.length !== b.children.length) return false;
  const names = Object.keys(a.properties);
  if (names.length !== Object.keys(b.properties).length) return false;
  return (
    names.every((name) => sameProperty(a.properties[name], b.properties[name])) &&
    a.children.every((child, i) => isSame(child, b.children[i] as ElementContent))
  );
}

const sameProperty = (a: Properties[string], b: Properties[string]): boolean =>
  a === b || (Array.isArray(a) && Array.isArray(b) && a.join(" ") === b.join(" "));
