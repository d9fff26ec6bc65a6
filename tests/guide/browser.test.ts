/** The guides as a browser draws them: words on the sheet, none upon another. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { svgFile } from "../../src/figure/serialize.ts";
import { guidesOf } from "../../src/guide/index.ts";
import { GARMENTS, garment } from "../figure/plans.ts";
import { launch } from "../page/browser.ts";

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = await browser.newPage();
});
afterAll(() => browser.close());

describe.each(Object.keys(GARMENTS))("%s", (name) => {
  it("has guides whose words stand on the sheet and do not meet", async () => {
    const guides = guidesOf(garment(name));
    expect(guides.length).toBeGreaterThan(0);
    for (const [i, guide] of guides.entries()) {
      expect(guide.name).toBe(`guide-${i + 1}`);
      const seen = await page.evaluate((text) => {
        const parsed = new DOMParser().parseFromString(text, "image/svg+xml");
        if (parsed.querySelector("parsererror")) return { error: parsed.documentElement.textContent };
        const svg = document.importNode(parsed.documentElement, true) as unknown as SVGSVGElement;
        document.body.replaceChildren(svg);
        const sheet = svg.getBoundingClientRect();
        const words = [...svg.querySelectorAll("text")]
          .map((line) => ({ text: line.textContent ?? "", box: line.getBoundingClientRect() }))
          .filter(({ text }) => text !== "");
        const out = words.filter(
          ({ box }) =>
            box.left < sheet.left - 1 ||
            box.top < sheet.top - 1 ||
            box.right > sheet.right + 1 ||
            box.bottom > sheet.bottom + 1,
        );
        const meet = words.filter(({ box: a }, i) =>
          words.some(
            ({ box: b }, j) =>
              j > i &&
              a.left < b.right &&
              b.left < a.right &&
              Math.abs(a.top + a.height / 2 - b.top - b.height / 2) < Math.min(a.height, b.height) * 0.75,
          ),
        );
        return {
          width: svg.getAttribute("width"),
          count: words.length,
          out: out.map(({ text }) => text),
          meet: meet.map(({ text }) => text),
        };
      }, svgFile(guide.draw()));
      expect(seen).toMatchObject({ width: "186mm", out: [], meet: [] });
      expect(JSON.stringify(seen)).toContain("count");
    }
  });
});
