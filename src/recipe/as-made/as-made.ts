/** What really happened to a garment: the entries of as-made.yaml, typed. */
import type { Quantity } from "../../quantity/quantity.ts";
import { STATIONS, type StationKey, stationKey } from "../stations.ts";
import type { Data } from "../written.ts";

/** The file's name beside the recipe. */
export const AS_MADE_FILE = "as-made.yaml";

/** What can be measured on the made garment. Lengths, but for pleats (a number) and weight. */
export const MADE = ["round", "closed", "pleats", "bite", "thread", "weight"] as const;
export type MadeKey = (typeof MADE)[number];

/** The eight places that the hem is measured at, from centre front round by the wearer's left, as the file writes them. */
export const PLACES: readonly StationKey[] = STATIONS.map(stationKey);
export type HemPlace = StationKey;

/** Stages whose stitches, marks or bites are counted. Chapters of the same name hold their hours; `seams` holds the pocket too. */
export const COUNTED = ["seams", "hem", "tucks", "flounces", "marking", "gauging", "whipping"] as const;
export type CountedStage = (typeof COUNTED)[number];

/** A trial as it was sewn. */
export interface MadeTrial {
  readonly cloth: Quantity;
  readonly pleats: Quantity;
  readonly closesTo: Quantity;
}

/** A section's own count and width. */
export interface MadeSection {
  readonly name: string;
  readonly pleats?: Quantity;
  readonly waist?: Quantity;
}

/** One dated entry. What is not there was not said. */
export interface Entry {
  /** `2026-11-25`. */
  readonly date: string;
  /** Digest of the record it came from; absent where it was written by hand. */
  readonly record?: string;
  /** Tells one browser's notebook from another's, whose times are counted apart. */
  readonly notebook?: string;
  readonly hands?: string;
  readonly begun?: string;
  readonly finished?: string;
  readonly changed?: string;
  readonly lessons?: string;
  /** Measures of the recipe that were other than it says, by path; "" where one was taken out. */
  readonly measures: Readonly<Record<string, string>>;
  readonly trial?: MadeTrial;
  readonly made: Readonly<Partial<Record<MadeKey, Quantity>>>;
  readonly sections: readonly MadeSection[];
  /** Hem to floor by place, finished, and after a day's hanging. */
  readonly offFloor: Readonly<Partial<Record<HemPlace, Quantity>>>;
  readonly hung: Readonly<Partial<Record<HemPlace, Quantity>>>;
  /** Time spent since the entry before, by chapter; less than nothing where an earlier time was corrected. */
  readonly hours: Readonly<Record<string, Quantity>>;
  /** Stitches, marks or bites of the whole stage. */
  readonly counts: Readonly<Partial<Record<CountedStage, Quantity>>>;
  /** Steps ticked so far, by chapter. */
  readonly steps: Readonly<Record<string, Quantity>>;
  /** By step: `gauging/3`. */
  readonly notes: Readonly<Record<string, string>>;
  readonly photographs: readonly string[];
}

export interface AsMade {
  readonly entries: readonly Entry[];
  /** As it is written: what a page carries. */
  readonly written: readonly Data[];
}
