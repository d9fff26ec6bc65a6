/** The house's own rules: layers look only down, no circles, the core knows nothing of Node, names stand in the catalogue. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { NAMES } from "../src/solve/names.ts";

const SRC = fileURLToPath(new URL("../src/", import.meta.url));
const LAYERS = ["quantity", "recipe", "solve", "figure", "guide", "booklet", "shelf", "command"];
const CORE = LAYERS.slice(0, 6);
/** One idea each, however long: every printed value's name, and the types of a recipe and of a plan. */
const LISTS = ["recipe/recipe.ts", "solve/names.ts", "solve/plan.ts"];

const files = readdirSync(SRC, { recursive: true })
  .map(String)
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts"));

const imports = new Map(
  files.map((file) => [
    file,
    [
      ...readFileSync(join(SRC, file), "utf8").matchAll(
        // Types too, and what is read only when it is wanted.
        /(?:\b(?:import|export)\b[^"'`;]*?from\s*|\bimport\s*\(?\s*)["']([^"']+)["']/g,
      ),
    ].map((found) => found[1] as string),
  ]),
);

const local = (file: string): string[] =>
  (imports.get(file) ?? [])
    .filter((path) => path.startsWith("."))
    .map((path) => normalize(join(dirname(file), path)));

describe("the code's structure", () => {
  it.each(files.filter((file) => CORE.includes(file.split("/")[0] as string)))(
    "%s is core: no node:, no layer above it",
    (file) => {
      const own = LAYERS.indexOf(file.split("/")[0] as string);
      expect((imports.get(file) ?? []).filter((path) => path.startsWith("node:"))).toEqual([]);
      expect(local(file).filter((path) => LAYERS.indexOf(path.split("/")[0] as string) > own)).toEqual([]);
    },
  );

  it.each(files.filter((file) => file.startsWith("open/page/")))(
    "%s runs in a browser: nothing of Node, of the shelf, or of the server",
    (file) => {
      expect((imports.get(file) ?? []).filter((path) => path.startsWith("node:"))).toEqual([]);
      expect(local(file).filter((path) => /^(?:shelf|open\/(?!page\/))/.test(path))).toEqual([]);
    },
  );

  it("only the command line reaches into what opens a recipe, and that takes nothing of the command line", () => {
    const outside = files.filter((file) => !file.startsWith("open/") && file !== "main.ts");
    expect(outside.filter((file) => local(file).some((path) => path.startsWith("open/")))).toEqual([]);
    const inside = files.filter((file) => file.startsWith("open/"));
    expect(inside.filter((file) => local(file).some((path) => path === "main.ts"))).toEqual([]);
  });

  it("DEVELOPERS.md draws the layers as they are", () => {
    const drawing =
      /^```\n([\s\S]*?)^```$/m.exec(readFileSync(join(SRC, "../DEVELOPERS.md"), "utf8"))?.[1] ?? "";
    const [above = [], below = []] = drawing
      .split(/^ {2}- - .*$/m)
      .map((part) =>
        [...part.matchAll(/^ {2}([a-z]+)(?:\.ts)? /gm)].map(([, layer = ""]) => layer).reverse(),
      );
    expect(below).toEqual(CORE);
    expect(above).toEqual(["shelf", "open", "command", "main"]);
  });

  it.each(files.filter((file) => file.startsWith("page/")))(
    "%s runs inside a booklet: nothing of Node, of files and folders, or of the command line",
    (file) => {
      expect((imports.get(file) ?? []).filter((path) => path.startsWith("node:"))).toEqual([]);
      const apart = local(file).filter(
        (path) => !/^(?:page|quantity|recipe|solve|figure|guide|booklet)\//.test(path),
      );
      expect(apart).toEqual([]);
    },
  );

  it.each(["shelf/", "figure/", "booklet/"].map((layer) => [layer]))(
    "nothing in %s leans on the command line",
    (layer) => {
      const inside = files.filter((file) => file.startsWith(layer));
      expect(
        inside.filter((file) =>
          local(file).some((path) => /^(?:command\/|(?:main|program|cli)\.ts$)/.test(path)),
        ),
      ).toEqual([]);
    },
  );

  it("no file is longer than 300 lines, but the lists", () => {
    const long = files.filter((file) => readFileSync(join(SRC, file), "utf8").split("\n").length > 301);
    expect(long.sort()).toEqual(LISTS);
  });

  it("files do not import each other in circles", () => {
    const state = new Map<string, "open" | "done">();
    const circles: string[] = [];
    const visit = (file: string, way: readonly string[]): void => {
      if (state.get(file) === "done") return;
      if (state.get(file) === "open") {
        circles.push([...way.slice(way.indexOf(file)), file].join(" > "));
        return;
      }
      state.set(file, "open");
      for (const next of local(file)) visit(next, [...way, file]);
      state.set(file, "done");
    };
    for (const file of files) visit(file, []);
    expect(circles).toEqual([]);
  });

  it("exact lengths stay exact: no float arithmetic beside them", () => {
    const floats = files
      .filter((file) => /^(quantity|solve)\//.test(file) && !file.endsWith("nearest.ts"))
      .flatMap((file) =>
        readFileSync(join(SRC, file), "utf8")
          .split("\n")
          .flatMap((line, i) =>
            /parseFloat|toFixed|Math\.(round|sqrt|floor|ceil)/.test(line)
              ? [`${relative(SRC, join(SRC, file))}:${i + 1}`]
              : [],
          ),
      );
    expect(floats).toEqual([]);
  });

  it("no value's name is the beginning of another's, so that all can stand in one tree", () => {
    const names = Object.keys(NAMES);
    expect(names.filter((name) => names.some((other) => other.startsWith(`${name}.`)))).toEqual([]);
    for (const name of names) expect(name).toMatch(/^[a-z][A-Za-z]*(\.[a-z][A-Za-z]*)*$/);
  });
});

describe("printed value names are an interface", () => {
  it("all the names that other programs rely on are there", () => {
    const promised =
      `waist.seam waist.quarter breadths.count breadths.usable breadths.seams breadths.cut skirt.round skirt.quarter skirt.fullness
      hem.allowance balance.least gauging.packed gauging.easy gauging.pleats gauging.perInch gauging.thread trial.cloth trial.target whip.stitches
      whip.doubled band.length band.depth piping.width piping.length piping.alongSelvedge cloth.length cloth.buy facing.length facing.depth skirt.weight hooks.band hooks.placket hooks.count
      placket.unsewn work.low work.high`.split(/\s+/);
    expect(promised.filter((name) => !(name in NAMES))).toEqual([]);
  });
});
