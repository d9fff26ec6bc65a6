/** Whole commands as a user starts them, side by side with bare Node and the bundled bare pipeline, in turns. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";

/** Runs each command by turns; milliseconds of every run by its name. */
function turns(commands, times) {
  const found = Object.fromEntries(Object.keys(commands).map((name) => [name, []]));
  for (let i = 0; i < times + 1; i += 1) {
    for (const [name, words] of Object.entries(commands)) {
      const start = performance.now();
      const { status } = spawnSync(process.execPath, words, { stdio: "ignore" });
      if (status !== 0) throw new Error(`${name} ended with ${status}`);
      // The first of each warms the disk.
      if (i > 0) found[name].push(performance.now() - start);
    }
  }
  return found;
}

/**
 * @param demo a project's folder
 * @param markdown its booklet.md
 * @param bare the bundled bare pipeline
 * @param out a folder to build into
 */
export function coldTimes({ root, demo, markdown, bare, out }, times = 11) {
  const program = join(root, "dist/plainwork.cjs");
  return turns(
    {
      node: ["-e", "0"],
      version: [program, "--version"],
      bare: [bare, markdown, join(out, "bare.html")],
      build: [program, "build", demo, "--anew", "--out", out],
      again: [program, "build", demo, "--out", out],
    },
    times,
  );
}
