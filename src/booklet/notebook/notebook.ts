/**
 * A recipe's body, read. Plain data: it lies in the page as JSON and is worked out and written again whenever a measure
 * changes. Places of tags count lines of the text from 1, columns from 1; `line` says where the text begins in its file.
 */
import type { Place } from "../../recipe/message.ts";
import type { Shape } from "../shape/tree.ts";
import type { At, Expression, Template } from "../template/tree.ts";

/** One line of a workings block: a value of the maker's own. */
export interface WorkingsLine {
  readonly name: string;
  readonly formula: string;
  /** What stands behind # on its line. */
  readonly about?: string;
  /** Names of other lines that it is calculated from. */
  readonly from: readonly string[];
  /** Does it come to yes or no? */
  readonly isAnswer: boolean;
  readonly place: Place;
  /** Where the formula's first character stands. */
  readonly formulaAt: Place;
}

/** A text of the maker's own: the tree writes its Markdown, the shape its part of the page. */
export interface OwnText {
  readonly template: Template;
  readonly shape: Shape;
  /** Where it begins. */
  readonly place: Place;
}

/** A stretch of the body: a note, a chapter put in, or a choice between stretches. */
export type Segment =
  | { readonly note: OwnText }
  | { readonly chapter: string; readonly at?: At }
  | { readonly if: Expression; readonly do: readonly Segment[]; readonly else: readonly Segment[] };

export interface Notebook {
  readonly file: string;
  /** Line of the file that the body starts on. */
  readonly line: number;
  /** The maker's text; not there for the standard booklet. */
  readonly body?: readonly Segment[];
  /** The first line that is not blank. */
  readonly start?: Place;
  /** Every line of the workings, so that each comes after those it is calculated from. */
  readonly workings: readonly WorkingsLine[];
  /** Wordings of chapters of the project's own, by the chapter's name. */
  readonly templates: Readonly<Record<string, OwnText>>;
  /** Photographs that are asked for, by path, and where first. */
  readonly photographs: Readonly<Record<string, Place>>;
}

/** Put in like a chapter, it stands for every chapter of the garment that is named nowhere else, in their usual order. */
export const THE_REST = "the-rest";

/** The standard booklet, with nothing of the maker's own. */
export const STANDARD: Notebook = {
  file: "recipe.md",
  line: 1,
  workings: [],
  templates: {},
  photographs: {},
};
