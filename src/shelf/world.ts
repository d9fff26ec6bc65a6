/** The world as an argument: streams and file system, so that everything above can be tried without touching either. */
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { hostname } from "node:os";
import { dirname, join, resolve } from "node:path";
import { createInterface } from "node:readline";
import { isAlive, toDisk } from "./disk.ts";
import type { Hands } from "./hands.ts";
import { runProgram } from "./run.ts";

export interface World {
  out(text: string): void;
  err(text: string): void;
  /** Is the error stream a terminal that can redraw a line? */
  readonly terminal: boolean;
  /** Asks on the terminal; undefined when the answer is broken off. Absent where there is no terminal to ask on. */
  readonly ask?: (question: string) => Promise<string | undefined>;
  /** A path as given, made absolute. */
  resolve(path: string): string;
  kind(path: string): "file" | "folder" | undefined;
  list(folder: string): string[];
  read(path: string): Uint8Array;
  /** The path itself, links followed; for what is there. */
  real(path: string): string;
  /** How many bytes a file has. */
  size(path: string): number;
  write(path: string, contents: string | Uint8Array): void;
  /** Writes a file that is not there yet; false where it is. */
  writeNew(path: string, contents: string): boolean;
  /** Makes sure that what was written to a file, or the names in a folder, would outlast a loss of power. */
  sync(path: string): void;
  makeFolder(path: string): void;
  rename(from: string, to: string): void;
  remove(path: string): void;
  /** A setting of the surroundings by its name. */
  env(name: string): string | undefined;
  /** The system: "linux", "darwin", "win32" … */
  readonly platform: string;
  /** Runs a program to its end, at most so many seconds; says why it failed, or nothing when it ended well. */
  run(program: string, words: readonly string[], seconds: number): string | undefined;
  /** Keeps account of when files were written, and of which program this is; absent where no booklet is to be left as it stands. */
  readonly account?: {
    /** When a file was last written, in milliseconds. */
    changed(path: string): number;
    /** A checksum of the program itself. */
    program(): string;
  };
  /** Other hands for long work; absent where there is one. */
  readonly hands?: Hands;
  /** A file that the build left beside the program, by its name. */
  asset(name: string): Uint8Array;
  /** Differs between processes running at once, on this machine and on others. */
  readonly unique: string;
  /** Was this the `unique` of a process of this machine that runs no more? */
  isGone(unique: string): boolean;
  /** Waits, in milliseconds. */
  pause(time: number): void;
  /** Today by the machine's clock, as 2026-11-25. */
  today(): string;
}

/** Asks one question a time on the terminal. */
function asker({ stdin, stderr }: NodeJS.Process): (question: string) => Promise<string | undefined> {
  return (question) =>
    new Promise((answer) => {
      const lines = createInterface({ input: stdin, output: stderr });
      lines.once("close", () => answer(undefined));
      lines.question(question, (text) => {
        answer(text);
        lines.close();
      });
    });
}

const HOST = hostname().replace(/[^\w.-]/g, "") || "host";

function isGone(unique: string): boolean {
  const [, pid, host] = /^(\d+)-(.+)$/.exec(unique) ?? [];
  if (pid === undefined || host !== HOST) return false;
  return !isAlive(Number(pid));
}

function writeNew(path: string, contents: string): boolean {
  try {
    writeFileSync(path, contents, { flag: "wx" });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
}

/** Makes a folder and those it stands in. Where a disk can only be read Node says that something is not there: the true reason is asked for. */
function makeFolder(path: string): void {
  try {
    mkdirSync(path, { recursive: true });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ENOENT") throw error;
    let missing = path;
    while (!existsSync(dirname(missing)) && dirname(missing) !== missing) missing = dirname(missing);
    mkdirSync(missing);
    mkdirSync(path, { recursive: true });
  }
}

function today(): string {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/**
 * The real one.
 *
 * @param assets the folder of what the build left beside the program
 */
export function nodeWorld(process: NodeJS.Process, assets = ""): World {
  return {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    terminal: process.stderr.isTTY === true,
    ...(process.stdin.isTTY && process.stderr.isTTY ? { ask: asker(process) } : {}),
    resolve: (path) => resolve(process.cwd(), path),
    kind(path) {
      if (!existsSync(path)) return undefined;
      const stat = statSync(path);
      return stat.isDirectory() ? "folder" : "file";
    },
    list: (folder) => readdirSync(folder).sort(),
    read: (path) => readFileSync(path),
    real: (path) => realpathSync(path),
    size: (path) => statSync(path).size,
    write: (path, contents) => writeFileSync(path, contents),
    writeNew,
    sync: toDisk,
    makeFolder,
    rename: renameSync,
    remove: (path) => rmSync(path, { recursive: true, force: true, maxRetries: 5 }),
    env: (name) => process.env[name],
    platform: process.platform,
    run: runProgram,
    asset: (name) => readFileSync(join(assets, name)),
    unique: `${process.pid}-${HOST}`,
    isGone,
    pause: (time) => void Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, time),
    today,
  };
}
