/** as-made.yaml, or what a page carries of it, to typed entries; everything that is wrong is told with its place. */
import { nearest } from "../../quantity/nearest.ts";
import { isNegative, isWhole, LENGTH, MASS, PLAIN, plain, type Quantity } from "../../quantity/quantity.ts";
import { readQuantity } from "../../quantity/read.ts";
import type { Message, Place } from "../message.ts";
import { type Block, type Node, within } from "../node.ts";
import { messageOf, type Problem, quoted } from "../problem.ts";
import type { Places } from "../tree-type.ts";
import type { Data } from "../written.ts";
import { type AsMade, COUNTED, type Entry, MADE, type MadeTrial, PLACES } from "./as-made.ts";
import { readSpan } from "./span.ts";

export interface ReadAsMade {
  /** Absent when there is an error. */
  readonly asMade?: AsMade;
  readonly messages: readonly Message[];
}

/** The keys of an entry, in the order they are written in. */
export const KEYS = [
  "date",
  "record",
  "notebook",
  "hands",
  "begun",
  "finished",
  "measures",
  "trial",
  "made",
  "sections",
  "off-floor",
  "hung",
  "hours",
  "counts",
  "steps",
  "changed",
  "lessons",
  "notes",
  "photographs",
] as const;
type Key = (typeof KEYS)[number];

/** What no page could show; line breaks and tabs are shown as spaces. */
export const CANNOT_PRINT = /[\p{Co}\p{Cs}\u2028\u2029]|(?![\t\n\r])\p{Cc}/u;
/** A photograph's path beside the recipe: no way out of photos/. */
export const PHOTOGRAPH = /^photos\/(?!.*\.\.)[\w .()-]+(?:\/[\w .()-]+)*\.(?:jpe?g|png|webp)$/i;

type PlaceOf = (path: string, atKey: boolean) => Place | undefined;

/** Reads the entries of a tree. Never throws. */
export function readAsMade(entries: readonly Node[], places: ReadonlyMap<string, Places>): ReadAsMade {
  const reader = new Reader((path, atKey) => places.get(path)?.[atKey ? "key" : "value"]);
  const read = entries.map((node, i) => reader.entry(node, String(i)));
  const { messages } = reader;
  if (messages.some(({ level }) => level === "error")) return { messages };
  return { asMade: { entries: read, written: entries as readonly Data[] }, messages };
}

const isBlock = (node: Node): node is Block => typeof node === "object" && !Array.isArray(node);

class Reader {
  readonly messages: Message[] = [];
  private readonly placeOf: PlaceOf;

  constructor(placeOf: PlaceOf) {
    this.placeOf = placeOf;
  }

  entry(node: Node, path: string): Entry {
    const block = this.block(node, path, KEYS);
    const inner = (key: Key): string => within(path, key);
    const text = (key: Key): string | undefined =>
      key in block ? this.text(block[key] as Node, inner(key)) : undefined;
    const said = (key: Key) => {
      const words = text(key);
      return words === undefined ? {} : { [key]: words };
    };
    const record = <T>(
      key: Key,
      read: (node: Node, path: string, name: string) => T | undefined,
      names?: readonly string[],
    ) => this.record(block[key], inner(key), read, names);
    const length = (one: Node, at: string) => this.quantity(one, at, LENGTH);
    const hem = (one: Node, at: string) => this.quantity(one, at, LENGTH, true);
    return {
      date: this.date(block.date, path),
      ...said("record"),
      ...said("notebook"),
      ...said("hands"),
      ...said("begun"),
      ...said("finished"),
      ...said("changed"),
      ...said("lessons"),
      measures: record("measures", (one, at) => this.text(one, at)),
      ...this.trial(block.trial, inner("trial")),
      made: record(
        "made",
        (one, at, name) =>
          name === "pleats"
            ? this.number(one, at)
            : name === "weight"
              ? this.quantity(one, at, MASS)
              : length(one, at),
        MADE,
      ),
      sections: this.list(block.sections, inner("sections")).map((one, i) =>
        this.section(one, `${inner("sections")}.${i}`),
      ),
      offFloor: record("off-floor", hem, PLACES),
      hung: record("hung", hem, PLACES),
      hours: record("hours", (one, at) => this.span(one, at)),
      counts: record("counts", (one, at) => this.number(one, at), COUNTED),
      steps: record("steps", (one, at) => this.number(one, at)),
      notes: record("notes", (one, at) => this.text(one, at)),
      photographs: this.list(block.photographs, inner("photographs")).flatMap(
        (one, i) => this.photograph(one, `${inner("photographs")}.${i}`) ?? [],
      ),
    } as Entry;
  }

  private block(node: Node, path: string, known?: readonly string[]): Block {
    if (!isBlock(node)) {
      this.say(path, { code: "wrong-kind", text: "something else stands where keys with their values must" });
      return {};
    }
    for (const key of known ? Object.keys(node) : []) {
      if (known?.includes(key)) continue;
      const near = nearest(key, known ?? []);
      this.say(within(path, key), {
        code: "unknown-key",
        text: `${quoted(key)} is not known here`,
        expected: (known ?? []).join(", "),
        hint: near ? `did you mean ${near}?` : "leave it out, or put it into lessons",
      });
    }
    return node;
  }

  private record<T>(
    node: Node | undefined,
    path: string,
    read: (node: Node, path: string, name: string) => T | undefined,
    names?: readonly string[],
  ): Record<string, T> {
    if (node === undefined || node === "") return {};
    const found: [string, T][] = [];
    for (const [name, one] of Object.entries(this.block(node, path, names))) {
      const value = names && !names.includes(name) ? undefined : read(one, within(path, name), name);
      if (value !== undefined) found.push([name, value]);
    }
    return Object.fromEntries(found);
  }

  private list(node: Node | undefined, path: string): readonly Node[] {
    if (node === undefined || node === "") return [];
    if (Array.isArray(node)) return node;
    this.say(path, { code: "wrong-kind", text: "this is not a list", hint: "write [one, two]" });
    return [];
  }

  private text(node: Node, path: string): string | undefined {
    if (typeof node !== "string") {
      this.say(path, { code: "wrong-kind", text: "a list or a block stands where one piece of text must" });
      return undefined;
    }
    if (CANNOT_PRINT.test(node)) {
      this.say(path, {
        code: "cannot-print",
        text: "there is a character that cannot be printed in this text",
        hint: "take it out",
      });
      return undefined;
    }
    return node.trim();
  }

  private date(node: Node | undefined, path: string): string {
    const written = node === undefined ? "" : (this.text(node, `${path}.date`) ?? "");
    const time = /^\d{4}-\d\d-\d\d$/.test(written) ? Date.parse(`${written}T00:00:00Z`) : Number.NaN;
    if (!Number.isNaN(time) && new Date(time).toISOString().startsWith(written)) return written;
    this.say(node === undefined ? path : `${path}.date`, {
      code: "not-a-date",
      text: node === undefined ? "this entry has no date" : `${quoted(written)} is not a date`,
      expected: "a date as 2026-11-25",
    });
    return "";
  }

  private quantity(node: Node, path: string, dim: typeof LENGTH, orNothing = false): Quantity | undefined {
    const written = this.text(node, path);
    if (written === undefined) return undefined;
    const example = dim === MASS ? "910 g or 2 lb" : undefined;
    const reading = readQuantity(written, dim, example);
    const code = dim === MASS ? "not-a-weight" : dim === LENGTH ? "not-a-length" : "not-a-number";
    if (!reading.ok) {
      this.say(path, {
        code,
        text: reading.error,
        at: reading.at,
        hint: reading.hint,
      });
      return undefined;
    }
    if (isNegative(reading.value) || (!orNothing && reading.value.value.n === 0n)) {
      this.say(path, {
        code: "limit",
        text: `${quoted(written)} is too small`,
        expected: "more than nothing",
      });
      return undefined;
    }
    return reading.value;
  }

  /** Whole things, or a half more. */
  private number(node: Node, path: string): Quantity | undefined {
    const n = this.quantity(node, path, PLAIN, true);
    if (!n || isWhole(plain(n.value.mul(2)))) return n;
    this.say(path, { code: "limit", text: `${quoted(String(node))} is no whole or half number` });
    return undefined;
  }

  private span(node: Node, path: string): Quantity | undefined {
    const written = this.text(node, path);
    if (written === undefined) return undefined;
    const time = readSpan(written);
    if (!time)
      this.say(path, {
        code: "not-a-time",
        text: `${quoted(written)} is not a time`,
        expected: "hours and minutes, as 1 h 20 min",
      });
    return time;
  }

  private trial(node: Node | undefined, path: string): { trial?: MadeTrial } {
    if (node === undefined) return {};
    const keys = ["cloth", "pleats", "closes-to"];
    const block = this.block(node, path, keys);
    for (const key of keys)
      if (!(key in block))
        this.say(path, {
          code: "missing",
          text: `this trial has no ${key}`,
          expected: "cloth, pleats and closes-to",
        });
    const given = <T>(key: string, read: (node: Node, path: string) => T): T | undefined =>
      key in block ? read(block[key] as Node, within(path, key)) : undefined;
    const length = (one: Node, at: string) => this.quantity(one, at, LENGTH);
    const cloth = given("cloth", length);
    const pleats = given("pleats", (one, at) => this.number(one, at));
    const closesTo = given("closes-to", length);
    return cloth && pleats && closesTo ? { trial: { cloth, pleats, closesTo } } : {};
  }

  private section(node: Node, path: string): Entry["sections"][number] {
    const block = this.block(node, path, ["name", "pleats", "waist"]);
    const pleats = "pleats" in block ? this.number(block.pleats as Node, within(path, "pleats")) : undefined;
    const waist =
      "waist" in block ? this.quantity(block.waist as Node, within(path, "waist"), LENGTH) : undefined;
    const name = this.text(block.name ?? "", within(path, "name")) ?? "";
    if (name === "")
      this.say(path, {
        code: "missing",
        text: "this section has no name",
        hint: "write name: as the booklet names it",
      });
    return { name, ...(pleats ? { pleats } : {}), ...(waist ? { waist } : {}) };
  }

  private photograph(node: Node, path: string): string | undefined {
    const written = this.text(node, path);
    if (written === undefined || PHOTOGRAPH.test(written)) return written;
    this.say(path, {
      code: "photograph",
      text: `${quoted(written)} is not a photograph of this project`,
      expected: "a jpg, png or webp file in photos/ beside the recipe",
      hint: "save it there, and write photos/its-name.jpg",
    });
    return undefined;
  }

  private say(path: string, problem: Problem): void {
    let place: Place | undefined;
    for (let at = path; !place && at !== ""; at = at.slice(0, Math.max(0, at.lastIndexOf("."))))
      place = this.placeOf(at, problem.code === "unknown-key");
    const { file = "as-made.yaml", line = 1, column = 1, length = 1 } = place ?? {};
    this.messages.push(messageOf(problem, "", { file, line, column, length }));
  }
}
