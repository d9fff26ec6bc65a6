/** What the demos of zones, checks and a failed trial are there to show. Their numbers are worked by hand. */
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { exact } from "../../src/solve/json.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { exactOf, recipeText, tried } from "../recipes.ts";

function demo(name: string): Plan {
  const file = new URL(`../../demo-projects/${name}/recipe.md`, import.meta.url);
  const { plan } = tried(readFileSync(file, "utf8"));
  if (!plan) throw new Error(`${name} does not build`);
  return plan;
}
const codes = (plan: Plan): string[] => plan.messages.map(({ code }) => code);

it("green silk: 5 x 23 = 115 in 25; 7 1/2 of a half in ten meeting pleats, 5 gauged; the opening at the first seam", () => {
  const plan = demo("green-silk-1862");
  expect(exactOf(plan, "skirt.round")).toBe("115");
  // 7 1/2 / (3/4) = 10 a half; meeting, 3 : 1: 22 1/2 of 57 1/2, and 35 are left for the gauged 5.
  expect(exactOf(plan, "pleating.count")).toBe("20");
  expect(exact(plan.sections[0]?.cloth as never)).toBe("45/2");
  // The first seam, half a breadth from centre front: 11 1/2 along, 7 1/2 x 11 1/2 / 22 1/2 on the waist.
  expect(exact(plan.opening.alongTop)).toBe("23/2");
  expect(exactOf(plan, "opening.fromFront")).toBe("23/6");
  expect(plan.opening.station).toBe("the first seam to the left of centre front");
  expect(codes(plan)).toContain("opening-moved");
  expect(codes(plan)).not.toContain("opening-on-face");
  expect(codes(plan)).not.toContain("opening-under-layers");
});

it("the warning of stacked pleats over the opening gives its numbers and the way out", () => {
  const said = tried(
    recipeText({
      cloth: { width: "24 in", thickness: "0.18 mm" },
      skirt: { breadths: "5" },
      fullness: { zones: "[{set: box, waist: 7 1/2 in, depth: 1 in}, {set: gauged}]" },
      attach: { to: "part-band", opening: { at: "front-right", "from-centre": "4 in" } },
    }),
  ).messages.find(({ code }) => code === "opening-under-layers");
  // Ten faces of 3/4 in; box pleats meet at half a face, 3/8 in; 1 - 3/8 reaches over.
  expect(said?.text).toContain(
    "a depth of 1 in behind a face of 3/4 in; hidden folds reach 5/8 in across it",
  );
  expect(said?.hint).toContain("take pleats no deeper than 3/8 in there");
  expect(said?.hint).toContain("they run from 0 in to 7 1/2 in from centre front on the waist");
});

it("stacked pleats over the opening, or folds to the back on a part band, are warned of", () => {
  const silk = (zones: string) =>
    tried(
      recipeText({
        cloth: { width: "24 in", thickness: "0.18 mm" },
        skirt: { breadths: "5" },
        fullness: { zones },
        attach: { to: "part-band", opening: { at: "front-left", "from-centre": "4 in" } },
      }),
    ).messages.map(({ code }) => code);
  expect(silk("[{set: knife, waist: 7 1/2 in, depth: 1 in, towards: front}, {set: gauged}]")).toContain(
    "opening-under-layers",
  );
  expect(silk("[{set: knife, waist: 7 1/2 in, towards: back}, {set: gauged}]")).toContain(
    "opening-under-layers",
  );
  expect(silk("[{set: knife, waist: 7 1/2 in, towards: front}, {set: gauged}]")).not.toContain(
    "opening-under-layers",
  );
});

it("checked wool: 53 checks of 1/2 in between two seams; 2 lines a pleat, 33 in a quarter of 33 1/8, the last 1 1/8", () => {
  const plan = demo("checked-walking-wool");
  expect(exactOf(plan, "breadths.finished")).toBe("53/2");
  expect(exactOf(plan, "section.lines")).toBe("2");
  expect(exactOf(plan, "section.pleats")).toBe("33");
  expect(plan.gauged[0]?.bites.slice(-3).map(exact)).toEqual(["1/2", "9/16", "9/16"]);
  expect(codes(plan)).not.toContain("seams-miss-repeat");
});

it("brown twill: 3 7/8 for 3 7/16 cannot close; packed 31/192 in, a tenth more is easy, 38 fit a quarter of 6 7/8", () => {
  const plan = demo("brown-twill-retried");
  expect(exactOf(plan, "trial.reaches")).toBe("55/16");
  expect(exactOf(plan, "gauging.packed")).toBe("31/192");
  expect(codes(plan)).toContain("trial-too-wide");
  // 6 7/8 / (341/1920) = 38.7; from 34 up to 38, 34 pitches of 1 1/4 in make 42 1/2 in one size
  expect(exactOf(plan, "section.wanted")).toBe("38");
  expect(exactOf(plan, "section.pleats")).toBe("34");
});
