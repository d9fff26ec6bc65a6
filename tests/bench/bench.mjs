/**
 * `npm run bench`: how fast a page answers, as ratios to the bare Markdown pipeline over the same booklet in the same run.
 * Writes tests/bench/README.md. Needs a build and Chromium; run it on a quiet machine.
 */
import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { catalogueTimes, thousand } from "./catalogue.mjs";
import { openUpdates } from "./open.mjs";
import { barePipeline, median, pageUpdates, percentile } from "./page.mjs";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const out = mkdtempSync(join(tmpdir(), "plainwork-bench-"));
const build = ["dist/plainwork.cjs", "build", "demo-projects", "--out", out];
execFileSync(process.execPath, build, { cwd: ROOT, stdio: "ignore" });

const demos = readdirSync(out, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);
const size = (demo) => statSync(join(out, demo, "booklet.html")).size;
const largest = demos.toSorted((a, b) => size(b) - size(a))[0];

const rows = [];
for (const demo of new Set([largest, "green-silk-1862", "mill-house-cotton"])) {
  const bare = await barePipeline(join(out, demo, "booklet.md"));
  const { first, times } = await pageUpdates(join(out, demo, "booklet.html"));
  const [middle, most, base] = [median(times), percentile(times, 0.95), median(bare)];
  rows.push(
    `| ${demo} | ${first.toFixed(0)} | ${middle.toFixed(1)} | ${most.toFixed(1)} | ${base.toFixed(0)} | ${(middle / base).toFixed(2)} | ${(most / base).toFixed(2)} |`,
  );
  console.log(rows.at(-1));
}

const copy = join(out, "recipe-in-hand");
cpSync(join(ROOT, "demo-projects", largest), copy, { recursive: true });
const typed = await openUpdates(join(ROOT, "dist/plainwork.cjs"), copy);
const openRows = [
  ["a measure typed in the text", typed.measures],
  ["a letter typed in a sentence", typed.sentences],
].map(([what, times]) => `| ${what} | ${median(times).toFixed(1)} | ${percentile(times, 0.95).toFixed(1)} |`);
console.log(openRows.join("\n"));
const many = mkdtempSync(join(tmpdir(), "plainwork-bench-"));
const written = thousand(
  ROOT,
  demos.map((demo) => join(out, demo)),
  many,
);
const { opening, filtering } = await catalogueTimes(many);
const catalogue = `| ${statSync(join(many, "index.html")).size >> 10} | ${written.toFixed(0)} | ${median(opening).toFixed(0)} | ${percentile(opening, 0.95).toFixed(0)} | ${median(filtering).toFixed(0)} | ${percentile(filtering, 0.95).toFixed(0)} |`;
console.log(catalogue);
for (const folder of [out, many]) rmSync(folder, { recursive: true, force: true });

writeFileSync(
  join(ROOT, "tests/bench/README.md"),
  `# How fast

Written by \`npm run bench\`, on ${cpus().length} cores, Node ${process.versions.node.split(".")[0]}, headless Chromium. Ratios travel, milliseconds do not. The bare pipeline is
remark-parse with tables, remark-rehype and rehype-stringify over the same booklet.md, warm, in the same run.

A changed measure in the page, 200 changes, from the typed text to the document laid out anew, all numbers, sentences and figures.
The first change also unpacks and starts the core.

| booklet | first change, ms | median, ms | 95 of 100, ms | bare pipeline, ms | median / bare | 95 of 100 / bare |
|---|---|---|---|---|---|---|
${rows.join("\n")}

\`plainwork open\` on ${largest}, 200 keys each, from the key's own event to the booklet beside the text laid out anew. A measure is to take 100 ms at
most, a letter 16, in 95 of 100.

| what | median, ms | 95 of 100, ms |
|---|---|---|
${openRows.join("\n")}

The catalogue of 1 000 invented garments, opened from the disk: from asking for it until it is loaded, and from a letter typed until the list is
laid out anew. "Built beside" is a whole build of one garment into the folder of the thousand, catalogue and all.

| page, KB | built beside, ms | open, median, ms | open, most, ms | filter, median, ms | filter, 95 of 100, ms |
|---|---|---|---|---|---|
${catalogue}
`,
);
