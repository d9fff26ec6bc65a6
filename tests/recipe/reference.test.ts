/** The recipe reference: its tables are those of the schema, and every example in it gives what it shows. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CHAPTERS } from "../../src/booklet/chapters.ts";
import { FIGURE_NAMES } from "../../src/figure/figure.ts";
import { commentedRecipe } from "../../src/recipe/commented.ts";
import { KEYS } from "../../src/recipe/keys.ts";
import { jsonSchema, originalSchema } from "../../src/recipe/reference/json-schema.ts";
import { renewed } from "../../src/recipe/reference/readme.ts";
import { keyWords } from "../../src/recipe/reference/tables.ts";
import { examplesIn, tryExample } from "./examples.ts";

const at = (file: string): URL => new URL(`../../src/recipe/${file}`, import.meta.url);
const README = readFileSync(at("README.md"), "utf8");
const STALE = "the reference is stale: npm run reference";

describe("the recipe reference", () => {
  it("has the tables of the schema as it is", () => {
    expect(renewed(README) === README, STALE).toBe(true);
    expect(readFileSync(at("recipe.schema.json"), "utf8") === jsonSchema(), STALE).toBe(true);
    const sheet = readFileSync(at("original/original.schema.json"), "utf8");
    expect(sheet === originalSchema(), STALE).toBe(true);
  });

  it("has every key, every chapter and every figure", () => {
    for (const { path, shape } of KEYS) {
      const isTop = shape.is !== "field" && !path.includes(".");
      expect(README).toContain(isTop ? `### \`${path}\`\n` : `| \`${path}\` |`);
    }
    for (const name of [...CHAPTERS, ...FIGURE_NAMES]) expect(README).toContain(`\`${name}\``);
  });

  const { recipe, examples } = examplesIn(README);
  it("has examples", () => expect(examples.length).toBeGreaterThan(15));

  it.each(examples.map((example) => [example.body.trim().split("\n")[0], example] as const))(
    "gives what it shows: %s",
    (_, example) => {
      const found = tryExample(recipe, example.body);
      if (example.says !== undefined) expect(found.says).toBe(example.says);
      else expect(found.says).toBe("");
      if (example.shows !== undefined) expect(found.shows).toBe(example.shows);
      if (example.sections !== undefined) expect(found.sections).toBe(example.sections);
    },
  );

  it("the commented recipe has every key but those of sizes", () => {
    const text = commentedRecipe(new Map());
    for (const { name, path } of KEYS) {
      if (!path.startsWith("sizes") && !path.includes("*"))
        expect(text).toMatch(new RegExp(`^[# ]*${name}:`, "m"));
    }
  });
});

describe("a key in words, as the open page offers it", () => {
  it.each(KEYS.map((key) => [key.path, key] as const))("%s", (_, key) => {
    const words = keyWords(key);
    expect(words.means?.length).toBeGreaterThan(5);
    expect(words.written).toBeTruthy();
    for (const text of Object.values(words)) expect(text).not.toMatch(/[`|]|\*\*|undefined/);
    expect("example" in words).toBe(key.shape.is === "field");
  });
});
