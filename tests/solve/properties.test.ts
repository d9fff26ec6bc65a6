import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { brokenLaws } from "../laws.ts";
import { randomRecipe } from "../random.ts";
import { tried } from "../recipes.ts";

describe("random recipes", () => {
  it("either make a plan that keeps every law, or are refused with reasons, places and ways out", () => {
    let plans = 0;
    fc.assert(
      fc.property(randomRecipe, (source) => {
        const { plan, messages } = tried(source);
        if (plan) {
          plans += 1;
          expect(brokenLaws(plan)).toEqual([]);
          return;
        }
        const errors = messages.filter(({ level }) => level === "error");
        expect(errors.length).toBeGreaterThan(0);
        for (const error of errors) expect(error.hint ?? error.expected).toBeTruthy();
      }),
      { numRuns: 400 },
    );
    expect(plans).toBeGreaterThan(200);
  });

  it("are read the same way twice", () => {
    fc.assert(
      fc.property(randomRecipe, (source) => {
        expect(tried(source)).toEqual(tried(source));
      }),
      { numRuns: 20 },
    );
  });

  it("booklets print the plan's own numbers, in Markdown and in HTML alike", () => {
    let booklets = 0;
    fc.assert(
      fc.property(randomRecipe, (source) => {
        const { plan } = tried(source);
        if (!plan) return;
        booklets += 1;
        const files = makeBooklet(plan);
        const html = files.get("booklet.html") ?? "";
        const numbers = [...html.matchAll(/<data value="([^"]*)" data-name="([^"]*)">([^<]*)<\/data>/g)];
        expect(numbers.length).toBeGreaterThan(100);
        const json = JSON.parse(files.get("plan.json") ?? "{}") as {
          values: Record<string, { exact: string; shown: string }>;
        };
        for (const [, exact, name, shown] of numbers)
          expect({ exact, shown }).toEqual({
            exact: json.values[name as string]?.exact,
            shown: json.values[name as string]?.shown,
          });
        const markdown = files.get("booklet.md") ?? "";
        expect(markdown).not.toMatch(/[\uE000-\uE002]|undefined|NaN|\[object/);
        // Not in the page's scripts: what is packed there may hold any letters.
        const page = html.replace(/<script[\s\S]*?<\/script>/g, "");
        expect(page).not.toMatch(/[\uE000-\uE002]|undefined|NaN|\[object/);
      }),
      { numRuns: 25 },
    );
    expect(booklets).toBeGreaterThan(8);
  });
});

describe("reading", () => {
  it("never throws on text of any kind", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        readRecipe("recipe.md", `---\n${text}`);
        readRecipe("recipe.md", text);
      }),
      { numRuns: 300 },
    );
  });
});
