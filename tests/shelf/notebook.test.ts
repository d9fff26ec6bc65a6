/** A project with a notebook, wordings and photographs, through the program: what is copied, what is refused and where. */
import { describe, expect, it } from "vitest";
import { main } from "../../src/main.ts";
import { recipeText } from "../recipes.ts";
import { asText, type MemoryWorld, memoryWorld } from "./memory.ts";

const BYTES = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 255, 128);
const PNG = asText(BYTES);
const JPEG = asText(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 1, 2));
const WEBP = asText(Uint8Array.of(0x52, 0x49, 0x46, 0x46, 9, 9, 9, 9, 0x57, 0x45, 0x42, 0x50));
const body = (text: string): string => `${recipeText()}\n${text}\n\n{{> the-rest}}\n`;

async function build(files: Record<string, string>): Promise<{ world: MemoryWorld; code: number }> {
  const world = memoryWorld(files);
  return { world, code: await main(["build", "a"], world) };
}
const html = (world: MemoryWorld): string => world.files.get("/w/output/a/booklet.html") ?? "";

describe("photographs", () => {
  it("stand in the page as data, and beside booklet.md as files, byte by byte", async () => {
    const { world, code } = await build({
      "/w/a/recipe.md": body(
        '![A bow](photos/bow.png "Tied twice")\n\nSmall: ![b](photos/b.jpg) ![c](photos/c.webp)',
      ),
      "/w/a/photos/bow.png": PNG,
      "/w/a/photos/b.jpg": JPEG,
      "/w/a/photos/c.webp": WEBP,
      "/w/a/photos/unasked.png": PNG,
    });
    expect(world.said.err).toBe("");
    expect(code).toBe(0);
    const photos = [...world.files.keys()].filter((path) => path.startsWith("/w/output/a/photos/"));
    expect(photos.sort()).toEqual(["b.jpg", "bow.png", "c.webp"].map((name) => `/w/output/a/photos/${name}`));
    expect(world.files.get("/w/output/a/photos/bow.png")).toBe(new TextDecoder("latin1").decode(BYTES));
    expect(html(world)).toContain(
      '<figure class="photograph"><img src="data:image/png;base64,iVBORw0KGgoA/4A=" alt="A bow" data-photograph="photos/bow.png"><figcaption>Tied twice</figcaption></figure>',
    );
    expect(html(world)).toMatch(/Small: <img src="data:image\/jpeg;base64,[^"]+" alt="b"/);
    expect(html(world)).toContain('src="data:image/webp;base64,');
    expect(world.files.get("/w/output/a/booklet.md")).toContain('![A bow](photos/bow.png "Tied twice")');
  });

  it("a wording may ask for one", async () => {
    const { world, code } = await build({
      "/w/a/recipe.md": recipeText(),
      "/w/a/templates/hem.md": "## Hem\n\n![The hem](photos/hem.png)\n",
      "/w/a/photos/hem.png": PNG,
    });
    expect(code).toBe(0);
    expect(html(world)).toContain('alt="The hem"');
  });

  const MB = 1024 * 1024;
  it.each([
    ["missing", {}, "no-photograph"],
    ["a text with a picture's name", { "/w/a/photos/a.png": "no picture" }, "photograph-kind"],
    [
      "a picture of another kind",
      { "/w/a/photos/a.png": asText(Uint8Array.of(0x47, 0x49, 0x46, 0x38)) },
      "photograph-kind",
    ],
    ["empty", { "/w/a/photos/a.png": "" }, "photograph-kind"],
    ["too large", { "/w/a/photos/a.png": "x".repeat(MB + 1) }, "photograph-size"],
    ["a folder", { "/w/a/photos/a.png/b.txt": "x" }, "no-photograph"],
  ])("%s is an error at its place, and nothing is written", async (_, files, code) => {
    const { world, code: exit } = await build({ "/w/a/recipe.md": body("x ![A](photos/a.png)"), ...files });
    expect(exit).toBe(1);
    expect(world.said.err).toMatch(new RegExp(`^a/recipe\\.md:\\d+:3: error \\[${code}\\]`, "m"));
    expect(world.files.has("/w/output/a/plan.json")).toBe(false);
  });

  it("together may not pass their bound", async () => {
    const large = asText(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) + "x".repeat(MB - 10);
    const names = ["a", "b", "c", "d", "e"];
    const { world, code } = await build({
      "/w/a/recipe.md": body(names.map((name) => `![A](photos/${name}.png)`).join("\n")),
      ...Object.fromEntries(names.map((name) => [`/w/a/photos/${name}.png`, large])),
    });
    expect(code).toBe(1);
    expect(world.said.err).toContain("the photographs together have 5120 kB; at most 4096");
  });
});

describe("messages of a notebook", () => {
  it("every error of front matter, prose, formula, wording and photograph at once, each with its line and caret", async () => {
    const { world, code } = await build({
      "/w/a/recipe.md": `${recipeText({ wearer: { waist: "27" } })}\n{{skirt.rund}} ![A](photos/a.png)\n\n\`\`\`workings\na = 2 *\n\`\`\`\n`,
      "/w/a/templates/hem.md": "## Hem\r\n\r\nFrom {{skirt.rund}}.\r\n",
      "/w/a/templates/hemm.md": "## Hem\n",
    });
    expect(code).toBe(1);
    const said = world.said.err;
    for (const place of [
      /^a\/recipe\.md:5:\d+: error \[not-a-length\]/m,
      /^a\/recipe\.md:\d+:3: error \[unknown-name\].*\n +\d+ \| \{\{skirt\.rund\}\}.*\n +\| {3}\^{10}$/m,
      /^a\/recipe\.md:\d+:16: error \[no-photograph\]/m,
      /^a\/recipe\.md:\d+:7: error \[formula\].*\n +\d+ \| a = 2 \*$/m,
      /^a\/templates\/hem\.md:3:8: error \[unknown-name\].*\n +3 \| From \{\{skirt\.rund\}\}\.\n +\| {8}\^{10}$/m,
      /^a\/templates\/hemm\.md:1:1: error \[unknown-chapter\]/m,
    ]) {
      expect(said).toMatch(place);
    }
  });

  it("as data carry the same places", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": recipeText(), "/w/a/templates/hem.md": "## A\n{{x}}\n" });
    expect(await main(["check", "a", "--json"], world)).toBe(1);
    const [recipe] = JSON.parse(world.said.out).recipes;
    expect(recipe.messages[0].place).toEqual({ file: "a/templates/hem.md", line: 2, column: 3, length: 1 });
  });

  it("warnings and notes do not stop a booklet", async () => {
    const { world, code } = await build({ "/w/a/recipe.md": `${recipeText()}\n{{> hem}}\n\n{{> tucks}}\n` });
    expect(code).toBe(0);
    expect(world.said.err).toContain("warning [cautions-left-out]");
    expect(world.said.err).toContain("note [chapter-does-not-apply]");
  });

  it("README.md, folders and other files in templates/ are passed over; what is no text is an error", async () => {
    const { world, code } = await build({
      "/w/a/recipe.md": recipeText(),
      "/w/a/templates/README.md": "About these.",
      "/w/a/templates/notes.txt": "x",
      "/w/a/templates/hem.md/x": "a folder",
    });
    expect([code, world.said.err]).toEqual([0, ""]);
    const odd = await build({
      "/w/a/recipe.md": recipeText(),
      "/w/a/templates/hem.md": asText(Uint8Array.of(0xff, 0xfe)),
    });
    expect(odd.world.said.err).toContain("a/templates/hem.md:1:1: error [not-text]");
  });
});
