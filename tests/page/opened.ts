/** Booklet pages on disk, opened in a real browser; whatever goes wrong in them is kept. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { checkProject } from "../../src/shelf/build.ts";
import { nodeWorld } from "../../src/shelf/world.ts";
import { launch } from "./browser.ts";

const DEMO_FOLDER = fileURLToPath(new URL("../../demo-projects/", import.meta.url));

export { DEMOS } from "../demos.ts";

/** A demo's page as it is built. */
export function demoPage(demo: string): string {
  const recipe = join(DEMO_FOLDER, demo, "recipe.md");
  const { plan, own } = checkProject(nodeWorld(process), { recipe, shown: recipe, name: demo });
  if (!plan) throw new Error(`${demo} does not build`);
  return makeBooklet(plan, own).get("booklet.html") ?? "";
}

export const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface Axe {
  run(): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
}

/** What axe finds on a page opened with `bypassCSP`. */
export async function axeFindings(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: Axe }).axe.run();
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 300)} ${nodes[0]?.failureSummary}`,
    );
  });
}

/** A browser with a folder of pages. */
export class Shelf {
  readonly trouble: string[] = [];
  readonly folder = mkdtempSync(join(tmpdir(), "plainwork-page-"));
  private readonly browser: Browser;

  private constructor(browser: Browser) {
    this.browser = browser;
  }

  static async open(pages: Readonly<Record<string, string>>): Promise<Shelf> {
    const shelf = new Shelf(await launch());
    for (const [name, html] of Object.entries(pages)) writeFileSync(join(shelf.folder, `${name}.html`), html);
    return shelf;
  }

  context(options: Parameters<Browser["newContext"]>[0] = {}): Promise<BrowserContext> {
    return this.browser.newContext({ viewport: { width: 400, height: 800 }, ...options });
  }

  async page(name: string, context?: BrowserContext): Promise<Page> {
    const page = await (context ?? (await this.context())).newPage();
    const url = pathToFileURL(join(this.folder, `${name}.html`)).href;
    page.on("console", (said) => void (said.type() === "error" && this.trouble.push(said.text())));
    page.on("pageerror", (error) => void this.trouble.push(error.message));
    page.on("request", (request) => {
      if (request.url() !== url && !/^(data|blob):/.test(request.url())) this.trouble.push(request.url());
    });
    await page.goto(url);
    return page;
  }

  async close(): Promise<void> {
    await this.browser.close();
    rmSync(this.folder, { recursive: true, force: true });
  }
}
