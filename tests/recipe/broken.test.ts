/** Broken recipes, one file each: every mistake is told, with its code and its place, and nothing else. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { messageText } from "../../src/recipe/message.ts";
import { readRecipe } from "../../src/recipe/read.ts";

const CASES = join(import.meta.dirname, "cases");
const expected: Record<string, { about: string; messages: string[] }> = JSON.parse(
  readFileSync(join(CASES, "broken.json"), "utf8"),
);

/** These are told, and the recipe is read all the same. */
const WARNED = new Set(["flat-front-alone"]);

describe("a broken recipe", () => {
  test("has a file for every case, and a case for every file", () => {
    const files = readdirSync(join(CASES, "broken")).map((name) => name.replace(/\.md$/, ""));
    expect(files.toSorted()).toEqual(Object.keys(expected).toSorted());
  });

  test.each(Object.entries(expected))("%s", (name, { messages }) => {
    const source = readFileSync(join(CASES, "broken", `${name}.md`), "utf8");
    const read = readRecipe("recipe.md", source);
    const found = read.messages.map(({ code, place }) => `${code} ${place?.line}:${place?.column}`);
    expect(found, read.messages.map((message) => messageText(message, source)).join("\n")).toEqual(messages);
    expect(read.recipe !== undefined).toBe(WARNED.has(name));
  });
});
