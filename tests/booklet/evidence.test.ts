/** The chapter of evidence and choice, and the marks behind estimated numbers. */
import { describe, expect, it } from "vitest";
import { contextOf } from "../../src/booklet/context.ts";
import { adviceFlags } from "../../src/booklet/evidence.ts";
import { writeChapters } from "../../src/booklet/markdown.ts";
import { escapedMarks } from "../../src/booklet/marks.ts";
import { FIGURE_NAMES } from "../../src/figure/figure.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { solve } from "../../src/solve/solve.ts";
import { type Keys, planOf, recipeText } from "../recipes.ts";

const titles = Object.fromEntries(FIGURE_NAMES.map((name) => [name, `Title of ${name}`]));
const chapterOf = (plan: Plan, chapter: string): string =>
  escapedMarks(
    writeChapters(plan, { ...contextOf(plan), figures: titles }).find(({ name }) => name === chapter)
      ?.markdown ?? "",
  );

function listed(keys: Keys, rows: string): Plan {
  const { recipe } = readRecipe("recipe.md", recipeText(keys), { file: "evidence.csv", text: rows });
  const plan = recipe && solve(recipe).plan;
  if (!plan) throw new Error("no plan");
  return plan;
}

describe("common practice by year and fibre", () => {
  const linesOf = (year: string, fibre: string): string[] => {
    const flags = adviceFlags(planOf({ year, cloth: { fibre } }).recipe);
    return Object.entries(flags).flatMap(([flag, is]) => (is ? [flag] : []));
  };
  it.each([
    ["1835", "wool", ["practiceEither"]],
    ["1840", "wool", ["practiceForties"]],
    ["1849", "cotton", ["practiceCotton", "practiceForties"]],
    ["1850", "silk", ["practiceEither"]],
    ["1855", "silk", ["practicePleats"]],
    ["1870", "cotton", ["practiceCotton"]],
    ["1865", "linen", ["practiceLinen"]],
    ["1871", "silk", ["outOfPeriod"]],
  ])("%s, %s: %j", (year, fibre, lines) => {
    expect(linesOf(year, fibre)).toEqual(lines);
  });
});

describe("the chapter", () => {
  it("stands in every booklet, with advice and without a tally when there is no list", () => {
    const chapter = chapterOf(planOf({ year: "1846", cloth: { fibre: "cotton" } }), "evidence");
    expect(chapter).toContain("In the 1840s nearly everything is gauged.");
    expect(chapter).toContain("There is no list beside this recipe.");
    expect(chapter).not.toContain("interval, by Wilson");
  });
  it("shows the tally, its interval and how few they are", () => {
    const plan = listed(
      { year: "1858", cloth: { fibre: "silk" }, evidence: { "skip-bad-rows": "true" } },
      "year,fibre,set\n1856,silk,gauged\n1857,silk,box\n1858,silk,box\nlate,silk,box\n1858,wool,box\n",
    );
    const chapter = chapterOf(plan, "evidence");
    expect(chapter).toContain("| box pleats | 2 |\n| gauged all round | 1 |");
    expect(chapter).toContain("1 of 3, that is 33 %");
    // Wilson, 1 of 3, by hand: (1/3 + 0.64024 -+ 1.96 x 0.42518) / 2.28049.
    expect(chapter).toContain("from 6 % to 79 %");
    expect(chapter).toContain("Fewer than 30 originals");
    expect(chapter).toContain("Rows left out because they could not be read: 1.");
    expect(chapter).toContain("common practice for its cloth and year would sooner pleat it");
  });
  it("says so when no original is near enough", () => {
    const chapter = chapterOf(listed({ year: "1858" }, "year,set\n1831,gauged\n"), "evidence");
    expect(chapter).toContain("None of them is near enough to count.");
    expect(chapter).not.toContain("How the fullness is set | Originals");
  });
});

describe("estimated lengths", () => {
  const MARK = /estimate: measure before cutting/gi;
  const plan = planOf({
    wearer: { "waist-to-floor": null, "waist-height": "40 in", hoop: { round: "110 in", height: "9 in" } },
    cloth: { weight: "100 g/m2" },
  });
  it.each([
    "at-a-glance",
    "measures",
    "cloth",
    "cutting",
    "seams",
    "balance",
    "faults",
    "keeping",
    "last-look",
  ])("are marked in %s", (name) => {
    expect(chapterOf(plan, name).match(MARK)?.length).toBeGreaterThan(0);
    expect(chapterOf(planOf(), name)).not.toMatch(/estimate: measure/i);
  });
  it("but not in the record of what was made", () => {
    expect(chapterOf(plan, "as-made")).not.toMatch(/\best\b|estimate/i);
  });
  it("in tables, wherever the cut length, a finished length or the cloth to buy is printed", () => {
    const shown = ["breadths.cut", "finished.front", "cloth.buy"].map(
      (name) => plan.values.get(name)?.shown ?? "?",
    );
    for (const name of ["at-a-glance", "cutting", "balance"]) {
      const lines = chapterOf(plan, name)
        .split("\n")
        .filter((line) => line.startsWith("|") && shown.some((text) => line.includes(` ${text} `)));
      expect(lines.length, name).toBeGreaterThan(0);
      for (const line of lines) expect(line).toContain("(est.)");
    }
  });
});
