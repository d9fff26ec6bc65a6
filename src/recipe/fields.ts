/** Declarators for fields that hold words: every field is one text in the recipe, read here into its value. */

import * as v from "valibot";
import { nearest } from "../quantity/nearest.ts";
import { LONGEST_FIELD } from "./limits.ts";
import type { Code } from "./messages/code.ts";
import type { Default, FieldMeta } from "./meta.ts";
import { type Problem, quoted, type Read } from "./problem.ts";

export type Field<T> = v.GenericSchema<string, T>;
export type Options = Omit<FieldMeta, "kind">;

/** A default for inches and, where it differs, for centimetres. */
export const byDefault = (inInches: string, inCm = inInches): readonly Default[] => [
  { in: inInches, cm: inCm },
];

/**
 * A field: how it is read, and what it means. What is wrong travels as JSON, since valibot takes only text with an issue;
 * `problemOf` reads it back.
 */
export function field<T>(meta: FieldMeta, read: (text: string) => Read<T>): Field<T> {
  return v.pipe(
    v.string(),
    v.metadata({ field: meta }),
    v.rawTransform(({ dataset, addIssue, NEVER }) => {
      const result = firstLook(dataset.value, meta) ?? read(dataset.value);
      if ("value" in result) return result.value;
      addIssue({ message: JSON.stringify(result.problem) });
      return NEVER;
    }),
  );
}

/** The problem an issue of `field` carries; undefined for issues of valibot's own. */
export function problemOf(issue: { readonly type: string; readonly message: string }): Problem | undefined {
  return issue.type === "raw_transform" ? (JSON.parse(issue.message) as Problem) : undefined;
}

function firstLook(text: string, { example }: FieldMeta): { readonly problem: Problem } | undefined {
  if (text.trim() === "") {
    return bad("empty", "nothing is written here", { hint: `write it like ${example}`, at: 0 });
  }
  const length = [...text].length;
  if (length <= LONGEST_FIELD) return undefined;
  return bad("too-long", `this has ${length} characters`, { expected: `at most ${LONGEST_FIELD}` });
}

/** Shorthand for a problem in place of a value. */
export function bad(
  code: Code,
  text: string,
  more: Omit<Problem, "code" | "text"> = {},
): { readonly problem: Problem } {
  return { problem: { code, text, ...more } };
}

/** Control characters, private-use characters and halves of characters: they print as nothing, or as anything. */
const UNPRINTABLE = /[\p{Cc}\p{Co}\p{Cs}\u2028\u2029]/u;

/** A line of free text; white space round it is dropped. */
export function text(options: Options): Field<string> {
  return field({ kind: "text", ...options }, (written) => {
    const found = UNPRINTABLE.exec(written);
    if (!found) return { value: written.trim() };
    const point = (found[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
    const what = /[\n\r\u2028\u2029]/.test(found[0])
      ? "there is a line break in this text"
      : `there is a character in this text that cannot be printed (U+${point})`;
    return bad("bad-text", what, { expected: "one line of plain text", at: found.index });
  });
}

/** One word out of a few. */
export function choice<const T extends string>(words: readonly T[], options: Options): Field<T> {
  return field<T>({ kind: "choice", options: words, ...options }, (written) => {
    const value = words.find((word) => word === written.trim());
    if (value) return { value };
    const near = nearest(written.trim(), words);
    return bad("not-a-choice", `${quoted(written)} is not one of the words that can stand here`, {
      expected: words.join(", "),
      ...(near ? { hint: `did you mean ${near}?` } : {}),
    });
  });
}

const MEANT: Readonly<Record<string, string>> = { yes: "true", on: "true", no: "false", off: "false" };

/** true or false, in these words only. */
export function flag(options: Omit<Options, "example">): Field<boolean> {
  return field({ kind: "flag", example: "true", options: ["true", "false"], ...options }, (written) => {
    const word = written.trim();
    if (word === "true" || word === "false") return { value: word === "true" };
    const folded = word.toLowerCase();
    const meant = Object.hasOwn(MEANT, folded) ? MEANT[folded] : nearest(folded, ["true", "false"]);
    return bad("not-a-flag", `${quoted(written)} is neither true nor false`, {
      expected: "true or false",
      ...(meant ? { hint: `did you mean ${meant}?` } : {}),
    });
  });
}

/** A text of a fixed pattern, kept as it is written. */
export function pattern(kind: "currency", shape: RegExp, wanted: string, options: Options): Field<string> {
  return field({ kind, ...options }, (written) =>
    shape.test(written.trim())
      ? { value: written.trim() }
      : bad("not-money", `${quoted(written)} cannot be read as ${wanted}`, {
          hint: `write it like ${options.example}`,
        }),
  );
}
