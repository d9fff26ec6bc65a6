/** What a record says that as-made.yaml does not say yet, as one entry to be added. */
import { createHash } from "node:crypto";
import type { Kept } from "../page/kept.ts";
import { type AsMade, COUNTED, type CountedStage, MADE, PLACES } from "../recipe/as-made/as-made.ts";
import { spanText } from "../recipe/as-made/span.ts";
import type { Place } from "../recipe/message.ts";
import type { Places } from "../recipe/tree-type.ts";
import type { Data } from "../recipe/written.ts";
import type { Plan } from "../solve/plan.ts";
import type { RecordFile } from "./record-file.ts";

export interface NewEntry {
  readonly entry: Readonly<Record<string, Data>>;
  /** The place in the record of what stands in the entry, by path as `readAsMade` names it. */
  readonly places: ReadonlyMap<string, Places>;
  /** What of the record has no place in an entry: its keys under `said`. */
  readonly unknown: readonly string[];
}

/** Tells records apart by all they say; when they were saved makes no difference. */
export function digestOf({ kept, notebook, photographs }: RecordFile): string {
  const { changes, ticked, notes, seconds, said } = kept;
  const sorted = (block: object): [string, unknown][] =>
    Object.entries(block).sort(([a], [b]) => (a < b ? -1 : 1));
  const parts = [...[changes, notes, seconds, said].map(sorted), [...ticked].sort(), photographs, notebook];
  return createHash("sha256").update(JSON.stringify(parts)).digest("hex").slice(0, 16);
}

const TRIAL = {
  cloth: "fullness.trial.cloth",
  pleats: "fullness.trial.pleats",
  "closes-to": "fullness.trial.closes-to",
};
const CLOSED = "attach.made";
const WORDS = ["hands", "begun", "finished", "changed", "lessons"];
const LISTS: Readonly<Record<string, readonly string[]>> = { made: MADE, "off-floor": PLACES, hung: PLACES };

/** What cannot be shown is left out, and line ends are all of one kind. */
const clean = (text: string): string =>
  text
    .replace(/\r\n?/g, "\n")
    .replace(/[\p{Co}\p{Cs}\u2028\u2029]|(?![\t\n])\p{Cc}/gu, "")
    .trim();

/** The entry; undefined where the record says nothing new. */
export function newEntry(
  record: RecordFile,
  before: AsMade | undefined,
  plan: Plan,
  today: string,
): NewEntry | undefined {
  const builder = new Builder(record, before, plan);
  builder.gather();
  if (builder.found.size === 0) return undefined;
  return {
    entry: {
      date: record.date || today,
      record: digestOf(record),
      ...(record.notebook === "" ? {} : { notebook: record.notebook }),
      ...nested(builder.found),
    },
    places: new Map([...builder.places, ["0.date", both(record.placeOf("date"))]]),
    unknown: builder.unknown,
  };
}

const both = (place: Place): Places => ({ key: place, value: place });

class Builder {
  readonly found = new Map<string, Data>();
  readonly places = new Map<string, Places>();
  readonly unknown: string[] = [];
  private readonly record: RecordFile;
  private readonly before: AsMade | undefined;
  private readonly plan: Plan;
  /** What was written last, by path with `/` between its steps. */
  private readonly last = new Map<string, Data>();

  constructor(record: RecordFile, before: AsMade | undefined, plan: Plan) {
    this.record = record;
    this.before = before;
    this.plan = plan;
    for (const entry of before?.written ?? []) {
      for (const [key, value] of Object.entries(entry as Record<string, Data>)) {
        if (typeof value === "string" || Array.isArray(value)) this.last.set(key, value);
        else for (const [name, one] of Object.entries(value)) this.last.set(`${key}\n${name}`, one);
      }
    }
  }

  gather(): void {
    const { kept } = this.record;
    this.said(kept);
    this.changes(kept);
    this.hours(kept);
    const steps = new Map<string, number>();
    for (const id of kept.ticked) {
      const chapter = id.split("/")[0] as string;
      steps.set(chapter, (steps.get(chapter) ?? 0) + 1);
    }
    for (const [chapter, n] of steps) this.put(["steps", chapter], String(n), "ticked");
    for (const [id, text] of Object.entries(kept.notes)) this.put(["notes", id], clean(text), "notes", id);
    for (const [path, text] of this.last) {
      const [key, id] = path.split("\n");
      if (key === "notes" && id !== undefined && text !== "" && !(id in kept.notes) && !(id in kept.said))
        this.put(["notes", id], "", "notes");
    }
    this.photographs(kept);
  }

  private said({ said }: Kept): void {
    for (const [name, text] of Object.entries(said)) {
      const dot = name.indexOf(".");
      const [list, rest] = [name.slice(0, Math.max(0, dot)), name.slice(dot + 1)];
      if (WORDS.includes(name)) this.put([name], clean(text), "said", name);
      else if (LISTS[list]?.includes(rest)) this.put([list, rest], clean(text), "said", name);
      else if (name.includes("/")) this.put(["notes", name], clean(text), "said", name);
      else if (name !== "photographs") this.unknown.push(name);
    }
  }

  /** Measures changed in the page: the trial and the made edge are work done, the others what the garment was made with. */
  private changes({ changes }: Kept): void {
    const field = (path: string): string =>
      changes[path] ?? this.plan.recipe.fields.find((one) => one.path === path)?.text ?? "";
    const texts = Object.entries(TRIAL).map(([key, path]) => [key, clean(field(path))] as const);
    const sewn =
      Object.values(TRIAL).some((path) => path in changes) && texts.every(([, text]) => text !== "");
    const trial = Object.fromEntries(texts);
    if (sewn && this.trialIsNew(trial)) {
      for (const [key, path] of Object.entries(TRIAL)) {
        this.found.set(`trial\n${key}`, trial[key] as string);
        this.places.set(`0.trial.${key}`, both(this.record.placeOf("changes", path)));
      }
    }
    if (changes[CLOSED]) this.put(["made", "closed"], clean(changes[CLOSED]), "changes", CLOSED);
    const done = new Set<string>([...Object.values(TRIAL), CLOSED]);
    for (const [path, text] of Object.entries(changes))
      if (!done.has(path)) this.put(["measures", path], clean(text), "changes", path);
    // A measure that was changed and is as published again.
    for (const path of this.last.keys()) {
      const [key, name] = path.split("\n");
      if (key === "measures" && name !== undefined && !(name in changes))
        this.put(
          ["measures", name],
          this.plan.recipe.fields.find((one) => one.path === name)?.text ?? "",
          "changes",
        );
    }
  }

  private trialIsNew(trial: Readonly<Record<string, string>>): boolean {
    return Object.entries(trial).some(([key, text]) => this.last.get(`trial\n${key}`) !== text);
  }

  /** A page's times run on from sitting to sitting: what its last record had already is taken away. */
  private hours({ seconds }: Kept): void {
    const { notebook, placeOf } = this.record;
    const had = new Map<string, number>();
    for (const { hours, notebook: own = "", record } of this.before?.entries ?? []) {
      if (record === undefined || own !== notebook) continue;
      for (const [chapter, time] of Object.entries(hours))
        had.set(chapter, (had.get(chapter) ?? 0) + Number(time.value.toFraction()));
    }
    for (const chapter of new Set([...Object.keys(seconds), ...had.keys()])) {
      const more = Math.round(seconds[chapter] ?? 0) - (had.get(chapter) ?? 0);
      if (more === 0) continue;
      this.found.set(`hours\n${chapter}`, spanText(more));
      this.places.set(`0.hours.${chapter}`, both(placeOf("seconds", chapter)));
      const count = this.countOf(chapter);
      if (count !== undefined) this.put(["counts", chapter], count, "seconds", chapter);
    }
  }

  /** How many stitches, marks or bites the hours of a chapter are for, by the pleats really made. */
  private countOf(chapter: string): string | undefined {
    if (!(COUNTED as readonly string[]).includes(chapter)) return undefined;
    const value = (name: string) => this.plan.values.get(name)?.quantity.value;
    const planned = value("gauging.pleats");
    const made = Number(this.found.get("made\npleats") ?? this.last.get("made\npleats"));
    const real =
      planned && Number.isInteger(made) && made > 0 ? planned.mul(0).add(made).div(planned) : undefined;
    const scaled = (name: string) => {
      const count = value(name);
      return count && real ? count.mul(real) : count;
    };
    const whole: Record<CountedStage, () => ReturnType<typeof value>> = {
      seams: () => value("stitches.seams")?.add(value("stitches.pocket") ?? 0),
      hem: () => value("stitches.hem"),
      tucks: () => value("stitches.tucks"),
      flounces: () => value("stitches.flounces"),
      marking: () => scaled("gauging.marks"),
      gauging: () => scaled("gauging.bites"),
      whipping: () => scaled("whip.stitches"),
    };
    return whole[chapter as CountedStage]()?.round().n.toString();
  }

  private photographs({ said }: Kept): void {
    const typed = (said.photographs ?? "").split(/[\n,;]+/).map((one) => clean(one));
    const all = [...this.record.photographs.map(clean), ...typed].filter((one) => one !== "");
    const known = new Set((this.before?.entries ?? []).flatMap(({ photographs }) => photographs));
    const fresh = [...new Set(all)].filter((one) => !known.has(one));
    if (fresh.length === 0) return;
    this.found.set("photographs", fresh);
    fresh.forEach((one, i) => {
      const at = this.record.photographs.indexOf(one);
      const place =
        at < 0 ? this.record.placeOf("said", "photographs") : this.record.placeOf("photographs", at);
      this.places.set(`0.photographs.${i}`, both(place));
    });
  }

  /** Puts a text in where it is not what was written last; nothing is not written first. */
  private put(path: readonly string[], text: string, ...from: readonly string[]): void {
    const key = path.join("\n");
    if ((this.last.get(key) ?? "") === text) return;
    this.found.set(key, text);
    this.places.set(["0", ...path].join("."), both(this.record.placeOf(...from)));
  }
}

/** Paths with line ends between their steps, as blocks. */
function nested(found: ReadonlyMap<string, Data>): Record<string, Data> {
  const out: Record<string, Data> = {};
  for (const [path, value] of found) {
    const [key, name] = path.split("\n") as [string, string?];
    if (name === undefined) out[key] = value;
    else out[key] = { ...(out[key] as Record<string, Data> | undefined), [name]: value };
  }
  return out;
}
