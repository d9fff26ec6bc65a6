/** A booklet is left as it stands only while everything it was made from is as it was; whatever changes, it is made anew. */
import { describe, expect, it } from "vitest";
import { main } from "../../src/main.ts";
import { STAMP } from "../../src/shelf/unchanged.ts";
import { recipeText } from "../recipes.ts";
import { type MemoryWorld, memoryWorld } from "./memory.ts";

const TEMPLATE = "## Seams\n\nSew them cold, {{garment.title}}.\n";
const PICTURE = "bytes:\x89PNG\r\n\x1a\n0000";
const BODY = "\n{{> the-rest}}\n\n![a bow](photos/bow.png)\n";
const RECORD = "- date: 2026-02-14\n  begun: 2 February\n  hours:\n    seams: 1 h 59 min\n";

/** Two garments beside each other, built once; `kept` tells of the last run which of them were left as they stood. */
async function shelf(): Promise<{ world: MemoryWorld; build: (...words: string[]) => Promise<string[]> }> {
  let clock = 1;
  const written = new Map<string, number>();
  const files = {
    "/w/garments/blue/recipe.md": recipeText() + BODY,
    "/w/garments/blue/photos/bow.png": PICTURE,
    "/w/garments/blue/templates/seams.md": TEMPLATE,
    "/w/garments/red/recipe.md": recipeText({ title: "Red" }),
  };
  const world = memoryWorld(files);
  const program = { is: "one" };
  const { write, rename } = world;
  const kept: MemoryWorld = Object.assign(world, {
    account: { changed: (path: string) => written.get(path) ?? 0, program: () => program.is },
    program: program as never,
    write: (path: string, contents: string | Uint8Array) => {
      clock += 1;
      written.set(path, clock);
      write(path, contents);
    },
    // A file keeps its age when its folder is given another name.
    rename: (from: string, to: string) => {
      for (const [path, at] of [...written])
        if (path.startsWith(`${from}/`)) written.set(to + path.slice(from.length), at);
      rename(from, to);
    },
  });
  const build = async (...words: string[]): Promise<string[]> => {
    const before = new Map(written);
    kept.said.out = "";
    kept.said.err = "";
    const code = await main(["build", "garments", ...words], kept);
    if (code !== 0) throw new Error(kept.said.err);
    return ["blue", "red"].filter((name) => {
      const page = `/w/output/${name}/booklet.html`;
      return before.get(page) === written.get(page);
    });
  };
  expect(await build()).toEqual([]);
  return { world: kept, build };
}

describe("a booklet that nothing has changed", () => {
  it("is left as it stands, and is told as it was", async () => {
    const { world, build } = await shelf();
    const first = world.said.out.replace("all garments: output/index.html", "");
    expect(await build()).toEqual(["blue", "red"]);
    expect(world.said.out.replace(/all garments: .*/, "")).toBe(first.replace(/all garments: .*/, ""));
    expect(world.said.out).toContain("all garments: output/index.html (nothing had changed)");
  });

  it("says its warnings again", async () => {
    const { world, build } = await shelf();
    const narrow = recipeText({ title: "Red", cloth: { sheer: "true" } });
    world.files.set("/w/garments/red/recipe.md", narrow);
    await build();
    expect(world.said.err).toContain("sheer-turn-down");
    expect(await build()).toEqual(["blue", "red"]);
    expect(world.said.err).toContain("sheer-turn-down");
  });

  const text = (world: MemoryWorld, path: string): string => world.files.get(path) ?? "";
  it.each<[what: string, change: (world: MemoryWorld) => void, kept: string[]]>([
    [
      "its recipe",
      (world) => void world.files.set("/w/garments/red/recipe.md", recipeText({ title: "Redder" })),
      ["blue"],
    ],
    [
      "a photograph",
      (world) => void world.files.set("/w/garments/blue/photos/bow.png", `${PICTURE}1`),
      ["red"],
    ],
    [
      "a template",
      (world) =>
        void world.files.set("/w/garments/blue/templates/seams.md", TEMPLATE.replace("cold", "by hand")),
      ["red"],
    ],
    [
      "the record of the garment beside it",
      (world) => void world.files.set("/w/garments/red/as-made.yaml", RECORD),
      [],
    ],
    ["the program", (world) => void Object.assign(world.program, { is: "two" }), []],
    [
      "a file of the booklet, by hand",
      (world) => world.write("/w/output/red/booklet.html", `${text(world, "/w/output/red/booklet.html")} `),
      ["blue"],
    ],
    ["a drawing taken away", (world) => world.remove("/w/output/blue/figures/hem.svg"), ["red"]],
    ["its stamp, damaged", (world) => void world.files.set(`/w/output/red/${STAMP}`, "{"), ["blue"]],
  ])("is made anew when it is not: %s", async (_, change, kept) => {
    const { world, build } = await shelf();
    change(world);
    expect(await build().catch((error: Error) => [error.message])).toEqual(kept);
    expect(await build()).toEqual(["blue", "red"]);
  });

  it("is made anew when it is asked, into another folder, and where no account is kept", async () => {
    const { world, build } = await shelf();
    expect(await build("--anew")).toEqual([]);
    expect(await build("--out", "elsewhere")).toEqual(["blue", "red"]);
    expect(world.files.has("/w/elsewhere/blue/booklet.html")).toBe(true);
    Object.assign(world, { account: undefined });
    expect(await build()).toEqual([]);
  });
});
