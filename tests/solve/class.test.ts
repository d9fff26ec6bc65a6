/** A class's samplers: numbers worked by hand, and what holds of every sampler. */

import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, it } from "vitest";
import { exact, planJson } from "../../src/solve/json.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { randomRecipe } from "../random.ts";
import { exactOf, type Keys, planOf, recipeText, tried } from "../recipes.ts";
import { brokenValues } from "../value-laws.ts";
import cases from "./class.json" with { type: "json" };

const F = (text: string): Fraction => new Fraction(text);

describe("a class", () => {
  it.each(cases.map((each) => [each.about, each] as const))("%s", (_, { keys, values, bites, messages }) => {
    const { plan, messages: said } = tried(recipeText(keys as unknown as Keys));
    expect(said.map(({ code }) => code).filter((code) => /sampler|class/.test(code))).toEqual(messages);
    expect(
      Object.fromEntries(Object.keys(values).map((name) => [name, exactOf(plan as Plan, name)])),
    ).toEqual(values);
    if (bites) expect(planJson(plan as Plan, "0").sampler?.bites).toEqual(bites);
  });

  it("without one nothing of it stands in the plan", () => {
    const plan = planOf();
    expect(plan.sampler).toBeUndefined();
    expect([...plan.values.keys()].filter((name) => name.startsWith("class."))).toEqual([]);
    expect(planOf({ class: { pupils: "3" }, publish: { class: "false" } }).sampler).toBeUndefined();
  });

  it("refuses a waist with nothing to sew, and pleats of which no two go into a width", () => {
    const flat = tried(
      recipeText({
        wearer: { waist: "40 in" },
        cloth: { width: "41 1/2 in", selvedge: "1/4 in" },
        skirt: { breadths: "1", seam: "1/2 in" },
        fullness: { zones: "[{set: flat}]" },
        class: { pupils: "2" },
      }),
    );
    expect(flat.messages.map(({ code }) => code)).toContain("class-nothing");
    const deep = tried(
      recipeText({
        cloth: { width: "24 in" },
        skirt: { breadths: "8" },
        fullness: { zones: "[{set: double-box, face: 6 in}]" },
        class: { pupils: "2" },
      }),
    );
    expect(deep.messages.map(({ code }) => code)).toContain("sampler-wide");
  });

  it("holds for every garment: bites make the cloth, it fits one width, the cloth to buy holds all, stages make the hours", () => {
    let seen = 0;
    fc.assert(
      fc.property(randomRecipe, fc.integer({ min: 1, max: 40 }), (source, pupils) => {
        const { plan } = tried(source.replace("---\n", `---\nclass: {pupils: "${pupils}"}\n`));
        if (!plan?.sampler) return;
        seen += 1;
        expect(brokenValues(planJson(plan, "0"), plan)).toEqual([]);
        const value = (name: string): Fraction => F(exactOf(plan, name));
        const { bites, stages, laid } = plan.sampler;
        const n = value("class.pleats");
        if (bites) {
          expect(bites).toHaveLength(2 * n.valueOf());
          expect(bites.map((bite) => F(exact(bite))).reduce((a, b) => a.add(b))).toEqual(value("class.top"));
          const spacing = value("section.waist").div(value("section.pleats"));
          expect(value("class.finished").equals(spacing.mul(n))).toBe(true);
          const pitch = plan.recipe.fullness.followRepeat
            ? value("section.pitch")
            : value("section.cloth").div(value("section.pleats"));
          const off = pitch.mul(n).sub(value("class.top"));
          expect(off.compare(0) >= 0 && off.compare(value("tape")) < 0).toBe(true);
        } else expect(value("class.finished").equals(F(exact(laid?.face as never)).mul(n))).toBe(true);
        expect(n.compare(2) >= 0).toBe(true);
        const width = value("class.width");
        expect(width.equals(value("class.top").add(value("class.ends").mul(2)))).toBe(true);
        expect(width.compare(value("breadths.usable")) <= 0).toBe(true);
        const area = width
          .mul(value("class.depth"))
          .add(value("class.edgeLength").mul(value("class.edgeDepth")))
          .mul(pupils);
        expect(value("class.cloth").mul(value("cloth.width")).compare(area) >= 0).toBe(true);
        for (const end of ["low", "high"] as const) {
          const sum = stages.map((stage) => F(exact(stage[end]))).reduce((a, b) => a.add(b));
          expect(sum.equals(value(end === "low" ? "class.low" : "class.high"))).toBe(true);
        }
      }),
      { numRuns: 120 },
    );
    expect(seen).toBeGreaterThan(20);
  });
});
