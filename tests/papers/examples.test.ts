/** Every fenced example of every README is tried by a test; here those of the folders, where no other test has them. */
import { execFile } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { main } from "../../src/main.ts";
import { asText, memoryWorld } from "../shelf/memory.ts";
import listed from "./fences.json" with { type: "json" };
import { fencesOf, PAPERS, ROOT } from "./papers.ts";

const fence = (paper: string, kind: string, n = 0): string =>
  fencesOf(paper).filter((found) => found.kind === kind)[n]?.text ?? "";
const recipe = fence("src/recipe/README.md", "md recipe");

/** Warnings and notes of the trade may be said of an example. */
const errorsOf = (said: string): readonly string[] => said.match(/^.* error \[.*$/gm) ?? [];

describe("fenced examples", () => {
  it("are all in the list that says which test tries them", () => {
    const counts = new Map<string, number>();
    for (const paper of PAPERS)
      for (const { kind } of fencesOf(paper)) {
        const name = `${paper} ${kind}`;
        counts.set(name, (counts.get(name) ?? 0) + 1);
      }
    expect([...counts.keys()].sort()).toEqual(listed.map(({ paper, kind }) => `${paper} ${kind}`).sort());
    for (const { paper, kind, count } of listed)
      if (count) expect([paper, kind, counts.get(`${paper} ${kind}`)]).toEqual([paper, kind, count]);
    for (const { kind, tried } of listed) {
      if (tried === "a drawing") expect(kind).toBe("");
      else expect(existsSync(join(ROOT, "tests", tried)), tried).toBe(true);
    }
  });
});

describe("examples of the folders' READMEs", () => {
  it("sizes laid over the first skirt are built", async () => {
    const world = memoryWorld({
      "/w/a/recipe.md": recipe.replace(/---\n$/, `${fence("src/recipe/README.md", "yaml")}---\n`),
    });
    expect([await main(["build", "a"], world), errorsOf(world.said.err)]).toEqual([0, []]);
    for (const size of ["size-a", "size-b"])
      expect([...world.files.keys()]).toContain(`/w/output/a/${size}/booklet.html`);
  });

  it("the sheet of an original comes to a recipe, and that builds", async () => {
    const sheet = fence("src/recipe/original/README.md", "yaml");
    const world = memoryWorld({ "/w/found/original.yaml": sheet });
    expect([await main(["original", "found"], world), world.said.err]).toEqual([0, ""]);
    expect([await main(["build", "found"], world), errorsOf(world.said.err)]).toEqual([0, []]);
  });

  it("what was really made stands in the next booklet", async () => {
    const world = memoryWorld({
      "/w/a/recipe.md": recipe,
      "/w/a/as-made.yaml": fence("src/shelf/README.md", "yaml"),
      "/w/a/photos/inside.jpg": asText(
        Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 0x10, 0x4a, 0x46, 0x49, 0x46),
      ),
    });
    expect([await main(["build", "a"], world), world.said.err]).toEqual([0, ""]);
    expect(world.files.get("/w/output/a/booklet.md")).toContain("The bites come out longer.");
  });
});

/** A folder with two garments, and the built program on the path as `plainwork`. */
function garments(): { folder: string; run: (script: string) => Promise<string> } {
  const folder = mkdtempSync(join(tmpdir(), "plainwork-many-"));
  for (const name of ["madder-print", "mill-house"]) {
    mkdirSync(join(folder, "garments", name), { recursive: true });
    writeFileSync(join(folder, "garments", name, "recipe.md"), recipe);
  }
  mkdirSync(join(folder, "bin"));
  const program = join(folder, "bin/plainwork");
  writeFileSync(
    program,
    `#!/bin/sh\nexec "${process.execPath}" "${join(ROOT, "dist/plainwork.cjs")}" "$@"\n`,
  );
  chmodSync(program, 0o755);
  const env = { ...process.env, PATH: `${join(folder, "bin")}${delimiter}${process.env.PATH}` };
  const run = async (script: string): Promise<string> =>
    (await promisify(execFile)("sh", ["-ec", script], { cwd: folder, env })).stdout;
  return { folder, run };
}

const SHELF = ["index.html", "index.md", "madder-print", "mill-house"];
const lines = fence("src/shelf/README.md", "sh").trim().split("\n");
const matrix = fence("src/shelf/README.md", "yaml", 1);

describe("many garments at once, as the shelf's README says", () => {
  const scripts: readonly (readonly [tool: string, script: string, before?: string])[] = [
    ...lines.map((line) => [/\b(parallel|xargs)\b/.exec(line)?.[0] ?? "", line] as const),
    ["make", "make -j 4 -f many.mk", fence("src/shelf/README.md", "make")],
    ["sh", ciScript()],
  ];
  it.for(scripts)("by %s: %s", async ([tool, script, makefile], { skip }) => {
    const { folder, run } = garments();
    if (makefile) writeFileSync(join(folder, "many.mk"), makefile);
    try {
      const missing = await run(`command -v ${tool}`).then(
        () => false,
        () => true,
      );
      skip(missing, `${tool} is not on this machine`);
      await run(script);
      expect(readdirSync(join(folder, "shelf")).sort()).toEqual(SHELF);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

/** The lines that the jobs of the matrix run, one after the other. */
function ciScript(): string {
  const { jobs } = parse(matrix) as {
    jobs: Record<string, { strategy?: { matrix: { garment: string[] } }; steps: { run?: string }[] }>;
  };
  return Object.values(jobs)
    .flatMap(({ strategy, steps }) =>
      (strategy?.matrix.garment ?? [""]).flatMap((garment) =>
        steps.flatMap(({ run }) => (run ? [run.replace(/\$\{\{ matrix\.garment \}\}/g, garment)] : [])),
      ),
    )
    .join("\n");
}
