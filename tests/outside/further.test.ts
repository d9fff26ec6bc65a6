/** Further numbers that others published; the data is in further.json, with who printed them and whether they were read there. */
import { describe, expect, it } from "vitest";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { ellipseGirth, enclosed, middle } from "../../src/quantity/enclosure.ts";
import { readFormula } from "../../src/quantity/formula.ts";
import { hypotenuse } from "../../src/quantity/hypotenuse.ts";
import { fraction, inches, plain, toInches } from "../../src/quantity/quantity.ts";
import { roundTo, share } from "../../src/quantity/tape.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { solve } from "../../src/solve/solve.ts";
import { planOf, recipeText } from "../recipes.ts";
import published from "./further.json" with { type: "json" };

const within = (value: ReturnType<typeof fraction>, wanted: string, by: string): void =>
  expect(
    value.sub(fraction(wanted)).abs().compare(fraction(by)),
    `${value.toString(9)}, printed ${wanted}`,
  ).toBeLessThanOrEqual(0);

describe("units and geometry, by formulas as a maker writes them", () => {
  it.each(published.formulas)("$what [$source; $status]", ({ formula, is, within: by }) => {
    const result = readFormula(formula).evaluate(() => undefined);
    if (typeof result === "boolean") throw new Error(formula);
    within(result.dim.length === 1 ? toInches(result) : result.value, is, by ?? "0");
  });
});

describe("right-angled triangles", () => {
  it.each(published.triangles)("$sides: $is [$source; $status]", ({ sides: [a, b], is }) => {
    const slant = hypotenuse(inches(`${a}`), inches(`${b}`), inches("1"));
    expect(toInches(slant).equals(is)).toBe(true);
    // It is that, and no rounding of something near it.
    expect((a as number) ** 2 + (b as number) ** 2).toBe(is ** 2);
  });
});

describe("rounding to a multiple, midway to the even one", () => {
  it.each(published.rounded)("$value to $step is $is [$source; $status]", ({ value, step, is }) => {
    expect(roundTo(plain(fraction(value)), plain(fraction(step))).value.equals(fraction(is))).toBe(true);
  });
});

describe("girths of ellipses", () => {
  it.each(published.girths)("semi-axes $axes: $is [$source; $status]", ({ axes, is, within: by }) => {
    const [a, b] = axes.map((axis) => enclosed(fraction(axis)));
    if (!a || !b) throw new Error("two axes");
    within(middle(ellipseGirth(a, b), 20), is, by);
  });
});

describe("larger parts lie as evenly as can be (G. Toussaint, The Euclidean Algorithm Generates Traditional Musical Rhythms, 2005)", () => {
  /** k larger parts among the gaps of n places: a stroke where a part begins. */
  const strokes = (k: number, n: number): string =>
    share(inches(`${n}`), k, inches("1"))
      .parts.map((part) => `x${".".repeat(Number(toInches(part).n) - 1)}`)
      .join("");
  const turned = (rhythm: string, wanted: string): boolean => `${rhythm}${rhythm}`.includes(wanted);
  it.each(published.rhythms)("$k in $n: $is, up to rotation [$status]", ({ k, n, is }) => {
    expect(is).toHaveLength(n);
    expect(turned(strokes(k, n), is), strokes(k, n)).toBe(true);
  });
  it.each(published.notRhythms)("not $k in $n as $is: $what", ({ k, n, is }) => {
    expect(is).toHaveLength(n);
    expect(turned(strokes(k, n), is)).toBe(false);
  });
});

describe("95 % score intervals", () => {
  it.each(published.intervals)("$of: $low to $high [$source; $status]", ({ of: [some, all], low, high }) => {
    const rows = Array.from({ length: all as number }, (_, i) =>
      i < (some as number) ? "gauged" : "pleated",
    );
    const text = `year,fibre,set\n${rows.map((set) => `1850,cotton,${set}`).join("\n")}\n`;
    const { recipe } = readRecipe("recipe.md", recipeText(), { file: "evidence.csv", text });
    const plan = recipe && solve(recipe).plan;
    if (!plan) throw new Error("no plan");
    const value = (name: string) => plan.values.get(name)?.quantity.value ?? fraction("-1");
    within(value("evidence.low"), low, "0.0005");
    within(value("evidence.high"), high, "0.0005");
  });
});

describe("row 17: a shirt of 20 548 stitches (W. Hone, Every-Day Book, 1826; seen) at 23 and 30 a minute (Wheeler & Wilson trial, 1861; seen)", () => {
  const { values } = planOf();
  const minutes = (rate: string) =>
    fraction("20548")
      .div(values.get(rate)?.quantity.value ?? fraction("1"))
      .div(60);
  it("takes 14 h 53 min at the slower rate", () => {
    within(minutes("rate.running.low"), `${14 * 60 + 53}`, "1/2");
  });
  it("and the 14 h 26 min that were published (from memory) lie between the two rates", () => {
    expect(minutes("rate.running.low").compare(14 * 60 + 26)).toBeGreaterThan(0);
    expect(minutes("rate.running.high").compare(14 * 60 + 26)).toBeLessThan(0);
  });
});

describe("rows 29, 30, 34: what a booklet says", () => {
  const files = makeBooklet(planOf({ cloth: { weight: "120 g/m2" } }));
  const markdown = files.get("booklet.md") ?? "";
  const html = files.get("booklet.html") ?? "";
  it("row 29: a burn needs 20 minutes of cool running water (first-aid bodies; seen)", () => {
    expect(markdown).toMatch(/20 minutes of cool running water/);
  });
  it("row 30: cautions are headed by the words of ANSI Z535.4 and no others", () => {
    const words = [...markdown.matchAll(/^\s*> \*\*([A-Z]+)\b/gm)].map(([, word]) => word);
    expect(words.length).toBeGreaterThan(4);
    for (const word of new Set(words)) expect(["DANGER", "WARNING", "CAUTION", "NOTICE"]).toContain(word);
  });
  it("row 34: HowTo's totalTime is prepTime and performTime (schema.org)", () => {
    const data = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(html)?.[1] ?? "{}";
    const seconds = (name: string): number => {
      const text = (JSON.parse(data) as Record<string, string>)[name] ?? "";
      const [, h = "0", m = "0", s = "0"] = /^PT(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?$/.exec(text) ?? [];
      expect(text, name).toMatch(/^PT\d/);
      return Number(h) * 3600 + Number(m) * 60 + Number(s);
    };
    expect(seconds("totalTime")).toBe(seconds("prepTime") + seconds("performTime"));
    expect(seconds("performTime")).toBeGreaterThan(3600);
  });
});
