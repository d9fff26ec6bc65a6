/** What the tests reach of the lengths, the recipe and the solvers, branch by branch: `npm run coverage`. README.md here says what is left. */
import { mergeConfig } from "vitest/config";
import normal from "./vitest.config.ts";

const config = mergeConfig(normal, {
  test: {
    maxWorkers: 1,
    coverage: {
      enabled: true,
      provider: "v8",
      include: ["src/{quantity,recipe,solve}/**/*.ts"],
      // In every hundred, just under what holds: some cases are drawn by chance.
      thresholds: {
        "src/quantity/**/*.ts": { branches: 97, statements: 99 },
        "src/recipe/**/*.ts": { branches: 94, statements: 97 },
        "src/solve/**/*.ts": { branches: 97, statements: 99 },
      },
      reporter: ["text", "json"],
      reportsDirectory: "coverage",
    },
  },
});
// Merged lists would be joined: here only the tests of these three folders run.
config.test.include = [
  "tests/{quantity,recipe,solve,original,outside,oracle}/**/*.test.ts",
  "tests/{laws,value-laws}.test.ts",
  "tests/booklet/{evidence,words}.test.ts",
  "tests/open/where.test.ts",
  "tests/shelf/{record,sizes,new,evidence,check-booklet}.test.ts",
];
export default config;
