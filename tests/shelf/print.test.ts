/** Printing with a world in memory: the browser found or not, and what is left when it fails. */
import { describe, expect, it } from "vitest";
import { main } from "../../src/main.ts";
import { findChromium } from "../../src/shelf/chromium.ts";
import { recipeText } from "../recipes.ts";
import { type MemoryWorld, memoryWorld } from "./memory.ts";

const PDF = "%PDF-1.4\n/CreationDate (D:20261125125410+01'00')\n%%EOF";

/** A world with a recipe and a browser that writes `pdf` where it is told to. */
function worldWith(pdf: string | undefined): MemoryWorld & { asked: string[][] } {
  const world = memoryWorld({ "/w/skirt/recipe.md": recipeText(), "/usr/bin/chromium": "" });
  const asked: string[][] = [];
  world.program = (program, words) => {
    asked.push([program, ...words]);
    const file = words.find((word) => word.startsWith("--print-to-pdf="))?.slice(15);
    if (pdf === undefined) return "it ended with 1: no display";
    if (file) world.files.set(file, pdf);
    return undefined;
  };
  return Object.assign(world, { asked });
}

const pdfs = (world: MemoryWorld): string[] =>
  [...world.files.keys()].filter((file) => file.endsWith(".pdf")).toSorted();

describe("build --pdf", () => {
  it("prints full pages and small ones, on A4 unless told otherwise, and leaves nothing else behind", async () => {
    const world = worldWith(PDF);
    expect(await main(["build", "skirt", "--pdf"], world)).toBe(0);
    expect(pdfs(world)).toEqual(["/w/output/skirt/booklet-a5.pdf", "/w/output/skirt/booklet.pdf"]);
    expect([...world.files.keys()].filter((file) => file.includes("printing"))).toEqual([]);
    expect(world.said.out).toContain("print output/skirt/booklet.pdf");
    expect(world.asked.map(([program]) => program)).toEqual(["/usr/bin/chromium", "/usr/bin/chromium"]);
  });

  it("on Letter the small pages are half a letter", async () => {
    const world = worldWith(PDF);
    expect(await main(["build", "skirt", "--pdf", "--paper=Letter"], world)).toBe(0);
    expect(pdfs(world)).toEqual(["/w/output/skirt/booklet-half-letter.pdf", "/w/output/skirt/booklet.pdf"]);
  });

  it("gives the browser a page with just one paper fixed", async () => {
    const world = worldWith(PDF);
    const pages: string[] = [];
    const write = world.write;
    world.write = (path, contents) => {
      if (path.includes("printing")) pages.push(String(contents));
      write(path, contents);
    };
    await main(["build", "skirt", "--pdf"], world);
    expect(
      pages.map((page) => [...page.matchAll(/id="paper-([\w-]+)" media="print"/g)].map(([, name]) => name)),
    ).toEqual([["a4"], ["a5"]]);
    expect(world.files.get("/w/output/skirt/booklet.html")).not.toContain('media="print"');
  });

  it("writes no moment of making, so that the same recipe gives the same bytes", async () => {
    const world = worldWith(PDF);
    await main(["build", "skirt", "--pdf"], world);
    const made = world.files.get("/w/output/skirt/booklet.pdf") ?? "";
    expect(made).toContain("D:20000101000000+00'00'");
    expect(made).toHaveLength(PDF.length);
  });

  it.each([
    ["the browser fails", undefined, "no display"],
    ["what it writes is no PDF", "<html>", "is not a PDF"],
  ])("%s: the booklet is whole, the fault is said, exit 3", async (_, pdf, words) => {
    const world = worldWith(pdf);
    expect(await main(["build", "skirt", "--pdf"], world)).toBe(3);
    expect(world.files.has("/w/output/skirt/booklet.html")).toBe(true);
    expect(pdfs(world)).toEqual([]);
    expect(world.said.err).toContain(words);
    expect(world.said.err).toContain("print by hand: open booklet.html");
    expect([...world.files.keys()].filter((file) => file.includes("printing"))).toEqual([]);
  });

  it("without a browser the booklet is whole, and the way by hand is said, exit 3", async () => {
    const world = memoryWorld({ "/w/skirt/recipe.md": recipeText() });
    expect(await main(["build", "skirt", "--pdf"], world)).toBe(3);
    expect(world.files.has("/w/output/skirt/booklet.html")).toBe(true);
    expect(world.said.err).toContain("no Chromium");
    expect(world.said.err).toContain("print by hand");
  });

  it("says it as data with --json", async () => {
    const world = memoryWorld({ "/w/skirt/recipe.md": recipeText() });
    expect(await main(["build", "skirt", "--pdf", "--json"], world)).toBe(3);
    expect(JSON.parse(world.said.out)).toMatchObject({ notPrinted: expect.stringContaining("no Chromium") });
    expect(world.said.err).toBe("");
  });

  it("a recipe with errors counts more than what was not printed", async () => {
    const world = memoryWorld({ "/w/skirt/recipe.md": recipeText({ wearer: { waist: "27" } }) });
    expect(await main(["build", "skirt", "--pdf"], world)).toBe(1);
  });

  it.each([
    [["build", "skirt", "--paper", "a4"], "--paper is for printing"],
    [["build", "skirt", "--pdf", "--paper", "a3"], "a4 or letter"],
    [["build", "skirt", "--pdf", "--paper"], "--paper needs"],
    [["check", "skirt", "--pdf"], "check writes nothing"],
  ])("%j is wrong use", async (words, said) => {
    const world = worldWith(PDF);
    expect(await main(words, world)).toBe(2);
    expect(world.said.err).toContain(said);
  });
});

describe("finding the browser", () => {
  const found = (files: string[], settings: Record<string, string>, platform = "linux") => {
    const world = memoryWorld(Object.fromEntries(files.map((file) => [file, ""])));
    Object.assign(world.settings, settings);
    world.platform = platform;
    return findChromium(world);
  };
  it.each([
    [
      "the setting comes first",
      ["/a/mine", "/usr/bin/chromium"],
      { PLAINWORK_CHROMIUM: "/a/mine" },
      "linux",
      "/a/mine",
    ],
    ["the other setting too", ["/a/mine"], { CHROME_PATH: "/a/mine" }, "linux", "/a/mine"],
    [
      "a setting that names nothing is not passed over",
      ["/usr/bin/chromium"],
      { CHROME_PATH: "/a/mine" },
      "linux",
      undefined,
    ],
    ["on the path", ["/b/google-chrome"], { PATH: "/a:/b" }, "linux", "/b/google-chrome"],
    ["in a usual place", ["/usr/bin/chromium-browser"], {}, "linux", "/usr/bin/chromium-browser"],
    [
      "on a Mac",
      ["/Applications/Chromium.app/Contents/MacOS/Chromium"],
      {},
      "darwin",
      "/Applications/Chromium.app/Contents/MacOS/Chromium",
    ],
    [
      "on Windows",
      ["C:\\P\\Chromium\\Application\\chrome.exe"],
      { ProgramFiles: "C:\\P", PATH: "C:\\w;C:\\x" },
      "win32",
      "C:\\P\\Chromium\\Application\\chrome.exe",
    ],
    ["nowhere", [], { PATH: "/a" }, "linux", undefined],
  ] as const)("%s", (_, files, settings, platform, expected) => {
    expect(found([...files], settings, platform)).toBe(expected);
  });
});
