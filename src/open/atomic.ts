/** Writes a file whole or not at all, also when the program is killed or the machine stops in the middle. */
import {
  closeSync,
  fsyncSync,
  linkSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { isAlive, toDisk } from "../shelf/disk.ts";

let count = 0;

const pathOf = (path: string, word: string): string =>
  join(dirname(path), `.${basename(path)}.${word}-${process.pid}-${++count}`);

/** Replaces a file; keeps its permissions. */
export function replaceFile(path: string, bytes: Uint8Array): void {
  const fresh = written(pathOf(path, "saving"), bytes, modeOf(path));
  try {
    renameSync(fresh, path);
  } catch (error) {
    rmSync(fresh, { force: true });
    throw error;
  }
  toDisk(dirname(path));
}

/** Puts a new file in its place; false, with nothing changed, where one stands there already. */
export function newFile(path: string, bytes: Uint8Array): boolean {
  const fresh = written(pathOf(path, "saving"), bytes, 0o644);
  try {
    linkSync(fresh, path);
    toDisk(dirname(path));
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  } finally {
    rmSync(fresh, { force: true });
  }
}

/** Takes away what writers left behind that were killed. */
export function sweep(path: string): void {
  const folder = dirname(path);
  const stem = escaped(basename(path, ".md"));
  const left = new RegExp(`^\\.${stem}(?:\\.kept-[\\d-]+)?\\.md\\.saving-(\\d+)-\\d+$`);
  for (const name of readdirSync(folder)) {
    const writer = left.exec(name)?.[1];
    if (writer !== undefined && !isAlive(Number(writer))) rmSync(join(folder, name), { force: true });
  }
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

function written(path: string, bytes: Uint8Array, mode: number): string {
  const file = openSync(path, "wx", mode);
  try {
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    fsyncSync(file);
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
  return path;
}

function modeOf(path: string): number {
  try {
    return statSync(path).mode & 0o777;
  } catch {
    return 0o644;
  }
}

/** Does something while no other writer of this program does it to the same file. */
export function alone<T>(path: string, what: () => T): T {
  const lock = join(dirname(path), `.${basename(path)}.lock`);
  for (let tries = 0; ; tries += 1) {
    try {
      const file = openSync(lock, "wx");
      writeSync(file, String(process.pid));
      closeSync(file);
      break;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
      if (isLeft(lock) || tries >= MOST_TRIES) rmSync(lock, { force: true });
      else pause();
    }
  }
  try {
    return what();
  } finally {
    rmSync(lock, { force: true });
  }
}

/** A save takes some thousandths of a second; whoever holds on for two seconds holds no longer. */
const MOST_TRIES = 400;
const pause = (): void => void Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);

/** Was a lock left by a process that runs no more? */
function isLeft(lock: string): boolean {
  try {
    const text = readFileSync(lock, "utf8");
    return text !== "" && !isAlive(Number(text));
  } catch {
    return false;
  }
}
