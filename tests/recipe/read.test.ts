/** What a good recipe reads as: values, defaults, what is listed, places, body. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import {
  dim,
  inches,
  MONEY,
  millimetres,
  type Quantity,
  quantity,
  toInches,
} from "../../src/quantity/quantity.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";

const EVERY_KEY = readFileSync(join(import.meta.dirname, "cases", "every-key.md"), "utf8");

const PLAIN = `---
recipe: 1
title: A plain skirt (invented)
wearer:
  waist: 26 1/2 in
  waist-to-floor: {front: 40 in, side: 41 in, back: 42 1/2 in}
cloth: {width: 45 in, thickness: 0.25 mm}
skirt: {breadths: 3 1/2}
---
`;

function good(source: string): Recipe {
  const { recipe, messages } = readRecipe("recipe.md", source);
  expect(messages).toEqual([]);
  if (!recipe) throw new Error("no recipe and no message");
  return recipe;
}

const inch = (q: Quantity | undefined): string => (q ? toInches(q).toFraction() : "none");
const lines = (recipe: Recipe): string[] =>
  recipe.given.map(({ path, text, source }) => `${path}: ${text}${source === "default" ? " (default)" : ""}`);

describe("the recipe with every key", () => {
  const recipe = good(EVERY_KEY);

  test("is read exactly", () => {
    expect(recipe.title).toBe("Blue printed cotton for the mill-house kitchen");
    expect(recipe.year).toBe(1846);
    expect(inch(recipe.wearer.waist)).toBe("27");
    expect(inch(recipe.wearer.waistToFloor?.back)).toBe("85/2");
    expect(recipe.wearer.unlikeSides).toBe(false);
    expect(recipe.wearer.hoop?.shape.value.toFraction()).toBe("1");
    expect(recipe.cloth.thickness).toEqual(millimetres("1/4"));
    expect(recipe.cloth.weight?.value.mul(1000000n).toFraction()).toBe("120");
    expect(recipe.cloth.shrinkage.value.toFraction()).toBe("3/100");
    expect(recipe.skirt.breadths?.value.toFraction()).toBe("4");
    expect(recipe.skirt.centreFront).toBe("seam");
    expect(recipe.skirt.hem).toEqual({ kind: "faced", depth: inches("4"), cloth: "own", edge: "cut" });
    expect(recipe.skirt.flounces?.fullness.value.toFraction()).toBe("4/3");
    expect(recipe.fullness.method).toBe("pleated-gauged-back");
    expect(recipe.fullness.rows).toBe(2);
    expect(recipe.fullness.trial).toEqual({
      cloth: inches("85/4"),
      pleats: expect.objectContaining({ value: expect.objectContaining({ n: 40n, d: 1n }) }),
      closesTo: inches("15/4"),
    });
    expect(inch(recipe.attach.made)).toBe("109/4");
    expect(recipe.attach.opening).toEqual({ at: "centre-back" });
    expect(recipe.work.rates.gauging?.value.toFraction()).toBe("3/10");
    expect(recipe.work.rates.running).toBeUndefined();
    // Money a millimetre and a second: 9.50 / 914.4 and 22 / 3600.
    expect(recipe.work.price?.cloth).toEqual(quantity("95/9144", dim(-1, 0, 0, 1)));
    expect(recipe.work.price?.notions).toEqual(quantity("12", MONEY));
    expect(recipe.work.price?.hour).toEqual(quantity("11/1800", dim(0, 0, -1, 1)));
    expect(recipe.work.price?.currency).toBe("GBP");
    expect(recipe.evidence?.skipBadRows).toBe(true);
    expect(recipe.evidence?.rows).toBeUndefined();
  });

  test("lists measures as they are written, in the order of the reference", () => {
    const all = lines(recipe);
    expect(all.slice(0, 7)).toEqual([
      "tape: 1/16 in",
      "wearer.waist: 27 in",
      "wearer.ease: 1/2 in",
      "wearer.waist-to-floor.front: 40 in",
      "wearer.waist-to-floor.left: 41 in",
      "wearer.waist-to-floor.right: 41 in",
      "wearer.waist-to-floor.back: 42 1/2 in",
    ]);
    expect(all).toContain("cloth.repeat.across: 3/4 in");
    expect(all).toContain("fullness.trial.closes-to: 3 3/4 in");
    expect(all.slice(-13)).toEqual([
      "work.rates.whip: 10 per min",
      "work.price.cloth: 9.50 per yd",
      "work.price.lining: 4.20 per yd",
      "work.price.interlining: 5 per yd",
      "work.price.notions: 12.00",
      "work.price.hour: 22.00",
      "evidence.window: 5",
      "commission.hem-within: 1/4 in",
      "commission.waist-within: 1/4 in",
      "commission.deposit: 60.00",
      "class.pupils: 8",
      "class.sampler: 6 in",
      "class.ends: 1 in (default)",
    ]);
    expect(recipe.chosenByDefault).toEqual([]);
  });

  test("keeps places and body", () => {
    expect(recipe.places.get("wearer.waist")).toEqual({
      file: "recipe.md",
      line: 10,
      column: 10,
      length: 5,
    });
    expect(recipe.places.get("wearer")).toMatchObject({ line: 8, column: 1, length: 6 });
    expect(recipe.places.get("wearer.waist-to-floor.left")).toEqual(
      recipe.places.get("wearer.waist-to-floor.side"),
    );
    const lines = EVERY_KEY.split("\n");
    const after = lines.lastIndexOf("---") + 1;
    expect(recipe.body.line).toBe(after + 1);
    expect(recipe.body.text).toBe(lines.slice(after).join("\n"));
    expect(recipe.body.text).toMatch(/^# A kitchen skirt\n/);
  });
});

describe("what is left out", () => {
  test("gets the defaults for inches", () => {
    const recipe = good(PLAIN);
    expect(recipe.garment).toBe("skirt");
    expect(recipe.cloth.name).toBe("the cloth");
    expect(recipe.fullness.method).toBe("gauged");
    expect(recipe.skirt.turnDown).toBeUndefined();
    expect(lines(recipe).filter((line) => line.endsWith(" (default)"))).toEqual(
      [
        "tape: 1/16 in",
        "wearer.ease: 0 in",
        "cloth.selvedge: 0 in",
        "cloth.shrinkage: 0 %",
        "cloth.bought-by: 1/8 yd",
        "skirt.seam: 1/2 in",
        "skirt.off-floor: 2 in",
        "skirt.hem.depth: 4 in",
        "skirt.least-turn-down: 1 in",
        "skirt.placket: 10 in",
        "fullness.rows: 2",
        "fullness.first-row: 1/4 in",
        "fullness.between-rows: 1/4 in",
        "fullness.margin: 1/4 in",
        "fullness.finest-bite: 1/4 in",
        "fullness.deepest-pitch: 2 in",
        "fullness.thread-ends: 10 in",
        "fullness.strands: 2",
        "fullness.comfortable-bite: 1/2 in",
        "fullness.short-bite: 1/8 in",
        "fullness.closest-easy: 1/12 in",
        "fullness.least-trial: 4 in",
        "attach.band.depth: 1 1/4 in",
        "attach.band.lap: 1 in",
        "attach.band.turning: 1/2 in",
        "attach.hook-spacing: 1 1/4 in",
      ].map((line) => `${line} (default)`),
    );
    expect(recipe.chosenByDefault.map(({ path, text }) => `${path}: ${text}`)).toEqual([
      "garment: skirt",
      "show: in",
      "cloth.name: the cloth",
      "cloth.one-way: false",
      "cloth.sheer: false",
      "skirt.run: down",
      "skirt.hem.kind: faced",
      "skirt.hem.cloth: own",
      "skirt.braid: false",
      "skirt.pocket: false",
      "fullness.method: gauged",
      "fullness.follow-repeat: false",
      "fullness.thread: drawn-along",
      "attach.to: waistband",
      "attach.band.from: one-piece",
      "attach.whip: every",
      "attach.placket-hooks: one",
      "attach.opening.at: centre-back",
    ]);
  });

  test("a petticoat hangs higher; tucks, flounces and pocket bring measures of their own", () => {
    const texts = (source: string) =>
      Object.fromEntries(good(source).given.map(({ path, text, source: from }) => [path, `${text} ${from}`]));
    const trimmed = PLAIN.replace("title:", "garment: petticoat\ntitle:").replace(
      "breadths: 3 1/2",
      "breadths: 3 1/2, pocket: true, tucks: {count: 1, depth: 1 in}, flounces: {count: 2, depth: 9 in}",
    );
    const own = {
      "skirt.off-floor": "3 1/2 in default",
      "skirt.pocket-below": "2 1/2 in default",
      "skirt.pocket-slit": "6 in default",
      "skirt.pocket-length": "12 in default",
      "skirt.pocket-width": "6 in default",
      "skirt.pocket-facing": "2 in default",
      "skirt.tucks.clear": "1 in default",
      "skirt.flounces.above-hem": "1/2 in default",
      "skirt.flounces.lap": "1 1/4 in default",
      "skirt.flounces.clear": "1 in default",
    };
    expect(texts(trimmed)).toMatchObject(own);
    const plain = texts(PLAIN);
    for (const path of Object.keys(own).slice(1)) expect(plain[path]).toBeUndefined();
    expect(texts(trimmed.replace("title:", "show: cm\ntitle:"))).toMatchObject({
      "skirt.off-floor": "9 cm default",
      "skirt.pocket-below": "6.5 cm default",
      "skirt.flounces.lap": "3 cm default",
    });
  });

  test("gets those for centimetres with show: cm, whatever units the maker mixes", () => {
    const source = PLAIN.replace("title:", "show: cm\ntitle:").replace(
      "skirt: {breadths: 3 1/2}",
      [
        "skirt: {breadths: 3 1/2, hem: {kind: turned}}",
        "fullness: {method: pleated, thread: full-length}",
        "attach: {to: bodice-edge, piping: {}}",
      ].join("\n"),
    );
    const recipe = good(source);
    const texts = Object.fromEntries(recipe.given.map(({ path, text }) => [path, text]));
    expect(texts).toMatchObject({
      tape: "1 mm",
      "wearer.waist": "26 1/2 in",
      "cloth.bought-by": "10 cm",
      "skirt.seam": "1.5 cm",
      "skirt.off-floor": "5 cm",
      "skirt.hem.depth": "7.5 cm",
      "skirt.hem.turn-in": "6 mm",
      "skirt.least-turn-down": "25 mm",
      "skirt.placket": "25 cm",
      "fullness.first-row": "6 mm",
      "fullness.margin": "6 mm",
      "fullness.finest-bite": "6 mm",
      "fullness.deepest-pitch": "50 mm",
      "fullness.thread-ends": "30 cm",
      "fullness.comfortable-bite": "12 mm",
      "fullness.short-bite": "3 mm",
      "fullness.closest-easy": "2 mm",
      "fullness.wished-face": "2 cm",
      "fullness.least-trial": "10 cm",
      "attach.band.depth": "3 cm",
      "attach.band.turning": "1.2 cm",
      "attach.piping.cord": "1.5 mm",
      "attach.piping.turning": "1.2 cm",
      "attach.hook-spacing": "3 cm",
    });
    expect(recipe.chosenByDefault.map(({ path }) => path)).not.toContain("skirt.hem.cloth");
    expect(recipe.attach.piping?.turning).toEqual(recipe.attach.band.turning);
  });
});

describe("ways of writing", () => {
  test("unlike sides, and a thickness over ten layers", () => {
    const source = PLAIN.replace("side: 41 in", "left: 41 in, right: 41 1/4 in").replace(
      "thickness: 0.25 mm",
      "ten-layers: 2.5 mm",
    );
    const recipe = good(source);
    expect(recipe.wearer.unlikeSides).toBe(true);
    expect(inch(recipe.wearer.waistToFloor?.left)).toBe("41");
    expect(inch(recipe.wearer.waistToFloor?.right)).toBe("165/4");
    expect(recipe.cloth.thickness).toEqual(millimetres("1/4"));
    expect(lines(recipe)).toContain("cloth.ten-layers: 2.5 mm");
    expect(lines(recipe)).toContain("cloth.thickness: a tenth of 2.5 mm");
  });

  test("zones in place of a method", () => {
    const source = PLAIN.replace(
      "---\n",
      `---
fullness:
  zones:
    - {set: flat, waist: 2 in}
    - {set: knife, waist: 8 in, face: 3/4 in, depth: 1 1/2 in, towards: back}
    - {set: gauged}
`,
    );
    const { fullness, chosenByDefault } = good(source);
    expect(fullness.method).toBeUndefined();
    expect(fullness.zones?.map((zone) => zone.set)).toEqual(["flat", "knife", "gauged"]);
    expect(inch(fullness.zones?.[1]?.depth)).toBe("3/2");
    expect(chosenByDefault.map(({ path }) => path)).not.toContain("fullness.method");
  });

  test("a waist height over a hoop in place of lengths", () => {
    const source = PLAIN.replace(
      /waist-to-floor.*/,
      "waist-height: 42 in\n  hoop: {round: 110 in, height: 9 in}",
    );
    const { wearer } = good(source);
    expect(wearer.waistToFloor).toBeUndefined();
    expect(inch(wearer.waistHeight)).toBe("42");
    expect(inch(wearer.hoop?.offset)).toBe("0");
  });

  test.each([
    ['26½"', "53/2"],
    ["'26 1/2\"'", "53/2"],
    ['"26 1/2 in"', "53/2"],
    ["2 ft 2 1/2 in", "53/2"],
    ["67.31 cm", "53/2"],
    ["26\n    1/2 in", "53/2"],
  ])("a waist of %s", (written, exact) => {
    expect(inch(good(PLAIN.replace("26 1/2 in", written)).wearer.waist)).toBe(exact);
  });

  test("a negative ease, and no thickness once a trial is sewn", () => {
    const source = PLAIN.replace("  waist: ", "  ease: -1/2 in\n  waist: ")
      .replace(", thickness: 0.25 mm", "")
      .replace("---\n", "---\nfullness: {trial: {cloth: 20 in, pleats: 39 1/2, closes-to: 3 in}}\n");
    const recipe = good(source);
    expect(inch(recipe.wearer.ease)).toBe("-1/2");
    expect(recipe.cloth.thickness).toBeUndefined();
    expect(recipe.fullness.trial?.pleats.value.toFraction()).toBe("79/2");
  });

  test("windows line ends and a byte order mark", () => {
    const recipe = good(`\ufeff${PLAIN.replaceAll("\n", "\r\n")}Words.\r\n`);
    expect(recipe.places.get("wearer.waist")).toMatchObject({ line: 5, column: 10, length: 9 });
    expect(recipe.body).toEqual({ text: "Words.\r\n", line: 10 });
  });

  test("places of errors are the same with windows line ends", () => {
    const broken = PLAIN.replace("26 1/2 in", "26 1/2");
    const place = (source: string) =>
      readRecipe("recipe.md", source).messages.map((message) => message.place);
    expect(place(broken.replaceAll("\n", "\r\n"))).toEqual(place(broken));
    expect(place(broken)).toEqual([{ file: "recipe.md", line: 5, column: 16, length: 1 }]);
  });
});
