/** A changed measure changes its own characters of the recipe and no others. */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { put } from "../../../src/recipe/edit/put.ts";
import { frontMatter } from "../../../src/recipe/front-matter.ts";
import { KEYS } from "../../../src/recipe/keys.ts";
import { Source } from "../../../src/recipe/lines.ts";
import { MEASURES } from "../../../src/recipe/meta.ts";
import { readTree } from "../../../src/recipe/tree.ts";
import { changed, type Data } from "../../../src/recipe/written.ts";
import cases from "./cases.json" with { type: "json" };

const DEMOS = fileURLToPath(new URL("../../../demo-projects/", import.meta.url));
const RECIPES = readdirSync(DEMOS).map((name) => readFileSync(`${DEMOS}${name}/recipe.md`, "utf8"));

function edited(text: string, path: string, value: string | null): string | null {
  const edit = put(text, path, value);
  return edit ? text.slice(0, edit.from) + edit.insert + text.slice(edit.to) : null;
}

function treeOf(text: string): Data {
  const source = new Source("recipe.md", text);
  const front = frontMatter(source);
  if ("code" in front) throw new Error(front.text);
  const { root, messages } = readTree(source, front);
  expect(messages).toEqual([]);
  return JSON.parse(JSON.stringify(root)) as Data;
}

const commentsOf = (text: string): string[] => text.match(/#.*/g) ?? [];

describe("put", () => {
  it.each(cases)("$what", ({ text, path, value, gives }) => {
    const whole = (front: string): string => `---\n${front}---\nBody.\n`;
    expect(edited(whole(text), path, value)).toBe(gives === null ? null : whole(gives));
  });

  it("keeps the line ends of a file from elsewhere", () => {
    const text = "---\r\nwearer:\r\n  waist: 27 in\r\n  over: x\r\n---\r\n";
    expect(edited(text, "wearer.ease", "1 in")).toBe(
      "---\r\nwearer:\r\n  waist: 27 in\r\n  ease: 1 in\r\n  over: x\r\n---\r\n",
    );
  });

  it("finds the end of a text of several lines in such a file", () => {
    const text = "---\r\ntitle: |\r\n  One\r\n  two\r\nwearer:\r\n  waist: 27 in\r\n---\r\n";
    expect(edited(text, "garment", "skirt")).toBe(
      "---\r\ntitle: |\r\n  One\r\n  two\r\ngarment: skirt\r\nwearer:\r\n  waist: 27 in\r\n---\r\n",
    );
  });

  it("changes the tree at its path only, and every remark stays, in any demo at any measure", () => {
    const paths = KEYS.filter(
      ({ path, shape }) => shape.is === "field" && MEASURES.has(shape.meta.kind) && !path.includes("*"),
    ).map(({ path }) => path);
    const texts = fc.oneof(
      fc.constantFrom(
        "27 1/2 in",
        '26½"',
        "2 ft 2 1/2 in",
        "3 %",
        "67.3 cm",
        "- 3 in",
        "a: b",
        "# x",
        "{4",
        "it's",
      ),
      fc.string({ minLength: 1, maxLength: 12 }).map((text) => text.replace(/[\p{C}\u2028\u2029]/gu, "x")),
    );
    fc.assert(
      fc.property(fc.constantFrom(...RECIPES), fc.constantFrom(...paths), texts, (recipe, path, text) => {
        const now = edited(recipe, path, text);
        const before = treeOf(recipe);
        if (now === null) {
          expect(changed(before, { [path]: text })).toEqual(before);
          return;
        }
        expect(treeOf(now)).toEqual(changed(before, { [path]: text }));
        expect(commentsOf(recipe).filter((remark) => !now.includes(remark))).toEqual([]);
        const out = edited(now, path, null);
        expect(treeOf(out ?? now)).toEqual(changed(before, { [path]: null }));
      }),
      { numRuns: 150 },
    );
  });
});
