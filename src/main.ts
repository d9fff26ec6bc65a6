/** The command line: arguments in, exit code out. 0 done, 1 the recipe has errors, 2 wrong use, 3 the machine failed. */
import version from "plainwork:version";
import { atPath, buildProject, checkProject, type Outcome, outcomeText } from "./shelf/build.ts";
import { writeCatalogue } from "./shelf/catalogue.ts";
import { findProjects, UsageError } from "./shelf/find.ts";
import { newProject } from "./shelf/new.ts";
import { NotOursError } from "./shelf/place.ts";
import type { World } from "./shelf/world.ts";

const HELP = `plainwork ${version}: turns a garment recipe into an illustrated instruction booklet.

  plainwork build <recipe or folder>… [--out DIR] [--json]   write the booklets (DIR: output)
  plainwork check <recipe or folder>… [--json]               read and solve, write nothing
  plainwork new <folder> [--title … --waist … …]             asks for a few measures and writes a recipe
  plainwork --version
  plainwork --help

A folder is a project with a recipe.md in it, or a folder of such projects.
Exit: 0 done, 1 a recipe has errors, 2 wrong use, 3 the machine failed (disk, permission).
`;

interface Arguments {
  readonly command: "build" | "check";
  readonly paths: readonly string[];
  readonly out: string;
  readonly json: boolean;
}

/** Runs one command; never throws. */
export async function main(argv: readonly string[], world: World): Promise<number> {
  try {
    const [first] = argv;
    if (first === "--version") return tell(world, `${version}\n`);
    if (first === undefined || first === "--help" || first === "help") {
      if (first === undefined) world.err(HELP);
      else world.out(HELP);
      return first === undefined ? 2 : 0;
    }
    if (first === "new") return await newProject(argv.slice(1), world);
    return run(readArguments(argv), world);
  } catch (error) {
    if (error instanceof UsageError) {
      world.err(`plainwork: ${error.message}\nplainwork --help shows how it is used\n`);
      return 2;
    }
    if (error instanceof NotOursError) {
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

function readArguments([command, ...rest]: readonly string[]): Arguments {
  if (command !== "build" && command !== "check") throw new UsageError(`there is no command "${command}"`);
  const paths: string[] = [];
  let out = "output";
  let json = false;
  for (let i = 0; i < rest.length; i += 1) {
    const word = rest[i] as string;
    if (word === "--json") json = true;
    else if (word === "--out" || word.startsWith("--out=")) {
      const value = word.startsWith("--out=") ? word.slice(6) : rest[++i];
      if (value === undefined || value === "") throw new UsageError("--out needs a folder after it");
      if (command === "check") throw new UsageError("check writes nothing, so --out does not go with it");
      out = value;
    } else if (word.startsWith("-")) throw new UsageError(`"${word}" is not an option of ${command}`);
    else paths.push(word);
  }
  if (paths.length === 0) throw new UsageError(`${command} needs a recipe or a folder`);
  return { command, paths, out, json };
}

function run({ command, paths, out, json }: Arguments, world: World): number {
  const projects = findProjects(world, paths);
  const folder = world.resolve(out);
  const outcomes: Outcome[] = [];
  projects.forEach((project, i) => {
    const progress = projects.length > 1 && world.terminal && !json;
    if (progress) world.err(`\r\x1b[K${i + 1} of ${projects.length}: ${project.name}`);
    const outcome = command === "build" ? buildProject(world, project, folder) : checkProject(world, project);
    if (progress) world.err("\r\x1b[K");
    outcomes.push(outcome);
    if (!json)
      report(world, outcome, command === "build" ? `${out}/${project.name}/booklet.html` : undefined);
  });
  if (command === "build" && outcomes.some(({ plan }) => plan)) {
    writeCatalogue(world, folder);
    if (!json && projects.length > 1) world.out(`all garments: ${out}/index.html\n`);
  }
  if (json)
    world.out(`${JSON.stringify({ plainwork: version, recipes: outcomes.map(outcomeJson) }, null, 1)}\n`);
  return outcomes.every(({ plan }) => plan) ? 0 : 1;
}

function report(world: World, outcome: Outcome, written: string | undefined): void {
  const text = outcomeText(outcome);
  if (text !== "") world.err(`${text}\n`);
  if (!outcome.plan) world.err(`${outcome.project.shown}: not built; an older booklet is left as it was\n`);
  else if (written) world.out(`open ${written}\n`);
  else world.out(`${outcome.project.shown}: no errors\n`);
}

function outcomeJson(outcome: Outcome) {
  const { project, plan, messages } = outcome;
  return {
    recipe: project.shown,
    ok: plan !== undefined,
    messages: messages.map((message) => {
      const { code, level, text, place, expected, hint, path } = atPath(message, project);
      return {
        code,
        level,
        text,
        place: place ?? null,
        path: path ?? null,
        expected: expected ?? null,
        hint: hint ?? null,
      };
    }),
  };
}

interface SystemError {
  readonly code?: string;
  readonly path?: string;
  readonly dest?: string;
}

const FAULTS: Record<string, string> = {
  EACCES: "there is no permission",
  EPERM: "it is not permitted",
  EROFS: "the disk can only be read",
  ENOSPC: "the disk is full",
  EDQUOT: "the disk quota is used up",
  ENOENT: "it is not there",
  ENOTDIR: "a file stands where a folder should",
  EISDIR: "a folder stands where a file should",
};

function machineFault(error: unknown): string {
  const { code, path, dest } = error as SystemError;
  if (code && code in FAULTS) return `${FAULTS[code]}: ${dest ?? path ?? ""}`;
  if (code) return `the system says ${code}${path ? `: ${path}` : ""}`;
  return `a fault of the program itself: ${error instanceof Error ? error.message : String(error)}`;
}
