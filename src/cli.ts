/** The program's first file: what needs none of the rest is answered at once. */
import { join } from "node:path";
import version from "plainwork:version";
import { load } from "./code-cache.ts";

if (process.argv[2] === "--version" && process.argv.length === 3) process.stdout.write(`${version}\n`);
else (load(join(__dirname, "program.cjs")) as { run(): void }).run();
