/** The limits in words, for the reference. */

import {
  DEEPEST_FORMULA,
  DEEPEST_LISTS,
  DEEPEST_TEMPLATE,
  DEEPEST_YAML,
  LARGEST_AS_MADE,
  LARGEST_FRONT,
  LARGEST_PHOTOGRAPH,
  LARGEST_RECIPE,
  LARGEST_RECORD,
  LARGEST_TEXT,
  LARGEST_TOGETHER,
  LONGEST_BODY,
  LONGEST_ENTRY,
  LONGEST_FIELD,
  LONGEST_FORMULA,
  LONGEST_LINE,
  MOST_BODY_LINES,
  MOST_BREADTHS,
  MOST_DIGITS,
  MOST_EVIDENCE,
  MOST_GAUGED,
  MOST_LAID,
  MOST_LIST_MARKS,
  MOST_MARKS,
  MOST_NODES,
  MOST_PHOTOGRAPHS,
  MOST_SIZES,
  MOST_WORKINGS,
  MOST_ZONES,
} from "../limits.ts";
import type { Code } from "../messages/code.ts";

/** Each limit in words with its number and the code of the message that says it. */
export const LIMITS: readonly (readonly [what: string, most: string, code: Code])[] = [
  ["`recipe.md` as a whole", `${LARGEST_RECIPE} bytes`, "too-large"],
  ["the front matter", `${LARGEST_FRONT} bytes`, "too-long"],
  ["one line of front matter, body or wording", `${LONGEST_LINE} characters`, "long-line"],
  ["one value of the front matter", `${LONGEST_FIELD} characters`, "too-long"],
  ["digits of one number", `${MOST_DIGITS}`, "not-a-length"],
  ["blocks and lists inside each other in the front matter", `${DEEPEST_YAML}`, "too-deep"],
  ["keys and values of the front matter", `${MOST_NODES}`, "too-many"],
  ["the body, or one wording", `${LONGEST_BODY} characters`, "too-long"],
  ["lines of the body, or of one wording", `${MOST_BODY_LINES}`, "too-long"],
  ["quotes and lists inside each other", `${DEEPEST_LISTS}`, "too-deep"],
  [
    "quotes and list items in one text, each counted with those it stands in",
    `${MOST_LIST_MARKS}`,
    "too-many",
  ],
  ["stars, underscores, brackets, backticks and bars in one text", `${MOST_MARKS}`, "too-many"],
  ["`{{#if}}` and `{{#each}}` inside each other", `${DEEPEST_TEMPLATE}`, "template"],
  ["lines of workings", `${MOST_WORKINGS}`, "too-many"],
  ["one formula", `${LONGEST_FORMULA} characters`, "formula"],
  ["brackets inside each other in a formula", `${DEEPEST_FORMULA}`, "formula"],
  ["breadths", `${MOST_BREADTHS}`, "limit"],
  ["pleats laid in one zone of a half", `${MOST_LAID}`, "too-many-pleats"],
  ["pleats gauged in the whole garment", `${MOST_GAUGED}`, "too-many-pleats"],
  ["zones of one half", `${MOST_ZONES}`, "too-many"],
  ["sizes", `${MOST_SIZES}`, "too-many"],
  ["rows of `evidence.csv`", `${MOST_EVIDENCE}`, "too-many"],
  ["`as-made.yaml`", `${LARGEST_AS_MADE} bytes`, "too-large"],
  ["`evidence.csv`, or one wording", `${LARGEST_TEXT} bytes`, "too-large"],
  ["one photograph", `${LARGEST_PHOTOGRAPH} bytes`, "photograph-size"],
  ["all photographs together", `${LARGEST_TOGETHER} bytes`, "photograph-size"],
  ["photographs", `${MOST_PHOTOGRAPHS}`, "too-many"],
  ["a `record.json`", `${LARGEST_RECORD} bytes`, "too-large"],
  ["one text in a record", `${LONGEST_ENTRY} characters`, "too-long"],
];

/** The limits as a Markdown table. */
export const limitsTable = (): string =>
  [
    "| What | At most | Message |",
    "| --- | --- | --- |",
    ...LIMITS.map(([what, most, code]) => `| ${what} | ${most} | \`${code}\` |`),
  ].join("\n");
