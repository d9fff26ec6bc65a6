/** Lettering of the figures is large enough to read in the page on a telephone and on printed paper. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { LETTERING } from "../../src/figure/language.ts";
import { DEMOS, demo } from "../demos.ts";
import { ALL_DEMOS } from "../long.ts";
import { launch } from "../page/browser.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** Pixels to a point, and to a millimetre, as browsers count them. */
const POINT = 96 / 72;
const MILLIMETRE = 96 / 25.4;
/** What is left of a page of A4 between margins of 15 mm. */
const PAPER = Math.floor(180 * MILLIMETRE);

/** For every figure of a booklet, how high its smallest lettering stands on the screen or the paper, in pixels. */
async function smallest(html: string, width: number, media: "screen" | "print"): Promise<[string, number][]> {
  const page = await browser.newPage({ viewport: { width, height: 800 } });
  await page.emulateMedia({ media });
  await page.setContent(html);
  const scales = await page.evaluate(() =>
    [...document.querySelectorAll<SVGSVGElement>("figure svg")].map((svg): [string, number] => [
      svg.closest("figure")?.id ?? "",
      svg.getScreenCTM()?.a ?? 0,
    ]),
  );
  await page.close();
  return scales.map(([figure, scale]) => [figure, scale * LETTERING.small]);
}

describe.each(ALL_DEMOS ? DEMOS : DEMOS.filter((_, i) => i % 3 === 0))("the figures of %s", (name) => {
  const html = makeBooklet(demo(name)).get("booklet.html") ?? "";

  it("have lettering at least 10 pixels high on a telephone 360 pixels wide", async () => {
    const sizes = await smallest(html, 360, "screen");
    expect(sizes.length).toBeGreaterThan(5);
    expect(sizes.filter(([, size]) => size < 10)).toEqual([]);
  });

  it("have lettering of at least 6 1/2 points on A4", async () => {
    const sizes = await smallest(html, PAPER, "print");
    expect(sizes.length).toBeGreaterThan(5);
    expect(sizes.filter(([, size]) => size < 6.5 * POINT)).toEqual([]);
  });
});
