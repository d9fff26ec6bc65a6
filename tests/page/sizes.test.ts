/** Pages of sizes in a real browser: sewn from the booklet of all sizes, and a page that asks for a reader's own measures. */
import { fileURLToPath } from "node:url";
import { HtmlValidate } from "html-validate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { MEASURE_YOUR_OWN } from "../../src/booklet/measure-your-own.ts";
import { checkProject } from "../../src/shelf/build.ts";
import { filesOfSet } from "../../src/shelf/sizes.ts";
import { nodeWorld } from "../../src/shelf/world.ts";
import { planJson } from "../../src/solve/json.ts";
import { ALL_DEMOS } from "../long.ts";
import { axeFindings, Shelf } from "./opened.ts";

const recipe = fileURLToPath(
  new URL("../../demo-projects/walking-skirt-in-eight-sizes/recipe.md", import.meta.url),
);
const outcome = checkProject(nodeWorld(process), { recipe, shown: recipe, name: "eight" });
const { own, sizes = [] } = outcome;
if (!own) throw new Error("the demo does not build");
const set = filesOfSet(outcome, own);
const file = (name: string): string => set.get(name) ?? "";
/** One that differs from the others in more than its numbers in the normal run. */
const TRIED = ALL_DEMOS ? sizes : sizes.filter(({ name }) => name === "H");
/** The dearest pages to look through are looked through in the long run. */
const PAGES = ALL_DEMOS ? ["all", "table", "own"] : ["own"];
const SECONDS = 180_000;
const PHONE = { width: 360, height: 740 };
/** The page's own script, which puts ticks and buttons among the steps. */
const SCRIPT = /<script>[\s\S]*<\/script>/;
const bookletOf = ({ plan }: (typeof sizes)[number]): string =>
  (plan && makeBooklet(plan, own).get("booklet.html")) ?? "";

let shelf: Shelf;
/** The booklet of all sizes on a telephone, loaded once: it is long. */
let all: Page;
beforeAll(async () => {
  shelf = await Shelf.open({
    all: file("booklet.html"),
    table: file("sizes.html"),
    own: file(MEASURE_YOUR_OWN),
    ...Object.fromEntries(TRIED.map((size) => [size.folder, bookletOf(size).replace(SCRIPT, "")])),
  });
  all = await shelf.page("all", await shelf.context({ viewport: PHONE }));
}, SECONDS);
afterAll(() => shelf.close());

/** What a reader sees of every step, of what should be seen, and of what to do if not. Guides are each size's own. */
const stepsOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const parts = [
      ...document.querySelectorAll<HTMLElement>(
        "main section:not(#guides) :is(.steps, .result, .remedy) > li",
      ),
    ];
    return parts
      .filter((part) => part.checkVisibility())
      .map((part) => {
        const unseen = [...part.querySelectorAll("figure, .by-size > *")].filter(
          (node) => node.tagName === "FIGURE" || !node.checkVisibility(),
        );
        for (const node of unseen) node.remove();
        return (part.textContent ?? "")
          .replace(/^Sizes? [^:]*:\s*/, "")
          .replace(/\s+/g, " ")
          .trim();
      });
  });

describe("the booklet of all sizes", () => {
  it("without a size chosen no step says a number of one size alone: letters stand for what differs, and all fits a telephone", async () => {
    const keys = await all.locator(".by-size .key:visible").count();
    expect(keys).toBeGreaterThan(60);
    expect(await all.locator(".by-size .s:visible").count()).toBe(0);
    expect(await all.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    // Every letter of a chapter heads a row of that chapter's first table.
    const strays = await all.evaluate(() =>
      [...document.querySelectorAll("section.chapter")].flatMap((chapter) => {
        const rows = [...(chapter.querySelector("table.sizes")?.querySelectorAll("tbody th") ?? [])];
        const letters = new Set(rows.map((row) => row.textContent));
        return [...chapter.querySelectorAll(".key")]
          .map((key) => key.textContent)
          .filter((letter) => !letters.has(letter));
      }),
    );
    expect(strays).toEqual([]);
  });

  it("says of a number that stands once for all sizes that it does, until one is chosen", async () => {
    const words = (): Promise<string[]> =>
      all
        .locator("table.sizes td[colspan]:visible")
        .evaluateAll((cells) => cells.map((cell) => getComputedStyle(cell, "::after").content));
    await all.check("#show-all");
    expect(new Set(await words())).toEqual(new Set(['" (all sizes)"']));
    await all.check("#show-2");
    expect(new Set(await words())).toEqual(new Set(["none"]));
    await all.check("#show-all");
  });

  it.each(TRIED)(
    "with size $name chosen says step by step what that size's own booklet says",
    { timeout: SECONDS },
    async (size) => {
      await all.reload();
      await all.check(`#show-${sizes.indexOf(size) + 1}`);
      const context = await shelf.context({ javaScriptEnabled: true });
      const alone = await shelf.page(size.folder, context);
      const [found, expected] = [await stepsOf(all), await stepsOf(alone)];
      expect(expected.length).toBeGreaterThan(150);
      expect(found).toEqual(expected);
      await context.close();
    },
  );

  it.each(PAGES)("is accessible, and fits a telephone: %s", { timeout: SECONDS }, async (name) => {
    const context = await shelf.context({ bypassCSP: true, viewport: PHONE });
    const page = await shelf.page(name, context);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    expect(await axeFindings(page)).toEqual([]);
    await context.close();
  });

  it.each(ALL_DEMOS ? ["booklet.html", "sizes.html", MEASURE_YOUR_OWN] : ["sizes.html"])(
    "is valid: %s",
    { timeout: SECONDS },
    async (name) => {
      const { results } = await new HtmlValidate({
        extends: ["html-validate:recommended"],
        rules: {
          "void-style": "off",
          "attribute-boolean-style": "off",
          "doctype-style": "off",
          "no-trailing-whitespace": "off",
          "long-title": "off",
          "svg-focusable": "off",
        },
      }).validateString(file(name));
      const found = results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line }) => `${line} ${ruleId}: ${message}`),
      );
      expect(found.slice(0, 5)).toEqual([]);
    },
  );
});

describe("the table of sizes", () => {
  const plans = sizes.map(({ name, plan }) => ({ name, json: planJson(plan as never, "") }));
  const { numbers } = JSON.parse(file("sizes.json")) as {
    numbers: {
      name: string | null;
      about: string;
      sizes: Record<string, { exact: string; shown: string } | null>;
    }[];
  };
  const rows = new Map(numbers.flatMap((row) => (row.name ? [[row.name, row] as const] : [])));

  it("has every value that differs, with every size's own number, and no other but what a size is chosen by", () => {
    const names = new Set(plans.flatMap(({ json }) => Object.keys(json.values)));
    for (const name of names) {
      const shown = plans.map(({ json }) => json.values[name]?.shown);
      const differs = new Set(shown).size > 1;
      if (differs) expect(rows.has(name), name).toBe(true);
      const row = rows.get(name);
      if (!row) continue;
      for (const { name: size, json } of plans) {
        expect(row.sizes[size]?.shown, `${name} ${size}`).toBe(json.values[name]?.shown);
        expect(row.sizes[size]?.exact, `${name} ${size}`).toBe(json.values[name]?.exact);
      }
    }
    const alike = [...rows.values()].filter(
      (row) => new Set(Object.values(row.sizes).map((cell) => cell?.shown)).size === 1,
    );
    expect(alike.map(({ name }) => name)).toEqual([]);
  });

  it("has the turn-down of every station that differs, and every section's pleats, bites and cloth", () => {
    const station = (size: (typeof plans)[number], at: string, key: "finished" | "turnDown") =>
      size.json.balance.find((one) => one.station === at)?.[key];
    for (const { station: at } of plans[0]?.json.balance ?? []) {
      for (const [key, words] of [
        ["finished", "finished length"],
        ["turnDown", "turn-down"],
      ] as const) {
        const row = numbers.find(({ about }) => about === `${words}, ${at}`);
        const differs = new Set(plans.map((size) => station(size, at, key))).size > 1;
        if (differs) expect(row, `${words}, ${at}`).toBeDefined();
        for (const size of row ? plans : [])
          expect(row?.sizes[size.name]?.exact).toBe(station(size, at, key));
      }
    }
    for (const size of plans) {
      for (const section of size.json.sections) {
        if (!("bites" in section)) throw new Error("all are gauged");
        const cell = (what: string) =>
          numbers.find(({ about }) => about === `${section.name}: ${what}`)?.sizes[size.name]?.exact;
        expect(cell("pleats")).toBe(String(section.pleats));
        expect(cell("cloth")).toBe(section.cloth);
        expect(cell("bites")).toBe(
          section.bites.map(({ size: bite, count }) => `${count} x ${bite}`).join(", "),
        );
      }
    }
  });

  it("the printed table says the same as the data", () => {
    const lines = file("sizes.md").split("\n");
    for (const name of ["wearer.waist", "cloth.buy", "breadths.cut", "gauging.pleats", "band.length"]) {
      const row = rows.get(name);
      const line = lines.find((one) => one.toLowerCase().startsWith(`| ${row?.about.toLowerCase()} |`));
      const cells = line?.split(" | ").slice(1).join(" | ").replace(/ \|$/, "");
      expect(cells, name).toBe(plans.map(({ name: size }) => row?.sizes[size]?.shown).join(" | "));
    }
  });
});

describe("a page to measure your own", () => {
  const fill = async (page: Page, measures: Record<string, string>): Promise<void> => {
    for (const [path, text] of Object.entries(measures)) await page.fill(`#ask input[name="${path}"]`, text);
  };
  const LENGTHS = {
    "wearer.waist-to-floor.front": "40 in",
    "wearer.waist-to-floor.side": "40 3/4 in",
    "wearer.waist-to-floor.back": "41 1/2 in",
  };
  const value = (page: Page, name: string) =>
    page.locator(`main data[data-name="${name}"]`).first().getAttribute("value");

  it("shows nothing worked out until all her measures are there, then her whole booklet, kept over a reload", async () => {
    const context = await shelf.context();
    const page = await shelf.page("own", context);
    expect(await page.locator("main").textContent()).toBe("");
    expect(await page.locator('#ask input[name="wearer.waist"]').inputValue()).toBe("");
    expect(await page.locator('#your-measures input[name="wearer.ease"]').inputValue()).toBe("1/2 in");

    await fill(page, { "wearer.waist": "27" });
    await page.locator("#ask .field-message").waitFor();
    expect(await page.locator("#ask .field-message").textContent()).toMatch(/"27" has no unit/);
    expect(await page.locator("#ask .field-message").textContent()).not.toMatch(/last good booklet/);
    await fill(page, { "wearer.waist": "27 in" });
    await page.locator("#ask .field-message").waitFor({ state: "detached" });
    expect(await page.locator("main").textContent()).toBe("");

    await fill(page, LENGTHS);
    await page.locator("main #at-a-glance").waitFor();
    // Her numbers are those of size C, whose measures these are.
    const plan = sizes.find(({ name }) => name === "C")?.plan;
    const json = planJson(plan as never, "");
    for (const name of ["waist.seam", "breadths.cut", "gauging.pleats", "cloth.buy"])
      expect(await value(page, name), name).toBe(json.values[name]?.exact);
    expect(await page.locator("main figure svg").count()).toBeGreaterThan(15);
    expect(await page.locator("main figure.guide").count()).toBeGreaterThan(1);
    expect(await page.locator(".changed-bar, main [data-was], main figure.changed").count()).toBe(0);

    await page.reload();
    await page.locator("main #at-a-glance").waitFor();
    expect(await page.locator('#ask input[name="wearer.waist"]').inputValue()).toBe("27 in");
    await context.close();
  });

  it("says what does not work out, with ways out, and keeps the last good booklet", async () => {
    const context = await shelf.context();
    const page = await shelf.page("own", context);
    await fill(page, { "wearer.waist": "27 in", ...LENGTHS, "wearer.waist-to-floor.front": "6 in" });
    const message = page.locator(".field-message").first();
    await message.waitFor();
    expect(await message.textContent()).toMatch(/^✗ /);
    expect(await page.locator("main section").count()).toBe(0);
    await fill(page, { "wearer.waist": "30 in", ...LENGTHS });
    await page.locator("main #at-a-glance").waitFor();
    expect(await value(page, "waist.seam")).toBe("61/2");
    // A choice of the pattern's is marked against her own booklet, and can be taken back.
    await page.fill('#your-measures input[name="skirt.breadths"]', "5");
    await page.locator(".changed-bar").waitFor();
    expect(await page.locator(".changed-bar").textContent()).toMatch(/1 choice is changed/);
    expect(await page.locator("main [data-was]").count()).toBeGreaterThan(5);
    await page.getByRole("button", { name: "As the pattern" }).click();
    await page.locator(".changed-bar").waitFor({ state: "detached" });
    expect(await value(page, "waist.seam")).toBe("61/2");
    expect(shelf.trouble).toEqual([]);
    await context.close();
  });
});
