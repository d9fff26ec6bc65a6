/**
 * A recipe's body, read. Plain data: it can lie in a page as JSON and be rendered again whenever a measure changes.
 * Places count lines and columns in the file.
 */
import type { Place } from "../../recipe/message.ts";
import type { Template } from "../template/tree.ts";

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

/** A chapter's wording of the project's own. */
export interface OwnTemplate {
  readonly file: string;
  readonly template: Template;
}

export interface Notebook {
  readonly file: string;
  /** Line of the file that the body starts on: places in `body` count from there. */
  readonly line: number;
  /** The maker's text; nothing for the standard booklet. */
  readonly body?: Template;
  /** The first line that is not blank. */
  readonly start?: Place;
  /** Workings blocks in the order of the text; `body` holds slots for them (slots.ts). */
  readonly blocks: readonly (readonly WorkingsLine[])[];
  /** Every line of `blocks`, so that each comes after those it is calculated from. */
  readonly inOrder: readonly WorkingsLine[];
  readonly templates: Readonly<Record<string, OwnTemplate>>;
  /** Photographs that are asked for, by path, and where first. */
  readonly photographs: Readonly<Record<string, Place>>;
}

/** Put in like a chapter, it stands for every chapter of the garment that is named nowhere else, in their usual order. */
export const THE_REST = "the-rest";

/** The standard booklet, with nothing of the maker's own. */
export const STANDARD: Notebook = {
  file: "recipe.md",
  line: 1,
  blocks: [],
  inOrder: [],
  templates: {},
  photographs: {},
};
