/** What measures of an original come to, worked by hand, and what does not agree among them. */
import { describe, expect, it } from "vitest";
import { readOriginal } from "../../src/recipe/original/read.ts";
import { exact } from "../../src/solve/json.ts";
import { workOriginal } from "../../src/solve/original/answers.ts";
import cases from "./cases.json" with { type: "json" };
import { sheetText } from "./sheet.ts";

describe("an original's measures", () => {
  it.each(cases.map((each) => [each.about, each] as const))("%s", (_, { keys, values, says }) => {
    const text = sheetText(keys as Record<string, string | null>);
    const { original, placeOf, messages } = readOriginal("original.yaml", text);
    expect(messages).toEqual([]);
    if (!original) throw new Error(text);
    const { found, messages: said, own } = workOriginal(original, placeOf);
    const got = Object.keys(values).map((name) => [name, exact(found.get(name))]);
    expect(Object.fromEntries(got)).toEqual(values);
    expect(said.map(({ code }) => code)).toEqual(says);
    for (const { place } of said) expect(place?.line).toBeGreaterThan(0);
    expect(own.plan !== undefined).toBe(!says.includes("width-and-round" as never));
  });

  it("every formula that is shown is the one that was worked out", () => {
    const { original, placeOf } = readOriginal("original.yaml", sheetText({ bite: "{inside: 1/8 in}" }));
    if (!original) throw new Error("the sheet is sound");
    const { found } = workOriginal(original, placeOf);
    const derived = [...found.values.values()].filter(({ source }) => source === "derived");
    expect(derived.length).toBeGreaterThan(12);
    for (const { how, quantity } of derived) expect(exact(found.evaluate(how))).toBe(exact(quantity));
  });
});

describe("another body", () => {
  const WEARER = "{waist: 33 in, lengths: {front: 40 in, side: 40 1/2 in, back: 41 in}}";
  const answers = () => {
    const { original, placeOf } = readOriginal("original.yaml", sheetText({ wearer: WEARER }));
    if (!original) throw new Error("the sheet is sound");
    return workOriginal(original, placeOf);
  };
  const valuesOf = (keep: string): Record<string, string> => {
    const plan = answers().carried.find((answer) => answer.keep === keep)?.plan;
    const names = [
      "breadths.count",
      "skirt.seam",
      "skirt.round",
      "skirt.fullness",
      "gauging.pleats",
      "gauging.perInch",
      "gauging.pitch",
      "finished.back",
    ];
    return Object.fromEntries(names.map((name) => [name, exact(plan?.values.get(name)?.quantity as never)]));
  };

  // 33 in at 8 an inch are 264 pleats; of 43/55 in each they take 206 2/5. Five breadths of 44 less that, over ten: 1 9/25, so 1 5/16
  // on a mark, and the round 220 - 13 1/8 = 206 7/8.
  it("with the same bites and pleats an inch: 264 pleats in 206 7/8, of five breadths, wide seams taking the rest", () => {
    expect(valuesOf("pitch")).toEqual({
      "breadths.count": "5",
      "skirt.seam": "21/16",
      "skirt.round": "1655/8",
      "skirt.fullness": "1655/264",
      "gauging.pleats": "264",
      "gauging.perInch": "8",
      "gauging.pitch": "1655/2112",
      "finished.back": "41",
    });
  });
  // The round stays 172; 264 pleats have 43/66 in each.
  it("with the same breadths: the round stays, the bite is shorter", () => {
    expect(valuesOf("breadths")).toEqual({
      "breadths.count": "4",
      "skirt.seam": "1/2",
      "skirt.round": "172",
      "skirt.fullness": "172/33",
      "gauging.pleats": "264",
      "gauging.perInch": "8",
      "gauging.pitch": "43/66",
      "finished.back": "41",
    });
  });
  // 206 2/5 lies between 193 (4 1/2 breadths) and 215 (5): 215 is nearer. 215 over 43/55 are 275 pleats, 69 in each quarter.
  it("with the same fullness: five breadths are nearest, the bite stays, the pleats stand closer", () => {
    expect(valuesOf("ratio")).toEqual({
      "breadths.count": "5",
      "skirt.seam": "1/2",
      "skirt.round": "215",
      "skirt.fullness": "215/33",
      "gauging.pleats": "276",
      "gauging.perInch": "92/11",
      "gauging.pitch": "215/276",
      "finished.back": "41",
    });
  });
  it("the sheet's own choice becomes the recipe, or the one that is asked for", () => {
    expect(answers().chosen.keep).toBe("pitch");
    const { original, placeOf } = readOriginal("original.yaml", sheetText({ wearer: WEARER }));
    expect(original && workOriginal(original, placeOf, "ratio").chosen.keep).toBe("ratio");
  });
});
