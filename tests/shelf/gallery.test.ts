/** The committed gallery in output/ is what the demos build to today, and no more is kept of it than that. */
import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { makeBooklet, planFile } from "../../src/booklet/booklet.ts";
import { work } from "../../src/booklet/notebook/work.ts";
import { checkProject } from "../../src/shelf/build.ts";
import { filesOfSet } from "../../src/shelf/sizes.ts";
import { nodeWorld } from "../../src/shelf/world.ts";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const WHOLE_PAGE = "mill-house-cotton";
const demos = readdirSync(join(ROOT, "demo-projects"));

const STALE = "the gallery is stale: npm run demo, and commit output/";

/** A page without what is packed into it, and its checksum: compressors differ from machine to machine. */
const unpacked = (text: string): string =>
  text
    .replace(/(<script type="text\/plain" id="\w+">)[^<]*/g, "$1")
    .replace(/data-page="[^"]*"/, "")
    .replace(/<script>[^<]*(?:<(?!\/script>)[^<]*)*/g, "<script>")
    .replace(/&#39;sha256-[^&]*&#39;|'sha256-[^']*'/g, "");

describe("the gallery", () => {
  it.each(demos)("%s", (demo) => {
    const recipe = join(ROOT, "demo-projects", demo, "recipe.md");
    const outcome = checkProject(nodeWorld(process), { recipe, shown: recipe, name: demo });
    const { plan, own, sizes } = outcome;
    if (own && sizes) {
      // Of sizes: what is made of all of them, and each one's numbers.
      const made = new Map(filesOfSet(outcome, own));
      for (const { folder, plan } of sizes)
        made.set(`${folder}/plan.json`, plan ? planFile(work(plan, own.notebook).plan) : "");
      for (const file of made.keys()) if (file.endsWith(".html")) made.delete(file);
      for (const [file, text] of made)
        expect(
          readFileSync(join(ROOT, "output", demo, file), "utf8") === text,
          `${demo}/${file}: ${STALE}`,
        ).toBe(true);
      return;
    }
    if (!plan) throw new Error(`${demo} does not build`);
    for (const { path, bytes } of own?.photographs.values() ?? []) {
      const kept = readFileSync(join(ROOT, "output", demo, path));
      expect(kept.equals(bytes), `${demo}/${path}: ${STALE}`).toBe(true);
    }
    for (const [file, text] of makeBooklet(plan, own)) {
      if (file.endsWith(".html") && (file !== "booklet.html" || demo !== WHOLE_PAGE)) continue;
      const kept = readFileSync(join(ROOT, "output", demo, file), "utf8");
      expect(unpacked(kept) === unpacked(text), `${demo}/${file}: ${STALE}`).toBe(true);
    }
  });

  it("every demo is marked as invented, in its recipe and in its booklet", () => {
    for (const demo of demos) {
      // A recipe made from a sheet is marked where its sheet is.
      const sheet = join(ROOT, "demo-projects", demo, "original.yaml");
      const marked = existsSync(sheet) ? sheet : join(ROOT, "demo-projects", demo, "recipe.md");
      expect(readFileSync(marked, "utf8")).toContain("# An invented scenario");
      expect(readFileSync(join(ROOT, "output", demo, "booklet.md"), "utf8").split("\n")[0]).toContain(
        "(an invented example)",
      );
    }
  });

  it("keeps only booklet.md, figures, guides, photographs and plan.json of each demo, the tables and plans of sizes, and one booklet.html, under 7 MB in all", () => {
    const kept = execFileSync("git", ["ls-files", "output"], { cwd: ROOT, encoding: "utf8" })
      .split("\n")
      .filter(Boolean);
    const allowed =
      /^output\/(index\.md|[\w-]+\/(booklet\.md|plan\.json|sizes\.(md|json)|size-[\w-]+\/(plan\.json|figures\/[\w-]+\.svg)|(figures|guides)\/[\w-]+\.svg|photos\/[\w-]+\.png)|mill-house-cotton\/booklet\.html)$/;
    expect(kept.filter((file) => !allowed.test(file))).toEqual([]);
    expect(new Set(kept.map((file) => file.split("/")[1]))).toEqual(new Set([...demos, "index.md"]));
    expect(kept.map((file) => statSync(join(ROOT, file)).size).reduce((a, b) => a + b)).toBeLessThan(
      7_000_000,
    );
  });
});
