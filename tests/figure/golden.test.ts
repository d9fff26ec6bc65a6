/**
 * The drawings of every demo are the ones that were looked at and kept in output/. A changed drawing is left beside
 * the old one in tests/figure/changed/ (not committed), so that both can be looked at; npm run demo keeps it.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import { drawFigure, figuresOf } from "../../src/figure/index.ts";
import { picture } from "../../src/figure/picture.ts";
import { svgFile } from "../../src/figure/serialize.ts";
import { DEMOS, demo } from "../demos.ts";
import { firstChange } from "./normal.ts";

const KEPT = fileURLToPath(new URL("../../output/", import.meta.url));
const CHANGED = fileURLToPath(new URL("./changed/", import.meta.url));

beforeAll(() => rmSync(CHANGED, { recursive: true, force: true }));

describe.each(DEMOS)("the drawings of %s", (name) => {
  const folder = `${KEPT}${name}/figures/`;

  it("are all kept, and no others", () => {
    const drawn = figuresOf(demo(name)).map((figure) => `${figure}.svg`);
    expect(readdirSync(folder).sort()).toEqual([...drawn, "picture.svg"].sort());
  });

  it("have the small picture for lists as it was kept", () => {
    expect(readFileSync(`${folder}picture.svg`, "utf8")).toBe(svgFile(picture(demo(name))));
  });

  it.each(figuresOf(demo(name)))("are as they were kept: %s", (figure) => {
    const file = `${folder}${figure}.svg`;
    const kept = existsSync(file) ? readFileSync(file, "utf8") : "";
    const drawn = svgFile(drawFigure(figure, demo(name)).svg);
    const change = firstChange(kept, drawn);
    if (change === undefined) return;
    mkdirSync(CHANGED, { recursive: true });
    writeFileSync(`${CHANGED}${name}-${figure}.old.svg`, kept);
    writeFileSync(`${CHANGED}${name}-${figure}.new.svg`, drawn);
    expect.fail(
      `tests/figure/changed/${name}-${figure}.new.svg is not the kept drawing (.old.svg beside it): ${change}. Look at both (npm run sheet); if the new one is right, npm run demo keeps it.`,
    );
  });
});

describe("the comparison", () => {
  it("sees a moved line and a changed word, and names where", () => {
    const svg = (d: string, words: string) => `<svg><path d="${d}"/><text>${words}</text></svg>`;
    expect(firstChange(svg("M0 0h9M1 1h2", "a"), svg("M0 0h9M1 1h2", "a"))).toBeUndefined();
    expect(firstChange(svg("M0 0h9M1 1h2", "a"), svg("M0 0h9M1 1h3", "a"))).toContain("line 3");
    expect(firstChange(svg("M0 0h9", "a"), svg("M0 0h9", "b"))).toContain("<text>b</text>");
    expect(firstChange(svg("M0 0h9", "a"), "")).toContain("was <svg>");
  });
});
