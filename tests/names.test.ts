/**
 * The public names, all of them, as tests/names.txt holds them: what a maker writes or types, what the program prints or
 * leaves, and what each layer offers the next. A changed name is one changed line there; `npm run names` renews it.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { CHAPTERS } from "../src/booklet/chapters.ts";
import { SHEETS } from "../src/booklet/sheet-list.ts";
import { HELPERS } from "../src/booklet/template/helpers.ts";
import { FLAGS, GARMENT, LISTS, WORDS } from "../src/booklet/template/names.ts";
import { FIGURE_NAMES } from "../src/figure/figure.ts";
import { main } from "../src/main.ts";
import { NOTHING_KEPT } from "../src/page/kept.ts";
import { recordText } from "../src/page/record.ts";
import { KEYS as MADE_KEYS } from "../src/recipe/as-made/read.ts";
import { COLUMNS } from "../src/recipe/evidence-row.ts";
import { KEYS } from "../src/recipe/keys.ts";
import { GROUPS } from "../src/recipe/messages/list.ts";
import { originalSchema } from "../src/recipe/reference/json-schema.ts";
import { QUESTIONS } from "../src/shelf/questions.ts";
import { planJson } from "../src/solve/json.ts";
import { NAMES } from "../src/solve/names.ts";
import { planOf } from "./recipes.ts";
import { memoryWorld } from "./shelf/memory.ts";

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const sources = (folder: string): string[] =>
  readdirSync(at(`../src/${folder}`), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => readFileSync(at(`../src/${folder}/${file}`), "utf8"));
const sourceOf = (file: string): string => readFileSync(at(`../src/${file}`), "utf8");
const found = (texts: readonly string[], ...patterns: readonly RegExp[]): string[] => [
  ...new Set(
    texts.flatMap((text) =>
      patterns.flatMap((pattern) => [...text.matchAll(pattern)].map(([, name = ""]) => name)),
    ),
  ),
];
/** Files that read the arguments of the commands; `new` takes its own from its questions. */
const READ_ARGUMENTS = [
  "main.ts",
  "command/arguments.ts",
  "command/record.ts",
  "open/open.ts",
  "shelf/original.ts",
];
const words = (list: string): string[] => list.trim().split(/\s+/);

/** The first file of each layer: what it offers to those above it. */
const DOORS = [
  "quantity/quantity.ts",
  "quantity/formula.ts",
  "quantity/read.ts",
  "quantity/print.ts",
  "quantity/tape.ts",
  "recipe/read.ts",
  "recipe/recipe.ts",
  "recipe/message.ts",
  "solve/solve.ts",
  "solve/plan.ts",
  "solve/json.ts",
  "figure/index.ts",
  "guide/index.ts",
  "booklet/booklet.ts",
  "shelf/build.ts",
  "main.ts",
];

const offered = (door: string): string[] =>
  [
    ...sourceOf(door).matchAll(
      /^export (?:type |declare |async )*(?:function|const|class|interface|type)? ?(?:(\w+)|\{([^}]*)\})/gm,
    ),
  ].flatMap(([, name, list]) => (name ? [name] : words((list ?? "").replace(/\btype\b|,/g, " "))));

/** Every path of a JSON Schema's properties. */
function pathsOf(schema: { properties?: object; items?: object }, path = ""): string[] {
  const inner = schema.items ? pathsOf(schema.items, `${path}.*`) : [];
  const own = Object.entries(schema.properties ?? {}).flatMap(([name, entry]) => {
    const to = path === "" ? name : `${path}.${name}`;
    return [to, ...pathsOf(entry, to)];
  });
  return [...own, ...inner];
}

async function help(): Promise<string> {
  const world = memoryWorld({});
  await main(["--help"], world);
  return world.said.out;
}

async function publicNames(): Promise<Record<string, readonly string[]>> {
  const said = await help();
  const plan = planJson(planOf({ class: { pupils: "10" } }), "");
  const inside = (key: "garment" | "layout"): string[] =>
    Object.keys(plan[key]).map((name) => `${key}.${name}`);
  return {
    Commands: found([said], /^ {2}plainwork ([a-z]+)/gm),
    Options: [
      ...found(READ_ARGUMENTS.map(sourceOf), /"(--[a-z][a-z-]+)"/g),
      ...QUESTIONS.flatMap(({ option, instead }) => [option, ...(instead ? [instead.option] : [])]).map(
        (name) => `--${name}`,
      ),
    ].sort(),
    "Exit codes": (/^Exit: (.*)\.$/m.exec(said)?.[1] ?? "").split(/, (?=\d)/),
    "Settings of the surroundings": found(sources("."), /"((?:PLAINWORK|CHROME)_[A-Z]+)"/g).sort(),
    "Keys of a recipe, with the choices there are": KEYS.map(({ path, shape }) =>
      shape.is === "field" && shape.meta.kind === "choice"
        ? `${path}: ${(shape.meta.options ?? []).join(", ")}`
        : path,
    ),
    "Keys of original.yaml": pathsOf(JSON.parse(originalSchema())),
    "Keys of an entry of as-made.yaml": [...MADE_KEYS],
    "Columns of evidence.csv": [...COLUMNS],
    "Keys of record.json": Object.keys(JSON.parse(recordText("", NOTHING_KEPT, ""))),
    Chapters: CHAPTERS,
    "Sheets of one page": SHEETS.map(({ file }) => file),
    Figures: FIGURE_NAMES,
    Helpers: Object.values(HELPERS).map(({ example }) => example),
    "Words for a template": [...words(WORDS), ...words(GARMENT).map((name) => `garment.${name}`)],
    "Flags for a template": words(FLAGS).map((name) => `is.${name}`),
    "Lists for a template, with what their items hold": Object.entries(LISTS).map(
      ([name, items]) => `${name}: ${items}`,
    ),
    "Keys of plan.json": [...Object.keys(plan), ...inside("garment"), ...inside("layout")],
    "Codes of messages": GROUPS.flatMap(({ codes }) => Object.keys(codes)),
    "Printed values": Object.keys(NAMES),
    ...Object.fromEntries(DOORS.map((door) => [`Offered by src/${door}`, offered(door)])),
  };
}

it("are those of tests/names.txt", async () => {
  const names = await publicNames();
  for (const [kind, list] of Object.entries(names)) {
    expect([kind, list.length]).not.toEqual([kind, 0]);
    expect([kind, list.filter((name, i) => list.indexOf(name) !== i)]).toEqual([kind, []]);
  }
  const text = Object.entries(names)
    .map(([kind, list]) => `${kind}\n${list.map((name) => `  ${name}\n`).join("")}`)
    .join("\n");
  expect(existsSync(at("./names.txt")), "tests/names.txt is gone: npm run names").toBe(true);
  await expect(text).toMatchFileSnapshot("./names.txt");
});
