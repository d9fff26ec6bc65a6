/** Chapters far from what is seen are not laid out, which halves the time until a page is seen; nothing is lost by it. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { launch } from "./browser.ts";
import { demoPage } from "./opened.ts";

const folder = mkdtempSync(join(tmpdir(), "plainwork-far-"));
const file = join(folder, "page.html");
let asRead: Browser;
let laidOut: Browser;
beforeAll(async () => {
  writeFileSync(file, demoPage("mill-house-cotton"));
  asRead = await launch({ asRead: true });
  laidOut = await launch();
});
afterAll(async () => {
  await Promise.all([asRead?.close(), laidOut?.close()]);
  rmSync(folder, { recursive: true, force: true });
});

const PHONE = { viewport: { width: 360, height: 700 } };
const opened = async (browser: Browser, hash = "") => {
  const page = await browser.newPage(PHONE);
  await page.goto(pathToFileURL(file).href + hash);
  return page;
};

it("the other tests lay all of a page out, a reader's browser what is near", async () => {
  const far = () => {
    const last = document.querySelector("#workings td") as HTMLElement;
    return (last as HTMLElement & { checkVisibility(how: object): boolean }).checkVisibility({
      contentVisibilityAuto: true,
    });
  };
  expect(await (await opened(asRead)).evaluate(far)).toBe(false);
  expect(await (await opened(laidOut)).evaluate(far)).toBe(true);
});

it.each(["whipping", "workings", "words"])("a link to %s leads to it, however far", async (chapter) => {
  const page = await opened(asRead);
  const top = await page.evaluate(async (chapter) => {
    location.hash = `#${chapter}`;
    const frame = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    for (let i = 0; i < 5; i += 1) await frame();
    return document.querySelector(`#${chapter} h2`)?.getBoundingClientRect().top;
  }, chapter);
  expect(top).toBeGreaterThanOrEqual(0);
  expect(top).toBeLessThan(200);
});

it("what stands in a far chapter can be read, copied and found", async () => {
  const page = await opened(asRead);
  expect(await page.evaluate(() => document.querySelector("#words")?.textContent)).toContain("selvedge");
  expect(
    await page.evaluate(() => (window as unknown as { find(text: string): boolean }).find("line of running")),
  ).toBe(true);
});
