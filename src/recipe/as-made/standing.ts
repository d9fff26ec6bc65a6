/** What stands when all entries are read one after the other: the last word on everything, times added up. */
import { add, isZero, type Quantity } from "../../quantity/quantity.ts";
import type { AsMade, CountedStage, Entry, HemPlace, MadeKey, MadeSection, MadeTrial } from "./as-made.ts";

/** A garment as it was made so far. */
export interface Standing {
  readonly hands?: string;
  readonly begun?: string;
  readonly finished?: string;
  readonly measures: Readonly<Record<string, string>>;
  /** Every trial that was sewn, in order, each once. */
  readonly trials: readonly { readonly date: string; readonly trial: MadeTrial }[];
  readonly made: Readonly<Partial<Record<MadeKey, Quantity>>>;
  readonly sections: ReadonlyMap<string, MadeSection>;
  readonly offFloor: Readonly<Partial<Record<HemPlace, Quantity>>>;
  readonly hung: Readonly<Partial<Record<HemPlace, Quantity>>>;
  /** Chapters that took any time. */
  readonly hours: ReadonlyMap<string, Quantity>;
  readonly counts: Readonly<Partial<Record<CountedStage, Quantity>>>;
  readonly photographs: readonly string[];
}

const sameTrial = (a: MadeTrial | undefined, b: MadeTrial): boolean =>
  a?.cloth.value.equals(b.cloth.value) === true &&
  a.pleats.value.equals(b.pleats.value) &&
  a.closesTo.value.equals(b.closesTo.value);

/** Sums up entries. */
export function standing({ entries }: AsMade): Standing {
  const trials: { date: string; trial: MadeTrial }[] = [];
  const sections = new Map<string, MadeSection>();
  const hours = new Map<string, Quantity>();
  const said: Partial<Record<"hands" | "begun" | "finished", string>> = {};
  for (const entry of entries) {
    const { date, trial } = entry;
    if (trial && !sameTrial(trials.at(-1)?.trial, trial)) trials.push({ date, trial });
    for (const section of entry.sections)
      sections.set(section.name, { ...sections.get(section.name), ...section });
    for (const [chapter, time] of Object.entries(entry.hours)) {
      const before = hours.get(chapter);
      hours.set(chapter, before ? add(before, time) : time);
    }
    for (const key of ["hands", "begun", "finished"] as const)
      if (entry[key] !== undefined && entry[key] !== "") said[key] = entry[key];
      else if (entry[key] === "") delete said[key];
  }
  const last = <Key extends "measures" | "made" | "offFloor" | "hung" | "counts">(key: Key): Entry[Key] =>
    Object.assign({}, ...entries.map((entry) => entry[key]));
  return {
    ...said,
    measures: last("measures"),
    trials,
    made: last("made"),
    sections,
    offFloor: last("offFloor"),
    hung: last("hung"),
    hours: new Map([...hours].filter(([, time]) => !isZero(time))),
    counts: last("counts"),
    photographs: [...new Set(entries.flatMap(({ photographs }) => photographs))],
  };
}
