/** The command line: arguments in, exit code out. 0 done, 1 the recipe has errors, 2 wrong use, 3 the machine failed. */
import version from "plainwork:version";
import { messageText } from "./recipe/message.ts";
import { writeCatalogue } from "./shelf/catalogue/write.ts";
import { type BookletCheck, bookletCheckText, checkBooklet } from "./shelf/check-booklet.ts";
import { findChromium } from "./shelf/chromium.ts";
import { findProjects, UsageError } from "./shelf/find.ts";
import { LockedError } from "./shelf/lock.ts";
import { doAll, StoppedError } from "./shelf/many.ts";
import { newProject } from "./shelf/new.ts";
import { BY_HAND, notPrinted } from "./shelf/not-printed.ts";
import { original } from "./shelf/original.ts";
import { NotOursError } from "./shelf/place.ts";
import type { Paper } from "./shelf/print.ts";
import { Progress } from "./shelf/progress.ts";
import { recordGarment } from "./shelf/record.ts";
import { messageJson, type Report } from "./shelf/report.ts";
import type { World } from "./shelf/world.ts";

const HELP = `plainwork ${version}: turns a garment recipe into an illustrated instruction booklet.

  plainwork build <recipe or folder>… [--out DIR] [--json]   write the booklets (DIR: output)
          [--pdf] [--paper a4|letter]      and print them to PDF: full pages, small pages, guides at true size
          [--size NAME]                    of a recipe with sizes only this one; what stands there of the others stays
          [--anew]                         also what has not changed since it was built
  plainwork check <recipe or folder>… [--size NAME] [--json] read and solve, write nothing
  plainwork open <folder> [--port N] [--no-browser]          the recipe beside its booklet, in a page on this machine
  plainwork check <booklet.html>… [--json]                   does today's program give the same numbers?
  plainwork record <folder> <record.json> [--json]           adds what was done, as the page saved it, to as-made.yaml
  plainwork new <folder> [--title … --waist … …]             asks for a few measures and writes a recipe
  plainwork original <folder> [--keep pitch|breadths|ratio]  an original's measures (original.yaml) become a recipe, a report and a
                                                             row of evidence.csv; without the file, the blank sheet to fill in
  plainwork --version
  plainwork --help

A folder is a project with a recipe.md in it, or a folder of such projects.
--pdf needs Chromium, or a browser made from it; the setting PLAINWORK_CHROMIUM may name its file.
Exit: 0 done, 1 a recipe has errors, 2 wrong use, 3 the machine failed (disk, permission, printing), 130 stopped.
`;

interface Arguments {
  readonly command: "build" | "check";
  readonly paths: readonly string[];
  readonly out: string;
  readonly json: boolean;
  /** The paper to print on, when printing is asked. */
  readonly pdf: Paper | undefined;
  /** The only size that is wanted. */
  readonly size: string | undefined;
  /** Is everything built, also what has not changed? */
  readonly anew: boolean;
}

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
    return await run(readArguments(argv), world);
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

/** Words that stand after an option, as `--out DIR` or `--out=DIR`. */
function wordAfter(option: string, word: string, next: () => string | undefined, missing: string): string {
  const value = word.startsWith(`${option}=`) ? word.slice(option.length + 1) : next();
  if (value === undefined || value === "") throw new UsageError(missing);
  return value;
}

const isOption = (option: string, word: string): boolean => word === option || word.startsWith(`${option}=`);

function readArguments([command, ...rest]: readonly string[]): Arguments {
  if (command !== "build" && command !== "check") throw new UsageError(`there is no command "${command}"`);
  const onlyBuild = (option: string): void => {
    if (command === "check") throw new UsageError(`check writes nothing, so ${option} does not go with it`);
  };
  const paths: string[] = [];
  let out = "output";
  let json = false;
  let pdf = false;
  let paper: Paper | undefined;
  let size: string | undefined;
  let anew = false;
  for (let i = 0; i < rest.length; i += 1) {
    const word = rest[i] as string;
    const next = (): string | undefined => rest[++i];
    if (word === "--json") json = true;
    else if (word === "--anew") {
      onlyBuild("--anew");
      anew = true;
    } else if (word === "--pdf") {
      onlyBuild("--pdf");
      pdf = true;
    } else if (isOption("--out", word)) {
      out = wordAfter("--out", word, next, "--out needs a folder after it");
      onlyBuild("--out");
    } else if (isOption("--size", word)) {
      size = wordAfter("--size", word, next, "--size needs the name of a size after it");
    } else if (isOption("--paper", word)) {
      const named = wordAfter("--paper", word, next, "--paper needs a4 or letter after it").toLowerCase();
      if (named !== "a4" && named !== "letter")
        throw new UsageError(`--paper is a4 or letter, not "${named}"`);
      onlyBuild("--paper");
      paper = named;
    } else if (word.startsWith("-")) throw new UsageError(`"${word}" is not an option of ${command}`);
    else paths.push(word);
  }
  if (paths.length === 0) throw new UsageError(`${command} needs a recipe or a folder`);
  if (paper && !pdf) throw new UsageError("--paper is for printing: write --pdf too");
  return { command, paths, out, json, pdf: pdf ? (paper ?? "a4") : undefined, size, anew };
}

const isPage = (path: string): boolean => /\.html?$/i.test(path);

async function run({ command, paths, out, json, pdf, size, anew }: Arguments, world: World): Promise<number> {
  const pages = paths.filter(isPage);
  if (command === "build" && pages.length > 0)
    throw new UsageError(`"${pages[0]}" is a booklet, which can be checked; build needs its recipe`);
  for (const page of pages)
    if (world.kind(world.resolve(page)) !== "file") throw new UsageError(`there is no "${page}"`);
  const checks = pages.map((page) => checkBooklet(world, page));
  if (!json) for (const check of checks) (check.ok ? world.out : world.err)(`${bookletCheckText(check)}\n`);
  const projects = findProjects(
    world,
    paths.filter((path) => !isPage(path)),
  );
  if (size !== undefined && projects.length > 1)
    throw new UsageError(`--size is for one recipe, and ${projects.length} are named`);
  const folder = world.resolve(out);
  const browser = pdf && findChromium(world);
  const printing = pdf && browser ? { browser, paper: pdf } : undefined;
  const reports: Report[] = [];
  const ways = {
    write: (text: string) => world.err(text),
    terminal: world.terminal,
    now: () => performance.now(),
  };
  const progress = new Progress(ways, projects.length);
  const tell = (report: Report, done: number): void => {
    reports.push(json ? report : { ...report, lines: [], json: {} });
    if (json) return;
    progress.clear();
    for (const [stream, line] of report.lines) (stream === "out" ? world.out : world.err)(`${line}\n`);
    progress.done(done, report.name);
  };
  await doAll(world, projects, { command, out, printing, only: size, anew }, tell);
  if (command === "build" && reports.some(({ built }) => built)) {
    for (const skipped of writeCatalogue(world, folder))
      if (!json)
        world.err(`${out}/${skipped}: note: this is no plan that can be read; the catalogue leaves it out\n`);
    if (!json && projects.length > 1) world.out(`all garments: ${out}/index.html${keptWords(reports)}\n`);
  }
  const fault = pdf ? notPrinted(world, browser, reports) : undefined;
  if (fault && !json) world.err(`plainwork: ${fault}\n  do: ${BY_HAND}\n`);
  if (json) {
    const told = {
      plainwork: version,
      recipes: reports.map((report) => report.json),
      ...(checks.length > 0 ? { booklets: checks.map(checkJson) } : {}),
      ...(fault ? { notPrinted: fault } : {}),
    };
    world.out(`${JSON.stringify(told, null, 1)}\n`);
  }
  if (!reports.every(({ whole }) => whole) || !checks.every(({ ok }) => ok)) return 1;
  return fault ? 3 : 0;
}

/** How many stand as they stood. */
function keptWords(reports: readonly Report[]): string {
  const kept = reports.filter((report) => report.kept).length;
  if (kept === 0) return "";
  return kept === reports.length
    ? " (nothing had changed)"
    : ` (${kept} of ${reports.length} had not changed)`;
}

const checkJson = ({ shown, builtWith, files = {}, ...rest }: BookletCheck) => ({
  booklet: shown,
  builtWith: builtWith ?? null,
  ...rest,
  differences: rest.differences.map(({ name, was, now }) => ({ name, was, now: now ?? null })),
  files,
});

function record(words: readonly string[], world: World): number {
  const json = words.includes("--json");
  const [folder, file, ...rest] = words.filter((word) => word !== "--json");
  const option = words.find((word) => word.startsWith("-") && word !== "--json");
  if (option) throw new UsageError(`"${option}" is not an option of record`);
  if (folder === undefined || file === undefined || rest.length > 0)
    throw new UsageError(
      "record needs a garment's folder and one record: plainwork record my-skirt record.json",
    );
  const { added, date, messages, sources, file: shown } = recordGarment(world, folder, file);
  const failed = messages.some(({ level }) => level === "error");
  if (json)
    world.out(
      `${JSON.stringify({ plainwork: version, file: shown, added, date: date ?? null, messages: messages.map(messageJson) }, null, 1)}\n`,
    );
  else {
    for (const message of messages)
      world.err(`${messageText(message, sources.get(message.place?.file ?? ""))}\n`);
    if (failed) world.err(`${shown}: nothing added\n`);
    else if (added) world.out(`${shown}: added what was done, ${date}\n`);
    else if (date) world.out(`${shown}: this record was added before (${date}); nothing added\n`);
    else world.out(`${shown}: this record says nothing new; nothing added\n`);
  }
  return failed ? 1 : 0;
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
  EFBIG: "a file may not be as large as this one",
  ENOENT: "it is not there",
  ENOTDIR: "a file stands where a folder should",
  EISDIR: "a folder stands where a file should",
};

function machineFault(error: unknown): string {
  const { code, path, dest } = error as SystemError;
  const where = dest ?? path;
  if (code && code in FAULTS) return `${FAULTS[code]}${where ? `: ${where}` : ""}`;
  if (code) return `the system says ${code}${path ? `: ${path}` : ""}`;
  return `a fault of the program itself: ${error instanceof Error ? error.message : String(error)}`;
}
