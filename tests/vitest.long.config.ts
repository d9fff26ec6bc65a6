import { defineConfig } from "vitest/config";
import { viteAssets } from "../src/build/assets.mjs";

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  plugins: [viteAssets()],
  test: {
    // Files that take a few cases in the normal run, and every one here.
    include: [
      "tests/**/*.long.test.ts",
      "tests/page/{living,page,table}.test.ts",
      "tests/guide/printed.test.ts",
    ],
    env: { PLAINWORK_LONG: "1" },
    testTimeout: 3_600_000,
    maxWorkers: 2,
    // Tests share nothing that one could spoil for the next, and reading all modules anew for each file took half the time.
    isolate: false,
  },
});
