/** Thousands of spoilt inputs of every kind, in a process with bounded memory: a message or a right answer, soon, every time. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { ALL_DEMOS } from "../long.ts";
import { bundle, MOST_HELD, runChild } from "./bundle.ts";
import type { Tried } from "./fuzz-child.ts";

const RUNS = ALL_DEMOS ? 100_000 : 1000;
/** Of the long run another seed each time; of the normal one always the same. */
const SEED = ALL_DEMOS ? Math.floor(Math.random() * 2 ** 31) : 1;
/** Seconds of work for one input. */
const SOON = 2;

const folder = mkdtempSync(join(tmpdir(), "plainwork-fuzz-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it(`${RUNS} spoilt inputs (seed ${SEED})`, async () => {
  process.env.PLAINWORK_DEMOS = join(import.meta.dirname, "../../demo-projects");
  const child = await bundle("fuzz-child.ts", folder);
  const last = join(folder, "last.txt");
  const { code, signal, lines, errors } = await runChild(child, [`${RUNS}`, `${SEED}`, last], 300);
  if (code !== 0)
    throw new Error(
      `it ended with ${signal ?? code} ${errors}at ${JSON.stringify(readFileSync(last, "utf8"))}`,
    );
  const all = lines.filter(Boolean).map((line) => JSON.parse(line) as Tried);
  if (ALL_DEMOS) for (const tried of all) process.stderr.write(`${JSON.stringify(tried)}\n`);
  expect(all.filter(({ fault }) => fault)).toEqual([]);
  expect(all.reduce((sum, { runs }) => sum + runs, 0)).toBeGreaterThanOrEqual(RUNS);
  expect(Math.max(...all.map(({ held }) => held))).toBeLessThan(MOST_HELD);
  expect(all.filter(({ slowest }) => slowest > SOON)).toEqual([]);
}, 3_600_000);
