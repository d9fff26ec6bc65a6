/** Builds the program: one command-line file, with a booklet's script inside it, and beside it the page of `plainwork open`. */
import { chmodSync, mkdirSync, writeFileSync } from "node:fs";
import esbuild from "esbuild";
import { assets, openFiles, ROOT } from "./assets.mjs";

mkdirSync(`${ROOT}dist/open`, { recursive: true });
const outfile = `${ROOT}dist/plainwork.cjs`;
await esbuild.build({
  entryPoints: [`${ROOT}src/cli.ts`],
  outfile,
  bundle: true,
  minify: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  legalComments: "none",
  banner: { js: "#!/usr/bin/env node" },
  plugins: [assets()],
  logLevel: "warning",
});
chmodSync(outfile, 0o755);
// Apart, so that no other command reads them.
for (const [name, text] of Object.entries(await openFiles())) writeFileSync(`${ROOT}dist/open/${name}`, text);
