/** Chromium for the page tests: the system's own, headless, with nothing fetched in the background. */
import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";
import { QUIET_FLAGS } from "../../src/shelf/print.ts";

const PLACES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];

/** Lays out what a page leaves until it comes near, so that all of it can be measured. */
const LAY_OUT = `document.addEventListener("DOMContentLoaded", () => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync("section { content-visibility: visible !important; }");
  document.adoptedStyleSheets.push(sheet);
});`;

/** @param asRead leaves pages as a reader has them: chapters that are far away are not laid out */
export async function launch({ asRead = false } = {}): Promise<Browser> {
  const executablePath = PLACES.find((path) => path !== undefined && existsSync(path));
  if (!executablePath) throw new Error("no Chromium: run node tests/setup/tools.mjs");
  const browser = await chromium.launch({
    executablePath,
    args: [...QUIET_FLAGS],
  });
  if (asRead) return browser;
  const [newContext, newPage] = [browser.newContext.bind(browser), browser.newPage.bind(browser)];
  browser.newContext = async (options) => {
    const context = await newContext(options);
    await context.addInitScript(LAY_OUT);
    return context;
  };
  browser.newPage = async (options) => {
    const page = await newPage(options);
    await page.addInitScript(LAY_OUT);
    return page;
  };
  return browser;
}
