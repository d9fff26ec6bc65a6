/** Sheets of one page: printed by a browser each is one page, on A4 and on Letter, and readable on a telephone. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { contextOf } from "../../src/booklet/context.ts";
import { blankSheet } from "../../src/booklet/original/blank.ts";
import { SHEETS, sheetsOf } from "../../src/booklet/sheet-list.ts";
import { sheetPage } from "../../src/booklet/sheets.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { ALL_DEMOS } from "../long.ts";
import { recipeText, tried } from "../recipes.ts";
import { launch } from "./browser.ts";
import cases from "./sheets.json" with { type: "json" };

const DEMOS = join(import.meta.dirname, "../../demo-projects");
/** What the normal run takes; the long run takes every demo. */
const TRIED = new Set(["brown-poplin-1861", "plum-silk-over-hoop"]);
const ASKED = 'publish: {commission: "true", class: "true"}\n';

/** Demos with one recipe, asked for both sheets. */
const demos = readdirSync(DEMOS)
  .map((name) => [name, readFileSync(join(DEMOS, name, "recipe.md"), "utf8")] as const)
  .filter(([, text]) => !/^(?:sizes|publish):/m.test(text))
  .map(([name, text]) => [name, text.replace("---\n", `---\n${ASKED}`)] as const);
const all = [
  ...(ALL_DEMOS ? demos : demos.filter(([name]) => TRIED.has(name))),
  ...cases.map(({ about, keys }) => [about, recipeText(keys as never)] as const),
];

let browser: Browser;
let folder: string;
beforeAll(async () => {
  browser = await launch();
  folder = mkdtempSync(join(tmpdir(), "sheets-"));
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

const sheetsFor = (plan: Plan): ReadonlyMap<string, string> => {
  const context = contextOf(plan);
  return new Map(sheetsOf(plan.recipe).map((sheet) => [sheet.file, sheetPage(sheet, plan, context, "0")]));
};

const pagesOf = (pdf: string): number =>
  Number(/^Pages:\s+(\d+)/m.exec(execFileSync("pdfinfo", [pdf], { encoding: "utf8" }))?.[1]);

describe("sheets of one page", () => {
  it.each(all)("%s", async (_, source) => {
    const { plan, messages } = tried(source);
    if (!plan) throw new Error(messages.map(({ text }) => text).join("\n"));
    const files = sheetsFor(plan);
    for (const { file, name } of SHEETS) {
      const html = files.get(file) ?? "";
      expect(html).not.toContain("<script");
      const path = join(folder, file);
      writeFileSync(path, html);
      const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
      await page.goto(`file://${path}`);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
      for (const format of ["A4", "Letter"]) {
        const pdf = join(folder, `${name}-${format}.pdf`);
        await page.pdf({ path: pdf, format });
        expect(pagesOf(pdf), `${name} on ${format}`).toBe(1);
      }
      await page.close();
    }
  });

  it("the blank sheet for an original is one page too", async () => {
    const path = join(folder, "original.html");
    writeFileSync(path, blankSheet("0"));
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    await page.goto(`file://${path}`);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    for (const format of ["A4", "Letter"]) {
      const pdf = join(folder, `original-${format}.pdf`);
      await page.pdf({ path: pdf, format });
      expect(pagesOf(pdf), format).toBe(1);
    }
    await page.close();
  });

  it("print numbers by their names, those of the plan", () => {
    const { plan } = tried(demos[0]?.[1] ?? "");
    const files = sheetsFor(plan as Plan);
    for (const { file } of SHEETS) {
      const printed = [
        ...(files.get(file) ?? "").matchAll(/<data value="([^"]*)" data-name="([^"]*)">([^<]*)</g),
      ];
      expect(printed.length).toBeGreaterThan(15);
      for (const [, , name = "", text] of printed)
        expect(text, name).toBe((plan as Plan).values.get(name)?.shown);
    }
  });

  it("are linked from the booklet, and only where they are asked for", () => {
    const [plain, asked] = [recipeText(), demos[0]?.[1] ?? ""].map((source) =>
      makeBooklet(tried(source).plan as Plan),
    );
    for (const { file } of SHEETS) {
      expect(plain?.has(file)).toBe(false);
      expect(plain?.get("booklet.html")).not.toContain(`href="${file}"`);
      expect(asked?.get("booklet.html")).toContain(`href="${file}"`);
      expect(asked?.get("booklet.md")).toContain(`](${file})`);
    }
  });

  it("cautions stand before the steps, and no pin stays in a commission", () => {
    const files = sheetsFor(tried(demos[0]?.[1] ?? "").plan as Plan);
    const lesson = files.get("class.html") ?? "";
    expect(lesson.indexOf("CAUTION")).toBeGreaterThan(0);
    expect(lesson.indexOf("CAUTION")).toBeLessThan(lesson.indexOf(">Lesson<"));
    const commission = files.get("commission.html") ?? "";
    expect(commission).toContain("No pin or needle stays in it");
    expect(commission).toMatch(/WARNING.*Fire/s);
  });
});
