/** `plainwork new`: by options, by questions, and what it will not do. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { main } from "../../src/main.ts";
import { KEYS } from "../../src/recipe/keys.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { type MemoryWorld, memoryWorld } from "./memory.ts";

const OPTIONS = [
  ["title", "A skirt (invented)"],
  ["waist", "27 in"],
  ["front", "40 in"],
  ["side", "41 in"],
  ["back", "42 1/2 in"],
  ["width", "44 in"],
  ["thickness", "0.25 mm"],
  ["breadths", "4"],
] as const;
const words = (options: readonly (readonly [string, string])[] = OPTIONS): string[] =>
  options.flatMap(([name, value]) => [`--${name}`, value]);
const without = (...left: string[]) => OPTIONS.filter(([name]) => !left.includes(name));

/** A world whose maker gives these answers in turn; undefined breaks off. */
function asking(answers: (string | undefined)[]): { world: MemoryWorld; asked: string[] } {
  const asked: string[] = [];
  const ask = async (question: string): Promise<string | undefined> => {
    asked.push(question);
    return answers[asked.length - 1];
  };
  return { world: { ...memoryWorld({}), ask } as MemoryWorld, asked };
}

const recipe = (world: MemoryWorld): string => world.files.get("/w/a/recipe.md") ?? "";

describe("plainwork new", () => {
  it("writes by options a recipe that builds at once, with every block in it", async () => {
    const world = memoryWorld({});
    expect(await main(["new", "a", ...words()], world)).toBe(0);
    expect(world.said.out).toBe("a/recipe.md is written. Now: plainwork build a\n");
    const { recipe: read, messages } = readRecipe("recipe.md", recipe(world));
    expect(messages).toEqual([]);
    expect(read?.title).toBe("A skirt (invented)");
    for (const { path } of KEYS.filter((key) => !key.path.includes(".") && key.path !== "sizes")) {
      expect(recipe(world)).toMatch(new RegExp(`^(# )?${path}:`, "m"));
    }
    expect(await main(["build", "a"], world)).toBe(0);
    expect(world.said.err).toBe("");
  });

  it.each([
    ["a petticoat in centimetres", ["--garment", "petticoat", "--show=cm", "--year", "1851"]],
    ["a title that YAML would read as something else", ['--title=- "A": #1 {x} %', "--garment=skirt"]],
  ])("%s", async (_, more) => {
    const world = memoryWorld({});
    expect(await main(["new", "a", ...words(), ...more], world)).toBe(0);
    expect(await main(["check", "a"], world)).toBe(0);
    expect(recipe(world)).toContain(more.includes("--show=cm") ? "# seam: 1.5 cm" : "# seam: 1/2 in");
  });

  it("ten layers and a wished round stand in for thickness and breadths", async () => {
    const world = memoryWorld({});
    const given = [...words(without("thickness", "breadths")), "--ten-layers", "2.5 mm", "--round", "165 in"];
    expect(await main(["new", "a", ...given], world)).toBe(0);
    expect(recipe(world)).toMatch(/^ {2}ten-layers: 2\.5 mm/m);
    expect(recipe(world)).toMatch(/^ {2}round: 165 in/m);
  });

  it("any key that is taken out of its remark can be read", async () => {
    const world = memoryWorld({});
    await main(["new", "a", ...words()], world);
    const lines = recipe(world).split("\n");
    const alone = lines.flatMap((line, i) =>
      /^ *# [a-z-]+: \S/.test(line) && !/# {3}/.test(line) ? [i] : [],
    );
    expect(alone.length).toBeGreaterThan(15);
    for (const i of alone) {
      const text = lines.map((line, n) => (n === i ? line.replace("# ", "") : line)).join("\n");
      const wrong = readRecipe("recipe.md", text).messages.filter(({ code }) =>
        [
          "unknown-key",
          "yaml",
          "wrong-kind",
          "not-a-length",
          "not-a-choice",
          "not-a-number",
          "limit",
        ].includes(code),
      );
      expect(wrong, lines[i]).toEqual([]);
    }
  });

  it("without a terminal says which options are missing", async () => {
    const world = memoryWorld({});
    expect(await main(["new", "a", ...words(without("waist", "breadths"))], world)).toBe(2);
    expect(world.said.err).toContain("new needs --waist, --breadths or --round\n");
    expect(world.files.size).toBe(0);
  });

  it("never overwrites", async () => {
    const world = memoryWorld({ "/w/a/recipe.md": "mine" });
    expect(await main(["new", "a", ...words()], world)).toBe(2);
    expect(world.said.err).toContain("a/recipe.md is there already: it is left as it is");
    expect(recipe(world)).toBe("mine");
    const file = memoryWorld({ "/w/a": "a file" });
    expect(await main(["new", "a", ...words()], file)).toBe(2);
  });

  it.each([
    [["new"], "new needs one folder"],
    [["new", "a", "b"], "new needs one folder"],
    [["new", "a", "--wast", "27 in"], '"--wast" is not an option of new'],
    [["new", "a", "--waist"], "--waist needs its value after it"],
    [["new", "a", "--waist", "27"], '--waist: "27" has no unit'],
    [["new", "a", "--breadths", "4 1/3"], "--breadths:"],
    [["new", "a", "--title", ""], "--title:"],
    [["new", "a", ...words(), "--round", "165 in"], "--breadths and --round do not go together"],
  ])("%j is wrong use", async (argv, said) => {
    const world = memoryWorld({});
    expect(await main(argv, world)).toBe(2);
    expect(world.said.err).toContain(said);
    expect(world.files.size).toBe(0);
  });

  it("measures that cannot be made up are not written, and the command is given to mend", async () => {
    const world = memoryWorld({});
    expect(await main(["new", "a", ...words(without("breadths")), "--breadths", "1/2"], world)).toBe(1);
    expect(world.files.size).toBe(0);
    expect(world.said.err).toMatch(/error \[/);
    expect(world.said.err).toContain("plainwork new a --title 'A skirt (invented)' --waist '27 in'");
  });

  it("asks for what is missing, again where an answer cannot be read", async () => {
    const { world, asked } = asking([
      "A skirt",
      "",
      "",
      "",
      "27",
      "27 in",
      "40 in",
      "41 in",
      "42 in",
      "44 in",
      "",
      "2.5 mm",
      "4",
    ]);
    expect(await main(["new", "a"], world)).toBe(0);
    expect(asked).toHaveLength(13);
    expect(world.said.err).toContain('"27" has no unit');
    expect(recipe(world)).toMatch(/^ {2}ten-layers: 2\.5 mm/m);
    expect(recipe(world)).toMatch(/^# garment: skirt/m);
  });

  it("an answer broken off writes nothing", async () => {
    const { world } = asking(["A skirt", undefined]);
    expect(await main(["new", "a"], world)).toBe(2);
    expect(world.files.size).toBe(0);
  });

  it("whatever is answered, what is written builds, or nothing is written", async () => {
    const value = fc.constantFrom(
      "27 in",
      "64 cm",
      "40 in",
      "101.5 cm",
      "0.25 mm",
      "4",
      "3 1/2",
      "x: [y]",
      "#",
      "'",
      '"',
      "1851",
      "{",
      "%",
      "\\",
    );
    await fc.assert(
      fc.asyncProperty(fc.array(value, { minLength: 8, maxLength: 8 }), async (given) => {
        const world = memoryWorld({});
        const code = await main(
          ["new", "a", ...OPTIONS.flatMap(([name], i) => [`--${name}`, given[i] as string])],
          world,
        );
        expect(world.files.size).toBe(code === 0 ? 1 : 0);
        if (code === 0) expect(await main(["check", "a"], world)).toBe(0);
      }),
      { numRuns: 100 },
    );
  });
});
