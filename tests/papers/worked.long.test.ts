/** The worked changes of DEVELOPERS.md, made one after the other in a copy: types, format and lint hold, and the booklet has what they add. */
import { execFile } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, it } from "vitest";
import { fencesOf, ROOT } from "./papers.ts";
import { made, worked } from "./worked.ts";

const PARTS = ["src", "templates", "tests", "package.json", "tsconfig.json", ".biome.json"];
const RECIPE = fencesOf("README.md").find(({ kind }) => kind === "yaml")?.text ?? "";

/** Runs a program; when it fails, its own words are the error. */
const run = (program: string, words: readonly string[]): Promise<{ stdout: string; stderr: string }> =>
  promisify(execFile)(program, words, { cwd: copy }).catch((error) => {
    throw Object.assign(new Error(`${error.stdout}${error.stderr}`), {
      code: error.code,
      stderr: error.stderr,
    });
  });

let copy: string;
beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), "plainwork-worked-"));
  for (const part of PARTS) cpSync(join(ROOT, part), join(copy, part), { recursive: true });
  symlinkSync(join(ROOT, "node_modules"), join(copy, "node_modules"));
});
afterAll(() => rmSync(copy, { recursive: true, force: true }));

/** Builds a first skirt with a line more in its cloth by the changed program, which is built. */
async function booklet(line: string): Promise<{ markdown: string; said: string; code: number }> {
  mkdirSync(join(copy, "a"), { recursive: true });
  writeFileSync(join(copy, "a/recipe.md"), RECIPE.replace(/(\n {2}thickness: .*\n)/, `$1${line}`));
  const { code, stderr } = await run(process.execPath, ["dist/plainwork.cjs", "build", "a"]).then(
    (ended) => ({ code: 0, ...ended }),
    (ended) => ended as { code: number; stderr: string },
  );
  const markdown = code === 0 ? readFileSync(join(copy, "output/a/booklet.md"), "utf8") : "";
  return { markdown, said: stderr, code };
}

const WHAT = ["a printed value", "a key of the recipe", "a check", "a solver", "a figure", "a chapter"];
const CHANGES = worked("DEVELOPERS.md").map((changes, i) => [WHAT[i], changes] as const);

it.each(CHANGES)("%s: types, format and lint hold", async (_, changes) => {
  for (const change of changes) {
    const file = join(copy, change.file);
    writeFileSync(file, made(change.isNew ? "" : readFileSync(file, "utf8"), change));
  }
  const bin = (name: string): string => join(copy, "node_modules/.bin", name);
  await run(bin("tsc"), ["--noEmit"]);
  const code = changes.map(({ file }) => file).filter((file) => file.endsWith(".ts"));
  await run(bin("biome"), ["check", "--vcs-enabled=false", ...code]);
});

it("the booklet has what they add", async () => {
  await run(process.execPath, ["src/build/build.mjs"]);
  const enough = await booklet("  in-hand: 15 yd\n");
  expect({ code: enough.code, said: enough.said }).toEqual({ code: 0, said: "" });
  expect(enough.markdown).toMatch(/Buy by the table: .* for each breadth/);
  expect(enough.markdown).toMatch(/^## .*Cloth in hand$/m);
  expect(enough.markdown).toContain("figures/in-hand.svg");
  expect((await booklet("")).markdown).not.toContain("Cloth in hand");
  const little = await booklet("  in-hand: 3 yd\n");
  expect(little.said).toContain("warning [too-little-cloth] 108 in are there, and 5 1/2 yd are wanted");
  const short = await booklet("  in-hand: 6 in\n");
  expect([short.code, short.said]).toEqual([1, expect.stringContaining("error [in-hand-short]")]);
});
