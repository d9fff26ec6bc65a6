/** The catalogue of a folder, from the plan.json files in it. */
import { describe, expect, it } from "vitest";
import { writeCatalogue } from "../../src/shelf/catalogue/write.ts";
import { type MemoryWorld, memoryWorld } from "./memory.ts";

const value = (shown: string, exact: string, unit = "in") => ({ shown, exact, unit, how: "" });

const plan = (title: string, more: object = {}) =>
  JSON.stringify({
    plainwork: "0.1.0",
    recipe: title,
    size: null,
    garment: { kind: "skirt", year: 1846, fibre: "cotton", cloth: "print", method: "gauged", state: "made" },
    values: {
      "waist.seam": value("27 in", "27"),
      "finished.front": value("38 in", "38"),
      "finished.back": value("40 1/2 in", "81/2"),
      "skirt.round": value("173 in", "173"),
      "skirt.fullness": value("6.41 : 1", "173/27", "1"),
    },
    ...more,
  });

function catalogue(files: Record<string, string>) {
  const world = memoryWorld(
    Object.fromEntries(Object.entries(files).map(([path, text]) => [`/w/out/${path}`, text])),
  );
  const skipped = writeCatalogue(world, "/w/out");
  const read = (name: string): string => world.files.get(`/w/out/${name}`) ?? "";
  return { world, skipped, html: read("index.html"), md: read("index.md") };
}

describe("the catalogue", () => {
  it("lists every garment with what is known of it", () => {
    const { html, md, skipped } = catalogue({
      "a/plan.json": plan('Blue <print> & "co"'),
      "a/figures/finished.svg": "<svg/>",
      "b/plan.json": plan("Older", { garment: undefined }),
    });
    expect(skipped).toEqual([]);
    expect(md).toContain(
      '| [Blue \\<print\\> \\& "co"](a/booklet.md) | [picture](a/figures/finished.svg) | 1846 | cotton | gauged all round | 27 in | front 38 in, back 40 1/2 in | 173 in | 6.41 : 1 |  |  | made |',
    );
    expect(md).toContain("| [Older](b/booklet.md) |  |  |  |  | 27 in |");
    expect(html).toContain('<img src="a/figures/finished.svg"');
    expect(html).toContain("Blue &lt;print&gt; &amp; &quot;co&quot;");
    expect(html).toContain("1846, skirt, cotton, gauged all round");
    expect(html).not.toContain("<print>");
  });

  it("finds sizes a folder deeper, and addresses folders of any name", () => {
    const { html, md } = catalogue({
      "my skirt #1/B/plan.json": plan("Sized", { size: "B" }),
      "my skirt #1/A/plan.json": plan("Sized", { size: "A" }),
    });
    expect(md.match(/Sized, size [AB]/g)).toEqual(["Sized, size A", "Sized, size B"]);
    expect(html).toContain('href="my%20skirt%20%231/B/booklet.html"');
  });

  it("leads from every size to the pages of all sizes, and to the one for a buyer's own measures", () => {
    const { html, md } = catalogue({
      "sized/A/plan.json": plan("Sized", { size: "A" }),
      "sized/B/plan.json": plan("Sized", { size: "B" }),
      "sized/sizes.html": "",
      "sized/measure-your-own.html": "",
      "sized/B/class.html": "",
      "alone/plan.json": plan("Alone"),
      "plain/plan.json": plan("Own"),
      "plain/measure-your-own.html": "",
    });
    const rowOf = (title: string): string =>
      md.split("\n").find((line) => line.startsWith(`| [${title}`)) ?? "";
    for (const size of ["A", "B"])
      expect(rowOf(`Sized, size ${size}`)).toContain(
        "[all sizes in one booklet](sized/booklet.html), [table of the sizes](sized/sizes.html), [with your own measures](sized/measure-your-own.html)",
      );
    expect(rowOf("Sized, size B")).toContain(", [class sheet](sized/B/class.html)");
    expect(rowOf("Sized, size A")).not.toContain("class sheet");
    expect(rowOf("Alone")).not.toMatch(/sizes|measures/);
    expect(rowOf("Own")).toContain("[with your own measures](plain/measure-your-own.html)");
    expect(html.match(/<a href="sized\/sizes.html">/g)).toHaveLength(2);
  });

  it("leaves out what is no plan, what is being written, and what is no booklet", () => {
    const { md, skipped } = catalogue({
      "a/plan.json": plan("Good"),
      "broken/plan.json": plan("Bad").slice(0, 100),
      "list/plan.json": "[]",
      ".new/plan.json": plan("Half"),
      "notes/readme.txt": "x",
      "old/plan.json": JSON.stringify({ recipe: "Old", values: { "waist.seam": { shown: "27 in" } } }),
    });
    expect(skipped).toEqual(["broken/plan.json", "list/plan.json"]);
    expect(md.split("\n").filter((line) => line.startsWith("| ["))).toHaveLength(2);
  });

  it("looks again after writing: what another run placed meanwhile is in it", () => {
    const world: MemoryWorld = memoryWorld({ "/w/out/a/plan.json": plan("First") });
    let placed = false;
    world.fault = (doing, path) => {
      // The other run places its booklet and writes its own catalogue between this run's looking and its writing.
      if (placed || doing !== "write" || !path.includes("index.md")) return;
      placed = true;
      world.files.set("/w/out/b/plan.json", plan("Second"));
    };
    writeCatalogue(world, "/w/out");
    expect(world.files.get("/w/out/index.md")).toContain("Second");
    expect(world.files.get("/w/out/index.html")).toContain("Second");
    expect([...world.files.keys()].filter((path) => path.includes(".new-"))).toEqual([]);
  });

  it("takes away what a killed run left of it, and leaves a living run's", () => {
    const { world } = catalogue({
      "a/plan.json": plan("A"),
      "index.html.new-gone-1": "half",
      "index.md.new-gone-2": "half",
      "index.md.new-2": "another's",
    });
    expect(world.list("/w/out")).toEqual(["a", "index.html", "index.md", "index.md.new-2"]);
  });

  it("same plans, same bytes", () => {
    const files = { "b/plan.json": plan("B"), "a/plan.json": plan("A") };
    expect(catalogue(files).html).toBe(catalogue(Object.fromEntries(Object.entries(files).reverse())).html);
  });
});
