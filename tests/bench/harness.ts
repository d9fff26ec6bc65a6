/** The program inside one process, warm: whole builds, solving alone, and how both grow. Bundled and run by the bench. */
import { readFileSync } from "node:fs";
import { main } from "../../src/main.ts";
import { messageText } from "../../src/recipe/message.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { nodeWorld } from "../../src/shelf/world.ts";
import { solve } from "../../src/solve/solve.ts";
import { type Keys, recipeText } from "../recipes.ts";
import { toHtml } from "./bare.ts";
import { stages } from "./stages.ts";

const quiet = { ...nodeWorld(process), out: () => {}, err: () => {} };

/** Does something so many times, and some more before to warm up; milliseconds. */
async function times(count: number, warm: number, work: () => unknown): Promise<number[]> {
  const found: number[] = [];
  for (let i = 0; i < count + warm; i += 1) {
    const start = performance.now();
    await work();
    if (i >= warm) found.push(performance.now() - start);
  }
  return found;
}

/** One time of what is short: the median of several, since what went before leaves its rubbish to be collected meanwhile. */
const many = async (work: () => unknown): Promise<number[]> => [
  (await times(OFTEN, 0, work)).sort((a, b) => a - b)[OFTEN / 2] as number,
];

async function build(project: string, out: string): Promise<void> {
  const code = await main(["build", project, "--out", out], quiet);
  if (code !== 0) throw new Error(`${project} was not built`);
}

/** How many times solving and reading are done in one turn. */
const OFTEN = 20;

/** In turns, so that the machine's moods fall on all alike. */
async function warm(project: string, markdown: string, out: string): Promise<object> {
  const text = readFileSync(markdown, "utf8");
  const found: Record<string, number[]> = { bare: [], build: [] };
  for (let i = 0; i < 16; i += 1) {
    const of = i < 5 ? 0 : 1;
    found.bare?.push(...(await times(of, 1 - of, () => toHtml(text))));
    found.build?.push(...(await times(of, 1 - of, () => build(project, out))));
  }
  return found;
}

/** Reading and solving alone, in turns with the bare pipeline; each first runs about as long as that does to get warm. */
async function alone(project: string, markdown: string): Promise<object> {
  const text = readFileSync(markdown, "utf8");
  const source = readFileSync(`${project}/recipe.md`, "utf8");
  const { recipe } = readRecipe("recipe.md", source);
  if (!recipe) throw new Error(`${project} cannot be read`);
  await times(0, 400, () => readRecipe("recipe.md", source));
  await times(0, 400, () => solve(recipe));
  await times(0, 5, () => toHtml(text));
  const found: Record<string, number[]> = { bare: [], solve: [], read: [] };
  for (let i = 0; i < 11; i += 1) {
    found.bare?.push(...(await times(1, 0, () => toHtml(text))));
    found.read?.push(...(await many(() => readRecipe("recipe.md", source))));
    found.solve?.push(...(await many(() => solve(recipe))));
  }
  return found;
}

/** What grows, and recipes of it at several sizes. */
const SERIES: Readonly<Record<string, readonly [n: number, keys: Keys][]>> = {
  breadths: [2, 5, 10, 20, 40].map((n) => [
    n,
    { cloth: { width: `${240 / n} in` }, skirt: { breadths: String(n) }, wearer: { waist: "36 in" } },
  ]),
  // Five thousand take the widest waist a recipe may have.
  pleats: [10, 50, 100, 500, 1000, 5000].map((n) => [
    n,
    {
      tape: "1/32 in",
      wearer: { waist: n < 100 ? "20 in" : n > 1000 ? "100 in" : "60 in" },
      cloth: { width: n < 100 ? "24 in" : n > 1000 ? "60 in" : "45 in", thickness: "0.02 mm" },
      skirt: { breadths: n < 100 ? "2" : n > 1000 ? "40" : "12" },
      fullness: {
        "pleats-per-inch": n < 100 ? `${n}/20` : n > 1000 ? `${n}/100` : `${n}/60`,
        "pleats-as-wished": "true",
        "finest-bite": "1/32 in",
        "deepest-pitch": "12 in",
      },
    },
  ]),
};

async function growth(write: (name: string, text: string) => string, out: string): Promise<object> {
  const found: Record<string, object[]> = {};
  for (const [name, sizes] of Object.entries(SERIES)) {
    found[name] = [];
    for (const [n, keys] of sizes) {
      const source = recipeText(keys);
      const { recipe, messages } = readRecipe("recipe.md", source);
      const solved = recipe && solve(recipe);
      if (!recipe || !solved?.plan)
        throw new Error(
          [...messages, ...(solved?.messages ?? [])].map((one) => messageText(one, source)).join("\n"),
        );
      const project = write(`${name}-${n}`, source);
      found[name]?.push({
        n,
        solve: await times(9, 3, () => solve(recipe)),
        build: await times(5, 2, () => build(project, out)),
        pleats: String(solved.plan.values.get("gauging.pleats")?.shown ?? ""),
      });
    }
  }
  found.sizes = [];
  for (const n of [1, 4, 16, 64]) {
    const sizes = Array.from(
      { length: n },
      (_, i) => `  - {name: S${i + 1}, waist: ${24 + (i % 32) / 4} in}`,
    );
    const source = recipeText().replace(/\n---\n$/, `\nsizes:\n${sizes.join("\n")}\n---\n`);
    const project = write(`sizes-${n}`, source);
    found.sizes.push({ n, build: await times(n > 16 ? 2 : 5, 1, () => build(project, out)) });
  }
  return found;
}

const [, , what, folder = "", markdown = "", out = ""] = process.argv;
async function run(): Promise<object> {
  if (what === "stages") return stages(folder);
  if (what === "alone") return alone(folder, markdown);
  if (what === "warm") return warm(folder, markdown, out);
  if (what === "bare") {
    const text = readFileSync(folder, "utf8");
    return times(15, 5, () => toHtml(text));
  }
  const { mkdirSync, writeFileSync } = await import("node:fs");
  return growth((name, text) => {
    mkdirSync(`${folder}/${name}`, { recursive: true });
    writeFileSync(`${folder}/${name}/recipe.md`, text);
    return `${folder}/${name}`;
  }, markdown);
}
run().then(
  (found) => process.stdout.write(JSON.stringify(found)),
  (error: Error) => {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  },
);
