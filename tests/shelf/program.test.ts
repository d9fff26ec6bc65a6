/** The built program on a real disk: what a user types, and what is there afterwards. */
import { execFile, spawn, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { recipeText } from "../recipes.ts";

const PROGRAM = fileURLToPath(new URL("../../dist/plainwork.cjs", import.meta.url));
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "plainwork-"));
  for (const [name, waist] of Object.entries({ one: "25 1/2 in", two: "26 in" })) {
    mkdirSync(join(folder, "garments", name), { recursive: true });
    writeFileSync(join(folder, "garments", name, "recipe.md"), recipeText({ wearer: { waist } }));
  }
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

const run = (...argv: string[]): Promise<Ended> =>
  new Promise((resolve) => {
    execFile(process.execPath, [PROGRAM, ...argv], { cwd: folder }, (error, out, err) => {
      resolve({ code: error ? Number(error.code) : 0, out, err });
    });
  });

describe("the built program", () => {
  it("builds a folder of garments, says what to open, and leaves nothing else behind", async () => {
    const { code, out, err } = await run("build", "garments");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toBe(
      "open output/one/booklet.html\nopen output/two/booklet.html\nall garments: output/index.html\n",
    );
    expect(readdirSync(join(folder, "output"))).toEqual(["index.html", "index.md", "one", "two"]);
    const plan = JSON.parse(readFileSync(join(folder, "output", "one", "plan.json"), "utf8"));
    expect(plan.values["skirt.round"]).toEqual({
      exact: "173",
      unit: "in",
      shown: "173 in",
      how: "breadths.count * breadths.usable - breadths.seams * 2 * skirt.seam",
    });
  });

  it("same recipe, same bytes", async () => {
    const before = readFileSync(join(folder, "output", "one", "booklet.html"), "utf8");
    await run("build", "garments/one");
    expect(readFileSync(join(folder, "output", "one", "booklet.html"), "utf8")).toBe(before);
  });

  it("two builds at once into one folder leave whole booklets", async () => {
    const ends = await Promise.all([
      run("build", "garments"),
      run("build", "garments"),
      run("build", "garments"),
    ]);
    expect(ends.map(({ code }) => code)).toEqual([0, 0, 0]);
    for (const name of ["one", "two"]) {
      expect(existsSync(join(folder, "output", name, "plan.json")), JSON.stringify(ends)).toBe(true);
      expect(readFileSync(join(folder, "output", name, "booklet.html"), "utf8")).toMatch(/<\/html>\s*$/);
    }
    await run("build", "garments");
    expect(readdirSync(join(folder, "output"))).toEqual(["index.html", "index.md", "one", "two"]);
  });

  it("four processes that build four garments into one folder leave the catalogue that one run leaves", async () => {
    const names = ["red", "blue", "green", "grey"];
    for (const name of names) {
      mkdirSync(join(folder, "many", name), { recursive: true });
      writeFileSync(join(folder, "many", name, "recipe.md"), recipeText({ title: `The ${name} one` }));
    }
    const ends = await Promise.all(names.map((name) => run("build", `many/${name}`, "--out", "at-once")));
    expect(ends.map(({ code, err }) => ({ code, err }))).toEqual(names.map(() => ({ code: 0, err: "" })));
    await run("build", "many", "--out", "by-one");
    for (const file of ["index.html", "index.md"]) {
      const text = readFileSync(join(folder, "at-once", file), "utf8");
      for (const name of names) expect(text).toContain(`The ${name} one`);
      expect(text).toBe(readFileSync(join(folder, "by-one", file), "utf8"));
    }
    expect(readdirSync(join(folder, "at-once")).sort()).toEqual([...names, "index.html", "index.md"].sort());
  }, 120_000);

  it("clears away what a killed run of this machine left, and nothing of a run that lives", async () => {
    const host = hostname().replace(/[^\w.-]/g, "") || "host";
    const dead = `.one.new-${spawnSync(process.execPath, ["--version"]).pid}-${host}`;
    const alive = `.one.new-${process.pid}-${host}`;
    const elsewhere = ".one.new-12-another-machine";
    for (const name of [dead, alive, elsewhere]) mkdirSync(join(folder, "output", name), { recursive: true });
    await run("build", "garments/one");
    expect(readdirSync(join(folder, "output")).filter((name) => name.startsWith("."))).toEqual(
      [elsewhere, alive].sort(),
    );
    for (const name of [alive, elsewhere]) rmSync(join(folder, "output", name), { recursive: true });
  });

  it("checks without writing", async () => {
    rmSync(join(folder, "output"), { recursive: true, force: true });
    expect((await run("check", "garments")).code).toBe(0);
    expect(existsSync(join(folder, "output"))).toBe(false);
  });

  it("exits 3 with a reason where it may not write", async () => {
    writeFileSync(join(folder, "a-file"), "");
    const { code, err } = await run("build", "garments/one", "--out", "a-file/inside");
    expect(code).toBe(3);
    expect(err).toContain("a file stands where a folder should");
    if (process.getuid?.() !== 0) {
      mkdirSync(join(folder, "locked"));
      chmodSync(join(folder, "locked"), 0o555);
      const locked = await run("build", "garments/one", "--out", "locked");
      expect(locked.code).toBe(3);
      expect(locked.err).toContain("no permission");
    }
  });
});

describe("the built program, on many garments", () => {
  const COUNT = 8;
  const many = (name: string): string => {
    const root = mkdtempSync(join(tmpdir(), `plainwork-${name}-`));
    for (let i = 0; i < COUNT; i += 1) {
      mkdirSync(join(root, "garments", `g${i}`), { recursive: true });
      const text = recipeText({ title: `Skirt ${i}`, wearer: { waist: `${26 + (i % 4)} in` } });
      writeFileSync(join(root, "garments", `g${i}`, "recipe.md"), text);
    }
    return root;
  };

  it("builds them by several threads, and leaves them as they stand when nothing has changed", async () => {
    const root = many("many");
    const build = (...words: string[]) =>
      spawnSync(process.execPath, [PROGRAM, "build", "garments", ...words], { cwd: root, encoding: "utf8" });
    const first = build();
    // A slow machine says now and then how far it has come.
    expect([first.status, first.stderr.replace(/^\d+ of 8, .+ left\n/gm, "")]).toEqual([0, ""]);
    const pages = (): string[] =>
      Array.from({ length: COUNT }, (_, i) => readFileSync(join(root, `output/g${i}/booklet.html`), "utf8"));
    const before = pages();
    expect(new Set(before).size).toBe(COUNT);
    const second = build();
    expect(second.stdout).toBe(first.stdout.replace("index.html\n", "index.html (nothing had changed)\n"));
    writeFileSync(join(root, "garments/g3/recipe.md"), recipeText({ title: "Another" }));
    const third = build();
    expect(third.stdout).toContain(`(${COUNT - 1} of ${COUNT} had not changed)`);
    expect(pages().flatMap((page, i) => (page === before[i] ? [] : [i]))).toEqual([3]);
    const anew = build("--anew");
    expect(anew.stdout).toBe(first.stdout);
    rmSync(root, { recursive: true, force: true });
  });

  it("stops at once when the user says so: whole booklets stand, nothing lies about", async () => {
    const root = many("stopped");
    const child = spawn(process.execPath, [PROGRAM, "build", "garments"], {
      cwd: root,
      stdio: ["ignore", "pipe", "pipe"],
    });
    let said = "";
    let isStopped = false;
    child.stderr.on("data", (chunk) => {
      said += chunk;
    });
    child.stdout.on("data", () => {
      if (!isStopped) child.kill("SIGINT");
      isStopped = true;
    });
    const code = await new Promise((ended) => child.on("close", ended));
    expect(code).toBe(130);
    expect(said).toMatch(/^plainwork: stopped: \d+ of 8 garments are done; the others are as they were$/m);
    const names = readdirSync(join(root, "output"));
    expect(names.filter((name) => name.startsWith("."))).toEqual([]);
    expect(names.length).toBeGreaterThan(0);
    expect(names.length).toBeLessThan(COUNT);
    for (const name of names) expect(existsSync(join(root, "output", name, "plan.json"))).toBe(true);
    rmSync(root, { recursive: true, force: true });
  });
});
