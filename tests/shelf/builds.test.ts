/** Builds that are killed, that meet a full disk or a folder they may not write in, and two at once: the old booklet whole, or the new one. */
import { execFileSync } from "node:child_process";
import { chmodSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { ALL_DEMOS } from "../long.ts";
import { Builds } from "./builds.ts";

let builds: Builds;
beforeAll(async () => {
  builds = await Builds.start();
}, 120_000);
afterAll(() => builds?.remove());

const KILLS = ALL_DEMOS ? 200 : 8;
const ROUNDS = ALL_DEMOS ? 20 : 1;

it(`killed at ${KILLS} random moments, and what it left is cleared by the next`, async () => {
  builds.set(0);
  await builds.run("killed");
  let killed = 0;
  let left = 0;
  for (let i = 0; i < KILLS; i += 1) {
    builds.set(i % 2);
    const ran = await builds.run("killed", { killAfter: builds.time * (0.2 + 0.9 * Math.random()) });
    if (ran.killed) killed += 1;
    left = Math.max(left, builds.leftIn("killed").length);
    // Between the two renames there is no booklet in its place, but the old one beside it, which the next run puts back.
    if (builds.stateIn("killed") === undefined) {
      expect(builds.leftIn("killed").some((name) => name.includes(".old-"))).toBe(true);
      builds.set(i % 2);
      expect((await builds.run("killed", { anew: false })).code).toBe(0);
      expect(builds.stateIn("killed")).toBe(i % 2);
    }
    expect(builds.stateIn("killed")).toBeDefined();
  }
  if (ALL_DEMOS)
    process.stderr.write(`${KILLS} runs, ${killed} killed, at most ${left} folders left behind\n`);
  expect(killed).toBeGreaterThan(KILLS / 4);
  // Without being asked to build anew: what a killed run left is never taken for what this recipe gives.
  const other = builds.stateIn("killed") === 0 ? 1 : 0;
  builds.set(other);
  expect((await builds.run("killed", { anew: false })).code).toBe(0);
  expect(builds.stateIn("killed")).toBe(other);
  expect(builds.leftIn("killed")).toEqual([]);
}, 3_600_000);

it(`two at once into one folder, ${ROUNDS} times`, async () => {
  for (let i = 0; i < ROUNDS; i += 1) {
    builds.set(i % 2);
    const both = await Promise.all([builds.run("both"), builds.run("both")]);
    expect(both.map(({ code }) => code)).toEqual([0, 0]);
    expect(builds.stateIn("both")).toBe(i % 2);
    expect(builds.leftIn("both")).toEqual([]);
  }
}, 3_600_000);

/** Can this user mount a file system of its own? */
const mayMount = ((): boolean => {
  try {
    execFileSync("unshare", ["-m", "true"], { stdio: "ignore" });
    return process.getuid?.() === 0;
  } catch {
    return false;
  }
})();

it("a full disk: exit 3 with the reason, and the old booklet whole", async () => {
  builds.set(0);
  expect((await builds.run("full")).code).toBe(0);
  builds.set(1);
  // Without the right to mount, a bound on the size of a file stands for the full disk.
  const script = mayMount
    ? 'cp -r full kept && mount -t tmpfs -o size=1600k none full && cp -r kept/. full && "$0" "$@"; code=$?; rm -rf after; cp -r full after; exit $code'
    : 'trap "" XFSZ; ulimit -f 100; "$0" "$@"; code=$?; ulimit -f unlimited; cp -r full after; exit $code';
  const before = mayMount ? ["unshare", "-m", "bash", "-c", script] : ["bash", "-c", script];
  const { code, err } = await builds.run("full", { before });
  expect(err).toMatch(/^plainwork: (?:the disk is full|a file may not be as large as this one)/m);
  expect(err).not.toMatch(/\n {4}at /);
  expect(code).toBe(3);
  expect(builds.stateIn("after")).toBe(0);
  expect(builds.leftIn("after")).toEqual([]);
}, 120_000);

it("a folder that may not be written in: exit 3 with the reason, and the old booklet whole", async () => {
  builds.set(0);
  expect((await builds.run("closed")).code).toBe(0);
  builds.set(1);
  if (!mayMount) chmodSync(join(builds.folder, "closed"), 0o555);
  const script = 'mount --bind closed closed && mount -o remount,ro,bind closed && "$0" "$@"';
  const before = mayMount ? ["unshare", "-m", "bash", "-c", script] : [];
  const { code, err } = await builds.run("closed", { before });
  if (!mayMount) chmodSync(join(builds.folder, "closed"), 0o755);
  expect(err).toMatch(/^plainwork: (?:the disk can only be read|there is no permission): /m);
  expect(err).not.toMatch(/\n {4}at /);
  expect(code).toBe(3);
  expect(builds.stateIn("closed")).toBe(0);
}, 120_000);

it("what a living build is writing is left alone by another", async () => {
  const name = `.a.new-${process.pid}-${execFileSync("hostname", { encoding: "utf8" }).trim()}`;
  mkdirSync(join(builds.folder, "living", name), { recursive: true });
  builds.set(0);
  expect((await builds.run("living")).code).toBe(0);
  expect(builds.leftIn("living")).toEqual([name]);
}, 60_000);
