/** All tests of a mutation run and all of the program as one file, made anew in a moment for every change. */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import esbuild from "esbuild";
import { assets } from "../../src/build/assets.mjs";

export const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** Tests that take long; they are asked only about mutants that the others let live, the surest first. */
const DEAR = [
  "tests/solve/properties.test.ts",
  "tests/outside/trade.test.ts",
  "tests/solve/made.test.ts",
  "tests/oracle/pleats.test.ts",
  "tests/solve/layout.test.ts",
  "tests/solve/pleat-lines.test.ts",
  "tests/booklet/edge-parts.test.ts",
  "tests/booklet/evidence.test.ts",
  "tests/booklet/words.test.ts",
  "tests/quantity/formula.test.ts",
];
/** Of the quick ones, those first that notice most in least time. */
const FIRST = ["tests/mutate/laws.ts", "tests/laws.test.ts", "tests/solve/", "tests/outside/published"];
/** These ask the quantities only, and need not be asked about a solver. */
const OF_QUANTITY = /^tests\/(quantity\/|oracle\/(formulas|lengths|units)\.)/;

const found = ["solve", "quantity", "outside", "oracle"]
  .flatMap((folder) => readdirSync(`${ROOT}tests/${folder}`).map((name) => `tests/${folder}/${name}`))
  .filter((file) => file.endsWith(".test.ts") && !file.endsWith(".long.test.ts") && !DEAR.includes(file));
const rank = (file) => FIRST.findIndex((part) => file.startsWith(part)) >>> 0;
const QUICK = ["tests/mutate/laws.ts", "tests/laws.test.ts", "tests/value-laws.test.ts", ...found].sort(
  (a, b) => rank(a) - rank(b),
);

/** The files of tests that are run about a change of this source file, in their order. */
export const testsFor = (source) =>
  [...QUICK, ...DEAR].filter((file) => !source.startsWith("src/solve/") || !OF_QUANTITY.test(file));

export const isDear = (file) => DEAR.includes(file);

const ENTRY = `export { runFile } from "vitest";
export const read = {
${[...QUICK, ...DEAR].map((file) => `  "${file}": () => import("./${file}"),`).join("\n")}
};`;

/** The build's own modules do not change with a solver: they are made once. */
function onceMade() {
  const { setup, ...plugin } = assets();
  const made = new Map();
  return {
    ...plugin,
    setup: (build) =>
      setup({
        onResolve: build.onResolve,
        onLoad: (filter, load) =>
          build.onLoad(filter, (of) => {
            if (!made.has(of.path)) made.set(of.path, load(of));
            return made.get(of.path);
          }),
      }),
  };
}

/**
 * A bundler: `bundle.write(outfile, file, text)` writes the bundle in which `text` stands in place of that source file. Files
 * are found where they were, packages are not bundled.
 */
export async function makeBundler() {
  let changed = { file: "", text: "" };
  // Read once: what is written in the tree while a run goes on does not change the run.
  const texts = new Map();
  const textOf = (path) => {
    if (!texts.has(path)) texts.set(path, readFileSync(path, "utf8"));
    return texts.get(path);
  };
  const files = {
    name: "changed-and-at-home",
    setup(build) {
      build.onResolve({ filter: /^vitest$/ }, () => ({ path: `${ROOT}tests/mutate/shim.mjs` }));
      build.onLoad({ filter: /\/tests\/.*\.json$/ }, ({ path }) => ({
        contents: textOf(path),
        loader: "json",
      }));
      build.onLoad({ filter: /\/(src|tests)\/.*\.ts$/ }, ({ path }) => {
        const text = path === `${ROOT}${changed.file}` ? changed.text : textOf(path);
        const home = JSON.stringify(pathToFileURL(path).href);
        return { contents: text.replaceAll("import.meta.url", home), loader: "ts" };
      });
    },
  };
  const context = await esbuild.context({
    stdin: { contents: ENTRY, resolveDir: ROOT },
    bundle: true,
    write: false,
    format: "esm",
    platform: "node",
    target: "node20",
    packages: "external",
    logLevel: "silent",
    plugins: [files, onceMade()],
  });
  return {
    make: async (file = "", text = "") => {
      changed = { file, text };
      const { outputFiles } = await context.rebuild();
      return outputFiles[0].contents;
    },
    done: () => context.dispose(),
  };
}
