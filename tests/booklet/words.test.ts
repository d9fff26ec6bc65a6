/** Words that must fit the garment: what was once said wrongly. */
import { describe, expect, it } from "vitest";
import { contextOf } from "../../src/booklet/context.ts";
import { measuresSection } from "../../src/booklet/fields.ts";
import { joinChapters, writeChapters } from "../../src/booklet/markdown.ts";
import { withoutMarks } from "../../src/booklet/marks.ts";
import { sheetsOf } from "../../src/booklet/sheet-list.ts";
import { sheetPage } from "../../src/booklet/sheets.ts";
import { nodesToHtml } from "../../src/booklet/stringify.ts";
import { FIGURE_NAMES } from "../../src/figure/figure.ts";
import { type Keys, planOf } from "../recipes.ts";

const titles = Object.fromEntries(FIGURE_NAMES.map((name) => [name, `Title of ${name}`]));
const booklet = (keys: Keys): string => {
  const plan = planOf(keys);
  return withoutMarks(joinChapters(plan, writeChapters(plan, { ...contextOf(plan), figures: titles })));
};

/** What speaks of skirts in general, or of value names, and stays. */
const GENERAL =
  /a shorter skirt|No loose skirt|A heavy skirt|surviving skirts|skirt clips|A skirt for the tests|\bskirt\.[a-z]/g;

describe("a petticoat is called a petticoat", () => {
  it.each([
    [
      "on a waistband, tucks and a pocket",
      { skirt: { tucks: { count: "2", depth: "1/2 in" }, pocket: "true" } },
    ],
    ["pleated", { fullness: { method: "pleated" } }],
    [
      "on a bodice edge, flounced",
      { skirt: { flounces: { count: "1", depth: "9 in" } }, attach: { to: "bodice-edge" } },
    ],
    [
      "on a part band",
      {
        fullness: { method: "flat-front-gauged" },
        attach: { to: "part-band", opening: { at: "front-left", "from-centre": "5 in" } },
      },
    ],
    [
      "over a hoop, estimated",
      {
        wearer: { "waist-to-floor": null, "waist-height": "41 in", hoop: { round: "90 in", height: "9 in" } },
      },
    ],
  ] as [string, Keys][])("%s", (_, keys) => {
    const text = booklet({ ...keys, garment: "petticoat" }).replace(GENERAL, "");
    expect([...text.matchAll(/.*\bskirts?\b.*/gi)].map(([line]) => line)).toEqual([]);
  });
});

it("seams are deepened for the pattern's sake only where they are", () => {
  const meets = (seam: string): string =>
    booklet({
      cloth: { width: "54 in", selvedge: "3/8 in", repeat: { across: "1/2 in", match: "true" } },
      skirt: { seam, breadths: "3" },
    });
  expect(meets("5/8 in")).not.toContain("no line would meet");
  expect(meets("1/2 in")).toContain("with seams of 1/2 in it would be");
});

it("the wearer's measures are asked for first, the tape last", () => {
  const legends = [
    ...nodesToHtml([measuresSection(planOf({ tape: "1/8 in" }))]).matchAll(/<legend>(.*?)<\/legend>/g),
  ];
  const names = legends.map(([, name]) => name);
  expect(names[0]).toBe("The wearer");
  expect(names.at(-1)).toBe("Other measures");
});

it("the commission sheet says of a bodice edge that it is pointed, and how deep", () => {
  const sheet = (keys: Keys): string => {
    const plan = planOf({ ...keys, commission: { use: "dinner" } });
    const [commission] = sheetsOf(plan.recipe);
    if (!commission) throw new Error("no sheet is asked for");
    return sheetPage(commission, plan, contextOf(plan), "0")
      .replace(/<[^>]*>/g, "")
      .replace(/\s+/g, " ");
  };
  const point = { shape: "point", depth: "2 in", "from-centre": "4 in" };
  const pointed = sheet({ attach: { to: "bodice-edge", "waist-edge": point } });
  expect(pointed).toContain("with a point 2 in deep, piped");
  expect(pointed).toContain("Waist seam, closed, along the point");
  expect(sheet({ attach: { to: "bodice-edge" } })).not.toContain("point");
});

it("without a turned-up facing none is shrunk; without a stay none is made thinner", () => {
  const thick = booklet({
    cloth: { width: "54 in", thickness: "0.9 mm" },
    skirt: { breadths: "3", hem: { kind: "turned" } },
    fullness: { method: "pleated-gauged-back" },
  });
  expect(thick).not.toMatch(/Shrink[^.]*facing/);
  expect(thick).toContain("nothing fits: take a breadth out, thinner cloth, or gauge less of the waist");
  expect(thick).not.toMatch(/\bflat and pleated parts go in/);
});

it("halves gauged in unlike counts are not said to be the same in number", () => {
  const keys: Keys = {
    fullness: { method: "flat-front-gauged" },
    attach: { to: "part-band", opening: { at: "front-right", "from-centre": "5 in" } },
  };
  const plan = planOf(keys);
  const count = (side: string): number =>
    plan.gauged.filter(({ half }) => half === side).reduce((sum, { pleats }) => sum + pleats, 0);
  expect(count("left")).not.toBe(count("right"));
  expect(booklet(keys)).toContain("2 1/2 in left flat, then 10 1/4 in gauged. To gauge is");
});

it("a stage of a few stitches is under 5 min, not 0", () => {
  // 18 pleats of gauging at the back: 36 marks, one or two minutes.
  const few = booklet({
    wearer: { waist: "28 in", "waist-to-floor": { front: "38 in", side: "39 in", back: "40 in" } },
    cloth: { width: "54 in", selvedge: "1/4 in", thickness: "0.9 mm" },
    skirt: { breadths: "3", tucks: { count: "2", depth: "1 in" }, pocket: "true" },
    fullness: { method: "pleated-gauged-back" },
  });
  expect(few).not.toMatch(/\| 0 min/);
  expect(few).toMatch(/\| marking \| (under 5 min|up to)/);
});

it("a trial's target is printed down to a mark: what is printed as closing does close", () => {
  // 25 3/4 / 8 = 3 7/32, between two sixteenths.
  const plan = planOf({ wearer: { waist: "25 3/4 in" } });
  expect(plan.values.get("trial.target")?.shown).toBe("3 3/16 in");
});
