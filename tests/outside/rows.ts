/** Rows that say where a rule shows in a built booklet: built in memory, read chapter by chapter, held against the row. */
import { existsSync, readFileSync } from "node:fs";
import Fraction from "fraction.js";
import { expect } from "vitest";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import type { Message } from "../../src/recipe/message.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { solve } from "../../src/solve/solve.ts";
import { BASE, type Keys, merged, recipeText } from "../recipes.ts";

export interface Row {
  /** The part of the rules that it belongs to. */
  readonly section: number;
  readonly rule: string;
  readonly demo?: string;
  /** Keys over the plain skirt of tests/recipes.ts. */
  readonly recipe?: Keys;
  /** How the numbers were worked. */
  readonly hand?: string;
  /** Values of plan.json by name: exact, lengths in inches. */
  readonly values?: Readonly<Record<string, string>>;
  /** Anything else in plan.json by its path. */
  readonly plan?: Readonly<Record<string, string | boolean>>;
  /** What booklet.md says, by the beginning of a chapter's title. */
  readonly says?: Readonly<Record<string, readonly string[]>>;
  readonly message?: { readonly code: string; readonly level: Message["level"] };
  /** What that message's words hold. */
  readonly warns?: readonly string[];
  /** How far from the values the plan's may lie, in inches; exact where it is not given. */
  readonly near?: string;
}

interface Built {
  readonly messages: readonly Message[];
  readonly plan?: { readonly values: Readonly<Record<string, { readonly exact: string }>> };
  /** Title of a chapter -> its text. */
  readonly chapters: ReadonlyMap<string, string>;
}

export function build(source = recipeText(), evidence?: { file: string; text: string }): Built {
  const read = readRecipe("recipe.md", source, evidence);
  const solved = read.recipe ? solve(read.recipe) : { messages: [] };
  const messages = [...read.messages, ...solved.messages];
  if (!("plan" in solved) || !solved.plan) return { messages, chapters: new Map() };
  const files = makeBooklet(solved.plan);
  const chapters = (files.get("booklet.md") ?? "").split(/^## /m).slice(1);
  return {
    messages,
    plan: JSON.parse(files.get("plan.json") ?? "{}"),
    chapters: new Map(chapters.map((text) => [text.slice(0, text.indexOf("\n")), text])),
  };
}

const demos = new Map<string, Built>();

function demo(name: string): Built {
  const known = demos.get(name);
  if (known) return known;
  const file = (leaf: string): URL => new URL(`../../demo-projects/${name}/${leaf}`, import.meta.url);
  const list = file("evidence.csv");
  const built = build(
    readFileSync(file("recipe.md"), "utf8"),
    existsSync(list) ? { file: "evidence.csv", text: readFileSync(list, "utf8") } : undefined,
  );
  demos.set(name, built);
  return built;
}

const at = (whole: unknown, path: string): unknown =>
  path
    .split(".")
    .reduce((part, key) => (part as Readonly<Record<string, unknown>> | undefined)?.[key], whole);

/** Number, text or truth as the rows write it. */
const written = (found: unknown): unknown => (typeof found === "number" ? String(found) : found);

/** Holds one row against its booklet; `base` are keys that every row of its file has over the plain skirt. */
export function hold(row: Omit<Row, "section">, base: Keys = {}): void {
  expect(Object.keys({ ...row.values, ...row.plan, ...row.says, ...row.message }).length).toBeGreaterThan(0);
  const { messages, plan, chapters } = row.demo
    ? demo(row.demo)
    : build(recipeText(row.recipe, merged(BASE, base)));
  if (row.message) expect(messages).toContainEqual(expect.objectContaining(row.message));
  for (const words of row.warns ?? [])
    expect(messages.find(({ code }) => code === row.message?.code)?.text).toContain(words);
  expect(plan !== undefined, messages.map(({ text }) => text).join("; ")).toBe(
    row.message?.level !== "error",
  );
  const near = new Fraction(row.near ?? "0");
  const close = (found: string | undefined, wanted: string): boolean =>
    new Fraction(found ?? "-1000000").sub(wanted).abs().compare(near) <= 0;
  for (const [name, wanted] of Object.entries(row.values ?? {}))
    if (row.near) expect(close(plan?.values[name]?.exact, wanted), `${name} = ${wanted}`).toBe(true);
    else expect(`${name} = ${plan?.values[name]?.exact}`).toBe(`${name} = ${wanted}`);
  for (const [path, wanted] of Object.entries(row.plan ?? {}))
    expect([path, written(at(plan, path))]).toEqual([path, wanted]);
  for (const [beginning, sentences] of Object.entries(row.says ?? {})) {
    const title = [...chapters.keys()].find((known) => known.startsWith(beginning));
    expect(title, `a chapter "${beginning}" among ${[...chapters.keys()].join(", ")}`).toBeDefined();
    for (const sentence of sentences) expect(chapters.get(title ?? "")).toContain(sentence);
  }
}
