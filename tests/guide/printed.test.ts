/** The booklet as Chromium prints it, measured on the paper: squares, marks, rows, page sizes, order, steps kept whole. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { guidesOf } from "../../src/guide/index.ts";
import { stripKinds } from "../../src/guide/marking-strip.ts";
import { checkProject } from "../../src/shelf/build.ts";
import { findChromium } from "../../src/shelf/chromium.ts";
import { type Paper, PDF_FILES, printBooklet } from "../../src/shelf/print.ts";
import { nodeWorld } from "../../src/shelf/world.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { ALL_DEMOS } from "../long.ts";
import { launch } from "../page/browser.ts";
import { demoPage } from "../page/opened.ts";
import { type Drawn, darkAlong, drawnOn, pageSizes, pageTexts, type Spot } from "./drawn.ts";

/** W3C, CSS Values: 1in = 2.54cm = 96px; a guide drawn 25.4 mm wide prints 25.4 mm. Allowed: a tape's reading of 0.2 mm. */
const ALLOWED = 0.2;
const DEMOS = fileURLToPath(new URL("../../demo-projects/", import.meta.url));
const PAPERS: Readonly<Record<Paper, { full: [number, number]; small: [number, number] }>> = {
  a4: { full: [210, 297], small: [148, 210] },
  letter: { full: [215.9, 279.4], small: [139.7, 215.9] },
};

/** What stands at the heads of pages, from the style itself. */
const HEADS = [
  ...readFileSync(fileURLToPath(new URL("../../src/booklet/print.css", import.meta.url)), "utf8").matchAll(
    /content: "([A-Z][^"]*)"/g,
  ),
].map(([, head]) => head);

const world = nodeWorld(process);
let folder: string;
const plans = new Map<string, Plan>();
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "plainwork-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function planOf(name: string): Plan {
  const recipe = join(DEMOS, name, "recipe.md");
  const { plan } = checkProject(world, { recipe, shown: recipe, name });
  if (!plan) throw new Error(`${name} does not build`);
  plans.set(name, plan);
  return plan;
}

interface Printed {
  readonly plan: Plan;
  readonly html: string;
  readonly full: string;
  readonly small: string;
}

function print(name: string, paper: Paper): Printed {
  const browser = findChromium(world);
  if (!browser) throw new Error("no Chromium: run node tests/setup/tools.mjs");
  const plan = planOf(name);
  const html = demoPage(name);
  const pdfs = printBooklet(world, html, join(folder, "printing"), { browser, paper });
  const [full = "", small = ""] = PDF_FILES[paper].map(([file]) => {
    const path = join(folder, `${name}-${paper}-${file}`);
    writeFileSync(path, pdfs.get(file) ?? "");
    return path;
  });
  return { plan, html, full, small };
}

const near = (value: number, wanted: number): boolean => Math.abs(value - wanted) <= ALLOWED;

/** Closed rectangles of a page as width and height. */
const rectangles = (drawn: readonly Drawn[]): { width: number; height: number }[] =>
  drawn
    .filter(({ closed, curved }) => closed && !curved)
    .map(({ pieces }) => {
      const spots = pieces.flat();
      const [xs, ys] = [spots.map(({ x }) => x), spots.map(({ y }) => y)];
      return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
    });

/** One tile as it lies on the paper: its heavy edge, the middles of its rings, its dots. */
interface PaperTile {
  readonly edge: number;
  readonly rings: readonly number[];
  readonly dots: readonly Spot[];
}

/** The marking tiles of a page: from one heavy edge to the next, those that hold dots of a needle's mark. */
function tilesOn(drawn: readonly Drawn[]): PaperTile[] {
  const starts = drawn.flatMap(({ width }, i) => (width > 0.6 && width < 0.8 ? [i] : []));
  return starts
    .map((start, k) => drawn.slice(start, starts[k + 1] ?? drawn.length))
    .map((parts): PaperTile => {
      const rings = parts
        .filter(({ curved }) => curved)
        .map(({ pieces }) => pieces.flat().map(({ x }) => x))
        .map((xs) => (Math.max(...xs) + Math.min(...xs)) / 2);
      const dots = parts
        .filter(({ round, width }) => round && width > 0.8 && width < 1)
        .flatMap(({ pieces }) => pieces.map((piece) => piece[0] as Spot));
      return { edge: parts[0]?.pieces[0]?.[0]?.y ?? 0, rings, dots };
    })
    .filter(({ dots }) => dots.length > 0);
}

/** Where the marks come to lie when the tiles are stuck ring on ring: distances from the first mark. */
function stuck(tiles: readonly PaperTile[], row: number): number[] {
  let before = 0;
  return tiles.flatMap((tile, i) => {
    const rightmost = Math.max(...tile.rings, ...tile.dots.map(({ x }) => x));
    const start = i === 0 ? rightmost : Math.max(...tile.rings);
    const marks = tile.dots
      .filter(({ y }) => near(y - tile.edge, row))
      .map(({ x }) => before + start - x)
      .sort((a, b) => a - b);
    before += start - Math.min(...tile.rings);
    return marks;
  });
}

const PRINTED = [
  // First one that has a sheet beside it: the link to that took a page of paper once.
  ["green-silk-1862", "a4"],
  ["mill-house-cotton", "a4"],
  ["grey-winter-wool", "letter"],
  ["mill-house-cotton", "letter"],
  ["plum-silk-over-hoop", "letter"],
  ["white-sheer-petticoat", "a4"],
] as const;

describe.each(PRINTED.slice(0, ALL_DEMOS ? PRINTED.length : 1))("%s on %s", (name, paper) => {
  let printed: Printed;
  beforeAll(() => {
    printed = print(name, paper);
  });

  it("has the chosen pages, and the guides on full sheets at the end of both files", () => {
    const guides = guidesOf(printed.plan).length;
    for (const [file, size] of [
      [printed.full, PAPERS[paper].full],
      [printed.small, PAPERS[paper].small],
    ] as const) {
      const sizes = pageSizes(file);
      sizes.forEach(({ width, height }, i) => {
        const [w, h] = i < sizes.length - guides ? size : PAPERS[paper].full;
        expect(Math.abs(width - w)).toBeLessThan(0.3);
        expect(Math.abs(height - h)).toBeLessThan(0.3);
      });
    }
  });

  it.each(["full", "small"] as const)("every guide has both squares true (%s)", (which) => {
    const file = printed[which];
    const pages = pageSizes(file).length;
    const guides = guidesOf(printed.plan);
    guides.forEach((_, i) => {
      const found = rectangles(drawnOn(file, pages - guides.length + i + 1));
      expect(found.filter(({ width, height }) => near(width, 25.4) && near(height, 25.4))).toHaveLength(1);
      expect(found.filter(({ width, height }) => near(width, 20) && near(height, 20))).toHaveLength(1);
    });
  });

  it("the squares are true in the printer's own dots too", () => {
    const pages = pageSizes(printed.full).length;
    const dark = darkAlong(printed.full, pages, 12 + 4).filter((x) => x > 140);
    expect(dark).toHaveLength(4);
    const [a = 0, b = 0, c = 0, d = 0] = dark;
    expect(near(b - a, 20)).toBe(true);
    expect(near(d - c, 25.4)).toBe(true);
  });

  it("the strips, stuck ring on ring, carry every mark of the plan at its place, in every row", () => {
    const { plan, full } = printed;
    const guides = guidesOf(plan);
    const pages = pageSizes(full).length;
    const tiles = guides.flatMap((_, i) => tilesOn(drawnOn(full, pages - guides.length + i + 1)));
    const kinds = stripKinds(plan);
    expect(kinds).toHaveLength(1);
    expect(tiles.length).toBeGreaterThan(3);
    for (const row of plan.rows) {
      const places = stuck(tiles, row.value.valueOf());
      const wanted = (plan.gauged[0]?.marks ?? []).map(({ value }) => value.valueOf());
      expect(places).toHaveLength(wanted.length);
      places.forEach((place, i) => {
        expect(Math.abs(place - (wanted[i] as number))).toBeLessThanOrEqual(ALLOWED);
      });
    }
  });

  it("no guide runs into the margin", () => {
    const { plan, full } = printed;
    const pages = pageSizes(full);
    const guides = guidesOf(plan);
    guides.forEach((_, i) => {
      const n = pages.length - guides.length + i + 1;
      const { width, height } = pages[n - 1] as { width: number; height: number };
      const spots = drawnOn(full, n).flatMap(({ pieces }) => pieces.flat());
      expect(Math.min(...spots.map(({ x }) => x))).toBeGreaterThan(11.5);
      expect(Math.max(...spots.map(({ x }) => x))).toBeLessThan(width - 11.5);
      expect(Math.min(...spots.map(({ y }) => y))).toBeGreaterThan(11.5);
      expect(Math.max(...spots.map(({ y }) => y))).toBeLessThan(height - 11.5);
    });
  });

  it("chapters come in order, each page with its chapter's name at its head and its number at its foot", () => {
    const texts = pageTexts(printed.full);
    const titles = [...printed.html.matchAll(/<h2 id="(?!your-measures)[^"]*-title">([^<]*)<\/h2>/g)].map(
      ([, title]) => title ?? "",
    );
    const starts = titles.map((title, i) =>
      texts.findIndex(
        (text) =>
          squashed(text).includes(squashed(`${i + 1}. ${title}`)) &&
          (i === 0 || !text.includes("1. At a glance")),
      ),
    );
    expect(starts.every((page) => page >= 0)).toBe(true);
    expect(starts).toEqual(starts.toSorted((a, b) => a - b));
    const guides = guidesOf(printed.plan).length;
    const laid = pageTexts(printed.full, "-layout");
    laid.slice(1, laid.length - guides).forEach((text, i) => {
      const lines = text.trim().split("\n");
      expect(HEADS).toContain(lines[0]?.trim());
      expect(lines.at(-1)?.trim()).toBe(String(i + 2));
    });
  });

  it.each(["full", "small"] as const)("no step is parted between two pages (%s)", async (which) => {
    const texts = pageTexts(printed[which]).map(squashed);
    const parted = (await stepsOf(printed.html)).filter(
      (step) => !texts.some((text) => text.includes(squashed(step))),
    );
    expect(parted).toEqual([]);
  });
});

describe("a notebook that begins with the maker's own words", () => {
  it("has them under the contents, and numbers its chapters as the contents do", () => {
    const { full } = print("madder-print-1851", "letter");
    const [first = "", second = ""] = pageTexts(full).map(squashed);
    expect(first).toContain(squashed("This skirt is for walking out"));
    expect(first).toContain(squashed("Guides to print at true size"));
    expect(second).toContain(squashed("1. Cautions"));
  });
});

describe("printed by hand from a browser", () => {
  const byHand = async (format: string): Promise<string> => {
    const html = makeBooklet(planOf("mill-house-cotton")).get("booklet.html") ?? "";
    const [file, pdf] = [join(folder, "by-hand.html"), join(folder, `by-hand-${format}.pdf`)];
    writeFileSync(file, html);
    const browser = await launch();
    try {
      const page = await browser.newPage();
      await page.goto(pathToFileURL(file).href);
      await page.pdf({ path: pdf, format });
    } finally {
      await browser.close();
    }
    return pdf;
  };

  it.each(ALL_DEMOS ? ["A4", "Letter"] : ["A4"])("the guides are true on %s", async (format) => {
    const pdf = await byHand(format);
    const found = rectangles(drawnOn(pdf, pageSizes(pdf).length));
    expect(found.some(({ width, height }) => near(width, 25.4) && near(height, 25.4))).toBe(true);
    expect(found.some(({ width, height }) => near(width, 20) && near(height, 20))).toBe(true);
  });

  it.runIf(ALL_DEMOS)("on A5 they are left out, and nothing is shrunk for their sake", async () => {
    const pdf = await byHand("A5");
    const full = await byHand("A4");
    expect(pageTexts(pdf).join("")).not.toContain("guide 1 of");
    expect(pageTexts(full).join("")).toContain("guide 1 of");
    expect(pageSizes(pdf).length).toBeGreaterThan(pageSizes(full).length * 1.3);
  });
});

/** Text without spaces and hyphens and with ligatures undone, as it comes from a PDF and from a page alike. */
const squashed = (text: string): string => text.normalize("NFKC").replace(/[\s-]+/g, "");

/** The words of every step that holds no list of its own. */
async function stepsOf(html: string): Promise<string[]> {
  const browser = await launch();
  try {
    const file = join(folder, "steps.html");
    writeFileSync(file, html);
    const page = await browser.newPage();
    await page.goto(pathToFileURL(file).href);
    return await page.locator(".steps > li:not(:has(li))").evaluateAll((all) =>
      all.map((step) => {
        const paper = step.cloneNode(true) as HTMLElement;
        // What the page itself puts in does not print, and a drawing's words are read by themselves.
        for (const other of paper.querySelectorAll("[data-own], figure")) other.remove();
        return paper.textContent ?? "";
      }),
    );
  } finally {
    await browser.close();
  }
}
