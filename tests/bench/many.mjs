/** A thousand different garments in one call: time on one core and on all, peak memory, and a second run with nothing or one thing changed. */
import { spawn, spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Writes so many recipes that differ in waist, lengths and title. */
export function recipes(text, folder, count) {
  for (let i = 0; i < count; i += 1) {
    const waist = 24 + (i % 40) / 4;
    const at = join(folder, `g${String(i).padStart(5, "0")}`);
    mkdirSync(at, { recursive: true });
    writeFileSync(
      join(at, "recipe.md"),
      text
        .replace(/^title: .*$/m, `title: Skirt number ${i} (invented)`)
        .replace(/^( +waist:) [^#\n]*/m, `$1 ${waist} in `)
        .replace(/^( +off-floor:) [^#\n]*/m, `$1 ${1 + (i % 7) / 8} in `),
    );
  }
}

/** Can a process be held to one core here? */
const holds = spawnSync("taskset", ["-c", "0", "true"]).status === 0;

/**
 * Builds a folder of recipes; seconds, and the most memory the process held at once, in MB.
 *
 * @param core on one core only, collecting and compiling too, where the system can hold it to one; else by one thread
 */
export function buildAll(program, folder, out, { core = false } = {}) {
  const env = { ...process.env, ...(core ? { PLAINWORK_THREADS: "1" } : {}) };
  const words = [
    ...(core && holds ? ["taskset", "-c", "0"] : []),
    process.execPath,
    program,
    "build",
    folder,
  ];
  const start = performance.now();
  const child = spawn(words[0], [...words.slice(1), "--out", out], { stdio: "ignore", env });
  let most = 0;
  const watch = setInterval(() => {
    try {
      const held = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${child.pid}/status`, "utf8"));
      most = Math.max(most, Number(held?.[1] ?? 0) / 1024);
    } catch {
      // Other systems keep no such file: then no memory is told.
    }
  }, 50);
  return new Promise((resolve, reject) => {
    child.on("close", (code) => {
      clearInterval(watch);
      if (code !== 0) reject(new Error(`the build ended with ${code}`));
      else resolve({ seconds: (performance.now() - start) / 1000, most });
    });
  });
}
