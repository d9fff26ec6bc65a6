/** The tests of a mutation run: everything in one thread, modules read once, no test run longer than it must. */
import { defineConfig } from "vitest/config";
import { viteAssets } from "../../src/build/assets.mjs";

/** Tests that take long; they are asked only about mutants that the quick ones let live. */
const DEAR = [
  "tests/solve/layout.test.ts",
  "tests/solve/made.test.ts",
  "tests/solve/pleat-lines.test.ts",
  "tests/solve/properties.test.ts",
  "tests/quantity/formula.test.ts",
  "tests/oracle/pleats.test.ts",
  "tests/outside/trade.test.ts",
  "tests/booklet/{evidence,edge-parts,words}.test.ts",
];
const quick = process.env.PLAINWORK_MUTATE !== "dear";

export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  plugins: [viteAssets()],
  test: {
    include: quick
      ? ["tests/{solve,quantity,outside,oracle}/**/*.test.ts", "tests/laws.test.ts", "tests/mutate/laws.ts"]
      : DEAR,
    exclude: ["tests/**/*.long.test.ts", ...(quick ? DEAR : [])],
    setupFiles: ["tests/mutate/setup.ts"],
    isolate: false,
    pool: "threads",
    maxWorkers: 1,
    testTimeout: 120_000,
  },
});
