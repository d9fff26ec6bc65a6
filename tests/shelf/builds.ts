/** Runs the built program on a project whose measures change, and knows its whole booklets byte for byte. */
import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { STAMP } from "../../src/shelf/unchanged.ts";
import { recipeText } from "../recipes.ts";

export const PROGRAM = fileURLToPath(new URL("../../dist/plainwork.cjs", import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly killed: boolean;
  readonly err: string;
  readonly time: number;
}

/** All files of a folder as one text, to compare; of the stamp, which tells times, what it says the files are. "" where it is not there. */
export function wholeOf(folder: string): string {
  const textOf = (file: string): string => {
    const text = readFileSync(join(folder, file), "utf8");
    if (file !== STAMP) return text;
    const { files } = JSON.parse(text) as { files: Record<string, readonly [size: number, changed: number]> };
    return Object.entries(files)
      .map(([name, [size]]) => `${name} ${size}`)
      .join("\n");
  };
  try {
    return readdirSync(folder, { recursive: true, encoding: "utf8" })
      .sort()
      .filter((file) => statSync(join(folder, file)).isFile())
      .map((file) => `${file}\n${textOf(file)}`)
      .join("\n");
  } catch {
    return "";
  }
}

/** A project with two states, each with its whole booklet. */
export class Builds {
  readonly folder = mkdtempSync(join(tmpdir(), "plainwork-builds-"));
  readonly wholes: string[] = [];
  /** Milliseconds of one undisturbed build. */
  time = 0;

  static async start(): Promise<Builds> {
    const builds = new Builds();
    mkdirSync(join(builds.folder, "a"));
    for (const state of [0, 1]) {
      builds.set(state);
      const { code, err, time } = await builds.run(`whole-${state}`);
      if (code !== 0) throw new Error(err);
      builds.time = time;
      builds.wholes.push(wholeOf(join(builds.folder, `whole-${state}`, "a")));
    }
    return builds;
  }

  /** Writes the recipe in one of its states. */
  set(state: number): void {
    writeFileSync(join(this.folder, "a/recipe.md"), recipeText({ skirt: { breadths: `${4 + state}` } }));
  }

  /**
   * Builds into a folder; `before` are the words of a program that runs it, `killAfter` milliseconds it is killed. It
   * really builds, where nothing has changed too, unless `anew` is false.
   */
  run(
    out: string,
    {
      killAfter,
      before = [],
      anew = true,
    }: { killAfter?: number; before?: readonly string[]; anew?: boolean } = {},
  ): Promise<Ran> {
    const [program = process.execPath, ...words] = [
      ...before,
      process.execPath,
      PROGRAM,
      "build",
      "a",
      "--out",
      out,
      ...(anew ? ["--anew"] : []),
    ];
    return new Promise((resolve) => {
      const start = performance.now();
      const run = spawn(program, words, { cwd: this.folder });
      let err = "";
      run.stderr.on("data", (chunk) => {
        err += chunk;
      });
      run.stdout.resume();
      const timer = killAfter === undefined ? undefined : setTimeout(() => run.kill("SIGKILL"), killAfter);
      run.once("close", (code, signal) => {
        clearTimeout(timer);
        resolve({ code, killed: signal === "SIGKILL", err, time: performance.now() - start });
      });
    });
  }

  /** Which whole booklet stands there: 0 or 1; undefined where it is neither. */
  stateIn(out: string): number | undefined {
    const at = this.wholes.indexOf(wholeOf(join(this.folder, out, "a")));
    return at < 0 ? undefined : at;
  }

  /** What unfinished runs left in a folder. */
  leftIn(out: string): string[] {
    return readdirSync(join(this.folder, out)).filter((name) => /\.(?:new|old)-/.test(name));
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
