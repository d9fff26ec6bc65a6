/** The table "Every solver" in README.md: no file is missing from it, and what it names is there. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import further from "./further.json" with { type: "json" };

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const readme = readFileSync(at("./README.md"), "utf8");
const [checked = "", rest = ""] = readme.split("## Every solver");
const rows = (rest.split("\n## ")[0] ?? "")
  .split("\n")
  .filter((line) => line.startsWith("| `"))
  .map((line) =>
    line
      .slice(1, -1)
      .split(" | ")
      .map((cell) => cell.trim()),
  );
const named = (cell: string | undefined): string[] =>
  [...(cell ?? "").matchAll(/`([^`]+)`/g)].map(([, name]) => name as string);
/** The numbers of the rows that were checked. */
const known = new Set(
  checked
    .split("\n")
    .flatMap((line) => (/^\| ([\d, ]+) \|/.exec(line)?.[1] ?? "").split(", ").filter(Boolean)),
);

describe("every solver, what was printed elsewhere, what works it out another way", () => {
  it("each file of the solvers and of the quantities stands in one row", () => {
    const files = ["../../src/solve/", "../../src/quantity/"].flatMap((folder) =>
      readdirSync(at(folder), { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts")),
    );
    expect(rows.flatMap(([cell]) => named(cell)).sort()).toEqual(files.sort());
  });

  it.each(rows.map((row) => [row[0] as string, row] as const))("%s", (_, [, printed = "", other]) => {
    const numbers = printed.startsWith("none: ") ? [] : (/^[\d, ;]+/.exec(printed)?.[0].match(/\d+/g) ?? []);
    for (const number of numbers) expect(known).toContain(number);
    expect(printed.startsWith("none: ") || numbers.length > 0 || printed.startsWith("further: ")).toBe(true);
    expect(named(other).length).toBeGreaterThan(0);
    for (const file of named(other)) expect(existsSync(at(`../${file}`)), file).toBe(true);
  });

  it("further numbers say whether they were seen, remembered or derived: fifteen at least", () => {
    const all = Object.entries(further)
      .filter(([name]) => name !== "notRhythms")
      .flatMap(([, list]) => list as readonly { status: string }[]);
    expect(all.length).toBeGreaterThanOrEqual(15);
    for (const { status } of all) expect(status).toMatch(/^(seen|memory|derived|practice)/);
  });
});
