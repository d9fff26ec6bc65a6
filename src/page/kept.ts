/** What a reader enters in a booklet: kept in the browser, printed, and given out as a record. */

import { LONGEST_ENTRY, MOST_ENTRIES } from "../recipe/limits.ts";

/** Units to read in; "" is the recipe's own. */
export type Units = "" | "in" | "cm";

export interface Kept {
  /** Tells this notebook's times from another's; "" until the first record is saved. */
  readonly notebook: string;
  /** Measures changed, by the recipe's path. */
  readonly changes: Readonly<Record<string, string>>;
  /** Steps done: `gauging/3`. */
  readonly ticked: readonly string[];
  /** Notes by step, `gauging/3`. */
  readonly notes: Readonly<Record<string, string>>;
  /** Seconds of work by chapter. */
  readonly seconds: Readonly<Record<string, number>>;
  /** The chapter whose timer runs, and since when (milliseconds of the clock). */
  readonly running?: { readonly chapter: string; readonly since: number };
  /** What is said of the whole: by field name. */
  readonly said: Readonly<Record<string, string>>;
  readonly units: Units;
  readonly large: boolean;
}

export const NOTHING_KEPT: Kept = {
  notebook: "",
  changes: {},
  ticked: [],
  notes: {},
  seconds: {},
  said: {},
  units: "",
  large: false,
};

const isBlock = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

function entries<T>(value: unknown, fits: (one: unknown) => one is T): Record<string, T> {
  if (!isBlock(value)) return {};
  const kept = Object.entries(value)
    .filter((entry): entry is [string, T] => fits(entry[1]) && entry[0] !== "__proto__")
    .slice(0, MOST_ENTRIES);
  return Object.fromEntries(kept);
}

const isText = (value: unknown): value is string =>
  typeof value === "string" && value.length <= LONGEST_ENTRY;
const isSeconds = (value: unknown): value is number =>
  typeof value === "number" && Number.isFinite(value) && value >= 0 && value < 1e8;

/** Takes in what was kept; anything that is not as it should be is left out. Undefined when it is no such thing at all. */
export function readKept(value: unknown): Kept | undefined {
  if (!isBlock(value)) return undefined;
  const { ticked, units, large, running, notebook } = value;
  return {
    notebook: isText(notebook) ? notebook.slice(0, 40) : "",
    changes: entries(value.changes, isText),
    ticked: Array.isArray(ticked) ? ticked.filter(isText).slice(0, MOST_ENTRIES) : [],
    notes: entries(value.notes, isText),
    seconds: entries(value.seconds, isSeconds),
    said: entries(value.said, isText),
    ...(isBlock(running) && isText(running.chapter) && typeof running.since === "number"
      ? { running: { chapter: running.chapter, since: running.since } }
      : {}),
    units: units === "in" || units === "cm" ? units : "",
    large: large === true,
  };
}
