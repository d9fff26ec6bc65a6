/**
 * How fast `plainwork open` answers: 200 changed measures and 200 typed letters in Chromium, from the key's own event to the
 * booklet's document laid out anew.
 */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { chromium } from "playwright-core";

const PLACES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];

/** Starts the program on a folder; gives its address and what ends it. */
async function opened(program, folder) {
  const child = spawn(process.execPath, [program, "open", folder, "--no-browser"], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  const address = await new Promise((found) => {
    let said = "";
    child.stdout.on("data", (chunk) => {
      said += chunk;
      const line = /^open (\S+)/m.exec(said);
      if (line) found(line[1]);
    });
  });
  return { address, end: () => child.kill() };
}

/**
 * Milliseconds of each change, after ten to warm up.
 *
 * @param folder a copy of a project: its recipe is typed in
 */
export async function openUpdates(program, folder, count = 200) {
  const { address, end } = await opened(program, folder);
  const executablePath = PLACES.find((path) => path && existsSync(path));
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(address);
    await page.frameLocator("iframe").locator("main > section").first().waitFor();
    await page.evaluate(() => {
      const { contentDocument } = document.querySelector("iframe");
      globalThis.times = [];
      let key;
      const fell = ({ timeStamp }) => {
        key = timeStamp;
      };
      document.addEventListener("keydown", fell, true);
      new MutationObserver(() => {
        if (key === undefined) return;
        contentDocument.body.offsetHeight;
        globalThis.times.push(performance.now() - key);
        key = undefined;
      }).observe(contentDocument.querySelector("main"), {
        subtree: true,
        childList: true,
        characterData: true,
      });
    });
    const typed = async (find, keyOf, before = []) => {
      await page.locator(".cm-content").focus();
      await page.evaluate((find) => {
        const line = [...document.querySelectorAll(".cm-line")].find((one) => one.textContent.includes(find));
        let left = (line?.textContent.indexOf(find) ?? -1) + find.length;
        const walker = line && document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
        for (let node = walker?.nextNode(); node; node = walker.nextNode()) {
          if (left <= node.data.length) return getSelection().collapse(node, left);
          left -= node.data.length;
        }
        throw new Error(`"${find}" is not in sight`);
      }, find);
      const times = [];
      for (let i = 0; i < count + 10; i += 1) {
        for (const key of before) await page.keyboard.press(key);
        await page.evaluate(() => globalThis.times.splice(0));
        await page.keyboard.press(keyOf(i));
        await page.waitForFunction(() => globalThis.times.length > 0, undefined, { polling: 5 });
        if (i >= 10) times.push(await page.evaluate(() => globalThis.times[0]));
      }
      return times;
    };
    const measures = await typed("waist: 26", (i) => String(5 + (i % 4)), ["Shift+ArrowLeft"]);
    await page.evaluate(() => document.querySelector(".cm-scroller").scrollTo(0, 900));
    await page.waitForTimeout(300);
    const letters = "a wide and quiet word ";
    const sentences = await typed("walking out", (i) =>
      letters[i % letters.length] === " " ? "Space" : letters[i % letters.length],
    );
    return { measures, sentences };
  } finally {
    await browser.close();
    end();
  }
}
