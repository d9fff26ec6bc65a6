/** What lies level above the hem in the figure of the finished garment and in its small picture: at its height, in both views. */
import { expect, it } from "vitest";
import { hangOf, levelLines } from "../../src/figure/hang.ts";
import { drawFigure } from "../../src/figure/index.ts";
import { picture } from "../../src/figure/picture.ts";
import { type Keys, recipeText, tried } from "../recipes.ts";
import { all, outlinesOf } from "./outlines.ts";

interface Row {
  readonly about: string;
  readonly skirt: Keys;
  /** How the heights were worked. */
  readonly hand: string;
  readonly heights: readonly number[];
  readonly words: string;
}

const rows: readonly Row[] = [
  {
    about: "two flounces and two tucks above them",
    skirt: { flounces: { count: "2", depth: "10 in" }, tucks: { count: "2", depth: "1/2 in" } },
    hand: "edges 1/2 and 1/2 + 10 - 1 1/4; heading 9 1/4 + 10; tucks a depth clear: 19 1/4 + 1/2, and two depths further",
    heights: [0.5, 9.25, 19.25, 19.75, 20.75],
    words:
      "Thin level lines: the lower edges of 2 flounces, and the highest heading, 19 1/4 in above the hem; the lower edges of 2 tucks.",
  },
  {
    about: "one flounce",
    skirt: { flounces: { count: "1", depth: "10 in" } },
    hand: "1/2, and 10 more",
    heights: [0.5, 10.5],
    words: "Thin level lines: the lower edge of the flounce, and the heading, 10 1/2 in above the hem.",
  },
  { about: "a plain skirt", skirt: {}, hand: "nothing", heights: [], words: "" },
];

it.each(rows)("$about", ({ skirt, heights, words }) => {
  const { plan } = tried(recipeText({ skirt }));
  if (!plan) throw new Error("the recipe is sound");
  expect(levelLines(plan)).toEqual(heights);
  const { description } = drawFigure("finished", plan);
  if (words) expect(description).toContain(words);
  else expect(description).not.toContain("level lines");
  const { height } = hangOf(plan);
  for (const svg of [drawFigure("finished", plan).svg, picture(plan)]) {
    const outlines = all(svg, "path").flatMap(({ properties }) => outlinesOf(String(properties.d)));
    // The longest fall from waist to hem gives the scale.
    const falls = outlines.filter((points) => points.length > 5).map((points) => points.map(([, y]) => y));
    const [waist, hem] = falls
      .map((ys) => [Math.min(...ys), Math.max(...ys)] as const)
      .reduce((a, b) => (b[1] - b[0] > a[1] - a[0] ? b : a));
    const level = outlines
      .filter(
        (points) => points.length === 2 && Math.abs((points[0]?.[1] ?? 0) - (points[1]?.[1] ?? 1)) < 0.05,
      )
      .map((points) => ((hem - (points[0]?.[1] ?? 0)) / (hem - waist)) * height);
    const within = 0.15 * (height / (hem - waist));
    for (const one of heights) expect(level.filter((at) => Math.abs(at - one) < within)).toHaveLength(2);
    // In the small picture no other line lies level.
    if (svg.properties.role !== "img") expect(level).toHaveLength(2 * heights.length);
  }
});
