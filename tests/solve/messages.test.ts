/**
 * When each message comes and when it does not: in messages.json the recipe at which it begins to be said stands beside the
 * nearest at which it is not, worked by hand over the plain skirt (four 45 in breadths, 173 in round, waist 25 1/2 in).
 */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { type Keys, recipeText, tried } from "../recipes.ts";
import rows from "./messages.json" with { type: "json" };

interface Row {
  readonly code: string;
  readonly level: string;
  /** What is said something about. */
  readonly rule: string;
  /** How the bound was worked. */
  readonly hand?: string;
  /** What the message's words hold, where they depend on the garment. */
  readonly text?: string;
  readonly hint?: string;
  readonly said: Keys;
  readonly not?: Keys;
}

const ROWS = rows as readonly Row[];
const saidOf = (keys: Keys) =>
  tried(recipeText(keys)).messages.map(({ code, level }) => ({ code, level }) as const);

describe("messages at their bounds", () => {
  it.each(ROWS.map((row) => [`${row.code}: ${row.rule}`, row] as const))("%s", (_, row) => {
    expect(saidOf(row.said)).toContainEqual({ code: row.code, level: row.level });
    const said = tried(recipeText(row.said)).messages.find(
      ({ code, level }) => code === row.code && level === row.level,
    );
    if (row.text) expect(said?.text).toContain(row.text);
    if (row.hint) expect(said?.hint).toContain(row.hint);
    if (row.not) expect(saidOf(row.not)).not.toContainEqual({ code: row.code, level: row.level });
  });
});

describe("no message is without a test", () => {
  const folder = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
  const read = (path: string, kind: RegExp): string =>
    readdirSync(path, { recursive: true, encoding: "utf8" })
      .filter((name) => kind.test(name))
      .map((name) => readFileSync(`${path}${name}`, "utf8"))
      .join("\n");
  const solvers = read(folder("../../src/solve/"), /\.ts$/);
  const tests = read(folder("../"), /\.(test\.ts|json)$/);
  const CODES = [
    /(?:code: (?:\w+ \? )?|refuse\(\s*|warning\(\s*|say\(\s*"[\w.]+",\s*)"([a-z-]+)"/g,
    /code: \w+ \? "[a-z-]+" : "([a-z-]+)"/g,
  ];
  const codes = new Set(CODES.flatMap((code) => [...solvers.matchAll(code)].map(([, found]) => found ?? "")));
  it("there are many", () => expect(codes.size).toBeGreaterThan(95));
  it.each([...codes].sort())("%s stands in a test", (code) =>
    expect(new RegExp(`[^\\w-]${code}[^\\w-]`).test(tests)).toBe(true),
  );
});
