/** The booklet's page in a real browser, opened from disk. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { HtmlValidate } from "html-validate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeBooklet, type Own } from "../../src/booklet/booklet.ts";
import { STANDARD } from "../../src/booklet/notebook/notebook.ts";
import { ownContext } from "../../src/booklet/notebook/own-context.ts";
import { sectionsOf } from "../../src/booklet/notebook/sections.ts";
import { work } from "../../src/booklet/notebook/work.ts";
import { figuresOf } from "../../src/figure/index.ts";
import { guidesOf } from "../../src/guide/index.ts";
import { checkProject } from "../../src/shelf/build.ts";
import { nodeWorld } from "../../src/shelf/world.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { ALL_DEMOS } from "../long.ts";
import { planOf } from "../recipes.ts";
import { launch } from "./browser.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const DEMOS = fileURLToPath(new URL("../../demo-projects/", import.meta.url));

const pages = new Map<string, string>();
const chapters = new Map<string, readonly string[]>();
const figures = new Map<string, number>();
const guides = new Map<string, number>();
function add(name: string, plan: Plan, own: Own = { notebook: STANDARD, photographs: new Map() }): void {
  const worked = work(plan, own.notebook);
  const sections = sectionsOf(worked.plan, own.notebook, ownContext(worked, {}));
  chapters.set(
    name,
    sections.map((section) => section.name),
  );
  figures.set(name, figuresOf(plan).length);
  guides.set(name, guidesOf(plan).length);
  pages.set(name, makeBooklet(plan, own).get("booklet.html") ?? "");
}
for (const name of readdirSync(DEMOS)) {
  const recipe = join(DEMOS, name, "recipe.md");
  const { plan, own, sizes } = checkProject(nodeWorld(process), { recipe, shown: recipe, name });
  // Their pages are looked at in sizes.test.ts.
  if (sizes) continue;
  if (!plan) throw new Error(`${name} does not build`);
  add(name, plan, own);
}
add("pleats only", planOf({ fullness: { method: "pleated" } }));

let folder: string;
let browser: Browser;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "plainwork-"));
  for (const [name, html] of pages) writeFileSync(join(folder, `${name}.html`), html);
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Opened {
  readonly page: Page;
  readonly trouble: string[];
}

async function open(name: string, options: Parameters<Browser["newContext"]>[0] = {}): Promise<Opened> {
  const context = await browser.newContext({ viewport: { width: 800, height: 900 }, ...options });
  const page = await context.newPage();
  const trouble: string[] = [];
  const url = pathToFileURL(join(folder, `${name}.html`)).href;
  page.on(
    "console",
    (message) => void (message.type() === "error" && trouble.push(`console: ${message.text()}`)),
  );
  page.on("pageerror", (error) => void trouble.push(`error: ${error.message}`));
  page.on("request", (request) => void (request.url() !== url && trouble.push(`request: ${request.url()}`)));
  await page.goto(url);
  return { page, trouble };
}

const names = [...pages.keys()];

describe.each(names)("%s", (name) => {
  it("is valid HTML", async () => {
    const report = await new HtmlValidate({
      extends: ["html-validate:recommended"],
      // The program's own style writes void elements and attribute case as the HTML serializer does.
      rules: {
        "void-style": "off",
        "attribute-boolean-style": "off",
        "doctype-style": "off",
        "no-trailing-whitespace": "off",
        "long-title": "off",
        "svg-focusable": "off",
      },
    }).validateString(pages.get(name) ?? "");
    expect(
      report.results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line, column }) => `${ruleId} ${line}:${column} ${message}`),
      ),
    ).toEqual([]);
  });

  // In the normal run the browser opens every third page, and in the long one all.
  if (!ALL_DEMOS && names.indexOf(name) % 3 !== 0) return;

  it("asks for nothing, has every chapter and figure, and stays within its size", async () => {
    const { page, trouble } = await open(name);
    expect(await page.locator("section.chapter").evaluateAll((all) => all.map(({ id }) => id))).toEqual(
      chapters.get(name),
    );
    expect(await page.locator("figure:not(.guide) svg").count()).toBe(figures.get(name));
    expect(await page.locator("figure.guide svg").count()).toBe(guides.get(name));
    expect(trouble).toEqual([]);
    expect(Buffer.byteLength(pages.get(name) ?? "")).toBeLessThan(850_000);
    await page.context().close();
  });

  // Each in one of the two, turn about.
  const modes = [
    ["dark", 800],
    ["light", 360],
  ] as const;
  const turn = names.indexOf(name) / 3;
  it.each(modes.filter((_, i) => ALL_DEMOS || i === turn % 2))(
    "axe finds nothing (%s, %i wide)",
    async (colorScheme, width) => {
      const { page } = await open(name, { colorScheme, viewport: { width, height: 800 }, bypassCSP: true });
      await page.evaluate(AXE);
      const found = await page.evaluate(async () => {
        const { violations } = await (
          globalThis as unknown as {
            axe: {
              run(): Promise<{
                violations: { id: string; nodes: { html: string; failureSummary: string }[] }[];
              }>;
            };
          }
        ).axe.run();
        return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html} ${nodes[0]?.failureSummary}`);
      });
      expect(found).toEqual([]);
      await page.context().close();
    },
  );

  it("fits a phone: nothing sticks out sideways at 360 px", async () => {
    const { page } = await open(name, { viewport: { width: 360, height: 700 } });
    const wide = await page.evaluate(() =>
      [...document.querySelectorAll("body *")]
        .filter(
          (element) =>
            !element.closest(".table") &&
            !element.closest("svg") &&
            element.getBoundingClientRect().right > innerWidth + 1,
        )
        .map((element) => element.outerHTML.slice(0, 120)),
    );
    expect(wide).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    await page.context().close();
  });
});

describe("at the sewing table", () => {
  it("steps tick off by keyboard and stay ticked after a reload", async () => {
    const { page, trouble } = await open("mill-house-cotton");
    const box = page.locator("#gauging .steps input").first();
    await box.focus();
    await page.keyboard.press("Space");
    await page.reload();
    expect(await page.locator("#gauging .steps input").first().isChecked()).toBe(true);
    expect(await page.locator("#whipping .steps input").first().isChecked()).toBe(false);
    expect(trouble).toEqual([]);
    await page.context().close();
  });

  it("what is read at a fitting is written into its table, and stays after a reload and in the record", async () => {
    const { page, trouble } = await open("mill-house-cotton");
    const cell = (words: string) => page.locator("#second-fitting").getByLabel(words, { exact: true });
    await cell("left side: Read").fill("1 3/4 in");
    await cell("left side: Turned down now").fill("2 3/4 in");
    await page.reload();
    expect(await cell("left side: Read").inputValue()).toBe("1 3/4 in");
    expect(await cell("right side: Read").inputValue()).toBe("");
    expect(await page.locator("#second-fitting .cell").count()).toBe(16);
    const waiting = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save the record" }).click();
    const record = JSON.parse(readFileSync((await (await waiting).path()) ?? "", "utf8"));
    expect(record.said["second-fitting/left side/Turned down now"]).toBe("2 3/4 in");
    expect(trouble).toEqual([]);
    await page.context().close();
  });

  it("any number opens its working: formula in names and in numbers", async () => {
    const { page } = await open("mill-house-cotton");
    await page.locator('data[data-name="skirt.round"]').first().focus();
    await page.keyboard.press("Enter");
    const dialog = page.locator("dialog[open]");
    await dialog.waitFor();
    const text = await dialog.textContent();
    expect(text).toContain("skirt.round = 170 in");
    expect(text).toContain("breadths.count * breadths.usable - breadths.seams * 2 * skirt.seam");
    expect(text).toContain("4 * 43 1/2 in - 4 * 2 * 1/2 in");
    await page.keyboard.press("Escape");
    expect(await page.locator("dialog[open]").count()).toBe(0);
    await page.context().close();
  });

  it("tick boxes are large enough for a thumb", async () => {
    const { page } = await open("mill-house-cotton", { viewport: { width: 360, height: 700 } });
    const sizes = await page
      .locator(".tick")
      .evaluateAll((all) =>
        all.map((tick) => tick.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)),
      );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(44);
    await page.context().close();
  });

  it("says so when the browser refuses storage, and goes on", async () => {
    const { page, trouble } = await open("mill-house-cotton");
    await page.addInitScript(() => {
      Object.defineProperty(globalThis, "localStorage", {
        get() {
          throw new Error("forbidden");
        },
      });
    });
    await page.reload();
    expect(await page.locator(".notice-bar").textContent()).toContain("keeps nothing");
    await page.locator("#gauging .steps input").first().check();
    expect(await page.locator(".notice-bar").count()).toBe(1);
    expect(trouble).toEqual([]);
    await page.context().close();
  });

  it("without script everything is there to read", async () => {
    const { page } = await open("mill-house-cotton", { javaScriptEnabled: false });
    expect(await page.locator("section.chapter").count()).toBe(chapters.get("mill-house-cotton")?.length);
    expect(await page.locator("#workings table tr").count()).toBeGreaterThan(80);
    await page.context().close();
  });
});

describe("on paper", () => {
  it("prints with every chapter and figure, no figure cut in two", async () => {
    const { page } = await open("mill-house-cotton");
    const pdf = join(folder, "booklet.pdf");
    await page.pdf({ path: pdf, format: "A5", preferCSSPageSize: false });
    const text = execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8" });
    for (const title of ["At a glance", "Cautions", "Gauging", "Whipping", "As made", "Workings"])
      expect(text).toContain(title);
    expect(text).toContain("170 in");
    const info = execFileSync("pdfinfo", [pdf], { encoding: "utf8" });
    expect(Number(/Pages:\s+(\d+)/.exec(info)?.[1])).toBeGreaterThan(10);
    await page.context().close();
  });

  it("has an empty box before a step, a tick where it is ticked, and is never dark", async () => {
    const { page } = await open("mill-house-cotton", { colorScheme: "dark" });
    await page.locator("#gauging .steps input").first().check();
    await page.emulateMedia({ media: "print" });
    const boxOf = (nth: number) =>
      page
        .locator("#gauging .steps > li")
        .nth(nth)
        .evaluate((step) => getComputedStyle(step, "::before").content);
    expect(await boxOf(0)).toBe('"\u2713"');
    expect(await boxOf(1)).toBe('""');
    expect(await page.locator("html").evaluate((root) => getComputedStyle(root).backgroundColor)).toBe(
      "rgb(255, 255, 255)",
    );
    await page.context().close();
  });
});
