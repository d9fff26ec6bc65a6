/**
 * How fast a page answers: 200 changed measures in Chromium, from the typed text to the changed document laid out, beside
 * the bare pipeline parsing the same booklet's Markdown in the same run.
 */
import { readFileSync } from "node:fs";
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

/** Milliseconds of the bare pipeline over a booklet's Markdown, warm, `count` times. */
export async function barePipeline(markdown, count = 15) {
  const [{ unified }, parse, rehype, stringify, { gfmTable }, { gfmTableFromMarkdown }] = await Promise.all([
    import("unified"),
    import("remark-parse"),
    import("remark-rehype"),
    import("rehype-stringify"),
    import("micromark-extension-gfm-table"),
    import("mdast-util-gfm-table"),
  ]);
  function tables() {
    const data = this.data();
    data.micromarkExtensions = [gfmTable()];
    data.fromMarkdownExtensions = [gfmTableFromMarkdown()];
  }
  const pipeline = unified()
    .use(parse.default)
    .use(tables)
    .use(rehype.default)
    .use(stringify.default)
    .freeze();
  const text = readFileSync(markdown, "utf8");
  const times = [];
  for (let i = 0; i < count + 5; i += 1) {
    const start = performance.now();
    pipeline.processSync(text);
    if (i >= 5) times.push(performance.now() - start);
  }
  return times;
}

const sorted = (times) => [...times].sort((a, b) => a - b);
export const median = (times) => sorted(times)[times.length >> 1];
export const percentile = (times, share) =>
  sorted(times)[Math.min(times.length - 1, Math.ceil(times.length * share) - 1)];
