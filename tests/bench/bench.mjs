/**
 * `npm run bench`: how fast everything is, as ratios to the bare Markdown pipeline over the same booklet in the same run. Writes
 * tests/bench/README.md. Needs a build and Chromium; run it on a quiet machine. `--many 1000,10000` builds so many garments, the
 * first number again with nothing and with one thing changed (default 1000; 0 none).
 */
import { execFileSync } from "node:child_process";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import esbuild from "esbuild";
import { assets } from "../../src/build/assets.mjs";
import { catalogueTimes, thousand } from "./catalogue.mjs";
import { coldTimes } from "./cold.mjs";
import { buildAll, recipes } from "./many.mjs";
import { openUpdates } from "./open.mjs";
import { firstPaints, pageUpdates } from "./page.mjs";
import { median, percentile, ratio, row, spread } from "./times.mjs";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const PROGRAM = join(ROOT, "dist/plainwork.cjs");
const asked = process.argv.indexOf("--many");
const [many = 0, ...more] = (asked < 0 ? "1000" : (process.argv[asked + 1] ?? "1000")).split(",").map(Number);
const work = mkdtempSync(join(tmpdir(), "plainwork-bench-"));
const at = (...path) => {
  const folder = join(work, ...path);
  mkdirSync(folder, { recursive: true });
  return folder;
};
const told = (rows) => {
  console.log(rows.join("\n"));
  return rows.join("\n");
};

const out = at("demos");
execFileSync(process.execPath, [PROGRAM, "build", "demo-projects", "--out", out], {
  cwd: ROOT,
  stdio: "ignore",
});
const demos = readdirSync(out, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && !entry.name.startsWith("."))
  .map(({ name }) => name);
const size = (demo) => statSync(join(out, demo, "booklet.html")).size;
const largest = demos.toSorted((a, b) => size(b) - size(a))[0];
const project = join(ROOT, "demo-projects", largest);
const markdown = join(out, largest, "booklet.md");

const bundle = async (entry, name) => {
  const outfile = join(work, name);
  await esbuild.build({
    entryPoints: [join(ROOT, "tests/bench", entry)],
    outfile,
    bundle: true,
    minify: true,
    platform: "node",
    format: "cjs",
    target: "node20",
    plugins: [assets()],
    logLevel: "error",
  });
  return outfile;
};
const bare = await bundle("bare.ts", "bare.cjs");
const harness = await bundle("harness.ts", "harness.cjs");
const inHarness = (...words) =>
  JSON.parse(execFileSync(process.execPath, [harness, ...words], { encoding: "utf8", maxBuffer: 1 << 26 }));

const cold = coldTimes({ root: ROOT, demo: project, markdown, bare, out: at("cold") });
const warm = inHarness("warm", project, markdown, at("warm"));
const alone = inHarness("alone", project, markdown);
const commands = told([
  row(
    "`--version`, beside bare Node",
    "1.5",
    ratio(cold.version, cold.node),
    spread(cold.version),
    spread(cold.node),
  ),
  row(
    "cold `build`, beside the bare pipeline, both as commands",
    "1.3",
    ratio(cold.build, cold.bare),
    spread(cold.build),
    spread(cold.bare),
  ),
  row(
    "the same with nothing changed",
    "",
    ratio(cold.again, cold.bare),
    spread(cold.again),
    spread(cold.bare),
  ),
  row(
    "warm build, all files written",
    "1.15",
    ratio(warm.build, warm.bare),
    spread(warm.build),
    spread(warm.bare),
  ),
  row(
    "solving alone",
    "0.01",
    (median(alone.solve) / median(alone.bare)).toFixed(4),
    spread(alone.solve),
    spread(alone.bare),
  ),
  row(
    "reading alone",
    "",
    (median(alone.read) / median(alone.bare)).toFixed(4),
    spread(alone.read),
    spread(alone.bare),
  ),
]);

const stages = Object.entries(inHarness("stages", project));
const together = stages.reduce((sum, [, times]) => sum + median(times), 0);
const spent = told(
  stages.map(([name, times]) =>
    row(name, spread(times), `${((100 * median(times)) / together).toFixed(0)} %`),
  ),
);

let shelf = "";
if (many > 0) {
  const folder = at("recipes");
  recipes(readFileSync(join(ROOT, "demo-projects/mill-house-cotton/recipe.md"), "utf8"), folder, many);
  const few = at("few");
  // Enough that what each thread needs to get warm is little beside the rest.
  const some = Math.min(many, 600);
  recipes(readFileSync(join(ROOT, "demo-projects/mill-house-cotton/recipe.md"), "utf8"), few, some);
  const one = await buildAll(PROGRAM, few, at("one"), { core: true });
  const both = await buildAll(PROGRAM, few, at("both"));
  const all = await buildAll(PROGRAM, folder, at("all"));
  const again = await buildAll(PROGRAM, folder, at("all"));
  const recipe = join(folder, "g00000/recipe.md");
  writeFileSync(recipe, readFileSync(recipe, "utf8").replace(/number 0/, "number nought"));
  const changed = await buildAll(PROGRAM, folder, at("all"));
  const further = [];
  for (const count of more) {
    const recipesOf = at(`recipes-${count}`);
    recipes(readFileSync(join(ROOT, "demo-projects/mill-house-cotton/recipe.md"), "utf8"), recipesOf, count);
    further.push([count, await buildAll(PROGRAM, recipesOf, at("more"))]);
    rmSync(at("more"), { recursive: true, force: true });
  }
  const told2 = ({ seconds, most }) => [seconds.toFixed(1), most.toFixed(0)];
  shelf = told([
    row(`${some} garments, one core`, ...told2(one), ""),
    row(
      `${some} garments, all cores`,
      ...told2(both),
      `${(one.seconds / both.seconds).toFixed(2)} x as fast; target 1.8 on two`,
    ),
    row(`${many} garments, all cores`, ...told2(all), "target: under 600 MB"),
    ...further.map(([count, made]) =>
      row(`${count} garments, all cores`, ...told2(made), "target: the same"),
    ),
    row(
      "again, nothing changed",
      ...told2(again),
      `${(all.seconds / again.seconds).toFixed(0)} x as fast; target 20`,
    ),
    row(
      "again, one recipe changed",
      ...told2(changed),
      `${(all.seconds / changed.seconds).toFixed(0)} x as fast`,
    ),
  ]);
}

const growth = inHarness("growth", at("growth"), at("grown"));
const grown = told(
  Object.entries(growth).flatMap(([what, sizes]) =>
    sizes.map(({ n, solve, build }) =>
      row(n, what, solve ? spread(solve) : "", spread(build), (median(build) / n).toFixed(1)),
    ),
  ),
);

const rows = [];
for (const demo of new Set([largest, "green-silk-1862", "mill-house-cotton"])) {
  const base = inHarness("bare", join(out, demo, "booklet.md"));
  const { first, times } = await pageUpdates(join(out, demo, "booklet.html"));
  const [middle, most, whole] = [median(times), percentile(times, 0.95), median(base)];
  rows.push(
    row(
      demo,
      first.toFixed(0),
      middle.toFixed(1),
      most.toFixed(1),
      whole.toFixed(0),
      (middle / whole).toFixed(2),
      (most / whole).toFixed(2),
    ),
  );
}
told(rows);
const paints = await firstPaints(join(out, largest, "booklet.html"));
const painted = told([
  row("first paint, from the disk", "300", spread(paints.paint)),
  row("everything loaded", "", spread(paints.loaded)),
  row("scripts compiled", "60", spread(paints.script)),
]);

// The one that is a notebook: a sentence of it is typed in.
const NOTEBOOK = "madder-print-1851";
const copy = join(work, "recipe-in-hand");
cpSync(join(ROOT, "demo-projects", NOTEBOOK), copy, { recursive: true });
const typed = await openUpdates(PROGRAM, copy);
const openRows = told(
  [
    ["a measure typed in the text", typed.measures],
    ["a letter typed in a sentence", typed.sentences],
  ].map(([what, times]) => row(what, median(times).toFixed(1), percentile(times, 0.95).toFixed(1))),
);

const shelfOf = at("thousand");
const written = thousand(
  ROOT,
  demos.map((demo) => join(out, demo)),
  shelfOf,
);
const { opening, filtering } = await catalogueTimes(shelfOf);
const catalogue = told([
  row(
    statSync(join(shelfOf, "index.html")).size >> 10,
    written.toFixed(0),
    median(opening).toFixed(0),
    percentile(opening, 0.95).toFixed(0),
    median(filtering).toFixed(0),
    percentile(filtering, 0.95).toFixed(0),
  ),
]);
rmSync(work, { recursive: true, force: true });

writeFileSync(
  join(ROOT, "tests/bench/README.md"),
  `# How fast

Written by \`npm run bench\`, on ${cpus().length} cores, Node ${process.versions.node.split(".")[0]}, headless Chromium. Ratios travel, milliseconds do not. The bare pipeline is
remark-parse with tables, remark-rehype and rehype-stringify over the same booklet.md, in the same run. Times in milliseconds: the median, and from the
least to the most of eleven.

| what, of ${largest} | target | ratio | ours | beside it |
|---|---|---|---|---|
${commands}

Where the time of a warm build of it goes, each stage by itself (files not written, photographs not read):

| stage | ms | of all |
|---|---|---|
${spent}

Figures are dear for their labels: each is set where it covers nothing, tried at one place after the other. A chapter is not parsed: its nodes were made when the
program was built, and are filled; the page's text takes the core (packed when the program was built) as it is. Of a command's time a good part is Node's
own start and the reading of the program, which is why what V8 made of it lies beside it. Reading is mostly the Markdown of the notebook; solving is hardly seen.

Many different garments in one call: the memory of all threads together; on one core the whole process is held to it, so that collecting and compiling have no second one
either. A rebuild still reads every text,
looks at every file and writes the catalogue anew.

| what | seconds | most memory, MB | |
|---|---|---|---|
${shelf}

How cost grows, in one warm process: solving, and the whole booklet written. Nothing grows faster than what is asked for. Solving takes longest in between, with
ten breadths or twenty: there the shortest layout is searched for until a fixed number of tries is used up (src/solve/loose.ts), while with two, or with forty narrow ones, the first try
is as short as can be and the search ends at once.

| n | of | solving | whole build | build / n |
|---|---|---|---|---|
${grown}

A changed measure in the page, 200 changes, from the typed text to the document laid out anew, all numbers, sentences and figures. It is to take 100 ms
at most in 95 of 100. The first change also unpacks and starts the core.

| booklet | first change, ms | median, ms | 95 of 100, ms | bare pipeline, ms | median / bare | 95 of 100 / bare |
|---|---|---|---|---|---|---|
${rows.join("\n")}

| page of ${largest}, opened | target, ms | ms |
|---|---|---|
${painted}

\`plainwork open\` on ${NOTEBOOK}, 200 keys each, from the key's own event to the booklet beside the text laid out anew. A measure is to take 100 ms at
most, a letter 16, in 95 of 100.

| what | median, ms | 95 of 100, ms |
|---|---|---|
${openRows}

The catalogue of 1 000 invented garments, opened from the disk: from asking for it until it is loaded, and from a letter typed until the list is
laid out anew; both are to take 200 ms at most. "Built beside" is a whole build of one garment into the folder of the thousand, catalogue and all.

| page, KB | built beside, ms | open, median, ms | open, most, ms | filter, median, ms | filter, 95 of 100, ms |
|---|---|---|---|---|---|
${catalogue}
`,
);
