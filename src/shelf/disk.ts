/** What the system knows of files and processes, asked the same way by whatever writes. */
import { closeSync, fsyncSync, openSync, statSync } from "node:fs";

/** Brings a file, or a folder's own entries, to the disk; some systems know no such thing for a folder. */
export function toDisk(path: string): void {
  try {
    const file = openSync(path, "r");
    try {
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    if (!statSync(path).isDirectory()) throw error;
  }
}

/** Does a process of this number run on this machine? */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== "ESRCH";
  }
}
