/** A program's file is run the same from its cache, from a cache that is not its own, and without one. */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { load, loadToKeep } from "../../src/code-cache.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "plainwork-cache-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const PROGRAM = `
const { basename } = require("node:path");
exports.says = (n) => basename(__filename) + " " + basename(__dirname).slice(0, 9) + " " + n * 2;
exports.isItself = module.exports === exports;
`;
const file = (text: string): string => {
  const path = join(folder, "program.cjs");
  writeFileSync(path, text);
  return path;
};
const said = (exports: object): string => (exports as { says(n: number): string }).says(21);

it("from the cache that was kept after it had run", () => {
  const path = file(PROGRAM);
  const { exports, keep } = loadToKeep(path);
  expect(said(exports)).toBe("program.cjs plainwork 42");
  keep();
  expect(readFileSync(join(folder, "program.cache")).length).toBeGreaterThan(100);
  expect(said(load(path))).toBe("program.cjs plainwork 42");
  expect(load(path)).toMatchObject({ isItself: true });
});

it("without a cache, with rubbish in its place, and with the cache of another program", () => {
  const path = file(PROGRAM);
  expect(existsSync(join(folder, "program.cache"))).toBe(false);
  expect(said(load(path))).toBe("program.cjs plainwork 42");
  writeFileSync(join(folder, "program.cache"), "no cache at all");
  expect(said(load(path))).toBe("program.cjs plainwork 42");
  loadToKeep(path).keep();
  file(PROGRAM.replace("n * 2", "n * 2 + 0.5"));
  expect(said(load(path))).toBe("program.cjs plainwork 420.5");
});

it("the built program has one, and a build takes the old one away before it makes a new program", () => {
  expect(existsSync(join("dist", "program.cache"))).toBe(true);
  const build = readFileSync("src/build/build.mjs", "utf8");
  expect(build.indexOf("rmSync(")).toBeGreaterThan(0);
  expect(build.indexOf("rmSync(")).toBeLessThan(build.indexOf("esbuild.build("));
});
