/** Builds the program: one command-line file, with a booklet's script inside it, and beside it the page of `plainwork open`. */
import { spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import esbuild from "esbuild";
import { assets, openFiles, ROOT } from "./assets.mjs";

mkdirSync(`${ROOT}dist/open`, { recursive: true });
// A cache is of one program: it goes before that does.
rmSync(`${ROOT}dist/program.cache`, { force: true });
/** The first file, which answers for the program's version without reading the rest; and the rest. */
for (const [entry, name] of [
  ["cli", "plainwork"],
  ["program", "program"],
])
  await esbuild.build({
    entryPoints: [`${ROOT}src/${entry}.ts`],
    outfile: `${ROOT}dist/${name}.cjs`,
    bundle: true,
    minify: true,
    platform: "node",
    format: "cjs",
    target: "node20",
    legalComments: "none",
    ...(entry === "cli" ? { banner: { js: "#!/usr/bin/env node" } } : {}),
    plugins: [assets()],
    logLevel: "warning",
  });
chmodSync(`${ROOT}dist/plainwork.cjs`, 0o755);
// Apart, so that no other command reads them.
for (const [name, text] of Object.entries(await openFiles())) writeFileSync(`${ROOT}dist/open/${name}`, text);
// Without it the program only starts a little slower: what it says is for whoever builds it.
spawnSync(process.execPath, [`${ROOT}src/build/keep-code.mjs`], { stdio: ["ignore", "ignore", "inherit"] });
