/** What a maker may well write, and what she is told to write instead; what she is told is sound. */
import { describe, expect, it } from "vitest";
import { KEYS } from "../../src/recipe/keys.ts";
import { OTHERWISE } from "../../src/recipe/otherwise.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import cases from "./hints.json" with { type: "json" };

const BLOCKS: Readonly<Record<string, string>> = {
  wearer: "{waist: 27 in, waist-to-floor: {front: 40 in, side: 41 in, back: 42 in}",
  cloth: "{width: 44 in",
  skirt: "{breadths: 4",
  attach: "{to: bodice-edge",
};

/** A recipe with one line more in one of its blocks, or at the top. */
function withLine(inside: string, line: string): string {
  const thin = line.startsWith("ten-layers") ? [] : ["thickness: 0.25 mm"];
  const blocks = Object.entries(BLOCKS).map(
    ([name, keys]) =>
      `${name}: ${[keys, ...(name === "cloth" ? thin : []), ...(name === inside ? [line] : [])].join(", ")}}`,
  );
  return ["---", "recipe: 1", "title: Hints", ...(inside ? [] : [line]), ...blocks, "---", ""].join("\n");
}

describe("a likely slip", () => {
  it.each(cases)("$written", ({ inside, written, do: wanted }) => {
    const { messages } = readRecipe("recipe.md", withLine(inside, written));
    expect(messages.map(({ hint }) => hint)).toEqual([wanted]);
  });

  it("a block that is missing is shown with what must stand in it", () => {
    const { messages } = readRecipe("recipe.md", "---\nrecipe: 1\ntitle: Hints\nskirt: {breadths: 4}\n---\n");
    expect(messages.map(({ hint }) => hint)).toEqual([
      "write wearer: {waist: 27 in}",
      "write cloth: {width: 44 in}",
    ]);
  });

  it("no key of the recipe is told to stand elsewhere", () => {
    expect(KEYS.map(({ path }) => path).filter((path) => OTHERWISE.has(path))).toEqual([]);
  });
});
