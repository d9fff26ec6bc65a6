/** Hostile projects, each a row: a message or a right booklet, soon, in little memory, and nothing that runs in a page. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ALL_DEMOS } from "../long.ts";
import { bundle, type Ended, MOST_HELD, runChild } from "./bundle.ts";
import type { Row } from "./row.ts";
import rows from "./rows.json" with { type: "json" };
import type { Outcome } from "./rows-child.ts";

const ROWS = (rows as unknown as readonly Row[]).filter(({ long }) => ALL_DEMOS || !long);
/** Seconds of work for one booklet; more only on a machine that takes long for a plain one too. */
const SOON = 2;
const PLAIN = 12;

let folder: string;
let ended: Ended;
const outcomes = new Map<string, Outcome>();
let plain = 0;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "plainwork-hostile-"));
  const list = join(folder, "rows.json");
  writeFileSync(list, JSON.stringify(ROWS));
  const child = await bundle("rows-child.ts", folder);
  ended = await runChild(child, [list, folder], 300);
  for (const line of ended.lines) {
    const outcome = JSON.parse(line) as Outcome;
    if (outcome.what === "a plain recipe") plain = outcome.worked;
    else if (outcome.what) outcomes.set(outcome.what, outcome);
  }
}, 1_800_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("hostile projects", () => {
  it("are all tried by one process that ends well, in little memory", () => {
    expect(ended.errors).toBe("");
    expect({ code: ended.code, signal: ended.signal }).toEqual({ code: 0, signal: null });
    const { held } = JSON.parse(ended.lines.at(-1) ?? "{}") as { held: number };
    expect(held).toBeGreaterThan(50);
    expect(held).toBeLessThan(MOST_HELD);
    expect(new Set(ROWS.map(({ what }) => what)).size).toBe(ROWS.length);
  });

  it.each(ROWS.map((row) => [row.what, row] as const))("%s", (what, row) => {
    const outcome = outcomes.get(what);
    if (!outcome)
      throw new Error(`the process did not come to it: ${ended.signal ?? ended.code} ${ended.errors}`);
    expect(outcome.faults).toEqual([]);
    expect(outcome.said).not.toMatch(/\n {4}at |undefined|\[object|NaN|fault of the program/);
    expect([what, outcome.code, outcome.code === (row.is === "built" ? 0 : 1) ? "" : outcome.said]).toEqual([
      what,
      row.is === "built" ? 0 : 1,
      "",
    ]);
    if (row.says) expect(outcome.said).toContain(`[${row.says}]`);
    expect(outcome.said.length).toBeLessThan(5_000_000);
    expect(outcome.worked).toBeLessThan((row.booklets ?? 1) * Math.max(SOON, PLAIN * plain));
  });
});
