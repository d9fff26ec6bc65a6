/** Run by the build: builds one garment with the fresh program, and keeps what V8 made of it by then (`src/code-cache.ts`). */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundled, ROOT } from "./assets.mjs";

const { loadToKeep } = await bundled("src/code-cache.ts");
const out = mkdtempSync(join(tmpdir(), "plainwork-build-"));
const { exports, keep } = loadToKeep(join(ROOT, "dist/program.cjs"));
process.argv = [
  process.argv[0],
  "plainwork",
  "build",
  join(ROOT, "demo-projects/madder-print-1851"),
  "--out",
  out,
];
process.on("exit", () => {
  keep();
  rmSync(out, { recursive: true, force: true });
});
exports.run();
