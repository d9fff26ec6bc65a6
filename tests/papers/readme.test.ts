/** What README.md tells a fresh reader to type, typed in its order into an empty folder, and what comes of it. */
import { execFile, spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { main } from "../../src/main.ts";
import { launch } from "../page/browser.ts";
import { asText, memoryWorld } from "../shelf/memory.ts";
import rows from "./examples.json" with { type: "json" };
import { fencesOf, ROOT, textOf } from "./papers.ts";

interface Row {
  readonly example: string;
  readonly says: string;
  /** Files that must stand in the folder `in` afterwards. */
  readonly leaves?: readonly string[];
  readonly in?: string;
  /** What is answered to its questions, one a line. */
  readonly answers?: readonly string[];
  /** It serves a page that holds this text, until it is stopped. */
  readonly opened?: string;
  readonly needs?: string;
}
const ROWS: readonly Row[] = rows;

const PROGRAM = join(ROOT, "dist/plainwork.cjs");
const fences = fencesOf("README.md");
const recipe = fences.find(({ kind }) => kind === "yaml")?.text ?? "";
const notebook = fences.find(({ kind }) => kind === "md")?.text ?? "";
const typed = fences
  .filter(({ kind }) => kind === "sh")
  .flatMap(({ text }) => text.trim().split("\n"))
  .map((line) => line.replace(/\s+#.*$/, ""));
const examples = typed.filter((line) => line.startsWith("npx ")).map((line) => line.replace(/^npx /, ""));

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "plainwork-readme-"));
  mkdirSync(join(folder, "my-skirt"));
  writeFileSync(join(folder, "my-skirt/recipe.md"), recipe);
  for (const demo of ["walking-skirt-in-eight-sizes", "mill-house-cotton"])
    cpSync(join(ROOT, "demo-projects", demo), join(folder, "demo-projects", demo), { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Two streams that are no terminal pass for one, so that it asks. */
const AS_TERMINAL = [
  "--import",
  "data:text/javascript,process.stdin.isTTY = process.stderr.isTTY = true;",
] as const;

/** Runs the built program; answers each question as it is asked; with `opened`, fetches its page and stops it as Ctrl-C does. */
function run({ example, answers, opened }: Row): Promise<Ended & { page?: string }> {
  const words = example.split(" ").slice(1);
  const child = spawn(process.execPath, [...(answers ? AS_TERMINAL : []), PROGRAM, ...words], {
    cwd: folder,
  });
  const left = [...(answers ?? [])];
  const said = { out: "", err: "" };
  let page: string | undefined;
  child.stderr.on("data", (text) => {
    said.err += text;
    // On a terminal the cursor is put behind every question.
    if (/\[(?!1G)\d+G$/.test(said.err) && left.length > 0) {
      child.stdin.write(`${left.shift()}\n`);
      if (left.length === 0) child.stdin.end();
    }
  });
  child.stdout.on("data", (text) => {
    said.out += text;
    const address = /^open (http\S+)$/m.exec(said.out)?.[1];
    if (opened === undefined || page !== undefined || !address) return;
    page = "";
    void fetch(address)
      .then((answer) => answer.text())
      .then((html) => {
        page = html;
        child.kill("SIGINT");
      });
  });
  return new Promise((resolve) =>
    child.on("close", (code) => resolve({ code, ...said, ...(page === undefined ? {} : { page }) })),
  );
}

/** Opens the built booklet in a browser, ticks a step, and saves the record where the example looks for it. */
async function saveRecord(): Promise<void> {
  const browser = await launch();
  const page = await browser.newPage();
  await page.goto(pathToFileURL(join(folder, "output/my-skirt/booklet.html")).href);
  await page.locator("#said-lessons").fill("take wider bites");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the record" }).click(),
  ]);
  await download.saveAs(join(folder, "record.json"));
  await browser.close();
}

describe("what README.md tells to type", () => {
  it("is tried line by line below", () => {
    expect([...new Set(examples)]).toEqual(ROWS.map(({ example }) => example));
    const scripts = JSON.parse(textOf("package.json")).scripts as Record<string, string>;
    const setups = typed.filter((line) => !line.startsWith("npx "));
    expect(setups).toEqual(["npm ci && npm run demo", "npm ci && npm test"]);
    for (const script of ["demo", "test"]) expect(scripts[script]).toBeDefined();
    // The same line that is run for every change.
    expect(textOf(".ci/run")).toContain(setups[1]);
  });

  it("npx finds the program in the repository itself", async () => {
    const { stdout } = await promisify(execFile)("npx", ["--no-install", "plainwork", "--version"], {
      cwd: ROOT,
    });
    expect(stdout.trim()).toBe(JSON.parse(textOf("package.json")).version);
  });

  it.each(ROWS)("$example", async (row) => {
    if (row.needs) await saveRecord();
    const { code, out, err, page } = await run(row);
    expect({ code, err: row.answers ? "" : err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(new RegExp(row.says));
    if (row.leaves)
      expect(readdirSync(join(folder, row.in ?? ""))).toEqual(expect.arrayContaining([...row.leaves]));
    if (row.opened) expect(page).toContain(row.opened);
  });
});

const built = async (text: string, more: Record<string, string> = {}) => {
  const world = memoryWorld({ "/w/my-skirt/recipe.md": text, ...more });
  return { world, code: await main(["build", "my-skirt"], world) };
};

describe("what README.md shows", () => {
  it("the mistake is told letter for letter as it stands there", async () => {
    const world = memoryWorld({ "/w/my-skirt/recipe.md": recipe.replace("waist: 27 in", "waist: 27") });
    expect(await main(["check", "my-skirt"], world)).toBe(1);
    expect(fences.filter(({ kind }) => kind === "").map(({ text }) => text)).toEqual([world.said.err]);
    const [first = ""] = fencesOf("src/recipe/messages/README.md").map(({ text }) => text);
    expect(world.said.err.startsWith(first)).toBe(true);
  });

  it("the recipe builds with the notebook under it, and with a photograph", async () => {
    const { world, code } = await built(recipe + notebook);
    expect([code, world.said.err]).toEqual([0, ""]);
    expect(world.files.get("/w/output/my-skirt/booklet.md")).toContain("5 3/8 yd to buy, for 21 bows");
    const picture = /`(!\[[^\]]+\]\((photos\/[^)]+)\))`/.exec(textOf("README.md")) ?? [];
    const jpeg = asText(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 0x10, 0x4a, 0x46, 0x49, 0x46));
    const shown = await built(`${recipe}${notebook}\n${picture[1]}\n`, {
      [`/w/my-skirt/${picture[2]}`]: jpeg,
    });
    expect([shown.code, shown.world.said.err]).toEqual([0, ""]);
    expect(shown.world.files.get("/w/output/my-skirt/booklet.md")).toContain(picture[1]);
  });
});
