/** Old formats of a recipe: kept recipes give their numbers, and steps bring measures and places along. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { frontMatter } from "../../src/recipe/front-matter.ts";
import { Source } from "../../src/recipe/lines.ts";
import { FORMAT } from "../../src/recipe/measures.ts";
import { migrated } from "../../src/recipe/migrate/migrate.ts";
import { STEPS, type Step } from "../../src/recipe/migrate/steps.ts";
import type { Block } from "../../src/recipe/node.ts";
import { readTree } from "../../src/recipe/tree.ts";
import { exactOf, recipeText, tried } from "../recipes.ts";

/** Recipes as they were written for a format, with numbers of their plans. They are never changed: add, and keep. */
const OLD = new URL("./old/", import.meta.url);
const formats = readdirSync(OLD).filter((name) => !name.endsWith(".json"));

describe("recipes of every format that ever was", () => {
  it("are kept, one folder a format, up to the one that is read", () => {
    expect(formats).toEqual(Array.from({ length: Number(FORMAT) }, (_, i) => `format-${i + 1}`));
  });

  for (const format of formats) {
    const pinned = JSON.parse(readFileSync(new URL(`${format}.json`, OLD), "utf8")) as Record<
      string,
      Record<string, string>
    >;
    it.each(readdirSync(new URL(`${format}/`, OLD)))(`${format}: %s gives the numbers it gave`, (file) => {
      const { plan, messages } = tried(readFileSync(new URL(`${format}/${file}`, OLD), "utf8"));
      expect(messages.filter(({ level }) => level === "error")).toEqual([]);
      const values = pinned[file.replace(".md", "")] ?? {};
      expect(Object.keys(values).length).toBeGreaterThan(15);
      if (!plan) throw new Error("no plan");
      expect(Object.fromEntries(Object.keys(values).map((name) => [name, exactOf(plan, name)]))).toEqual(
        values,
      );
    });
  }
});

/** Steps that never were: a key that moves, and a choice under another word. */
const TRIED: readonly Step[] = [
  {
    from: 1,
    about: "off-floor is called clearance",
    change(root, moved) {
      const skirt = root.skirt as Block;
      if (skirt["off-floor"] === undefined) return;
      skirt.clearance = skirt["off-floor"];
      delete skirt["off-floor"];
      moved("skirt.off-floor", "skirt.clearance");
    },
  },
  {
    from: 2,
    about: "skirt is called body",
    change(root, moved) {
      if (root.skirt === undefined) return;
      root.body = root.skirt;
      delete root.skirt;
      moved("skirt", "body");
    },
  },
];

function treeOf(text: string) {
  const source = new Source("recipe.md", text);
  const front = frontMatter(source);
  if ("code" in front) throw new Error(front.text);
  return readTree(source, front);
}

describe("steps from format to format", () => {
  const tree = treeOf(recipeText({ skirt: { "off-floor": "3 in" } }));

  it("change the measures, and messages still name the place in the file", () => {
    const now = migrated(tree, TRIED, 3);
    expect(now.root?.recipe).toBe("3");
    expect((now.root?.body as Block | undefined)?.clearance).toBe("3 in");
    expect(now.root?.skirt).toBeUndefined();
    expect(now.places.get("body.clearance")).toEqual(tree.places.get("skirt.off-floor"));
    expect(now.places.get("body.breadths")).toEqual(tree.places.get("skirt.breadths"));
    expect(now.messages.at(-1)).toMatchObject({
      code: "older-format",
      level: "note",
      text: "this recipe is of format 1 and was read as format 3: off-floor is called clearance; skirt is called body",
    });
  });

  it("leave what was read as it was", () => {
    const before = JSON.stringify(tree.root);
    migrated(tree, TRIED, 3);
    expect(JSON.stringify(tree.root)).toBe(before);
  });

  it("begin at the recipe's own format, and none is needed for this one", () => {
    const second = treeOf(recipeText({ recipe: "2", skirt: { clearance: "3 in" } }));
    const now = migrated(second, TRIED, 3);
    expect((now.root?.body as Block | undefined)?.clearance).toBe("3 in");
    expect(migrated(tree, TRIED, 1)).toBe(tree);
  });

  it.each(["0", "1.0", "4", "99999", "one", ""])(
    "leave a number they do not know, %j, to be told",
    (recipe) => {
      const strange = treeOf(recipeText({ recipe }));
      expect(migrated(strange, TRIED, 3)).toBe(strange);
    },
  );

  it("are there from every older format to this one", () => {
    expect(STEPS.map(({ from }) => from)).toEqual(
      Array.from({ length: Number(FORMAT) - 1 }, (_, i) => i + 1),
    );
  });
});

it("a recipe of a format to come says so", () => {
  const { messages } = tried(recipeText({ recipe: String(Number(FORMAT) + 1) }));
  expect(messages[0]).toMatchObject({
    code: "recipe-version",
    text: `this recipe is of format "${Number(FORMAT) + 1}", newer than this program reads`,
  });
  expect(messages[0]?.hint).toContain("a newer version of the program");
});
