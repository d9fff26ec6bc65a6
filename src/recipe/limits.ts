/**
 * How much is read and made of everything, in one place: far more than a garment needs, and so little that no file, however
 * it was made, keeps the program busy for long or fills the machine. What is past a limit is refused with a message that
 * says the limit; the reference in this folder lists them.
 */
export { DEEPEST_FORMULA, LONGEST_FORMULA, MOST_BITS, MOST_DIGITS } from "../quantity/limits.ts";

/** Bytes of recipe.md, and of its front matter. */
export const LARGEST_RECIPE = 256 * 1024;
export const LARGEST_FRONT = 64 * 1024;
/** Bytes of as-made.yaml, and of any other text beside it: evidence.csv, a wording. */
export const LARGEST_AS_MADE = 512 * 1024;
export const LARGEST_TEXT = 1024 * 1024;

/** Characters of one line, in front matter, body and wordings; of one field. */
export const LONGEST_LINE = 10_000;
export const LONGEST_FIELD = 200;

/** Blocks and lists inside each other in the front matter; its keys and values; those of as-made.yaml, which grows with the years. */
export const DEEPEST_YAML = 12;
export const MOST_NODES = 2000;
export const MOST_LISTED = 40_000;

/** Characters and lines of the body, or of a wording. The Markdown parser's time grows with the square of the lines. */
export const LONGEST_BODY = 60_000;
export const MOST_BODY_LINES = 2000;
/** Quotes and lists inside each other; in all, each counted with those it stands in; marks inside the lines: stars, brackets and such. */
export const DEEPEST_LISTS = 5;
export const MOST_LIST_MARKS = 1000;
export const MOST_MARKS = 6000;
/** Choices and lists of a template inside each other; what one text may come to when it is written. */
export const DEEPEST_TEMPLATE = 40;
export const MOST_PARTS = 200_000;
/** Lines of workings; wordings in templates/. */
export const MOST_WORKINGS = 200;
export const MOST_TEMPLATES = 100;

/** Breadths of the skirt; pleats laid in one zone of a half; pleats gauged in the whole garment. */
export const MOST_BREADTHS = 60;
export const MOST_LAID = 1000;
export const MOST_GAUGED = 6000;
/** Zones of a half; sizes. */
export const MOST_ZONES = 20;
export const MOST_SIZES = 64;

/** Rows of evidence.csv. */
export const MOST_EVIDENCE = 5000;

/** Bytes of one photograph and of all together, and how many. */
export const LARGEST_PHOTOGRAPH = 1024 * 1024;
export const LARGEST_TOGETHER = 4 * 1024 * 1024;
export const MOST_PHOTOGRAPHS = 100;

/** Bytes of a record.json; characters of one entry in it; entries of one kind. */
export const LARGEST_RECORD = 2 * 1024 * 1024;
export const LONGEST_ENTRY = 20_000;
export const MOST_ENTRIES = 2000;
