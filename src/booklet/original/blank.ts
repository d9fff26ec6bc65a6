/** The blank sheet to print and fill in beside an original, and the file that it is written into. */
import { shapes } from "plainwork:sheets";
import { commentedKeys } from "../../recipe/commented.ts";
import { ORIGINAL } from "../../recipe/original/schema.ts";
import { shapeChapter } from "../chapter-shape.ts";
import { fillShape } from "../shape/fill.ts";
import { barePage } from "../sheets.ts";
import { nodesToHtml } from "../stringify.ts";

/** The file it is written to. */
export const BLANK_FILE = "original-sheet.html";

/** The sheet's page: one printed page, with no number in it. */
export function blankSheet(version: string): string {
  const nodes = fillShape(
    shapes.original ?? [],
    {},
    { printed: (text) => [{ type: "text", value: text }], drawing: () => [] },
  );
  return barePage("Sheet for measuring an original", nodesToHtml([shapeChapter("original", nodes)]), version);
}

/** original.yaml to begin with: every key commented out, with an example and what it means. */
export const blankForm = (): string =>
  [
    "# What was measured of an original. Take the # and the space behind it away from what was measured, and write the measure",
    "# with its unit; what was not measured stays behind its #. src/recipe/original/README.md says more.",
    ...commentedKeys(ORIGINAL),
    "",
  ].join("\n");
