/**
 * How fast a page answers: 200 changed measures in Chromium, from the typed text to the changed document laid out, beside
 * the bare pipeline parsing the same booklet's Markdown in the same run.
 */
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const PLACES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];

/** Milliseconds of each of `count` changes, in order, after ten to warm up. */
export async function pageUpdates(html, count = 200) {
  const { existsSync } = await import("node:fs");
  const executablePath = PLACES.find((path) => path && existsSync(path));
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  const page = await browser.newPage({ viewport: { width: 400, height: 800 } });
  await page.goto(pathToFileURL(html).href);
  const first = await page.evaluate(async () => {
    const input = document.querySelector('input[name="wearer.waist"]');
    const start = performance.now();
    input.value = input.value.replace(/\d+/, (whole) => String(Number(whole) + 1));
    input.dispatchEvent(new Event("input", { bubbles: true }));
    while (!document.querySelector(".changed-bar")) await new Promise((done) => setTimeout(done, 1));
    return performance.now() - start;
  });
  const times = await page.evaluate(async (changes) => {
    const fields = [
      "wearer.waist",
      "wearer.waist-to-floor.front",
      "cloth.width",
      "wearer.waist-to-floor.back",
    ]
      .map((name) => document.querySelector(`input[name="${name}"]`))
      .filter(Boolean);
    const published = fields.map((input) => input.defaultValue);
    const out = [];
    for (let i = 0; i < changes + 10; i += 1) {
      const at = i % fields.length;
      const input = fields[at];
      const steps = (i * 7) % 16;
      input.value = published[at].replace(/^(\d+)(?: \d+\/\d+)?/, (_, whole) => `${whole} ${steps}/16`);
      const start = performance.now();
      input.dispatchEvent(new Event("input", { bubbles: true }));
      await new Promise((done) => setTimeout(done, 0));
      document.body.offsetHeight;
      if (i >= 10) out.push(performance.now() - start);
    }
    return out;
  }, count);
  await browser.close();
  return { first, times };
}

/** Opens a page from the disk so many times: milliseconds to the first picture of it, until all is laid out, and for its scripts. */
export async function firstPaints(html, count = 9) {
  const { existsSync } = await import("node:fs");
  const executablePath = PLACES.find((path) => path && existsSync(path));
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  const found = { paint: [], loaded: [], script: [] };
  for (let i = 0; i < count + 1; i += 1) {
    const page = await browser.newPage({ viewport: { width: 400, height: 800 } });
    await browser.startTracing(page, { categories: ["devtools.timeline", "v8"] });
    await page.goto(pathToFileURL(html).href);
    const [paint, loaded] = await page.evaluate(
      () =>
        new Promise((done) => {
          const tell = () => {
            const [first] = performance.getEntriesByName("first-contentful-paint");
            if (!first) return requestAnimationFrame(tell);
            done([first.startTime, performance.getEntriesByType("navigation")[0].loadEventEnd]);
          };
          tell();
        }),
    );
    const trace = JSON.parse(String(await browser.stopTracing()));
    const compiled = trace.traceEvents.filter(({ name, ph }) => ph === "X" && /^v8\.compile$/i.test(name));
    // The first opening warms the disk.
    if (i > 0) {
      found.paint.push(paint);
      found.loaded.push(loaded);
      found.script.push(compiled.reduce((sum, { dur = 0 }) => sum + dur / 1000, 0));
    }
    await page.close();
  }
  await browser.close();
  return found;
}
