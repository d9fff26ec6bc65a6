/** as-made.yaml: what can stand in it, what is said of what cannot, and how it is added to. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inches } from "../../src/quantity/quantity.ts";
import { AS_MADE_FILE } from "../../src/recipe/as-made/as-made.ts";
import { entryText, readAsMadeFile, withEntry } from "../../src/recipe/as-made/file.ts";
import { pacesOf } from "../../src/recipe/as-made/pace.ts";
import { recordedData, recordedFrom } from "../../src/recipe/as-made/recorded.ts";
import { readSpan, spanText } from "../../src/recipe/as-made/span.ts";
import { standing } from "../../src/recipe/as-made/standing.ts";
import { messageText } from "../../src/recipe/message.ts";
import type { Data } from "../../src/recipe/written.ts";
import faults from "./as-made-faults.json" with { type: "json" };

const read = (text: string) => readAsMadeFile("as-made.yaml", text);
function sound(text: string) {
  const { asMade, messages } = read(text);
  if (!asMade) throw new Error(messages.map((message) => messageText(message, text)).join("\n"));
  return asMade;
}

const TWO = `# my own remark
- date: 2026-02-14
  hands: M.
  trial: {cloth: 21 1/4 in, pleats: 24, closes-to: 3 7/8 in}
  made: {round: 170 in, weight: 2 lb 1 oz, pleats: 130}
  hours: {gauging: 1 h, hem: 20 min}
  off-floor: {centre-front: 2 in, centre-back: 0 in}
- date: 2026-03-01
  trial: {cloth: 21 1/4 in, pleats: 17, closes-to: 3 1/8 in}
  made: {pleats: 136}
  sections: [{name: left front quarter, pleats: 34, waist: 6 7/8 in}]
  hours: {gauging: 1 h 30 min, hem: -5 min}
  counts: {gauging: 600}
  finished: 1 March
  photographs: [photos/front.jpg]
`;

describe("entries", () => {
  it("are read exactly, the last word stands, times add up, trials are kept", () => {
    const made = standing(sound(TWO));
    expect(made.made.round?.value.equals(inches("170").value)).toBe(true);
    expect(made.made.pleats?.value.toFraction()).toBe("136");
    expect(made.hours.get("gauging")?.value.toFraction()).toBe("9000");
    expect(made.hours.get("hem")?.value.toFraction()).toBe("900");
    expect(made.trials.map(({ trial }) => trial.pleats.value.toFraction())).toEqual(["24", "17"]);
    expect(made.finished).toBe("1 March");
    expect(made.offFloor["centre-back"]?.value.toFraction()).toBe("0");
    expect(made.sections.get("left front quarter")?.pleats?.value.toFraction()).toBe("34");
    expect(made.photographs).toEqual(["photos/front.jpg"]);
  });
  it.each(Object.entries(faults))("%s", (_, { text, says }) => {
    const { asMade, messages } = read(text);
    expect(asMade).toBeUndefined();
    expect(messages.map((message) => messageText(message, text))).toEqual(
      says.map((lines) => lines.join("\n")),
    );
  });
  it("an empty file, or one of remarks alone, is no record yet", () => {
    for (const text of ["", "\n\n", "# nothing yet\n"]) expect(sound(text).entries).toEqual([]);
  });
});

describe("times", () => {
  it("are read as they are written", () => {
    fc.assert(
      fc.property(fc.integer({ min: -9_000_000, max: 9_000_000 }), (seconds) => {
        expect(readSpan(spanText(seconds))?.value.toFraction()).toBe(String(seconds));
      }),
    );
  });
  it.each(["", "h", "1", "1:20", "1.5 h", "20 min 1 h", "1 h 20"])("%j is none", (text) => {
    expect(readSpan(text)).toBeUndefined();
  });
});

const words = fc
  .string({ unit: "grapheme", maxLength: 40 })
  .map((text) => text.replace(/[\p{Cc}\p{Co}\p{Cs}\u2028\u2029]/gu, "x").trim());
const entries = fc.record({
  date: fc.constant("2026-11-25"),
  changed: words,
  lessons: fc.array(words, { maxLength: 4 }).map((lines) => lines.join("\n").trim()),
  notes: fc.dictionary(fc.constantFrom("gauging/1", "hem/3", "trial/12"), words),
  hours: fc.dictionary(
    fc.constantFrom("gauging", "hem", "last-look"),
    fc.integer({ min: 1, max: 90_000 }).map(spanText),
  ),
});
const befores = fc.constantFrom(
  "",
  "# a remark\n",
  TWO,
  TWO.trimEnd(),
  TWO.replaceAll("\n", "\r\n"),
  TWO.replace(/^(?=- | {2})/gm, "   "),
  `${TWO}# a remark at the end\n\n`,
  `${TWO}- date: 2026-03-02\n  lessons: |\n    kept\n    as written\n\n\n`,
  "\ufeff- date: 2026-01-01\n",
);

describe("adding an entry", () => {
  it("keeps every byte that stood there, and gives back what was added", () => {
    fc.assert(
      fc.property(befores, fc.array(entries, { minLength: 1, maxLength: 3 }), (before, added) => {
        let text = before;
        for (const entry of added) {
          const now = withEntry("as-made.yaml", text, entry as Record<string, Data>);
          if (!("text" in now))
            throw new Error(now.messages.map((message) => messageText(message, text)).join("\n"));
          expect(now.text.startsWith(text)).toBe(true);
          text = now.text;
        }
        const { entries: read } = sound(text);
        expect(read.length).toBe(sound(before).entries.length + added.length);
        added.forEach((entry, i) => {
          const back = read[read.length - added.length + i];
          expect([back?.changed, back?.lessons, back?.notes]).toEqual([
            entry.changed,
            entry.lessons,
            entry.notes,
          ]);
        });
      }),
      { numRuns: 60 },
    );
  });
  it.each([
    "[{date: 2026-01-01}]\n",
    "- date: 2026-01-01\n...\n",
    "- date: 2026-01-01\n  lessons: |+\n    a\n   # b\n- x: [\n",
  ])("is refused where the end of the file is no list to go on with: %j", (text) => {
    const now = withEntry("as-made.yaml", text, { date: "2026-11-25" });
    expect("messages" in now && now.messages.length).toBeGreaterThan(0);
  });
  it("writes texts so that they are read back, whatever they look like", () => {
    for (const lessons of [
      "- a list?",
      "key: value",
      "#5 thread",
      "*",
      "'quoted'",
      "null",
      "1.10",
      "2026-01-01",
      "",
      "a\n\nb",
    ]) {
      const text = entryText({ date: "2026-11-25", lessons });
      expect(sound(text).entries[0]?.lessons).toBe(lessons);
    }
  });
});

describe("a maker's own pace", () => {
  const garment = (gauging: string, count: string, finished = "May") =>
    sound(
      `- date: 2026-01-01\n  finished: "${finished}"\n  hours: {gauging: ${gauging}}\n  counts: {gauging: ${count}}\n`,
    );
  const perMinute = (text: string | undefined): number => {
    const [n = "0", d = "1"] = (text ?? "").split("/");
    return Math.round((Number(n) / Number(d)) * 60 * 100) / 100;
  };
  // By hand: 600 bites in 60 min are 10 a minute, a tenth either way 9 and 11.
  it("from one garment is a tenth either way of what she did", () => {
    const { gauging } = pacesOf([garment("1 h", "600")]);
    expect([perMinute(gauging?.low), perMinute(gauging?.high), gauging?.garments]).toEqual([9, 11, 1]);
  });
  // 10 and 20 a minute: 600 in 60 and 1200 in 60; the mean is 15, a tenth either way lies between them.
  it("from several is the slowest and the quickest", () => {
    const { gauging } = pacesOf([garment("1 h", "600"), garment("1 h", "1200")]);
    expect([perMinute(gauging?.low), perMinute(gauging?.high), gauging?.garments]).toEqual([10, 20, 2]);
  });
  it("does not rest on a garment that is not finished, nor on hours without a count", () => {
    expect(pacesOf([garment("1 h", "600", "")])).toEqual({});
    expect(pacesOf([sound("- date: 2026-01-01\n  finished: May\n  hours: {gauging: 1 h}\n")])).toEqual({});
  });
  // 300 stitches of seams in 20 min and 600 of the hem in 40 min: 900 in an hour, 15 a minute.
  it("of running stitches takes seams, hem, tucks and flounces together", () => {
    const text =
      "- date: 2026-01-01\n  finished: May\n  hours: {seams: 20 min, hem: 40 min}\n  counts: {seams: 300, hem: 600}\n";
    const { running } = pacesOf([sound(text)]);
    expect([perMinute(running?.low), perMinute(running?.high)]).toEqual([13.5, 16.5]);
  });
});

describe("what is carried of the record", () => {
  const { asMade } = readAsMadeFile(AS_MADE_FILE, "- date: 2026-01-01\n  lessons: wax it\n");
  if (!asMade) throw new Error("the entry is sound");
  const paces = { gauging: { garments: 1, low: "1", high: "2" } } as never;
  it.each([
    ["nothing", {}, undefined],
    ["no pace", { paces: {} }, undefined],
    ["what was made", { asMade }, { asMade: asMade.written }],
    ["her pace", { paces }, { paces }],
    ["both", { asMade, paces }, { asMade: asMade.written, paces }],
  ])("%s comes back as it was", (_, recorded, data) => {
    expect(recordedData(recorded)).toEqual(data);
    if (data) expect(recordedFrom(data)).toEqual(recorded);
  });
});
