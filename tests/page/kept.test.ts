/** What a reader enters is never lost to a record that is not hers, a damaged store, or script from elsewhere: said, and what was there stays. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { demoPage, Shelf } from "./opened.ts";

const DEMO = "mill-house-cotton";
let shelf: Shelf;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  shelf = await Shelf.open({ [DEMO]: demoPage(DEMO) });
}, 120_000);
afterAll(() => shelf?.close());
beforeEach(async () => {
  context = await shelf.context();
  page = await shelf.page(DEMO, context);
});
afterEach(() => context.close());

const lessons = () => page.locator("#said-lessons");
const keptKey = (): Promise<string> =>
  page.evaluate(() => Object.keys(localStorage).find((key) => key.startsWith("plainwork:")) ?? "");

/** Enters something, gives a file to the page as a record, and reads what the page says. */
async function load(name: string, text: string): Promise<string> {
  await lessons().fill("take wider bites");
  await expect.poll(keptKey).not.toBe("");
  const file = join(shelf.folder, name);
  writeFileSync(file, text);
  await page.locator("input[type=file]").setInputFiles(file);
  const said = page.locator("[role=status], [role=alert]").filter({ hasText: "Nothing was changed" });
  await said.first().waitFor();
  return (await said.first().textContent()) ?? "";
}

describe("a record that is not this garment's", () => {
  it.each([
    [
      "of another garment",
      JSON.stringify({ "plainwork-record": 1, garment: "Another", said: { lessons: "gone" } }),
      "another garment",
    ],
    ["cut off in the midst", '{"plainwork-record": 1, "garm', "damaged"],
    ["of a later format", JSON.stringify({ "plainwork-record": 9, garment: "Another" }), "format 9"],
    ["that is no record", JSON.stringify({ a: 1 }), "not a booklet's record"],
    ["that is null", "null", "not a booklet's record"],
  ])("%s: said, and nothing lost", async (name, text, words) => {
    expect(await load(`${name}.json`, text)).toContain(words);
    expect(await lessons().inputValue()).toBe("take wider bites");
    await page.reload();
    expect(await lessons().inputValue()).toBe("take wider bites");
    expect(shelf.trouble).toEqual([]);
  });
});

describe("the browser's store", () => {
  it("damaged: said, and the page goes on", async () => {
    await lessons().fill("x");
    await expect.poll(keptKey).not.toBe("");
    const key = await keptKey();
    await page.evaluate((name) => localStorage.setItem(name, '{"said": {'), key);
    await page.reload();
    await page.getByText("is damaged and was left aside").first().waitFor();
    await lessons().fill("entered again");
    await page.reload();
    expect(await lessons().inputValue()).toBe("entered again");
  });

  it("filled with what no reader enters: left out, and nothing of it runs", async () => {
    await lessons().fill("x");
    await expect.poll(keptKey).not.toBe("");
    const key = await keptKey();
    await page.evaluate((name) => {
      const text =
        '{"said":{"lessons":"<img src=x onerror=window.ran=1>","__proto__":{"a":1}},"notes":{"hem/1":7},"ticked":"all","changes":{"constructor":"1 in"},"units":"<b>"}';
      localStorage.setItem(name, text);
    }, key);
    await page.reload();
    expect(await lessons().inputValue()).toBe("<img src=x onerror=window.ran=1>");
    expect(await page.evaluate(() => (window as unknown as { ran?: number }).ran)).toBeUndefined();
    expect(await page.evaluate(() => ({}) as { a?: number })).toEqual({});
  });
});

describe("the page's policy", () => {
  it("lets no text be evaluated, no script be put in, nothing be fetched, no form be sent", async () => {
    const policy = await page.locator("meta[http-equiv=Content-Security-Policy]").getAttribute("content");
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    const tried = await page.evaluate(async () => {
      const script = document.createElement("script");
      script.textContent = "window.ran = 1";
      document.body.append(script);
      const fetched = await fetch("https://example.com/").then(
        () => "fetched",
        () => "refused",
      );
      return { ran: (window as unknown as { ran?: number }).ran ?? 0, fetched };
    });
    expect(tried).toEqual({ ran: 0, fetched: "refused" });
    const evaluated = await page.addScriptTag({ content: "window.ran = eval('1')" }).then(
      () => page.evaluate(() => (window as unknown as { ran?: number }).ran ?? 0),
      () => 0,
    );
    expect(evaluated).toBe(0);
    shelf.trouble.length = 0;
  });
});
