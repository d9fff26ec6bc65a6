/** Bundles a file of this folder with the program inside it, so that a child process can run it with a bound on its memory. */
import { spawn } from "node:child_process";
import { join } from "node:path";
import esbuild from "esbuild";
import { assets } from "../../src/build/assets.mjs";

export async function bundle(file: string, into: string): Promise<string> {
  const outfile = join(into, file.replace(/\.ts$/, ".cjs"));
  await esbuild.build({
    entryPoints: [join(import.meta.dirname, file)],
    outfile,
    bundle: true,
    platform: "node",
    format: "cjs",
    target: "node20",
    plugins: [assets()],
    logLevel: "warning",
  });
  return outfile;
}

/** What a child may hold in its heap, in megabytes; with the program itself and its buffers that stays under `MOST_HELD`. */
const HEAP = 350;
/** The most that a child may hold in all, in megabytes. */
export const MOST_HELD = 512;

export interface Ended {
  readonly code: number | null;
  readonly signal: string | null;
  readonly lines: readonly string[];
  readonly errors: string;
}

/** Runs a bundled child to its end; it is killed when it says nothing for so many seconds. */
export function runChild(file: string, words: readonly string[], patience: number): Promise<Ended> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [`--max-old-space-size=${HEAP}`, file, ...words]);
    const lines: string[] = [];
    let errors = "";
    let timer: NodeJS.Timeout;
    const wait = (): void => {
      clearTimeout(timer);
      timer = setTimeout(() => child.kill("SIGKILL"), patience * 1000);
    };
    wait();
    let rest = "";
    child.stdout.setEncoding("utf8").on("data", (chunk: string) => {
      const [first = "", ...others] = chunk.split("\n");
      rest += first;
      for (const next of others) {
        lines.push(rest);
        rest = next;
      }
      wait();
    });
    child.stderr.on("data", (chunk) => {
      errors += chunk;
    });
    child.once("close", (code, signal) => {
      clearTimeout(timer);
      done({ code, signal, lines, errors });
    });
  });
}
