import { readdirSync, readFileSync } from "node:fs";
import { defineConfig } from "vitest/config";
import { viteAssets } from "../src/build/assets.mjs";

const root = new URL("..", import.meta.url).pathname;

/** The long files, and those that take a few cases in the normal run and every one here: they ask `long.ts`. */
const include = readdirSync(`${root}tests`, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".test.ts"))
  .filter(
    (file) =>
      file.endsWith(".long.test.ts") ||
      /from "[./]*\/long\.ts"/.test(readFileSync(`${root}tests/${file}`, "utf8")),
  )
  .map((file) => `tests/${file}`);

export default defineConfig({
  root,
  plugins: [viteAssets()],
  test: {
    include,
    env: { PLAINWORK_LONG: "1" },
    testTimeout: 3_600_000,
    maxWorkers: 2,
    // Tests share nothing that one could spoil for the next, and reading all modules anew for each file took half the time.
    isolate: false,
  },
});
