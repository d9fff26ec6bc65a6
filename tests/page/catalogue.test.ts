/** The catalogue in a real browser, opened from disk: sought, sorted, compared, by keyboard and on paper. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { HtmlValidate } from "html-validate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { writeCatalogue } from "../../src/shelf/catalogue/write.ts";
import { nodeWorld } from "../../src/shelf/world.ts";
import { shelfOf } from "../shelf/shelf-of.ts";
import { launch } from "./browser.ts";
import { axeFindings } from "./opened.ts";

let folder: string;
let browser: Browser;
const trouble: string[] = [];
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "plainwork-catalogue-"));
  shelfOf(folder, 40);
  writeCatalogue(nodeWorld(process), folder);
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
  expect(trouble).toEqual([]);
});

async function opened(options: Parameters<Browser["newContext"]>[0] = {}): Promise<Page> {
  const page = await (
    await browser.newContext({ viewport: { width: 375, height: 800 }, ...options })
  ).newPage();
  page.on("console", (said) => void (said.type() === "error" && trouble.push(said.text())));
  page.on("pageerror", (error) => void trouble.push(error.message));
  page.on("request", (request) => void (request.url().startsWith("file:") || trouble.push(request.url())));
  await page.goto(pathToFileURL(join(folder, "index.html")).href);
  return page;
}

const seen = (page: Page): Promise<string[]> => page.locator("#garments li:visible h2").allTextContents();

describe("the catalogue's page", () => {
  it("finds by words and by lists, and says how many", async () => {
    const page = await opened();
    expect(await page.locator("#count").textContent()).toBe("40 garments");
    await page.getByLabel("Search").fill("SILK 1833");
    expect(await seen(page)).toEqual(["Skirt number 3 (invented)"]);
    expect(await page.locator("#count").textContent()).toBe("1 of 40 garments");
    await page.getByLabel("Search").fill("");
    await page.getByLabel("Fibre").selectOption("linen");
    await page.getByLabel("Set").selectOption("pleated");
    expect(await seen(page)).toEqual(["Skirt number 1 (invented)", "Skirt number 21 (invented)"]);
    await page.getByLabel("State").selectOption("made");
    expect(await page.locator("#count").textContent()).toBe("none of 40 garments");
    await page.context().close();
  });

  it("orders by year and by name", async () => {
    const page = await opened();
    await page.getByLabel("Order").selectOption("by year");
    expect((await seen(page))[0]).toBe("Skirt number 0 (invented)");
    await page.getByLabel("Order").selectOption("by name");
    expect((await seen(page)).at(-1)).toBe("Skirt number 35 (invented)");
    await page.context().close();
  });

  it("compares two number by number, by the keyboard alone; a third takes the first's place", async () => {
    const page = await opened();
    const boxes = page.locator("#garments input");
    for (const n of [0, 1]) {
      await boxes.nth(n).focus();
      await page.keyboard.press("Space");
    }
    const row = page.locator("#comparison tr", { hasText: "waist.seam" });
    expect(await row.locator("td").allTextContents()).toEqual(["25 in", "25.25 in"]);
    expect(await page.locator("#comparison thead th").allTextContents()).toEqual([
      "Number",
      "Skirt number 0 (invented)",
      "Skirt number 1 (invented)",
    ]);
    await page.getByLabel("only what differs").check();
    expect(await page.locator("#comparison tbody tr:visible").count()).toBe(1);
    await boxes.nth(5).check();
    expect(await row.locator("td").allTextContents()).toEqual(["25.25 in", "26.25 in"]);
    expect(await boxes.nth(0).isChecked()).toBe(false);
    await page.getByRole("button", { name: "End the comparison" }).click();
    expect(await page.locator("#comparison").isVisible()).toBe(false);
    await page.context().close();
  });

  it("shows its pictures from the disk, and does not scroll sideways on a phone", async () => {
    const page = await opened();
    const image = page.locator("#garments img").first();
    await expect.poll(() => image.evaluate((one: HTMLImageElement) => one.naturalWidth)).toBe(360);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(375);
    await page.context().close();
  });

  it("makes the others when they are looked at: by scrolling, by the button, for paper", async () => {
    let page = await opened();
    const made = (): Promise<number> => page.locator("#garments li").count();
    const more = (): ReturnType<Page["getByRole"]> => page.getByRole("button", { name: "More garments" });
    expect(await made()).toBe(36);
    await more().scrollIntoViewIfNeeded();
    await expect.poll(made).toBe(40);
    expect(await more().isVisible()).toBe(false);
    await page.context().close();
    page = await opened();
    await more().focus();
    await page.keyboard.press("Enter");
    expect(await made()).toBe(40);
    expect(await page.evaluate(() => document.querySelector(":focus")?.textContent)).toBe(
      "Skirt number 36 (invented)",
    );
    await page.context().close();
    page = await opened();
    await page.pdf();
    expect(await made()).toBe(40);
    await page.context().close();
  });

  it("finds, orders and ticks what was not made yet", async () => {
    const page = await opened();
    await page.getByLabel("Search").fill("1869");
    expect(await seen(page)).toEqual(["Skirt number 39 (invented)"]);
    await page.locator("#garments input").check();
    await page.getByLabel("Search").fill("1868");
    await page.locator("#garments input").check();
    expect(await page.locator("#comparison thead th").nth(1).textContent()).toBe(
      "Skirt number 39 (invented)",
    );
    await page.getByLabel("Search").fill("compare");
    expect(await page.locator("#count").textContent()).toBe("none of 40 garments");
    await page.getByLabel("Search").fill("");
    expect(await page.locator("#garments li").count()).toBe(36);
    await page.context().close();
  });

  it("draws a garment's own picture in the page as it opens, in the colour of the text", async () => {
    const page = await opened();
    expect(await page.locator("#garments li").nth(1).locator("svg path.outline").getAttribute("d")).toBe(
      "M60 10h30l30 80h-90z",
    );
    expect(await page.locator("#garments li").nth(0).locator("svg").count()).toBe(0);
    await page.context().close();
  });

  it("is whole without script", async () => {
    const page = await opened({ javaScriptEnabled: false });
    expect(await page.locator(".garments li").count()).toBe(40);
    expect(await page.locator("#find, .compare, #comparison").first().isVisible()).toBe(false);
    await page.context().close();
  });

  it("has no fault that axe or html-validate finds, light, dark, and comparing", async () => {
    for (const colorScheme of ["light", "dark"] as const) {
      const page = await opened({ bypassCSP: true, colorScheme });
      await page.locator("#garments input").nth(0).check();
      await page.locator("#garments input").nth(1).check();
      expect(await axeFindings(page)).toEqual([]);
      await page.context().close();
    }
    const report = await new HtmlValidate({
      extends: ["html-validate:recommended"],
      rules: { "no-inline-style": "off", "long-title": "off", "require-sri": "off", "void-style": "off" },
    }).validateString(readFileSync(join(folder, "index.html"), "utf8"));
    expect(
      report.results.flatMap(({ messages }) =>
        messages.map(({ line, message, ruleId }) => `${line}: ${ruleId} ${message}`),
      ),
    ).toEqual([]);
  });
});
