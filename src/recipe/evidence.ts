/** Reads evidence.csv: the maker's own list of dated originals, one a row. */
import { nearest } from "../quantity/nearest.ts";
import { type CsvCell, readCsv } from "./csv.ts";
import { COLUMNS, type Column, rowOf } from "./evidence-row.ts";
import { MOST_EVIDENCE } from "./limits.ts";
import { Source } from "./lines.ts";
import type { Message } from "./message.ts";
import { messageOf, type Problem, quoted } from "./problem.ts";
import type { EvidenceRow } from "./recipe.ts";

export interface ReadEvidence {
  /** The rows that could be read. */
  readonly rows: readonly EvidenceRow[];
  /** Rows left out because they could not be read. */
  readonly skipped: number;
  readonly messages: readonly Message[];
}

/** The file's name beside the recipe. */
export const EVIDENCE_FILE = "evidence.csv";

const NEEDED: readonly Column[] = ["year", "set"];

/**
 * Reads the list. The first row names the columns, in any order: year and set must be there; fibre, sheer, seen and
 * note may be. A row that cannot be read is an error that names its line, or, with `skipBadRows`, a warning, and the
 * others count. Never throws.
 */
export function readEvidence(file: string, text: string, skipBadRows = false): ReadEvidence {
  const source = new Source(file, text);
  const messages: Message[] = [];
  const say = (cell: CsvCell | undefined, problem: Problem, level: Message["level"] = "error"): void => {
    const start = cell?.start ?? 0;
    messages.push(messageOf(problem, "", source.place(start, start + (cell?.length ?? 1)), level));
  };
  const {
    rows: [head, ...body],
    open,
  } = readCsv(text);
  if (open !== undefined) {
    const place = { text: "", start: open, length: 1 };
    say(place, {
      code: "csv-quote",
      text: "a quote is opened and not closed",
      hint: 'close it, or double it: ""',
    });
    return { rows: [], skipped: 0, messages };
  }
  const columns = head ? columnsOf(head, say) : undefined;
  if (!columns) {
    if (!head) say(undefined, { code: "no-columns", text: "there is nothing in the list", ...COLUMN_HELP });
    return { rows: [], skipped: 0, messages };
  }
  if (body.length > MOST_EVIDENCE) {
    say(body[MOST_EVIDENCE]?.[0], {
      code: "too-many",
      text: `the list has ${body.length} rows; at most ${MOST_EVIDENCE}`,
      hint: "keep what is near the years you make after",
    });
    return { rows: [], skipped: 0, messages };
  }
  const rows: EvidenceRow[] = [];
  for (const cells of body) {
    const found = rowOf(cells, columns);
    if ("row" in found) rows.push(found.row);
    else
      for (const { cell, problem } of found.problems) say(cell, problem, skipBadRows ? "warning" : "error");
  }
  return { rows, skipped: body.length - rows.length, messages };
}

const COLUMN_HELP = {
  expected: `a first line that names the columns: ${COLUMNS.join(", ")}`,
  hint: `write ${COLUMNS.join(",")} as the first line`,
};

/** More cells than this are no columns. */
const MOST_COLUMNS = 50;

type Say = (cell: CsvCell | undefined, problem: Problem) => void;

function columnsOf(head: readonly CsvCell[], say: Say): ReadonlyMap<Column, number> | undefined {
  const places = new Map<Column, number>();
  let sound = true;
  if (head.length > MOST_COLUMNS) {
    const text = `the first line has ${head.length} cells; at most ${MOST_COLUMNS}`;
    say(head[MOST_COLUMNS], { code: "too-many", text, ...COLUMN_HELP });
    return undefined;
  }
  head.forEach((cell, i) => {
    const name = COLUMNS.find((column) => column === cell.text.toLowerCase());
    if (name && !places.has(name)) {
      places.set(name, i);
      return;
    }
    sound = false;
    const near = name ? undefined : nearest(cell.text, COLUMNS);
    say(cell, {
      code: name ? "column-twice" : "unknown-column",
      text: name
        ? `the column ${quoted(cell.text)} stands twice`
        : `${quoted(cell.text)} is not a column of this list`,
      expected: COLUMNS.join(", "),
      hint: near ? `did you mean ${near}?` : "leave it out, or put it into note",
    });
  });
  const missing = NEEDED.filter((name) => !places.has(name));
  if (missing.length > 0 && sound) {
    sound = false;
    say(head[0], {
      code: "no-columns",
      text: `there is no column ${missing.join(" and no column ")}`,
      ...COLUMN_HELP,
    });
  }
  return sound ? places : undefined;
}
