/** The page as a notebook: what its reader changes, enters and takes away, in a real browser, from disk. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parseDocument } from "yaml";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { planJson } from "../../src/solve/json.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { solve } from "../../src/solve/solve.ts";
import { ALL_DEMOS } from "../long.ts";
import { launch } from "./browser.ts";

const DEMOS = ["mill-house-cotton", "green-silk-1862", "grey-winter-wool"] as const;
const sourceOf = (demo: string): string =>
  readFileSync(fileURLToPath(new URL(`../../demo-projects/${demo}/recipe.md`, import.meta.url)), "utf8");

declare global {
  var sorted: (element: HTMLElement) => string;
}

let folder: string;
let browser: Browser;
const trouble: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "plainwork-living-"));
  for (const demo of DEMOS)
    writeFileSync(join(folder, `${demo}.html`), builtPage(planOf(sourceOf(demo)) as Plan));
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
  expect(trouble).toEqual([]);
});

function planOf(source: string): Plan | undefined {
  const read = readRecipe("recipe.md", source);
  return read.recipe && solve(read.recipe).plan;
}
const builtPage = (plan: Plan): string => makeBooklet(plan).get("booklet.html") ?? "";

async function open(demo: string, context?: BrowserContext): Promise<Page> {
  const page = await (
    context ?? (await browser.newContext({ viewport: { width: 400, height: 800 } }))
  ).newPage();
  page.on("console", (said) => void (said.type() === "error" && trouble.push(said.text())));
  page.on("pageerror", (error) => void trouble.push(error.message));
  const url = pathToFileURL(join(folder, `${demo}.html`)).href;
  page.on(
    "request",
    (request) =>
      void (/^(data|blob):|#/.test(request.url()) || request.url() === url || trouble.push(request.url())),
  );
  await page.addInitScript(() => {
    // The order of attributes says nothing.
    globalThis.sorted = (element) => {
      for (const one of element.querySelectorAll("*")) {
        const all = [...one.attributes].map(({ name, value }) => [name, value] as const).sort();
        for (const [name] of all) one.removeAttribute(name);
        for (const [name, value] of all) one.setAttribute(name, value);
      }
      return element.innerHTML;
    };
  });
  await page.goto(url);
  return page;
}

/** The recipe with one measure written otherwise. */
function withMeasure(source: string, path: string, text: string): string {
  const [, front = "", body = ""] = source.split(/^---$/m);
  const document = parseDocument(front, { schema: "failsafe" });
  document.setIn(
    path.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) : step)),
    text,
  );
  return `---\n${document.toString()}---${body}`;
}

/** Types into a field and waits until the page has answered. */
async function type(page: Page, path: string, text: string): Promise<void> {
  await page.evaluate(
    async ([name, value]) => {
      const input = document.querySelector<HTMLInputElement>(`input[name="${name}"]`) as HTMLInputElement;
      input.value = value as string;
      input.dispatchEvent(new Event("input", { bubbles: true }));
      for (let i = 0; i < 400 && !globalThis.plainworkCore; i += 1)
        await new Promise((done) => setTimeout(done, 10));
      await new Promise((done) => setTimeout(done, 0));
      await new Promise((done) => setTimeout(done, 0));
    },
    [path, text],
  );
}

/** Every number of the page by its value's name, exactly. */
const valuesOn = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll<HTMLElement>("main data[data-name]")].map((number) => [
        number.dataset.name ?? "",
        number.getAttribute("value") ?? "",
      ]),
    ),
  );

/** The booklet's HTML without what the page itself put in and without the marks of change. */
const bookletOn = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const main = document.querySelector("main")?.cloneNode(true) as HTMLElement;
    for (const own of main.querySelectorAll("[data-own], .fields")) own.remove();
    for (const mark of main.querySelectorAll("span[data-was]")) mark.replaceWith(...mark.childNodes);
    for (const changed of main.querySelectorAll("*")) {
      for (const name of ["data-was", "tabindex", "role"])
        if (changed.matches("data")) changed.removeAttribute(name);
      changed.classList.remove("changed", "opens", "done", "now");
      if (changed.getAttribute("class") === "") changed.removeAttribute("class");
    }
    main.normalize();
    return sorted(main);
  });

/** Small numbers, the same in every run. */
function* dice(seed: number): Generator<number, never> {
  let now = seed;
  for (;;) {
    now = (now * 1103515245 + 12345) % 2147483648;
    yield now / 2147483648;
  }
}

const CHANGES: readonly { readonly path: string; readonly of: (roll: number) => string }[] = [
  { path: "wearer.waist", of: (roll) => `${22 + Math.floor(roll * 80) / 8} in` },
  { path: "wearer.ease", of: (roll) => `${Math.floor(roll * 9) / 8} in` },
  { path: "wearer.waist-to-floor.front", of: (roll) => `${37 + Math.floor(roll * 64) / 16} in` },
  { path: "wearer.waist-to-floor.back", of: (roll) => `${40 + Math.floor(roll * 64) / 16} in` },
  { path: "cloth.width", of: (roll) => `${36 + Math.floor(roll * 20)} in` },
  { path: "cloth.thickness", of: (roll) => `${(0.15 + Math.floor(roll * 30) / 100).toFixed(2)} mm` },
  { path: "skirt.breadths", of: (roll) => String(3 + Math.floor(roll * 9) / 2) },
];

/** How many changes: 201 in the long run, 43 in the normal one. */
const COUNT = { "mill-house-cotton": 9, "green-silk-1862": 6, "grey-winter-wool": 6 } as const;

describe("a changed measure", () => {
  it.each(DEMOS)(
    "random changes, one upon the other, give exactly the values of a build: %s",
    async (demo) => {
      const page = await open(demo);
      let source = sourceOf(demo);
      const rolls = dice(demo.length);
      const texts = Object.fromEntries(
        await page
          .locator(".fields input")
          .evaluateAll((all) =>
            all.map((input) => [(input as HTMLInputElement).name, (input as HTMLInputElement).value]),
          ),
      ) as Record<string, string>;
      const changes = CHANGES.filter(({ path }) => path in texts);
      const count = ALL_DEMOS ? 67 : COUNT[demo];
      let refused = 0;
      for (let i = 0; i < count; i += 1) {
        const roll = Math.floor((rolls.next().value as number) * changes.length);
        const { path, of } = changes[roll] as (typeof CHANGES)[number];
        const text = of(rolls.next().value as number);
        await type(page, path, text);
        const changed = withMeasure(source, path, text);
        const plan = planOf(changed);
        if (!plan) {
          refused += 1;
          expect(await page.locator(".field-message").count(), `${path}: ${text}`).toBeGreaterThan(0);
          await type(page, path, texts[path] as string);
          await page.waitForFunction(() => !document.querySelector(".field-message"));
          continue;
        }
        source = changed;
        texts[path] = text;
        const built = planJson(plan, "").values as Record<string, { exact: string }>;
        const shown = await valuesOn(page);
        expect(Object.keys(shown).length).toBeGreaterThan(60);
        for (const [name, exact] of Object.entries(shown))
          expect(exact, `${path}: ${text}, ${name}`).toBe(built[name]?.exact);
        if (i % 10 === 0) {
          const [live, whole] = [await bookletOn(page), await freshBooklet(page, builtPage(plan))];
          expect(live === whole, firstDifference(live, whole)).toBe(true);
        }
      }
      expect(refused).toBeLessThan(count / 2);
      await page.context().close();
    },
  );
});

function firstDifference(a: string, b: string): string {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at += 1;
  return `differs at ${at}: …${a.slice(Math.max(0, at - 120), at + 160)}… and …${b.slice(Math.max(0, at - 20), at + 160)}…`;
}

/** The main part of another built page, as this browser reads it. */
const freshBooklet = (page: Page, html: string): Promise<string> =>
  page.evaluate((text) => {
    const main = new DOMParser().parseFromString(text, "text/html").querySelector("main") as HTMLElement;
    for (const fields of main.querySelectorAll(".fields")) fields.remove();
    return sorted(main);
  }, html);
