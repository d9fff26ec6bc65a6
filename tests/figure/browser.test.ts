/** The drawings as a browser sees them: well-formed files, and lettering inside the boxes that were kept for it. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { FIGURE_NAMES, type FigureName } from "../../src/figure/figure.ts";
import { figuresOf } from "../../src/figure/index.ts";
import { LETTERING } from "../../src/figure/language.ts";
import { svgFile } from "../../src/figure/serialize.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { DEMOS, demo } from "../demos.ts";
import { launch } from "../page/browser.ts";
import { DRAWINGS } from "./drawings.ts";
import { GARMENTS, garment } from "./plans.ts";

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = await browser.newPage();
});
afterAll(() => browser.close());

interface Line {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The browser measures the height of letters, and how far one leans out, in whole units; round every box there is more air. */
const ROUNDED = 1;

/** The lines of lettering with the boxes they were given, in the order in which they were written. */
function given(plan: Plan, figure: FigureName): { readonly file: string; readonly lines: Line[] } {
  const drawing = DRAWINGS[figure](plan);
  const { svg } = drawing.finish("title", "description");
  const lines = drawing.labels.placed.flatMap(({ lines, size, box }) =>
    lines.map((text, i) => ({
      text,
      x: box.x,
      y: box.y + i * size * LETTERING.line,
      width: box.width,
      height: size * LETTERING.line,
    })),
  );
  return { file: svgFile(svg), lines };
}

/** The same lines as the browser measures them; throws if the file is not well-formed. */
const measured = (file: string): Promise<(Line & { readonly advance: number })[]> =>
  page.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, "image/svg+xml");
    if (parsed.querySelector("parsererror")) throw new Error(parsed.documentElement.textContent ?? "");
    document.body.replaceChildren(document.importNode(parsed.documentElement, true));
    return [...document.querySelectorAll("text")].map((line) => {
      const { x, y, width, height } = line.getBBox();
      return { text: line.textContent ?? "", x, y, width, height, advance: line.getComputedTextLength() };
    });
  }, file);

const PLANS = [
  ...DEMOS.map((name) => [name, () => demo(name)] as const),
  ...Object.keys(GARMENTS).map((name) => [name, () => garment(name)] as const),
];

describe.each(PLANS)("in a browser the figures of %s", (_, plan) => {
  it.each(FIGURE_NAMES.filter((figure) => figuresOf(plan()).includes(figure)))(
    "have every line of lettering in its box: %s",
    async (figure) => {
      const { file, lines } = given(plan(), figure);
      const seen = await measured(file);
      expect(seen.map(({ text }) => text)).toEqual(lines.map(({ text }) => text));
      expect(seen.length).toBeGreaterThan(5);
      const out = seen.filter((line, i) => {
        const box = lines[i] as Line;
        return (
          line.advance > box.width ||
          line.x < box.x - ROUNDED ||
          line.x + line.width > box.x + box.width + ROUNDED ||
          line.y < box.y - ROUNDED ||
          line.y + line.height > box.y + box.height + ROUNDED
        );
      });
      expect(out).toEqual([]);
    },
  );
});
