/** `plainwork original` with a world in memory: the form, the recipe, the report, the row; and sheets that are refused. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { main } from "../../src/main.ts";
import { withRow } from "../../src/recipe/evidence-add.ts";
import { readOriginal } from "../../src/recipe/original/read.ts";
import { memoryWorld } from "../shelf/memory.ts";
import broken from "./broken.json" with { type: "json" };
import { sheetText } from "./sheet.ts";

const WEARER = "{name: W-2, waist: 33 in, lengths: {front: 40 in, side: 40 1/2 in, back: 41 in}}";
const worldWith = (text: string, more: Record<string, string> = {}) =>
  memoryWorld({ "/w/found/original.yaml": text, ...more });

describe("plainwork original", () => {
  it("without a sheet puts the blank one and a form into the folder; the form alone is a sheet with nothing measured", async () => {
    const world = memoryWorld({});
    expect(await main(["original", "found"], world)).toBe(0);
    const sheet = world.files.get("/w/found/original-sheet.html") ?? "";
    expect(sheet).toContain("An original is not worn");
    expect(sheet).not.toContain("<script");
    const form = world.files.get("/w/found/original.yaml") ?? "";
    for (const key of ["hem-round", "pleats-in-all", "between-rows", "fold", "wearer"])
      expect(form).toMatch(new RegExp(`^# ${key}:`, "m"));
    expect(parse(form)).toBeNull();
    expect(await main(["original", "found"], world)).toBe(1);
    expect(world.files.has("/w/found/recipe.md")).toBe(false);
  });

  it("writes a recipe that builds, each line with where it comes from, a report three times, and a row", async () => {
    const world = worldWith(sheetText());
    expect(await main(["original", "found"], world), world.said.err).toBe(0);
    const recipe = world.files.get("/w/found/recipe.md") ?? "";
    const lines = recipe.split("\n").filter((line) => /^ *[\w-]+: ./.test(line));
    expect(lines.length).toBeGreaterThan(15);
    for (const line of lines) expect(line).toMatch(/# \S/);
    expect(recipe).toMatch(/pleats-per-inch: 8 +# measured/);
    expect(recipe).toMatch(/thickness: .* # assumed/);
    expect(await main(["build", "found"], world), world.said.err).toBe(0);
    expect(
      JSON.parse(world.files.get("/w/output/found/plan.json") ?? "{}").values["gauging.pleats"].exact,
    ).toBe("220");
    const data = JSON.parse(world.files.get("/w/found/original.json") ?? "{}");
    expect(data.values["pleat.pitch"]).toMatchObject({ exact: "43/55", how: "gauged.cloth / pleats.all" });
    expect(world.files.get("/w/found/original.md")).toContain(
      "| fullness: the round for one of waist seam | 6.25 : 1 |",
    );
    expect(world.files.get("/w/found/original.html")).toContain("6.25 : 1");
    expect(world.files.get("/w/found/evidence.csv")).toBe(
      "year,fibre,sheer,set,seen,note\n1846,,no,gauged,A brown print for the tests (invented),\n",
    );
  });

  it("the same again changes nothing and adds no second row", async () => {
    const world = worldWith(sheetText());
    await main(["original", "found"], world);
    const before = new Map(world.files);
    expect(await main(["original", "found"], world)).toBe(0);
    expect(new Map(world.files)).toEqual(before);
    expect(world.said.out).toContain("has this original already");
  });

  it("carried to another body, three answers stand side by side, and another choice renews the recipe", async () => {
    const world = worldWith(sheetText({ wearer: WEARER }));
    expect(await main(["original", "found"], world), world.said.err).toBe(0);
    const report = world.files.get("/w/found/original.md") ?? "";
    expect(report).toContain("|  | as it was | keep: pitch | keep: breadths | keep: ratio |");
    expect(report).toContain("| gauged pleats | 220 | 264 | 264 | 276 |");
    expect(world.files.get("/w/found/recipe.md")).toMatch(/seam: 1 5\/16 in/);
    expect(await main(["original", "found", "--keep", "breadths"], world)).toBe(0);
    expect(world.files.get("/w/found/recipe.md")).toMatch(/seam: 1\/2 in/);
  });

  it("a recipe that a hand has changed is left as it is", async () => {
    const world = worldWith(sheetText());
    await main(["original", "found"], world);
    const mine = `${world.files.get("/w/found/recipe.md")}My own words.\n`;
    world.files.set("/w/found/recipe.md", mine);
    expect(await main(["original", "found"], world)).toBe(0);
    expect(world.files.get("/w/found/recipe.md")).toBe(mine);
    expect(world.said.err).toContain("changed by hand");
  });

  it("a list that cannot be read gets no row, and is said", async () => {
    const world = worldWith(sheetText(), { "/w/found/evidence.csv": "year,set\n184x,gauged\n" });
    expect(await main(["original", "found"], world)).toBe(1);
    expect(world.files.get("/w/found/evidence.csv")).toBe("year,set\n184x,gauged\n");
    expect(world.said.err).toContain("bad-row");
  });

  it("contradictions are said with their place, and a garment that cannot be made is refused", async () => {
    const world = worldWith(sheetText({ breadths: "[{width: 44 in, count: 4}]" }));
    expect(await main(["original", "found"], world)).toBe(0);
    expect(world.said.err).toMatch(/original.yaml:4:\d+: warning \[breadths-and-round\]/);
    const none = worldWith(sheetText({ cloth: "{width: 40 in}" }));
    expect(await main(["original", "found"], none)).toBe(1);
    expect([...none.files.keys()]).toEqual(["/w/found/original.yaml"]);
  });

  it.each([
    [["original"], "one folder"],
    [["original", "a", "b"], "one folder"],
    [["original", "found", "--keep", "waist"], "--keep needs pitch, breadths, ratio"],
    [["original", "found", "--keep", "pitch"], "has no wearer"],
    [["original", "found", "--far"], "is not an option"],
  ])("%j is wrong use", async (words, said) => {
    const world = worldWith(sheetText());
    expect(await main(words, world)).toBe(2);
    expect(world.said.err).toContain(said);
  });
});

describe("a broken sheet", () => {
  it.each(broken.map((each) => [each.about, each] as const))("%s", (_, { keys, messages }) => {
    const text = sheetText(keys as Record<string, string | null>);
    const read = readOriginal("original.yaml", text);
    expect(read.original).toBeUndefined();
    expect(read.messages.map(({ code }) => code).sort()).toEqual([...messages].sort());
    for (const { place, hint, expected } of read.messages) {
      expect(place?.file).toBe("original.yaml");
      expect(hint ?? expected).toBeTruthy();
    }
  });
});

describe("a row of the list of originals", () => {
  const ROW = { year: 1850, set: "pleated", seen: 'a "house", case 4', sheer: true } as const;
  it("follows the list's own columns and line ends, and ends its last line", () => {
    const list = "set,year,note\r\ngauged,1846,x";
    expect(withRow("e", list, ROW)).toEqual({ text: `${list}\r\npleated,1850,\r\n` });
    expect(withRow("e", undefined, ROW)).toEqual({
      text: 'year,fibre,sheer,set,seen,note\n1850,,yes,pleated,"a ""house"", case 4",\n',
    });
  });
});

describe("the demo of an original", () => {
  it("has the recipe, the row and the report that its sheet gives", async () => {
    const folder = join(import.meta.dirname, "../../demo-projects/blue-sprig-from-an-original");
    const world = worldWith(readFileSync(join(folder, "original.yaml"), "utf8"));
    expect(await main(["original", "found"], world), world.said.err).toBe(0);
    for (const file of ["recipe.md", "evidence.csv", "original.md"])
      expect(
        readFileSync(join(folder, file), "utf8") === world.files.get(`/w/found/${file}`),
        `${file} is stale: plainwork original`,
      ).toBe(true);
  });
});
