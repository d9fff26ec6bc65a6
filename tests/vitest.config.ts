import { defineConfig } from "vitest/config";
import { viteAssets } from "../src/build/assets.mjs";

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  plugins: [viteAssets()],
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/**/*.long.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    // Tests share nothing that one could spoil for the next, and reading all modules anew for each file took half the time.
    isolate: false,
  },
});
