/** How fast a catalogue of a thousand invented garments opens in Chromium from the disk, and answers to a search. */
import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const PLACES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];
const FIBRES = ["cotton", "linen", "wool", "silk", "mixed"];

/** A folder of `count` garments made from built demos with other titles, years and fibres, and its catalogue; how long that took. */
export function thousand(root, built, folder, count = 1000) {
  // Garments in sizes have a plan a size, further down.
  const demos = built.filter((demo) => existsSync(join(demo, "plan.json")));
  for (let i = 0; i < count; i += 1) {
    const demo = demos[i % demos.length];
    const plan = JSON.parse(readFileSync(join(demo, "plan.json"), "utf8"));
    plan.recipe = `${plan.recipe}, number ${i}`;
    plan.garment = { ...plan.garment, year: 1830 + (i % 40), fibre: FIBRES[i % 5] };
    const at = join(folder, `garment-${String(i).padStart(4, "0")}`);
    mkdirSync(join(at, "figures"), { recursive: true });
    writeFileSync(join(at, "plan.json"), JSON.stringify(plan));
    for (const name of ["finished.svg", "picture.svg"])
      cpSync(join(demo, "figures", name), join(at, "figures", name));
  }
  const start = performance.now();
  execFileSync(process.execPath, [
    join(root, "dist/plainwork.cjs"),
    "build",
    join(root, "demo-projects/mill-house-cotton"),
    "--out",
    folder,
  ]);
  return performance.now() - start;
}

/** Milliseconds from asking for the page until it is loaded, and from a letter typed until the list is laid out anew. */
export async function catalogueTimes(folder, opens = 9) {
  const executablePath = PLACES.find((path) => path && existsSync(path));
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  const opening = [];
  const filtering = [];
  for (let i = 0; i < opens; i += 1) {
    const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
    await page.goto(pathToFileURL(join(folder, "index.html")).href);
    opening.push(await page.evaluate(() => performance.getEntriesByType("navigation")[0].loadEventEnd));
    filtering.push(
      ...(await page.evaluate(async () => {
        const words = document.querySelector("#words");
        const times = [];
        for (const text of ["s", "silk", "silk 1844", "cotton", "number 7", "nothing so", ""]) {
          const start = performance.now();
          words.value = text;
          words.dispatchEvent(new Event("input", { bubbles: true }));
          document.body.offsetHeight;
          times.push(performance.now() - start);
          await new Promise((done) => setTimeout(done, 0));
        }
        return times;
      })),
    );
    await page.close();
  }
  await browser.close();
  return { opening, filtering };
}
