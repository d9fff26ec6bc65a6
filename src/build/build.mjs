/** Builds the program: one command-line file, with the page's script inside it. */
import { chmodSync, mkdirSync } from "node:fs";
import esbuild from "esbuild";
import { assets, ROOT } from "./assets.mjs";

mkdirSync(`${ROOT}dist`, { recursive: true });
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
