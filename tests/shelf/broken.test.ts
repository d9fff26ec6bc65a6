/** Every broken recipe of tests/recipe/cases, through the program: exit 1, a place and a way out, an older booklet left as it was. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { main } from "../../src/main.ts";
import { recipeText } from "../recipes.ts";
import { memoryWorld } from "./memory.ts";

const FOLDER = new URL("../recipe/cases/broken/", import.meta.url);
/** Only warned of, and built all the same. */
const WARNED = ["flat-front-alone"];
const cases = readdirSync(FOLDER)
  .map((file) => file.replace(/\.md$/, ""))
  .filter((name) => !WARNED.includes(name));

/** Mistakes that only solving finds. */
const SOLVED: Record<string, string> = {
  "round below the waist": recipeText({ skirt: { breadths: "1/2" } }),
  "round not to be reached": recipeText({ skirt: { breadths: null, round: "9000 in" } }),
  "nothing fits": recipeText({ cloth: { thickness: "1.6 mm" }, skirt: { breadths: "7" } }),
  "no width": recipeText({ cloth: { width: "6 in", selvedge: "1/4 in" }, skirt: { seam: "2 3/4 in" } }),
  "whipped too seldom": recipeText({ attach: { whip: "every-other" } }),
  "a size that cannot be": recipeText({ sizes: "[{name: A, waist: 25 in, skirt: {breadths: 1/2}}]" }),
  "a half breadth and a seam in front": recipeText({
    skirt: { breadths: null, round: "150 in", "centre-front": "seam" },
  }),
  "a chapter that does not exist": `${recipeText()}\n{{> gaging}}\n`,
  "a circle of workings": `${recipeText()}\n\`\`\`workings\na = b\nb = a\n\`\`\`\n`,
};

const all = [
  ...cases.map((name) => [name, readFileSync(new URL(`${name}.md`, FOLDER), "utf8")] as const),
  ...Object.entries(SOLVED),
];

describe("broken recipes", () => {
  it.each(all)("%s", async (_, source) => {
    const world = memoryWorld({
      "/w/a/recipe.md": source,
      "/w/output/a/plan.json": "{}",
      "/w/output/a/booklet.html": "older",
    });
    const before = [...world.files].sort();
    expect(await main(["build", "a"], world)).toBe(1);
    expect([...world.files].sort()).toEqual(before);
    expect(world.said.err).toMatch(/^a\/recipe\.md:\d+:\d+: error \[[a-z-]+\] ./m);
    expect(world.said.err).toMatch(/^ {2}(expected|do): ./m);
    expect(world.said.err).not.toMatch(/ {4}at |undefined|\[object|NaN/);
    expect(world.said.out).toBe("");
  });
});
