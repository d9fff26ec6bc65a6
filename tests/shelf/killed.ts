/** Kills a run of `plainwork record` at a random moment and looks at what is left. */
import { spawn } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { readAsMadeFile } from "../../src/recipe/as-made/file.ts";

const PROGRAM = fileURLToPath(new URL("../../dist/plainwork.cjs", import.meta.url));

/** Runs the program to its end, or to a moment; resolves with how long it took and whether it was killed. */
export function recordRun(
  folder: string,
  file: string,
  killAfter?: number,
): Promise<{ time: number; killed: boolean }> {
  return new Promise((resolve) => {
    const start = performance.now();
    const run = spawn(process.execPath, [PROGRAM, "record", "a", file], { cwd: folder, stdio: "ignore" });
    const timer = killAfter === undefined ? undefined : setTimeout(() => run.kill("SIGKILL"), killAfter);
    run.once("exit", (_, signal) => {
      clearTimeout(timer);
      resolve({ time: performance.now() - start, killed: signal !== null });
    });
  });
}

/**
 * Adds records to a garment, killing so many runs at random moments; says what is not as it should be. Each run adds one
 * lesson; what was there before must stand byte for byte, with the new entry whole or not at all.
 */
export async function killedRuns(
  folder: string,
  runs: number,
): Promise<{ faults: string[]; killed: number; added: number }> {
  const path = join(folder, "a", "as-made.yaml");
  const faults: string[] = [];
  let [killed, added] = [0, 0];
  const save = (lessons: string): void =>
    writeFileSync(
      join(folder, "r.json"),
      JSON.stringify({
        "plainwork-record": 1,
        garment: "A skirt for the tests (invented)",
        date: "2026-11-25",
        said: { lessons },
      }),
    );
  save("first");
  let { time } = await recordRun(folder, "r.json");
  for (let i = 0; i < runs; i += 1) {
    const before = readFileSync(path, "utf8");
    save(`lesson ${i} ${"with many words ".repeat(200)}`);
    const ended = await recordRun(folder, "r.json", time * (0.3 + 0.8 * Math.random()));
    if (ended.killed) killed += 1;
    // What a run takes changes with what else the machine does.
    else time = ended.time;
    const after = readFileSync(path, "utf8");
    if (after === before) continue;
    added += 1;
    const { asMade } = readAsMadeFile("as-made.yaml", after);
    if (!after.startsWith(before) || !asMade?.entries.at(-1)?.lessons?.startsWith(`lesson ${i} `))
      faults.push(`run ${i} left ${JSON.stringify(after.slice(before.length - 10))}`);
  }
  return { faults, killed, added };
}
