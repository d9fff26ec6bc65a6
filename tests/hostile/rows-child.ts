/** Runs in a process of its own: builds every row's project and says what came of it, a line of JSON each. */
import { existsSync, mkdirSync, readdirSync, readFileSync, realpathSync } from "node:fs";
import { join } from "node:path";
import { main } from "../../src/main.ts";
import { nodeWorld, type World } from "../../src/shelf/world.ts";
import { pageFaults } from "./page-faults.ts";
import { type Row, SECRET, writeRow } from "./row.ts";
import { workedSince } from "./worked.ts";

export interface Outcome {
  readonly what: string;
  readonly code: number;
  readonly said: string;
  /** Seconds of work. */
  readonly worked: number;
  readonly faults: readonly string[];
}

interface Watched {
  readonly world: World;
  readonly said: { text: string };
  readonly faults: string[];
}

/** The real world with its words kept; what reaches out of the two folders is told. */
function watched(project: string, out: string): Watched {
  const real = nodeWorld(process);
  const said = { text: "" };
  const faults: string[] = [];
  const inside = (folder: string, path: string): boolean => path === folder || path.startsWith(`${folder}/`);
  const writes = (doing: string, path: string): void => {
    if (!inside(out, path) && !inside(project, path)) faults.push(`${doing} ${path}`);
  };
  const say = (text: string): void => {
    said.text += text;
  };
  const world: World = {
    ...real,
    out: say,
    err: say,
    read(path) {
      const from = existsSync(path) ? realpathSync(path) : path;
      if (!inside(project, from) && !inside(out, from)) faults.push(`read ${from}`);
      return real.read(path);
    },
    write(path, contents) {
      writes("write", path);
      real.write(path, contents);
    },
    rename(from, to) {
      writes("rename", from);
      writes("rename", to);
      real.rename(from, to);
    },
    remove(path) {
      writes("remove", path);
      real.remove(path);
    },
  };
  return { world, said, faults };
}

/** What is wrong with the files that were written. */
function outputFaults(out: string): string[] {
  const faults: string[] = [];
  const files = existsSync(out) ? readdirSync(out, { recursive: true, encoding: "utf8" }) : [];
  for (const file of files) {
    if (/\.new-|\.old-/.test(file)) faults.push(`${file} was left behind`);
    if (!/\.(?:html|svg|json|md)$/.test(file)) continue;
    const text = readFileSync(join(out, file), "utf8");
    if (text.includes(SECRET)) faults.push(`${file} holds what stands outside`);
    if (file.endsWith(".json")) JSON.parse(text);
    if (/\.(?:html|svg)$/.test(file)) faults.push(...pageFaults(text).map((fault) => `${file}: ${fault}`));
  }
  return faults;
}

async function build(row: Row, place: string): Promise<Outcome> {
  const project = writeRow(row, place);
  const out = join(place, "out");
  const { world, said, faults } = watched(project, out);
  const before = process.cpuUsage();
  let code = 0;
  if (row.record !== undefined) code = await main(["record", project, join(project, "record.json")], world);
  if (code === 0) code = await main(["build", project, "--out", out], world);
  const worked = workedSince(before);
  faults.push(...outputFaults(out));
  return { what: row.what, code, said: said.text.replaceAll(place, ""), worked, faults };
}

async function all(file: string, place: string): Promise<void> {
  const rows = JSON.parse(readFileSync(file, "utf8")) as readonly Row[];
  const plain: Row = { what: "a plain recipe", is: "built" };
  // Twice, so that the second shows what this machine takes for a plain booklet.
  for (const [i, row] of [plain, plain, ...rows].entries()) {
    const folder = join(place, `row-${i}`);
    mkdirSync(folder);
    process.stdout.write(`${JSON.stringify(await build(row, realpathSync(folder)))}\n`);
  }
  process.stdout.write(`${JSON.stringify({ held: process.resourceUsage().maxRSS / 1024 })}\n`);
}

void all(process.argv[2] as string, process.argv[3] as string);
