/** A recipe in sizes on the command line: what is built of it, what is said of each size, what stays of an older folder. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aligned } from "../../src/booklet/sizes/align.ts";
import { main } from "../../src/main.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { planJson } from "../../src/solve/json.ts";
import { solve } from "../../src/solve/solve.ts";
import { brokenLaws } from "../laws.ts";
import { planOf, recipeText } from "../recipes.ts";
import { type MemoryWorld, memoryWorld } from "./memory.ts";

interface Case {
  readonly sizes: readonly string[];
  /** Level, code, entry of the list, names of sizes. */
  readonly says: readonly string[];
  readonly builds: readonly string[];
}

/** A message as --json gives it. */
interface Said {
  readonly level: string;
  readonly code: string;
  readonly place: { readonly line: number };
  readonly sizes?: readonly string[];
}

const { messages }: { messages: Record<string, Case> } = JSON.parse(
  readFileSync(new URL("sizes.json", import.meta.url), "utf8"),
);

/** The recipe of the tests with sizes; the first of them stands on line `FIRST`. */
const inSizes = (sizes: readonly string[], keys: Parameters<typeof recipeText>[0] = {}): string =>
  recipeText(keys).replace(/---\n$/, `sizes:\n${sizes.map((size) => `  - ${size}\n`).join("")}---\n`);
const FIRST = inSizes(["{name: A}"]).split("\n").length - 2;

async function run(world: MemoryWorld, ...argv: string[]): Promise<number> {
  world.said.out = "";
  world.said.err = "";
  return main(argv, world);
}

const folders = (world: MemoryWorld): string[] => [
  ...new Set(
    [...world.files.keys()].flatMap((path) => /^\/w\/output\/a\/(size-[^/]+)\//.exec(path)?.[1] ?? []),
  ),
];
const file = (world: MemoryWorld, path: string): string => world.files.get(`/w/output/a/${path}`) ?? "";
const TWO = ["{name: A, waist: 25 in}", "{name: B, waist: 27 in, skirt: {off-floor: 3 in}}"];

describe("messages of sizes", () => {
  it.each(Object.entries(messages))("%s", async (_, { sizes, says, builds }) => {
    const world = memoryWorld({ "/w/a/recipe.md": inSizes(sizes) });
    expect(await run(world, "check", "a", "--json")).toBe(says.length === 0 ? 0 : 1);
    const [{ messages: said, sizes: told = [] }] = JSON.parse(world.said.out).recipes;
    const found = said
      .filter(({ level }: { level: string }) => level === "error")
      .map(({ level, code, place, sizes: names = [] }: Said) =>
        [level, code, place.line - FIRST + 1, ...names].join(" "),
      );
    expect(found).toEqual(says);
    const built = told.filter(({ ok }: { ok: boolean }) => ok).map(({ name }: { name: string }) => name);
    expect(built).toEqual(builds);
  });

  it("what is wrong with all sizes is said once", () => {
    const { messages: said } = readRecipe("recipe.md", inSizes(TWO, { cloth: { width: "45" } }));
    expect(said.map(({ code, sizes }) => [code, sizes])).toEqual([["not-a-length", undefined]]);
  });

  it("a text that cannot be read is told though every size has another in its place", () => {
    const { messages: said } = readRecipe(
      "recipe.md",
      inSizes(["{name: A, waist: 25 in}"], { wearer: { waist: "27" } }),
    );
    expect(said.map(({ code, path }) => `${code} ${path}`)).toEqual(["not-a-length wearer.waist"]);
  });

  it("a measure that some sizes lack, and the recipe too, is told where the size stands", () => {
    const text = inSizes(["{name: A, waist: 25 in}", "{name: B}"], { wearer: { waist: null } });
    const { messages: said, sizes } = readRecipe("recipe.md", text);
    expect(said.map(({ code, place, sizes: names }) => [code, place?.line, names])).toEqual([
      ["missing", text.split("\n").findIndex((line) => line.includes("name: B")) + 1, ["B"]],
    ]);
    expect(sizes?.map(({ recipe }) => recipe !== undefined)).toEqual([true, false]);
  });
});

describe("plainwork build of sizes", () => {
  it("writes a booklet for each, one of all, the table, and a page to measure your own; --size only one of them", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": inSizes(TWO) });
    expect(await run(world, "build", "a")).toBe(0);
    expect(folders(world).sort()).toEqual(["size-a", "size-b"]);
    const top = [...world.files.keys()].filter((path) => /^\/w\/output\/a\/[^/]+$/.test(path)).sort();
    expect(top.map((path) => path.slice("/w/output/a/".length))).toEqual([
      "booklet.html",
      "booklet.md",
      "measure-your-own.html",
      "sizes.html",
      "sizes.json",
      "sizes.md",
    ]);
    expect(JSON.parse(file(world, "size-b/plan.json")).size).toBe("B");
    expect(file(world, "size-b/booklet.md").split("\n")[0]).toMatch(/, size B$/);
    expect(world.files.get("/w/output/index.md")).toContain("(a/size-b/booklet.md)");
    expect(world.said.out).toContain("open output/a/size-b/booklet.html (size B)");
    expect(world.said.out).toContain(
      "open output/a/booklet.html (all sizes), output/a/sizes.html (the table), output/a/measure-your-own.html (to a reader's own measures)",
    );

    // A size alone: the others stay byte for byte, though the recipe has changed.
    const before = new Map(world.files);
    world.files.set("/w/a/recipe.md", inSizes(TWO.map((size) => size.replace("27 in", "28 in"))));
    expect(await run(world, "build", "a", "--size", "b")).toBe(0);
    expect(JSON.parse(file(world, "size-b/plan.json")).values["wearer.waist"].shown).toBe("28 in");
    for (const [path, text] of before)
      if (path.startsWith("/w/output/a/") && !path.includes("/size-b/"))
        expect(world.files.get(path) === text, path).toBe(true);
    expect(await run(world, "build", "a", "--size", "Z")).toBe(2);
    expect(world.said.err).toContain('has no size "Z": its sizes are A, B');

    // A size that does not work out keeps its booklet, the others are built, and the table says why.
    const kept = file(world, "size-b/booklet.html");
    world.files.set(
      "/w/a/recipe.md",
      inSizes(["{name: A, waist: 24 in}", "{name: B, waist: 99 in, skirt: {breadths: 1}}"]),
    );
    expect(await run(world, "build", "a")).toBe(1);
    expect(world.said.err).toContain("size B: ");
    expect(world.said.err).toContain("size B not built; an older booklet of it is left as it was");
    expect(file(world, "size-b/booklet.html") === kept).toBe(true);
    expect(JSON.parse(file(world, "size-a/plan.json")).values["wearer.waist"].shown).toBe("24 in");
    expect(file(world, "sizes.md")).toMatch(/\*\*Size B does not work out:\*\* /);
    expect(JSON.parse(file(world, "sizes.json")).sizes).toEqual([
      { name: "A", folder: "size-a" },
      { name: "B", folder: null },
    ]);
  });

  it("writes nothing when no size works out, and takes --size to a recipe without sizes for wrong use", async () => {
    const world = memoryWorld({
      "/w/a/recipe.md": inSizes(["{name: B, waist: 99 in, skirt: {breadths: 1}}"]),
      "/w/b/recipe.md": recipeText(),
    });
    expect(await run(world, "build", "a")).toBe(1);
    expect(folders(world)).toEqual([]);
    expect(await run(world, "build", "b", "--size", "B")).toBe(2);
    expect(world.said.err).toContain("has no sizes");
    expect(await run(world, "check", "a", "b", "--size", "B")).toBe(2);
  });

  it("checks a size's page against today's program, and keeps no record of a set", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": inSizes(TWO), "/w/record.json": "{}" });
    await run(world, "build", "a");
    expect(await run(world, "check", "output/a/size-b/booklet.html")).toBe(0);
    expect(world.said.out).toMatch(/gives the same \d+ numbers/);
    expect(await run(world, "record", "a", "record.json")).toBe(2);
    expect(world.said.err).toContain("a record is of one garment");
  });

  it("makes no page to measure your own where the recipe says so, and one without sizes where it asks for it", async () => {
    const world = memoryWorld({
      "/w/a/recipe.md": inSizes(TWO.slice(0, 1), { publish: { "measure-your-own": "false" } }),
      "/w/b/recipe.md": recipeText({ publish: { "measure-your-own": "true" } }),
    });
    expect(await run(world, "build", "a", "b")).toBe(0);
    expect(world.files.has("/w/output/a/measure-your-own.html")).toBe(false);
    expect(world.files.has("/w/output/b/measure-your-own.html")).toBe(true);
  });
});

describe("a size", () => {
  const numbers = ({ plan }: ReturnType<typeof solve>): unknown => {
    if (!plan) throw new Error("it does not build");
    // Places differ where nothing else does: a list of sizes stands below.
    const { size: _, messages: __, ...rest } = planJson(plan, "");
    return rest;
  };
  it("without keys of its own is the recipe without sizes", () => {
    const { sizes, messages: said } = readRecipe("recipe.md", inSizes(["{name: A}"]));
    expect(said).toEqual([]);
    const [size] = sizes ?? [];
    if (!size?.recipe) throw new Error("there is no size");
    expect(numbers(solve(size.recipe))).toEqual(numbers({ plan: planOf(), messages: [] }));
    expect(size.recipe.size).toBe("A");
  });

  it("is the recipe with the size's keys written in", () => {
    fc.assert(
      fc.property(
        fc.record(
          {
            waist: fc.integer({ min: 22, max: 32 }).map((waist) => `${waist} in`),
            skirt: fc.record({
              breadths: fc.constantFrom("4", "5"),
              placket: fc.constantFrom("9 in", "11 in"),
            }),
            cloth: fc.record({ width: fc.constantFrom("44 in", "46 in") }, { requiredKeys: [] }),
            fullness: fc.record({ rows: fc.constantFrom("2", "3") }),
          },
          { requiredKeys: [] },
        ),
        ({ waist, ...blocks }) => {
          const keys = { ...blocks, ...(waist === undefined ? {} : { wearer: { waist } }) };
          const size = { name: "A", ...blocks, ...(waist === undefined ? {} : { waist }) };
          const { sizes } = readRecipe("recipe.md", inSizes([JSON.stringify(size)]));
          const [found] = sizes ?? [];
          if (!found?.recipe) throw new Error("there is no size");
          expect(numbers(solve(found.recipe))).toEqual(numbers({ plan: planOf(keys), messages: [] }));
        },
      ),
      { numRuns: 10 },
    );
  });
});

describe("the demo in eight sizes", () => {
  const text = readFileSync(
    new URL("../../demo-projects/walking-skirt-in-eight-sizes/recipe.md", import.meta.url),
    "utf8",
  );
  const { sizes = [] } = readRecipe("recipe.md", text);
  it("has eight, and every one keeps the laws", () => {
    expect(sizes.map(({ name }) => name).join("")).toBe("ABCDEFGH");
    for (const { name, recipe } of sizes) {
      const { plan } = recipe ? solve(recipe) : {};
      expect(plan && brokenLaws(plan), name).toEqual([]);
    }
  });
});

describe("lists brought into one order", () => {
  it("keep each list whole and in its own order", () => {
    const list = fc.array(fc.constantFrom("a", "b", "c", "d", "e"), { maxLength: 8 });
    fc.assert(
      fc.property(fc.array(list, { minLength: 1, maxLength: 5 }), (lists) => {
        const rows = aligned(lists, (item) => item);
        lists.forEach((own, i) => {
          expect(rows.flatMap((row) => row[i] ?? [])).toEqual(own);
        });
        for (const row of rows) expect(new Set(row.filter((item) => item !== undefined)).size).toBe(1);
        // What all have alike stands once.
        const [first] = lists;
        if (lists.every((one) => one.join() === first?.join())) expect(rows.length).toBe(first?.length);
      }),
    );
  });
});
