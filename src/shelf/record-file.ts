/** Reads a record.json as a page saves it, with the place of everything in it. */
import { isMap, isNode, parseDocument } from "yaml";
import { type Kept, readKept } from "../page/kept.ts";
import { RECORD_FORMAT } from "../page/record.ts";
import { LONGEST_ENTRY } from "../recipe/limits.ts";
import { Source } from "../recipe/lines.ts";
import type { Message, Place } from "../recipe/message.ts";
import { messageOf, type Problem, quoted } from "../recipe/problem.ts";
import { keyFault } from "../recipe/refusals.ts";

/** A record, and where its parts stand. */
export interface RecordFile {
  readonly kept: Kept;
  /** When it was saved, by the page's clock; "" in records of older pages. */
  readonly date: string;
  /** Which browser's notebook it is; "" in records of older pages. */
  readonly notebook: string;
  readonly photographs: readonly string[];
  /** The place of a value by its keys: `said`, `made.round`. */
  placeOf(...keys: readonly (string | number)[]): Place;
}

/** A record for the garment of this title, or what is wrong with it. */
export function readRecordFile(
  file: string,
  text: string,
  garment: string,
  recipe: string,
): RecordFile | { readonly messages: readonly Message[] } {
  const source = new Source(file, text);
  const fault = (problem: Problem, place: Place) => ({ messages: [messageOf(problem, "", place)] });
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    const at = faultAt(text, error as SyntaxError);
    const cut = at >= text.trimEnd().length;
    return fault(
      {
        code: "damaged-record",
        text: cut ? "this record breaks off here" : "this record is damaged: it cannot be read from here on",
        expected: "a record as a booklet's page saves it",
        hint: "save it again from the page",
      },
      source.place(at, at + 1),
    );
  }
  const placeOf = placesIn(source);
  const isBlock = typeof data === "object" && data !== null && !Array.isArray(data);
  const block = (isBlock ? data : {}) as Record<string, unknown>;
  const format = block["plainwork-record"];
  if (format === undefined)
    return fault(
      {
        code: "not-a-record",
        text: "this file is not a booklet's record",
        expected: `a file that begins with "plainwork-record": ${RECORD_FORMAT}`,
        hint: 'press "Save the record" in the booklet\'s page, and give that file',
      },
      source.place(0, 1),
    );
  if (format !== RECORD_FORMAT)
    return fault(
      {
        code: "record-format",
        text: `this record is of format ${quoted(String(format))}`,
        expected: `format ${RECORD_FORMAT}, which this program reads`,
        hint: "use the version of the program that the booklet was built with, or a newer one",
      },
      placeOf("plainwork-record"),
    );
  if (block.garment !== garment)
    return fault(
      {
        code: "another-garment",
        text: `this record is of ${typeof block.garment === "string" ? quoted(block.garment) : "no named garment"}`,
        expected: `${quoted(garment)}, the title in ${recipe}`,
        hint: "give the folder of the garment that the record is of, or its title as it was",
      },
      placeOf("garment"),
    );
  const unfit = unfitParts(block);
  if (unfit.length > 0)
    return {
      messages: unfit.map(([keys, expected]) =>
        messageOf(
          { code: "damaged-record", text: `${quoted(keys.join(" "))} is not as it should be`, expected },
          "",
          placeOf(...keys),
        ),
      ),
    };
  const word = (key: string): string => (typeof block[key] === "string" ? (block[key] as string) : "");
  return {
    kept: readKept(block) as Kept,
    date: word("date"),
    notebook: word("notebook"),
    photographs: (block.photographs as readonly string[] | undefined) ?? [],
    placeOf,
  };
}

const TEXTS = ["changes", "notes", "said"] as const;
const NAME = "a name that can be a key of as-made.yaml";

/** Can it, and the chapter it begins with, be a key of as-made.yaml? Else the file could not be read again. */
const isName = (name: string): boolean =>
  !/\p{Cc}/u.test(name) && !keyFault(name) && !keyFault(name.split("/")[0] as string);

/** Parts of a record that a page would pass over: here they are told, since nothing may be lost. */
function unfitParts(block: Readonly<Record<string, unknown>>): [readonly string[], string][] {
  const found: [readonly string[], string][] = [];
  const each = (part: string, fits: (one: unknown) => boolean, expected: string): void => {
    const value = block[part];
    if (value === undefined) return;
    if (typeof value !== "object" || value === null || Array.isArray(value)) {
      found.push([[part], "a block of names and values"]);
      return;
    }
    for (const [name, one] of Object.entries(value)) {
      if (!isName(name)) found.push([[part, name], NAME]);
      else if (!fits(one)) found.push([[part, name], expected]);
    }
  };
  for (const part of TEXTS)
    each(
      part,
      (one) => typeof one === "string" && one.length <= LONGEST_ENTRY,
      `text of at most ${LONGEST_ENTRY} letters`,
    );
  each(
    "seconds",
    (one) => typeof one === "number" && Number.isFinite(one) && one >= 0 && one < 1e8,
    "seconds of work, a number",
  );
  for (const part of ["ticked", "photographs"] as const) {
    const value = block[part];
    if (value !== undefined && !(Array.isArray(value) && value.every((one) => typeof one === "string")))
      found.push([[part], "a list of texts"]);
  }
  const { ticked } = block;
  for (const [i, id] of Array.isArray(ticked) ? ticked.entries() : [])
    if (typeof id === "string" && !isName(id)) found.push([["ticked", String(i)], NAME]);
  return found;
}

/** Where JSON cannot be read any further; the end where it breaks off. */
function faultAt(text: string, { message }: SyntaxError): number {
  const position = /position (\d+)/.exec(message)?.[1];
  if (position !== undefined) return Number(position);
  if (/end of JSON/i.test(message)) return text.trimEnd().length;
  const token = /^Unexpected token '?(.)/u.exec(message)?.[1];
  const [error] = parseDocument(text, { logLevel: "silent" }).errors;
  return Math.max(0, error?.pos[0] ?? (token ? text.indexOf(token) : 0));
}

function placesIn(source: Source): RecordFile["placeOf"] {
  // JSON is YAML too, and this reader keeps places.
  const document = parseDocument(source.text, { schema: "failsafe", logLevel: "silent", uniqueKeys: false });
  return (...keys) => {
    for (let n = keys.length; n > 0; n -= 1) {
      const node = isMap(document.contents) ? document.getIn(keys.slice(0, n), true) : undefined;
      if (isNode(node) && node.range) return source.place(node.range[0], node.range[1]);
    }
    return source.place(0, 1);
  };
}
