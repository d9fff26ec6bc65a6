/** A booklet's page read back: does today's program give the same numbers? */
import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { UNSEALED } from "../../src/booklet/page.ts";
import { main } from "../../src/main.ts";
import { recipeText } from "../recipes.ts";
import { asText, type MemoryWorld, memoryWorld } from "./memory.ts";

const PHOTO = asText(
  Uint8Array.of(
    0x89,
    0x50,
    0x4e,
    0x47,
    0x0d,
    0x0a,
    0x1a,
    0x0a,
    0,
    0,
    0,
    13,
    0x49,
    0x48,
    0x44,
    0x52,
    0,
    0,
    0,
    1,
    0,
    0,
    0,
    1,
  ),
);
const PROJECT = {
  "/w/a/recipe.md": `${recipeText()}\n{{> the-rest}}\n\n\`\`\`workings\nribbon = skirt.round + 3 in\n\`\`\`\n\n![A bow < a knot](photos/bow.png)\n`,
  "/w/a/photos/bow.png": PHOTO,
  "/w/a/evidence.csv": "year,set\n1850,gauged\n1851,pleated\n",
  "/w/a/templates/keeping.md": "## Keeping\n\nOn a peg.\n",
  "/w/a/as-made.yaml": "- date: 2026-01-01\n  lessons: wax < thread\n",
  "/w/b/recipe.md": recipeText({ title: "B" }),
  "/w/b/as-made.yaml":
    "- date: 2026-01-01\n  finished: May\n  hours: {gauging: 1 h}\n  counts: {gauging: 700}\n",
};

async function run(world: MemoryWorld, ...argv: string[]): Promise<number> {
  world.said.out = "";
  world.said.err = "";
  return main(argv, world);
}

const built = memoryWorld(PROJECT);
const ready = run(built, "build", "a", "--out", "out");
async function page(): Promise<string> {
  expect(await ready, built.said.err).toBe(0);
  return built.files.get("/w/out/a/booklet.html") ?? "";
}

const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");

/** A page as another version of the program might have built it: what it carries changed, its checksums right. */
function rebuilt(html: string, change: (carried: string) => string): string {
  const [, sum = "", whole = "", text = ""] = /data-sum="(\w+)" data-page="(\w+)">([^<]*)</.exec(html) ?? [];
  const carried = change(text);
  const unsealed = html
    .replace(text, () => carried)
    .replace(sum, sha256(carried))
    .replace(whole, UNSEALED);
  return unsealed.replace(UNSEALED, sha256(unsealed));
}

async function checked(html: string, ...more: string[]) {
  const world = memoryWorld({ "/w/x.html": html });
  const code = await run(world, "check", "x.html", ...more);
  expect([...world.files.keys()]).toEqual(["/w/x.html"]);
  return { code, ...world.said };
}

describe("plainwork check booklet.html", () => {
  it("works a page's own recipe out again, with list, wording, workings, record and pace, away from its folder", async () => {
    const { code, out, err } = await checked(await page());
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(
      /^x\.html: whole, built with [\d.]+; today's program \([\d.]+\) gives the same \d{3} numbers\n$/,
    );
    const data = JSON.parse((await checked(await page(), "--json")).out);
    expect(data.booklets[0]).toMatchObject({ booklet: "x.html", ok: true, differences: [], faults: [] });
    expect(data.booklets[0].files["recipe.md"]).toBe(PROJECT["/w/a/recipe.md"]);
    expect(Object.keys(data.booklets[0].files)).toEqual([
      "recipe.md",
      "evidence.csv",
      "as-made.yaml",
      "templates/keeping.md",
    ]);
  });

  it("names every number that comes out otherwise", async () => {
    const other = rebuilt(await page(), (text) =>
      text
        .replace(
          '"skirt.round":["173","in","173 in"]',
          '"skirt.round":["174","in","174 in"],"skirt.gone":["1","in","1 in"]',
        )
        .replace(/"plainwork":"[^"]*"/, '"plainwork":"0.0.9"'),
    );
    const { code, err } = await checked(other);
    expect(code).toBe(1);
    expect(err).toMatch(
      /^x\.html: built with 0\.0\.9; today's program \([\d.]+\) gives 2 of its \d{3} numbers otherwise:$/m,
    );
    expect(err).toContain("  skirt.round: 174 in in the booklet, 173 in today\n");
    expect(err).toContain("  skirt.gone: 1 in in the booklet, no such number today\n");
    const { differences } = JSON.parse((await checked(other, "--json")).out).booklets[0];
    expect(differences).toEqual([
      { name: "skirt.round", was: "174 in", now: "173 in" },
      { name: "skirt.gone", was: "1 in", now: null },
    ]);
  });

  it("does not mind numbers that are new", async () => {
    const older = rebuilt(await page(), (text) => text.replace('"skirt.round":["173","in","173 in"],', ""));
    expect(await checked(older)).toMatchObject({ code: 0, err: "" });
    expect((await checked(older)).out).toContain("numbers, and 1 more");
  });

  it.each<[string, (html: string) => string, string]>([
    [
      "a byte of a printed number",
      (html) => html.replace(/(<data value="\d)/, "$19"),
      "this page was changed after it was built (its checksum differs); the recipe in it is whole",
    ],
    [
      "a byte of the last line",
      (html) => html.replace("</html>", "</html> "),
      "this page was changed after it was built",
    ],
    [
      "a byte of the recipe it carries",
      (html) => html.replace('waist: \\"25 1/2 in', 'waist: \\"26 1/2 in'),
      "the recipe in it is not what it was built from",
    ],
    [
      "a byte of the checksum",
      (html) => html.replace(/data-sum="./, (text) => text.replace(/.$/, (c) => (c === "0" ? "1" : "0"))),
      "the recipe in it is not what it was built from",
    ],
    [
      "what it carries cut short",
      (html) => html.replace(/("plainwork":"[^"]*",)[^<]{500}/, "$1"),
      "this page carries no recipe that can be read",
    ],
    [
      "half of the page",
      (html) => html.slice(0, html.length / 3),
      "this page carries no recipe that can be read",
    ],
  ])("finds %s changed", async (_, spoil, says) => {
    const spoilt = spoil(await page());
    expect(spoilt).not.toBe(await page());
    const { code, err, out } = await checked(spoilt);
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toContain(`x.html: `);
    expect(err).toContain(says);
  });

  it("says where a recipe is one that today's program cannot work out", async () => {
    const strange = rebuilt(await page(), (text) => text.replace('recipe: \\"1\\"', 'recipe: \\"7\\"'));
    const { code, err } = await checked(strange);
    expect(code).toBe(1);
    expect(err).toContain("today's program cannot work this recipe out");
    expect(err).toContain("x.html, recipe.md:2:");
    expect(err).toContain("[recipe-version]");
  });

  it("another page is no booklet; one that is not there is wrong use; none can be built", async () => {
    expect((await checked("<!DOCTYPE html><title>x</title>")).err).toContain("carries no recipe");
    const world = memoryWorld({ "/w/x.html": "" });
    expect(await run(world, "check", "y.html")).toBe(2);
    expect(await run(world, "build", "x.html")).toBe(2);
    expect(world.said.err).toContain("can be checked");
  });

  it("same project, same bytes, wherever it lies", async () => {
    const there = memoryWorld(
      Object.fromEntries(
        Object.entries(PROJECT).map(([path, text]) => [path.replace("/w/", "/w/deep/"), text]),
      ),
    );
    await run(there, "build", "deep/a", "--out", "out");
    expect(there.files.get("/w/out/a/booklet.html")).toBe(await page());
  });
});
