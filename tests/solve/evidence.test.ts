/** The tally of dated originals and its interval, held against published intervals. */
import { describe, expect, it } from "vitest";
import { readRecipe } from "../../src/recipe/read.ts";
import { solve } from "../../src/solve/solve.ts";
import { type Keys, recipeText } from "../recipes.ts";

function tallied(rows: readonly string[], keys: Keys = {}, evidence = true) {
  const text = `year,fibre,set\n${rows.join("\n")}\n`;
  const { recipe, messages } = readRecipe(
    "recipe.md",
    recipeText(keys),
    evidence ? { file: "evidence.csv", text } : undefined,
  );
  if (!recipe) throw new Error(JSON.stringify(messages));
  const { plan } = solve(recipe);
  if (!plan) throw new Error("no plan");
  const value = (name: string): string | undefined => plan.values.get(name)?.quantity.value.toString(4);
  return { value, codes: plan.messages.map(({ code }) => code), plan };
}

const times = (n: number, row: string): string[] => Array.from({ length: n }, () => row);

describe("row 18: 95 % Wilson intervals (R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, table I, method 3; from memory, recomputed)", () => {
  it.each([
    [81, 263, "0.2553", "0.3662"],
    [15, 148, "0.0624", "0.1605"],
    [0, 20, "0", "0.1611"],
    [1, 29, "0.0061", "0.1718"],
  ])("%i of %i: %s to %s", (gauged, items, low, high) => {
    const { value } = tallied([
      ...times(gauged, "1850,cotton,gauged"),
      ...times(items - gauged, "1850,cotton,pleated"),
    ]);
    expect([value("evidence.gauged"), value("evidence.items")]).toEqual([`${gauged}`, `${items}`]);
    expect([value("evidence.low"), value("evidence.high")]).toEqual([low, high]);
  });
  it("all of 20 mirrors none of 20: 0.8389 to 1", () => {
    const { value } = tallied(times(20, "1850,cotton,gauged"));
    expect([value("evidence.low"), value("evidence.high")]).toEqual(["0.8389", "1"]);
  });
});

describe("which originals count", () => {
  const rows = [
    "1845,cotton,gauged",
    "1850,cotton,pleated",
    "1855,wool,gauged",
    "1856,cotton,gauged",
    "1850,,gauged",
  ];
  it("those within five years, both ends included, of the recipe's year and of the garment's fibre", () => {
    const { value } = tallied(rows, { year: "1850", cloth: { fibre: "cotton" } });
    expect([value("evidence.items"), value("evidence.gauged")]).toEqual(["2", "1"]);
  });
  it("of every fibre when the recipe names none, of every year when it names none", () => {
    expect(tallied(rows, { year: "1850" }).value("evidence.items")).toBe("4");
    expect(tallied(rows, { cloth: { fibre: "cotton" } }).value("evidence.items")).toBe("3");
    expect(tallied(rows).value("evidence.items")).toBe("5");
  });
  it("a wider window by the recipe", () => {
    expect(tallied(rows, { year: "1850", evidence: { window: "6" } }).value("evidence.items")).toBe("5");
  });
  it("gauged behind a flat front is gauged; a gauged back behind pleats is not", () => {
    const { value } = tallied([
      "1850,wool,flat-front-gauged",
      "1850,wool,pleated-gauged-back",
      "1850,wool,box",
    ]);
    expect(value("evidence.gauged")).toBe("1");
  });
});

describe("a short list", () => {
  it("of 29 is warned of, of 30 is not", () => {
    expect(tallied(times(29, "1850,,gauged")).codes).toContain("little-evidence");
    expect(tallied(times(30, "1850,,gauged")).codes).not.toContain("little-evidence");
  });
  it("with nothing near has no share", () => {
    const { value, codes } = tallied(["1830,wool,gauged"], { year: "1850" });
    expect(value("evidence.items")).toBe("0");
    expect(value("evidence.share")).toBeUndefined();
    expect(codes).toContain("little-evidence");
  });
  it("that is not there although the recipe counts on it is told", () => {
    expect(tallied([], { evidence: { window: "3" } }, false).codes).toContain("no-evidence");
    expect(tallied([], {}, false).codes).not.toContain("no-evidence");
  });
});
