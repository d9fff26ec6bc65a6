/** The recipe that an original comes to, line by line: written.json has what is on the sheet, and what must stand in the recipe. */
import { expect, it } from "vitest";
import { readOriginal } from "../../src/recipe/original/read.ts";
import { workOriginal } from "../../src/solve/original/answers.ts";
import { sheetText } from "./sheet.ts";
import rows from "./written.json" with { type: "json" };

interface Row {
  readonly about: string;
  readonly keys: Readonly<Record<string, string | null>>;
  /** Pieces of the original's own recipe, gaps as one space. */
  readonly own?: readonly string[];
  /** The same of what is carried, by what is kept; null: there is none. */
  readonly carried?: Readonly<Record<string, readonly string[] | null>>;
  readonly says: readonly string[];
}

const plainly = (text: string | undefined): string => (text ?? "").replace(/ +/g, " ");

it.each((rows as readonly Row[]).map((row) => [row.about, row] as const))("%s", (_, row) => {
  const { original, placeOf, messages } = readOriginal("original.yaml", sheetText(row.keys));
  expect(messages).toEqual([]);
  if (!original) throw new Error("the sheet is sound");
  const { own, carried, messages: said } = workOriginal(original, placeOf);
  expect(said.map(({ code }) => code)).toEqual(row.says);
  for (const piece of row.own ?? []) expect(plainly(own.text)).toContain(piece);
  for (const [keep, pieces] of Object.entries(row.carried ?? {})) {
    const text = carried.find((answer) => answer.keep === keep)?.text;
    if (pieces === null) expect(text).toBeUndefined();
    else for (const piece of pieces) expect(plainly(text)).toContain(piece);
  }
  // What cannot be made is told by the program's own messages.
  if (!own.plan) expect(own.messages.some(({ level }) => level === "error")).toBe(true);
});

it("a mark of byte order before the sheet is passed over", () => {
  const { original, messages } = readOriginal("original.yaml", `\ufeff${sheetText()}`);
  expect(messages).toEqual([]);
  expect(original?.title).toContain("brown print");
});
