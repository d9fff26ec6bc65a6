/** Pleats as they are drawn: every fold where the plan's faces and depths put it, turned the right way on both halves. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { figuresOf } from "../../src/figure/index.ts";
import { LINES } from "../../src/figure/language.ts";
import { pen } from "../../src/figure/measure.ts";
import { type LaidPleat, laidPleats } from "../../src/figure/pleat-fold.ts";
import { openingPleat } from "../../src/figure/pleat-opening.ts";
import { faceOf } from "../../src/figure/pleat-strip.ts";
import { pleatedLeft, pleats } from "../../src/figure/pleats.ts";
import type { Plan, PleatedSection } from "../../src/solve/plan.ts";
import { randomRecipe } from "../random.ts";
import { planOf, tried } from "../recipes.ts";
import { all, outlinesOf } from "./outlines.ts";
import { garment, garmentsWith } from "./plans.ts";

const pleated = (plan: Plan): PleatedSection[] =>
  plan.sections.filter(
    (section): section is PleatedSection => section.set !== "flat" && section.set !== "gauged",
  );

describe.each(garmentsWith("pleats"))("pleats of %s", (name) => {
  const plan = garment(name);

  it("take the section's cloth and lie on its waist, exactly", () => {
    for (const section of pleated(plan)) {
      const last = laidPleats(plan, section).at(-1)?.marks.at(-1);
      expect(last?.cloth).toBeCloseTo(pen(section.cloth), 6);
      expect(last?.waist).toBeCloseTo(pen(section.waist), 6);
    }
  });

  it("have every face as wide as the plan says, in front of all the rest", () => {
    for (const section of pleated(plan)) {
      for (const [i, pleat] of laidPleats(plan, section).entries()) {
        const [a, b] = faceOf(pleat);
        expect(b - a).toBeCloseTo(pen(section.faces[i] ?? section.waist), 6);
      }
    }
  });

  it("never tear: from fold to fold as much cloth as waist, or the fold's depth back", () => {
    for (const section of pleated(plan)) {
      const marks = laidPleats(plan, section).flatMap((pleat) => pleat.marks);
      for (const [i, mark] of marks.entries()) {
        const next = marks[i + 1];
        if (next) expect(Math.abs(next.waist - mark.waist)).toBeCloseTo(next.cloth - mark.cloth, 6);
      }
    }
  });

  it("show the same on the wearer's right, turned about", () => {
    const rows = all(pleats(plan).svg, "path")
      .filter(({ properties }) => properties.strokeWidth === String(LINES.cloth.attributes.strokeWidth))
      .flatMap(({ properties }) => outlinesOf(String(properties.d)));
    const near = (a: number, b = Number.NaN): boolean => Math.abs(a - b) < 0.03;
    const pairs = rows.filter((row) =>
      rows.some(
        (other) =>
          other.length === row.length &&
          other.every(([x, y], i) => near(360 - x, row[i]?.[0]) && near(y, row[i]?.[1])),
      ),
    );
    expect(pairs.length).toBeGreaterThanOrEqual(2 * pleatedLeft(plan).length);
  });
});

describe("the way knife pleats turn", () => {
  const first = (towards: string) => {
    const plan = planOf({ fullness: { zones: `[{set: knife, towards: ${towards}}]` } });
    const [section] = pleatedLeft(plan);
    return laidPleats(plan, section as PleatedSection)[0]?.marks ?? [];
  };
  const edge = (towards: string) => first(towards).find(({ kind }) => kind === "over");

  it("towards the back: the edge that shows is the back end of the face, and the fold under lies in front of it", () => {
    const under = first("back").find(({ kind }) => kind === "under");
    expect(edge("back")?.waist).toBeGreaterThan(0);
    expect(under?.waist).toBeLessThan(edge("back")?.waist ?? 0);
  });

  it("towards the front: the edge that shows is the front end of the face, and the fold under lies behind it", () => {
    const under = first("front").find(({ kind }) => kind === "under");
    expect(edge("front")?.waist).toBe(0);
    expect(under?.waist).toBeGreaterThan(0);
  });

  it("says what the direction makes at the centre lines", () => {
    const text = (towards: string): string => {
      const { svg } = pleats(planOf({ fullness: { zones: `[{set: knife, towards: ${towards}}]` } }));
      return JSON.stringify(svg);
    };
    expect(text("back")).toContain("make a box");
    expect(text("front")).toContain("inverted");
  });
});

describe("the opening among pleats", () => {
  it("is covered by the two halves' edges that meet at centre back", () => {
    expect(openingPleat(garment("pleats only"))).toContain("meet over the opening");
  });
  it("is warned of where a face would be cut in two", () => {
    expect(openingPleat(garment("pleats towards the front only"))).toContain("cut a pleat's face in two");
  });
  it("is counted to its pleat inside a section", () => {
    expect(openingPleat(garment("a half box in front, a part band, the opening among knife pleats"))).toMatch(
      /pleat \d+ of the right knife pleats/,
    );
  });
  it("is covered where it comes at the very edge of a face (a bug once: said to show)", () => {
    const plan = planOf({
      wearer: { waist: "36 1/8 in", "waist-to-floor": "{front: 34 in, side: 34 in, back: 34 in}" },
      cloth: { width: "24 3/4 in", selvedge: "0 in", thickness: "0.12 mm" },
      skirt: { breadths: "2 1/2", seam: "3/8 in", "off-floor": "1 in", hem: "{kind: faced, depth: 2 in}" },
      fullness: { method: "pleated" },
      attach: { to: "waistband", opening: "{at: front-right, from-centre: 9.3 cm}" },
    });
    expect(openingPleat(plan)).toContain("its fold covers the placket");
    expect(plan.messages.map(({ code }) => code)).not.toContain("opening-on-face");
  });
  it("is not spoken of where it stands in gauging", () => {
    expect(openingPleat(garment("flat, knife, gauged"))).toBeUndefined();
  });
});

describe("the face of a pleat", () => {
  it.each([
    { towards: "front", from: 1.5, to: 2.25 },
    { towards: "back", from: 0, to: 0.75 },
  ])("is not its hidden cloth, where both are as long: towards the $towards", ({ towards, from, to }) => {
    const zones = `[{set: knife, face: 3/4 in, depth: 3/4 in, towards: ${towards}}, {set: gauged}]`;
    const plan = planOf({ fullness: { zones: zones.replace("set: knife", "set: knife, waist: 6 in") } });
    const [section] = pleatedLeft(plan);
    const [pleat] = laidPleats(plan, section as PleatedSection);
    expect(faceOf(pleat as LaidPleat)).toEqual([from, to]);
  });

  it("is where the solver has it: the figure speaks of the face when the plan warns of it, and only then", () => {
    let among = 0;
    fc.assert(
      fc.property(randomRecipe, (source) => {
        const { plan } = tried(source);
        const words = plan && openingPleat(plan);
        if (!plan || !words || !/behind|in the face of/.test(words)) return;
        among += 1;
        expect(words.includes("in the face of")).toBe(
          plan.messages.some(({ code }) => code === "opening-on-face"),
        );
      }),
      { numRuns: 300 },
    );
    expect(among).toBeGreaterThan(3);
  });
});

describe("which figures there are", () => {
  it("no gauging where nothing is gauged, no pleats where nothing is laid", () => {
    const has = (name: string) => figuresOf(garment(name));
    expect(has("pleats only")).toEqual([
      "finished",
      "layout",
      "breadths",
      "map",
      "step-placket",
      "hem",
      "balance",
      "step-turn",
      "edge",
      "pleats",
      "waist-ring",
      "step-pins",
      "step-hooks",
    ]);
    expect(has("four breadths, even bites")).not.toContain("pleats");
    expect(has("pleated, gauged back")).toEqual(expect.arrayContaining(["gauging", "pleats", "whipping"]));
  });
});
