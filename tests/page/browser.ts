/** Chromium for the page tests: the system's own, headless, with nothing fetched in the background. */
import { existsSync } from "node:fs";
import { chromium } from "playwright-core";
import { QUIET_FLAGS } from "../../src/shelf/print.ts";

const PLACES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];

export function launch() {
  const executablePath = PLACES.find((path) => path !== undefined && existsSync(path));
  if (!executablePath) throw new Error("no Chromium: run node tests/setup/tools.mjs");
  return chromium.launch({
    executablePath,
    args: [...QUIET_FLAGS],
  });
}
