/** The command line, from arguments to exit code, over a file system in memory. */
import { describe, expect, it } from "vitest";
import { main } from "../../src/main.ts";
import { recipeText } from "../recipes.ts";
import { type MemoryWorld, memoryWorld } from "./memory.ts";

const GOOD = recipeText();
const BROKEN = recipeText({ wearer: { waist: "27" }, skirt: { breadths: "4 1/3" } });

async function run(world: MemoryWorld, ...argv: string[]): Promise<number> {
  world.said.out = "";
  world.said.err = "";
  return main(argv, world);
}

const booklet = (world: MemoryWorld, name = "a"): string[] =>
  [...world.files.keys()]
    .filter((path) => path.startsWith(`/w/output/${name}/`))
    .map((path) => path.slice(`/w/output/${name}/`.length))
    .sort();

const WHOLE = [
  "booklet.html",
  "booklet.md",
  "figures/balance.svg",
  "figures/breadths.svg",
  "figures/drawn-up.svg",
  "figures/edge.svg",
  "figures/faults.svg",
  "figures/finished.svg",
  "figures/gauging.svg",
  "figures/hem.svg",
  "figures/layout.svg",
  "figures/map.svg",
  "figures/picture.svg",
  "figures/range.svg",
  "figures/step-draw.svg",
  "figures/step-even.svg",
  "figures/step-hooks.svg",
  "figures/step-needle.svg",
  "figures/step-pins.svg",
  "figures/step-placket.svg",
  "figures/step-rows.svg",
  "figures/step-turn.svg",
  "figures/step-whip.svg",
  "figures/waist-ring.svg",
  "figures/whipping.svg",
  "guides/guide-1.svg",
  "guides/guide-2.svg",
  "guides/guide-3.svg",
  "plan.json",
];

describe("plainwork build", () => {
  it("writes a whole booklet and the catalogue, and says what to open", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": GOOD });
    expect(await run(world, "build", "a")).toBe(0);
    expect(booklet(world)).toEqual(WHOLE);
    expect(world.said.out).toBe("open output/a/booklet.html\n");
    expect(world.files.get("/w/output/index.md")).toContain("](a/booklet.md)");
    expect(world.files.get("/w/output/index.html")).toContain('href="a/booklet.html"');
  });

  it("names the pages beside the booklet that the recipe asks for", async () => {
    const asked = "publish: {measure-your-own: true, commission: true, class: true}\n";
    const world = memoryWorld({ "/w/a/recipe.md": GOOD.replace(/\n---\n/, `\n${asked}---\n`) });
    expect(await run(world, "build", "a")).toBe(0);
    expect(world.said.out).toBe(
      "open output/a/booklet.html, output/a/commission.html (commission sheet), output/a/class.html (class sheet), output/a/measure-your-own.html (to a reader's own measures)\n",
    );
    for (const name of ["commission", "class", "measure-your-own"])
      expect(world.files.has(`/w/output/a/${name}.html`)).toBe(true);
  });
  it("same recipe, same bytes", async () => {
    const [one, two] = [memoryWorld({ "/w/a/recipe.md": GOOD }), memoryWorld({ "/w/a/recipe.md": GOOD })];
    await run(one, "build", "a");
    await run(two, "build", "a/recipe.md");
    expect([...two.files].sort()).toEqual([...one.files].sort());
  });
  it("builds a folder of projects; one that is broken stops only itself", async () => {
    const world = memoryWorld({
      "/w/p/a/recipe.md": GOOD,
      "/w/p/b/recipe.md": BROKEN,
      "/w/p/notes.txt": "x",
    });
    expect(await run(world, "build", "p", "--out", "shelf")).toBe(1);
    expect(world.files.has("/w/shelf/a/booklet.html")).toBe(true);
    expect(world.said.err).toContain("p/b/recipe.md:5:");
    expect(world.said.err).toContain("p/b/recipe.md: not built; an older booklet is left as it was");
    expect(world.said.out).toContain("all garments: shelf/index.html");
  });
  it("with errors leaves an older booklet as it was", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": GOOD });
    await run(world, "build", "a");
    const before = new Map(world.files);
    world.files.set("/w/a/recipe.md", BROKEN);
    expect(await run(world, "build", "a")).toBe(1);
    world.files.set("/w/a/recipe.md", GOOD);
    expect([...world.files].sort()).toEqual([...before].sort());
  });
  it("lists every error at once, as text and as data", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": BROKEN });
    expect(await run(world, "build", "a")).toBe(1);
    expect(world.said.err).toMatch(/a\/recipe.md:5:\d+: error \[.*\n.*waist.*\n.*\^/);
    expect(world.said.err.match(/ error \[/g)).toHaveLength(2);
    expect(await run(world, "build", "a", "--json")).toBe(1);
    const data = JSON.parse(world.said.out);
    expect(data.recipes[0].ok).toBe(false);
    expect(data.recipes[0].messages).toHaveLength(2);
    expect(data.recipes[0].messages[0]).toMatchObject({
      level: "error",
      path: "wearer.waist",
      place: { file: "a/recipe.md", line: 5 },
    });
    expect(world.said.err).toBe("");
  });
  it("shows progress on a terminal when several recipes build, and none elsewhere", async () => {
    const files = { "/w/p/a/recipe.md": GOOD, "/w/p/b/recipe.md": GOOD };
    const terminal = memoryWorld(files, true);
    await run(terminal, "build", "p");
    expect(terminal.said.err).toMatch(/\[=+ +\] 1 of 2, .+: a/);
    expect(terminal.said.err.endsWith("\r\x1b[K")).toBe(true);
    const plain = memoryWorld(files);
    await run(plain, "build", "p");
    expect(plain.said.err).toBe("");
  });

  it.each(["write", "rename", "makeFolder"])(
    "a failing %s at any moment leaves the old booklet whole and exits 3",
    async (doing) => {
      const built = memoryWorld({ "/w/a/recipe.md": GOOD });
      await run(built, "build", "a");
      for (let at = 0; at < 60; at += 1) {
        const world = memoryWorld(Object.fromEntries(built.files));
        const before = [...world.files].filter(([path]) => path.startsWith("/w/output/a/")).sort();
        world.files.set("/w/a/recipe.md", recipeText({ wearer: { waist: "26 in" } }));
        let count = 0;
        let failed = false;
        world.fault = (what, path) => {
          if (what !== doing || failed) return;
          if (count++ === at) {
            failed = true;
            throw Object.assign(new Error("no space"), { code: "ENOSPC", path });
          }
        };
        const code = await run(world, "build", "a");
        if (!failed) {
          expect(code).toBe(0);
          break;
        }
        expect(code).toBe(3);
        expect(world.said.err).toContain("the disk is full");
        const after = [...world.files].filter(([path]) => path.startsWith("/w/output/a/")).sort();
        const renewed = after.some(([, text]) => text.includes("26 in"));
        if (!renewed || after.length !== before.length) expect(after).toEqual(before);
        expect([...world.files.keys()].filter((path) => path.includes(".new-"))).toEqual([]);
      }
    },
  );
  it("puts an old booklet back that an interrupted run had set aside", async () => {
    const world = memoryWorld({
      "/w/a/recipe.md": BROKEN,
      "/w/output/.a.old/plan.json": "{}",
      "/w/output/.a.old/booklet.html": "old",
    });
    expect(await run(world, "build", "a")).toBe(1);
    world.files.set("/w/a/recipe.md", GOOD);
    expect(await run(world, "build", "a")).toBe(0);
    expect([...world.files.keys()].filter((path) => path.includes(".old"))).toEqual([]);
    expect(booklet(world)).toEqual(WHOLE);
  });
  it("never replaces a folder that is not a booklet", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": GOOD, "/w/output/a/letters.txt": "keep" });
    expect(await run(world, "build", "a")).toBe(3);
    expect(world.files.get("/w/output/a/letters.txt")).toBe("keep");
    expect(world.said.err).toContain("not a booklet");
  });
});

describe("plainwork check", () => {
  it("reads and solves, and writes nothing", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": GOOD });
    expect(await run(world, "check", "a")).toBe(0);
    expect([...world.files.keys()]).toEqual(["/w/a/recipe.md"]);
    expect(world.said.out).toBe("a/recipe.md: no errors\n");
  });
  it("finds what only solving finds", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": recipeText({ skirt: { breadths: "1/2" } }) });
    expect(await run(world, "check", "a")).toBe(1);
    expect(world.said.err).toContain("[round-below-waist]");
  });
});

describe("wrong use", () => {
  it.each([
    [["knit", "a"], "no command"],
    [["build"], "needs a recipe or a folder"],
    [["build", "nowhere"], 'no "nowhere"'],
    [["build", "empty"], "has no recipe.md"],
    [["build", "a", "--loud"], "not an option"],
    [["build", "a", "--out"], "needs a folder"],
    [["check", "a", "--out", "x"], "writes nothing"],
    [["build", "p/a", "q/a"], "would both build"],
  ])("%j exits 2", async (argv, why) => {
    const world = memoryWorld({
      "/w/a/recipe.md": GOOD,
      "/w/empty/x": "",
      "/w/p/a/recipe.md": GOOD,
      "/w/q/a/recipe.md": GOOD,
    });
    expect(await run(world, ...argv)).toBe(2);
    expect(world.said.err).toContain(why);
    expect(world.said.err).not.toContain("    at ");
  });
  it("no arguments show the help and exit 2; --help and --version exit 0", async () => {
    const world = memoryWorld({});
    expect(await run(world)).toBe(2);
    expect(await run(world, "--help")).toBe(0);
    expect(world.said.out).toContain("plainwork build");
    expect(await run(world, "--version")).toBe(0);
    expect(world.said.out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
  it("a recipe that is not text, or too large, is said", async () => {
    const world = memoryWorld({
      "/w/a/recipe.md": GOOD,
      "/w/b/recipe.md": `${GOOD}${"x".repeat(1024 * 1024)}`,
    });
    const { read } = world;
    world.read = (path) => (path === "/w/a/recipe.md" ? new Uint8Array([0x2d, 0xff, 0xfe]) : read(path));
    expect(await run(world, "check", "a", "b")).toBe(1);
    expect(world.said.err).toContain("[not-text]");
    expect(world.said.err).toContain("[too-large]");
  });
});
