/** The command line: arguments in, exit code out. 0 done, 1 the recipe has errors, 2 wrong use, 3 the machine failed. */
import version from "plainwork:version";
import { readArguments } from "./command/arguments.ts";
import { build } from "./command/build.ts";
import { HELP } from "./command/help.ts";
import { machineFault } from "./command/machine-fault.ts";
import { record } from "./command/record.ts";
import { UsageError } from "./shelf/find.ts";
import { LockedError } from "./shelf/lock.ts";
import { StoppedError } from "./shelf/many.ts";
import { newProject } from "./shelf/new.ts";
import { original } from "./shelf/original.ts";
import { NotOursError } from "./shelf/place.ts";
import type { World } from "./shelf/world.ts";

/** Runs one command; never throws. */
export async function main(argv: readonly string[], world: World): Promise<number> {
  try {
    const [first] = argv;
    if (argv.slice(1).includes("--help")) return tell(world, HELP);
    if (first === "--version") return tell(world, `${version}\n`);
    if (first === undefined || first === "--help" || first === "help") {
      if (first === undefined) world.err(HELP);
      else world.out(HELP);
      return first === undefined ? 2 : 0;
    }
    if (first === "open") {
      // Apart, so that no other command waits for the server's parts of Node.
      const { open } = await import("./open/open.ts");
      return await open(argv.slice(1), world);
    }
    if (first === "record") return record(argv.slice(1), world);
    if (first === "original") return original(argv.slice(1), world);
    if (first === "new") return await newProject(argv.slice(1), world);
    return await build(readArguments(argv), world);
  } catch (error) {
    if (error instanceof UsageError) {
      world.err(`plainwork: ${error.message}\nplainwork --help shows how it is used\n`);
      return 2;
    }
    if (error instanceof StoppedError) {
      world.err(`plainwork: stopped: ${error.message}; the others are as they were\n`);
      return 130;
    }
    if (error instanceof NotOursError || error instanceof LockedError) {
      world.err(`plainwork: ${error.message}\n`);
      return 3;
    }
    world.err(`plainwork: ${machineFault(error)}\n`);
    return 3;
  }
}

function tell(world: World, text: string): number {
  world.out(text);
  return 0;
}
