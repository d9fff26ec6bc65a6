/** A maker's notebook in the page: its notes, sums and photographs are worked out again with the rest. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { ElementContent } from "hast";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeBooklet, type Own } from "../../src/booklet/booklet.ts";
import { textOf } from "../../src/booklet/chapter-shape.ts";
import { work } from "../../src/booklet/notebook/work.ts";
import { bookletParts } from "../../src/booklet/parts.ts";
import { Live, type PageData } from "../../src/page/live/live.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { checkProject } from "../../src/shelf/build.ts";
import { nodeWorld } from "../../src/shelf/world.ts";
import { solve } from "../../src/solve/solve.ts";
import { axeFindings, demoPage, Shelf } from "./opened.ts";

const DEMO = "madder-print-1851";
const RECIPE = fileURLToPath(new URL(`../../demo-projects/${DEMO}/recipe.md`, import.meta.url));
const SOURCE = readFileSync(RECIPE, "utf8");
const { plan: PLAN, own: OWN } = checkProject(nodeWorld(process), {
  recipe: RECIPE,
  shown: RECIPE,
  name: DEMO,
});

const dataOf = (html: string): PageData =>
  JSON.parse(/<script type="application\/json" id="recipe">(.*?)<\/script>/s.exec(html)?.[1] ?? "null");

/** Every text of a booklet, section by section. */
const texts = (nodes: readonly ElementContent[]): string[] =>
  nodes.map((node) => textOf([node]).replace(/\s+/g, " "));

describe("a notebook worked out again", () => {
  const page = makeBooklet(PLAN as NonNullable<typeof PLAN>, OWN as Own).get("booklet.html") ?? "";
  const pictures = new Map([...(OWN?.photographs ?? [])].map(([path, { data }]) => [path, data]));
  const live = new Live(dataOf(page), pictures);

  it.each([
    ["skirt.breadths", "6"],
    ["wearer.waist", "29 1/4 in"],
    ["skirt.flounces.depth", "20 in"],
    ["cloth.width", "44 in"],
    ["fullness.method", "pleated"],
  ])("%s: %s gives what a build gives", (path, text) => {
    const [key, block] = path.split(".").reverse();
    const changed = SOURCE.replace(new RegExp(`(\\b${block}:[^}]*?\\b${key}: )[^,}\\n]+`), `$1${text}`);
    expect(changed).not.toBe(SOURCE);
    const { recipe } = readRecipe("recipe.md", changed);
    const { plan } = recipe ? solve({ ...recipe, recorded: PLAN?.recipe.recorded ?? {} }) : {};
    if (!plan || !OWN) throw new Error(`${path}: ${text} does not build`);
    const built = bookletParts(work(plan, OWN.notebook), undefined, { notebook: OWN.notebook, pictures });
    const outcome = live.make({ [path]: text }, "");
    if (!outcome.plan) throw new Error(outcome.messages.map((message) => message.text).join("\n"));
    expect(texts(outcome.parts.nodes)).toEqual(texts(built.nodes));
  });

  it("takes its sums along", () => {
    const outcome = live.make({ "skirt.breadths": "6" }, "");
    expect(outcome.plan?.values.get("ribbon.once")?.shown).toBe("208 in");
    expect(outcome.plan?.values.get("bow.count")?.shown).toBe("6");
  });

  it("keeps the last good booklet where a sum has lost its value", () => {
    const outcome = live.make({ "skirt.flounces.depth": "90 in" }, "");
    expect(outcome.plan).toBeUndefined();
  });
});

describe("in a browser", () => {
  let shelf: Shelf;
  beforeAll(async () => {
    shelf = await Shelf.open({ [DEMO]: demoPage(DEMO) });
  });
  afterAll(() => shelf?.close());

  it("photographs are seen, notes tick and change, a sum opens its working", async () => {
    const page = await shelf.page(DEMO);
    const sizes = await page
      .locator("figure.photograph img")
      .evaluateAll((images) => images.map((image) => (image as HTMLImageElement).naturalWidth));
    expect(sizes).toEqual([640, 640]);
    expect(await page.locator("#note-4 ol.steps > li input[type=checkbox]").count()).toBe(6);
    const sum = page.locator('#note-2 data[data-name="ribbon.once"]').first();
    expect(await sum.textContent()).toBe("173 1/2 in");
    await page.evaluate(() => {
      const input = document.querySelector<HTMLInputElement>(
        'input[name="skirt.breadths"]',
      ) as HTMLInputElement;
      input.value = "6";
      input.dispatchEvent(new Event("input", { bubbles: true }));
    });
    await expect.poll(() => sum.textContent(), { timeout: 20_000 }).toBe("208 in");
    expect(await page.locator("#note-4").textContent()).toContain("Cut one length of 208 in");
    expect(await page.locator("figure.photograph img").count()).toBe(2);
    await sum.click();
    await expect
      .poll(() => page.locator("dialog[open]").textContent(), { timeout: 20_000 })
      .toContain("skirt.round + 1 in");
    expect(shelf.trouble).toEqual([]);
  });

  it("has nothing that axe finds", async () => {
    const page = await shelf.page(DEMO, await shelf.context({ bypassCSP: true }));
    expect(await axeFindings(page)).toEqual([]);
  });
});
