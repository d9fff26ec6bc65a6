/** A booklet worked out again in the page, by the code that built it. */

import type { Before } from "../../booklet/html.ts";
import { type Notebook, STANDARD } from "../../booklet/notebook/notebook.ts";
import type { Pictures } from "../../booklet/notebook/picture.ts";
import { work } from "../../booklet/notebook/work.ts";
import { bookletParts, type Parts } from "../../booklet/parts.ts";
import { inches, millimetres } from "../../quantity/quantity.ts";
import { type RecordedData, recordedFrom } from "../../recipe/as-made/recorded.ts";
import { recipeFromTree } from "../../recipe/from-tree.ts";
import type { Message } from "../../recipe/message.ts";
import type { EvidenceText, Recipe } from "../../recipe/recipe.ts";
import { type Changes, changed, type Data, NOWHERE, treeOf } from "../../recipe/written.ts";
import type { Plan } from "../../solve/plan.ts";
import type { Reading } from "../../solve/sheet.ts";
import { solve } from "../../solve/solve.ts";
import type { Units } from "../kept.ts";

/** What a page carries of its recipe. */
export interface PageData {
  readonly written: Data;
  readonly body: Recipe["body"];
  readonly list?: EvidenceText;
  /** Which size it is, where it is one of a set. */
  readonly size?: string;
  /** Measures that must be entered before there is a booklet: a page that asks for a reader's own. */
  readonly asks?: readonly string[];
  /** Work that was recorded before the page was built. */
  readonly recorded?: RecordedData;
  /** What the maker wrote below the front matter; not there for the standard booklet. */
  readonly notebook?: Notebook;
  /** Photographs that are asked for and not shown in the page as published. */
  readonly pictures?: Readonly<Record<string, string>>;
}

export type Outcome =
  | { readonly plan: Plan; readonly parts: Parts; readonly messages: readonly Message[] }
  | { readonly plan?: undefined; readonly messages: readonly Message[] };

/** What is printed in for a reader of other units than the recipe's. */
export const READINGS: Readonly<Record<"in" | "cm", Reading>> = {
  in: { show: "in", tape: inches("1/16") },
  cm: { show: "cm", tape: millimetres(1n) },
};

/** One recipe, read and worked out as often as wished. */
export class Live {
  private readonly data: PageData;
  private readonly pictures: Pictures;
  /** What stands before anything but what is asked for is changed, by that and the units. */
  private readonly published = new Map<string, { before: Before | undefined; outcome: Outcome }>();
  private readonly recorded: Pick<Recipe, "recorded">;

  /** @param pictures what stands in the page for each photograph that it shows */
  constructor(data: PageData, pictures: Pictures = new Map()) {
    this.data = data;
    this.recorded = data.recorded ? { recorded: recordedFrom(data.recorded) } : {};
    this.pictures = new Map([...pictures, ...Object.entries(data.pictures ?? {})]);
  }

  /** The booklet with these measures changed; the messages alone where they cannot be. */
  make(changes: Changes, units: Units): Outcome {
    const asked = Object.fromEntries(Object.entries(changes).filter(([path]) => this.asks.includes(path)));
    const published = this.asPublished(asked, units);
    return Object.keys(changes).length === Object.keys(asked).length
      ? published.outcome
      : this.outcome(changes, units, published.before);
  }

  /** Measures that are asked for and not among these. */
  missing(changes: Changes): readonly string[] {
    return this.asks.filter((path) => (changes[path] ?? null) === null);
  }

  private get asks(): readonly string[] {
    return this.data.asks ?? [];
  }

  private asPublished(asked: Changes, units: Units): { before: Before | undefined; outcome: Outcome } {
    const key = JSON.stringify([units, asked]);
    const known = this.published.get(key);
    if (known) return known;
    const outcome = this.outcome(asked, units);
    const made = { outcome, before: outcome.plan ? beforeOf(outcome) : undefined };
    // What a reader has typed before needs no remembering.
    if (this.asks.length > 0) this.published.clear();
    this.published.set(key, made);
    return made;
  }

  private outcome(changes: Changes, units: Units, before?: Before): Outcome {
    const tree = treeOf(changed(this.data.written, changes));
    const read = recipeFromTree(tree, NOWHERE, this.data.body, this.data.list, this.data.size);
    if (!read.recipe) return { messages: read.messages };
    const recipe = { ...read.recipe, ...this.recorded };
    const solved = solve(recipe, this.reading(recipe, units));
    const messages = [...read.messages, ...solved.messages];
    if (!solved.plan) return { messages };
    const { notebook = STANDARD } = this.data;
    const worked = work(solved.plan, notebook);
    messages.push(...worked.messages);
    if (worked.messages.length > 0) return { messages };
    const parts = bookletParts(worked, before, { notebook, pictures: this.pictures });
    return { plan: worked.plan, parts, messages };
  }

  private reading(recipe: Recipe, units: Units): Reading | undefined {
    return units === "" || units === recipe.show ? undefined : READINGS[units];
  }
}

function beforeOf({ plan, parts }: Outcome & { plan: object }): Before {
  return {
    chapters: parts.prints,
    values: new Map([...plan.values].map(([name, { shown }]) => [name, shown])),
    figures: new Map([
      ...[...parts.figures].map(([name, figure]) => [`figures/${name}`, figure] as const),
      ...[...parts.guides].map(([name, guide]) => [`guides/${name}`, guide] as const),
    ]),
  };
}
