/** A port that another program listens on is said, and the program ends. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";
import { copyOf, start } from "./opened.ts";

const PROGRAM = join(import.meta.dirname, "../../dist/plainwork.cjs");

it("ends with 2 where the port is taken", { timeout: 60_000 }, async () => {
  const copy = copyOf("mill-house-cotton");
  const running = await start(copy, "--port", "0");
  try {
    const { port } = new URL(running.address);
    const second = spawnSync(
      process.execPath,
      [PROGRAM, "open", copy.folder, "--no-browser", "--port", port],
      {
        encoding: "utf8",
        timeout: 30_000,
      },
    );
    expect(second.stderr).toContain(`another program listens on port ${port}`);
    expect(second.status).toBe(2);
  } finally {
    await running.kill();
    copy.remove();
  }
});
