/** The program itself: run from the command line, or as another hand of a run. */
import { createHash } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { main } from "./main.ts";
import type { Asked } from "./shelf/garment.ts";
import { garmentTask } from "./shelf/many.ts";
import { threads, workAsHand } from "./shelf/threads.ts";
import { nodeWorld, type World } from "./shelf/world.ts";

function ownWorld(): World {
  let checksum: string | undefined;
  return {
    ...nodeWorld(process, join(__dirname, "open")),
    account: {
      changed: (path) => statSync(path).mtimeMs,
      program: () => {
        checksum ??= createHash("sha256").update(readFileSync(__filename)).digest("hex");
        return checksum;
      },
    },
    // Its first file again: a thread starts from the cache too.
    hands: threads(join(__dirname, "plainwork.cjs"), process),
  };
}

/** Does what the command line asks; in a thread of a long run, what that run gives it. */
export function run(): void {
  if (workAsHand((task) => garmentTask(ownWorld(), task as Asked))) return;
  void main(process.argv.slice(2), ownWorld()).then((code) => {
    process.exitCode = code;
  });
}
