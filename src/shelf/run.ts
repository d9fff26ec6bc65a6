/** Runs another program and waits for it. */
import { spawnSync } from "node:child_process";

/** The last words a program wrote to its error stream. */
const lastLine = (text: string): string => text.trim().split("\n").at(-1) ?? "";

/** Runs a program to its end, at most so many seconds; says why it failed, or nothing when it ended well. */
export function runProgram(program: string, words: readonly string[], seconds: number): string | undefined {
  const done = spawnSync(program, words, {
    timeout: seconds * 1000,
    killSignal: "SIGKILL",
    encoding: "utf8",
    stdio: ["ignore", "ignore", "pipe"],
    windowsHide: true,
  });
  if (done.error) {
    const { code } = done.error as NodeJS.ErrnoException;
    return code === "ETIMEDOUT"
      ? `it was not done after ${seconds} seconds`
      : `it could not be started (${code})`;
  }
  if (done.status === 0) return undefined;
  const said = lastLine(done.stderr ?? "");
  return `it ended with ${done.signal ?? done.status}${said ? `: ${said}` : ""}`;
}
