import { defineConfig } from "vitest/config";
import { viteAssets } from "../src/build/assets.mjs";

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  plugins: [viteAssets()],
  test: { include: ["tests/**/*.long.test.ts"], testTimeout: 3_600_000, maxWorkers: 2 },
});
