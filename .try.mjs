import { chromium } from "playwright-core";
import { readdirSync } from "node:fs";
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--no-sandbox","--disable-gpu"] });
const name = process.argv[2] ?? "mill-house-cotton";
const page = await (await browser.newContext({ viewport: { width: 360, height: 740 } })).newPage();
page.on("console", (m) => console.log("console", m.type(), m.text().slice(0,300)));
page.on("pageerror", (e) => console.log("pageerror", e.message, e.stack?.slice(0,600)));
await page.goto(`file:///tmp/o3/${name}/booklet.html`);
const field = page.locator('input[name="wearer.waist"]');
const t0 = Date.now();
await field.fill("29 in");
await page.waitForSelector(".changed-bar");
console.log("first", Date.now() - t0);
console.log(await page.locator("data[data-was]").count(), "changed numbers", await page.locator("figure.changed").count());
const times = await page.evaluate(async () => {
  const input = document.querySelector('input[name="wearer.waist"]'); const out = [];
  const core = globalThis.plainworkCore;
  for (let i = 0; i < 60; i++) { const w = 24 + (i * 7 % 13) / 2; input.value = `${w} in`; 
    const t = performance.now(); input.dispatchEvent(new Event("input", { bubbles: true })); await new Promise((r) => setTimeout(r)); await new Promise((r)=>setTimeout(r)); out.push(performance.now() - t); }
  return out.sort((a,b)=>a-b);
});
console.log("median", times[30].toFixed(0), "p95", times[56].toFixed(0), "max", times[59].toFixed(0));
await page.screenshot({ path: "/tmp/dev2/p1.png" });
await browser.close();
