/**
 * What a good maker's bench asks for, row by row, in built booklets: practice.json, in the manner of trade.json. Parts: 2 thread,
 * fittings and ways of marking; 3 what the chapters tell to see; 4 the commonest faults; 6 cautions. Common practice, no source.
 */
import { describe, expect, it } from "vitest";
import practice from "./practice.json" with { type: "json" };
import { build, hold, type Row } from "./rows.ts";

const cases = practice.rows as unknown as readonly Row[];

describe.each([2, 3, 4, 6])("the bench, part %i", (part) => {
  const own = cases.filter(({ section }) => section === part);
  it.each(own.map((row) => [`${row.rule} [${row.demo ?? "a recipe of its own"}]`, row] as const))(
    "%s",
    (_, row) => hold(row),
  );
});

describe("overdone cautions stay out", () => {
  it.each(practice.never)("$what", ({ what, pattern, but }) => {
    const { chapters } = build();
    const found = [...chapters].filter(
      ([title, text]) => title !== but && new RegExp(pattern, "i").test(text),
    );
    expect(
      found.map(([title]) => title),
      what,
    ).toEqual([]);
  });
  it("a caution before a step stands once: pins in no box at all, needles where they are pushed, the iron at the fold", () => {
    const { chapters } = build();
    const boxes = [...chapters].flatMap(([title, text]) =>
      [...text.matchAll(/^> \*\*(?:WARNING|CAUTION)\.\*\* (.*)$/gm)].map(([, words]) => `${title}: ${words}`),
    );
    const about = (word: RegExp): string[] =>
      boxes.filter((box) => word.test(box)).map((box) => box.slice(0, box.indexOf(":")));
    expect(about(/\bpins?\b(?! first)/i)).toEqual([]);
    expect(about(/\bneedles?\b/i)).toEqual(["Gauging", "Whipping"]);
    expect(about(/\biron\b/i)).toEqual(["Second fitting"]);
  });
});
