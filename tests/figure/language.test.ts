/** The drawing language: told apart without colour, and written down as it is. */
import { readFileSync } from "node:fs";
import type { Element } from "hast";
import { describe, expect, it } from "vitest";
import { drawFigure, figuresOf } from "../../src/figure/index.ts";
import { FILLINGS, LINES, type LineKind } from "../../src/figure/language.ts";
import { DEMOS, demo } from "../demos.ts";
import { all } from "./outlines.ts";
import { GARMENTS, garment } from "./plans.ts";

const README = readFileSync(new URL("../../src/figure/README.md", import.meta.url), "utf8");
const kinds = Object.keys(LINES) as LineKind[];

/** The kinds whose weight and dash a drawn path has. */
function kindsOf({ properties }: Element): LineKind[] {
  return kinds.filter((kind) => {
    const { strokeWidth, strokeDashArray } = LINES[kind].attributes;
    return Number(properties.strokeWidth) === strokeWidth && properties.strokeDashArray === strokeDashArray;
  });
}

/** Pairs of lines in one drawing that a reader would have to guess at, in words. */
function alike(svg: Element): string[] {
  const told = all(svg, "path").filter((path) => kindsOf(path).some((kind) => LINES[kind].words));
  return told.flatMap((a, i) =>
    told.slice(i + 1).flatMap((b) => {
      if (a.properties.strokeDashArray !== b.properties.strokeDashArray) return [];
      const [one, other] = [a, b].map(({ properties }) => Number(properties.strokeWidth)) as [number, number];
      const ratio = Math.max(one, other) / Math.min(one, other);
      return ratio >= 1.25 - 1e-9 ? [] : [`${kindsOf(a)} (${one}) and ${kindsOf(b)} (${other})`];
    }),
  );
}

describe("the lines of a figure", () => {
  const plans = [
    ...DEMOS.map((name) => [name, demo(name)] as const),
    ...Object.keys(GARMENTS).map((name) => [name, garment(name)] as const),
  ];
  it.each(plans)("are told apart by weight or dash: %s", (_, plan) => {
    for (const figure of figuresOf(plan)) {
      const { svg } = drawFigure(figure, plan);
      expect(all(svg, "path").some((path) => kindsOf(path).length > 0)).toBe(true);
      expect(alike(svg), figure).toEqual([]);
    }
  });
});

describe("the written language", () => {
  const rows = [...README.matchAll(/^\| `([\w-]+)` \|(.*)\|$/gm)].map(([, name, rest = ""]) => [
    name,
    ...rest.split("|").map((cell) => cell.trim()),
  ]);
  it("has every line that has words, with its weight and dash", () => {
    expect(rows.filter(({ length }) => length === 4).sort()).toEqual(
      kinds
        .filter((kind) => LINES[kind].words)
        .map((kind) => {
          const { attributes, words } = LINES[kind];
          return [kind, String(attributes.strokeWidth), attributes.strokeDashArray ?? "", words];
        })
        .sort(),
    );
  });
  it("has every filling in the key's words, and every line without words by name", () => {
    expect(rows.filter(({ length }) => length === 2).sort()).toEqual(
      Object.entries(FILLINGS)
        .map(([name, { words }]) => [name, words])
        .sort(),
    );
    for (const kind of kinds.filter((kind) => !LINES[kind].words)) expect(README).toContain(`\`${kind}\``);
  });
});
