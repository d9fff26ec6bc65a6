/** The JSON Schema lets every sound recipe pass, and stops the mistakes that an editor can show. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { jsonSchema } from "../../src/recipe/reference/json-schema.ts";
import { faults, type Schema } from "./json-schema.ts";

const schema = JSON.parse(jsonSchema()) as Schema;
const frontOf = (text: string): unknown => parse(text.split(/^---$/m)[1] ?? "");
const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");

describe("the JSON Schema", () => {
  it.each(readdirSync(new URL("../../demo-projects", import.meta.url)))("lets %s pass", (demo) => {
    expect(faults(schema, frontOf(read(`demo-projects/${demo}/recipe.md`)))).toEqual([]);
  });

  it("lets a recipe with every key pass", () => {
    expect(faults(schema, frontOf(read("tests/recipe/cases/every-key.md")))).toEqual([]);
  });

  it.each([
    ["recipe: 1\ntitle: A\nwearer: {waist: 27 in}\ncloth: {width: 44 in}", ".skirt: missing"],
    ["skirt: {breaths: 4}", ".skirt.breaths: unknown"],
    ["skirt: {seam: half}", ".skirt.seam: pattern"],
    ["show: inches", ".show: not one of the words"],
    ["skirt: 4", ".skirt: is number"],
    ["fullness: {zones: []}", ".fullness.zones: how many"],
    ["year: 846", ".year: too small"],
  ])("stops %j", (text, wanted) => {
    expect(faults(schema, parse(text))).toContain(wanted);
  });
});
