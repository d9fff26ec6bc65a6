/** The built program killed at random moments, and several runs of it at once. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { readAsMadeFile } from "../../src/recipe/as-made/file.ts";
import { ALL_DEMOS } from "../long.ts";
import { recipeText } from "../recipes.ts";
import { killedRuns, recordRun } from "./killed.ts";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "plainwork-killed-"));
  mkdirSync(join(folder, "a"));
  writeFileSync(join(folder, "a", "recipe.md"), recipeText());
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it("a record that is killed at any moment leaves the old file or the new one whole", async () => {
  const { faults, killed } = await killedRuns(folder, ALL_DEMOS ? 200 : 6);
  expect(faults).toEqual([]);
  expect(killed).toBeGreaterThan(0);
}, 3_600_000);

it("records added at once are all there, and what stopped runs left is gone", async () => {
  const texts = ["one", "two", "three"];
  for (const lessons of texts)
    writeFileSync(
      join(folder, `${lessons}.json`),
      JSON.stringify({
        "plainwork-record": 1,
        garment: "A skirt for the tests (invented)",
        date: "2026-11-25",
        notes: { [`hem/${lessons.length}${lessons}`]: lessons },
      }),
    );
  await Promise.all(texts.map((name) => recordRun(folder, `${name}.json`)));
  const { asMade } = readAsMadeFile("as-made.yaml", readFileSync(join(folder, "a", "as-made.yaml"), "utf8"));
  const notes = asMade?.entries
    .flatMap(({ notes }) => Object.values(notes))
    .filter((note) => texts.includes(note));
  expect(notes?.sort()).toEqual([...texts].sort());
  expect(readdirSync(join(folder, "a")).sort()).toEqual(["as-made.yaml", "recipe.md"]);
}, 60_000);
