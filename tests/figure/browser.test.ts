/** The drawings as a browser sees them: well-formed files, lettering no wider than was allowed for it. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { FIGURE_NAMES } from "../../src/figure/figure.ts";
import { drawFigure } from "../../src/figure/index.ts";
import { svgFile } from "../../src/figure/serialize.ts";
import { launch } from "../page/browser.ts";
import { garment, garmentsWith } from "./plans.ts";

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = await browser.newPage();
});
afterAll(() => browser.close());

describe.each(FIGURE_NAMES)("in a browser the figure %s", (figure) => {
  it.each(garmentsWith(figure))("is a well-formed file whose words do not meet: %s", async (name) => {
    const file = svgFile(drawFigure(figure, garment(name)).svg);
    const seen = await page.evaluate((text) => {
      const parsed = new DOMParser().parseFromString(text, "image/svg+xml");
      if (parsed.querySelector("parsererror")) return { error: parsed.documentElement.textContent };
      const svg = document.importNode(parsed.documentElement, true) as unknown as SVGSVGElement;
      document.body.replaceChildren(svg);
      const picture = svg.viewBox.baseVal;
      const words = [...svg.querySelectorAll("text")].map((line) => ({
        text: line.textContent ?? "",
        box: line.getBBox(),
      }));
      const out = words.filter(
        ({ box }) =>
          box.x < 0 || box.y < 0 || box.x + box.width > picture.width || box.y + box.height > picture.height,
      );
      // Lines of lettering stand closer than their full height: compare them from the tops of letters to their feet.
      const meet = words.filter(({ box: a }, i) =>
        words.some(
          ({ box: b }, j) =>
            j > i &&
            a.x < b.x + b.width &&
            b.x < a.x + a.width &&
            Math.abs(a.y + a.height / 2 - b.y - b.height / 2) < Math.min(a.height, b.height) * 0.8,
        ),
      );
      return { count: words.length, out: out.map(({ text }) => text), meet: meet.map(({ text }) => text) };
    }, file);
    expect(seen).toMatchObject({ out: [], meet: [] });
    expect(seen.count).toBeGreaterThan(5);
  });
});
