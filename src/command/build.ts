/** `plainwork build` and `plainwork check`: every garment named is done, and what came of it told. */
import version from "plainwork:version";
import { writeCatalogue } from "../shelf/catalogue/write.ts";
import { type BookletCheck, bookletCheckText, checkBooklet } from "../shelf/check-booklet.ts";
import { findChromium } from "../shelf/chromium.ts";
import { findProjects, UsageError } from "../shelf/find.ts";
import { doAll } from "../shelf/many.ts";
import { BY_HAND, notPrinted } from "../shelf/not-printed.ts";
import { Progress } from "../shelf/progress.ts";
import type { Report } from "../shelf/report.ts";
import type { World } from "../shelf/world.ts";
import type { Arguments } from "./arguments.ts";

const isPage = (path: string): boolean => /\.html?$/i.test(path);

/** Builds or checks; gives the exit code. Throws UsageError, StoppedError and what the disk throws. */
export async function build(
  { command, paths, out, json, pdf, size, anew }: Arguments,
  world: World,
): Promise<number> {
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
