/** The schema as a reference: every key has what a reference needs, and its examples and defaults can be read. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { KEYS } from "../../src/recipe/keys.ts";
import type { FieldMeta } from "../../src/recipe/meta.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { BLOCKS, FRONT_MATTER } from "../../src/recipe/schema/recipe.ts";

const fields = KEYS.flatMap(({ path, shape }) => (shape.is === "field" ? [{ path, meta: shape.meta }] : []));
const everyKey = readFileSync(join(import.meta.dirname, "cases", "every-key.md"), "utf8");

/** A recipe with one field, and whatever the field needs beside it. */
function withField(path: string, value: string): string {
  const keys: Record<string, unknown> = {
    recipe: "1",
    title: "One key (invented)",
    wearer: { waist: "27 in", "waist-to-floor": { front: "40 in", side: "41 in", back: "42 in" } },
    cloth: { width: "44 in", thickness: "0.25 mm", repeat: { across: "1 in" } },
    skirt: { breadths: "4" },
  };
  const beside: Record<string, Record<string, unknown>> = {
    "cloth.ten-layers": { cloth: { width: "44 in" } },
    "skirt.round": { skirt: {} },
    "cloth.repeat.lines-lost": MATCHED,
    "cloth.repeat.dominant": MATCHED,
    "lining.hem": SEPARATE,
    "lining.shorter": SEPARATE,
    "work.price.lining": { lining: { width: "30 in", thickness: "0.2 mm" } },
    "work.price.interlining": { interlining: { width: "36 in", thickness: "0.5 mm" } },
    "wearer.waist-to-floor.left": both("left", "right"),
    "wearer.waist-to-floor.right": both("left", "right"),
    "wearer.waist-height": { wearer: { waist: "27 in", hoop: { round: "110 in", height: "9 in" } } },
    "sizes.*.waist-height": {
      wearer: { waist: "27 in", ...LENGTHS, hoop: { round: "110 in", height: "9 in" } },
    },
    "attach.opening.from-centre": { attach: { opening: { at: "front-left" } } },
    ...Object.fromEntries(
      ["shape", "depth", "from-centre", "set"].map((key) => [
        `attach.waist-edge.${key}`,
        { attach: { to: "bodice-edge", "waist-edge": { depth: "2 in", "from-centre": "4 in" } } },
      ]),
    ),
    "fullness.pleats-as-wished": { fullness: { "pleats-per-inch": "9" } },
    "fullness.gauged-back": { fullness: { method: "pleated-gauged-back" } },
    "fullness.flat-front": { fullness: { method: "flat-front-gauged" } },
  };
  Object.assign(keys, structuredClone(beside[path] ?? {}));
  for (const [block, filled] of Object.entries(NEEDED)) {
    if (path.startsWith(`${block}.`) && !(block in (beside[path] ?? {})))
      put(keys, block, structuredClone(filled));
  }
  put(keys, path, value);
  // JSON is YAML, and keeps the order of keys.
  return `---\n${JSON.stringify(keys)}\n---\n`;
}

const LENGTHS = { "waist-to-floor": { front: "40 in", side: "41 in", back: "42 in" } };
const MATCHED = {
  cloth: { width: "44 in", thickness: "0.25 mm", repeat: { across: "1 in", match: "true" } },
};
const SEPARATE = { lining: { width: "30 in", thickness: "0.2 mm", to: "separate" } };

const both = (...sides: string[]): Record<string, unknown> => ({
  wearer: {
    waist: "27 in",
    "waist-to-floor": {
      front: "40 in",
      back: "42 in",
      ...Object.fromEntries(sides.map((side) => [side, "41 in"])),
    },
  },
});

const NEEDED: Record<string, unknown> = {
  "cloth.border": { depth: "9 in" },
  "wearer.hoop": { round: "110 in" },
  lining: { width: "30 in", thickness: "0.2 mm" },
  interlining: { width: "36 in", thickness: "0.5 mm" },
  "skirt.tucks": { count: "3", depth: "1/2 in" },
  "skirt.flounces": { count: "2", depth: "11 in" },
  "fullness.zones": [{ set: "gauged" }],
  "fullness.stay": { thickness: "0.3 mm" },
  "fullness.trial": { cloth: "21 1/4 in", pleats: "40", "closes-to": "3 3/4 in" },
  "attach.band.hook-sets": [{ waist: "26 in" }],
  "attach.other-waists": [{ waist: "29 in" }],
  sizes: [{ name: "A" }],
  "sizes.*.hoop": { round: "110 in" },
};

function put(keys: Record<string, unknown>, path: string, value: unknown): void {
  const steps = path.replaceAll("*", "0").split(".");
  let at = keys;
  for (const step of steps.slice(0, -1)) {
    at[step] ??= {};
    at = at[step] as Record<string, unknown>;
  }
  if (path.startsWith("sizes.*.waist-to-floor.") && /left|right/.test(path)) {
    Object.assign(at, { left: "41 in", right: "41 in" });
    delete at.side;
  }
  at[steps.at(-1) as string] = value;
}

describe("the schema", () => {
  test("has every key of the example, and the example every key that goes with the others", () => {
    const { recipe } = readRecipe("recipe.md", everyKey);
    const written = new Set(
      [...(recipe?.places.keys() ?? [])].map((path) => path.replace(/\.\d+(?=\.|$)/g, ".*")),
    );
    const left = KEYS.map((key) => key.path).filter(
      (path) => !written.has(path) && !path.startsWith("sizes") && !path.startsWith("fullness.zones"),
    );
    // One of two that exclude each other, and what goes only with them.
    expect(left).toEqual([
      "wearer.waist-height",
      "cloth.shaded",
      "cloth.border",
      "cloth.border.depth",
      "cloth.border.edge",
      "cloth.border.at",
      "cloth.border.from-edge",
      "cloth.border.above-hem",
      "cloth.ten-layers",
      "lining.hem",
      "lining.shorter",
      "skirt.lengths",
      "skirt.round",
      "skirt.hem.edge",
      "fullness.flat-front",
      "fullness.back-share",
      "attach.waist-edge",
      "attach.waist-edge.shape",
      "attach.waist-edge.depth",
      "attach.waist-edge.from-centre",
      "attach.waist-edge.set",
      "attach.flat-parts",
      "attach.opening.from-centre",
      "attach.opening.under-fold",
      "work.rates.running",
      "work.rates.marking",
    ]);
  });

  test("tells every key's meaning", () => {
    for (const { path, shape } of KEYS) expect(shape.meta.about.length, path).toBeGreaterThan(5);
    expect(Object.keys(BLOCKS)).toEqual([
      "wearer",
      "cloth",
      "lining",
      "interlining",
      "skirt",
      "fullness",
      "attach",
      "work",
      "evidence",
      "publish",
      "commission",
      "class",
      "sizes",
    ]);
    expect(FRONT_MATTER.pipe[0].entries.title).toBeDefined();
    expect(fields.length).toBeGreaterThan(90);
  });

  test.each(fields.map(({ path, meta }) => [path, meta] as const))(
    "%s: its example can be read",
    (path, meta) => {
      expect(readRecipe("recipe.md", withField(path, meta.example)).messages).toEqual([]);
    },
  );

  const limited = fields.filter(({ meta }) => meta.above ?? meta.least ?? meta.most);
  test.each(limited.map(({ path, meta }) => [path, meta] as const))("%s: its limits hold", (path, meta) => {
    const codes = (value: string) =>
      readRecipe("recipe.md", withField(path, value)).messages.map((message) => message.code);
    const outside = (limit: string, sign: "+" | "-"): string => beyond(limit, sign, meta);
    const wrong = meta.kind === "year" ? "not-a-year" : "limit";
    if (meta.above !== undefined) expect(codes(meta.above)).toContain(wrong);
    if (meta.least !== undefined) {
      expect(codes(meta.least)).not.toContain(wrong);
      expect(codes(outside(meta.least, "-"))).toContain(wrong);
    }
    if (meta.most !== undefined) {
      expect(codes(meta.most)).not.toContain(wrong);
      expect(codes(outside(meta.most, "+"))).toContain(wrong);
    }
  });
});

/** A limit's text with its number moved one step out: `5 in` -> `4 in`, `1/2` -> `0`, `-100 in` -> `-101 in`. */
function beyond(limit: string, sign: "+" | "-", { kind }: FieldMeta): string {
  const found = /^(-?\d+)(\/\d+)?(.*)$/.exec(limit);
  if (!found) throw new Error(`the limit ${limit} is written in another way`);
  const [, whole, part, unit] = found;
  if (part) return sign === "-" ? `0${unit}` : `1${unit}`;
  return `${Number(whole) + (sign === "+" ? 1 : -1)}${kind === "year" ? "" : unit}`;
}
