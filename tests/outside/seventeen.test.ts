/**
 * The seventeen tests that a maker would set (common practice, no source; the numbers worked by hand): most as rows of
 * seventeen.json over the first demo's measures, the rest here.
 */
import Fraction from "fraction.js";
import { describe, expect, it } from "vitest";
import { drawFigure } from "../../src/figure/index.ts";
import type { planJson } from "../../src/solve/json.ts";
import { planJson as jsonOf } from "../../src/solve/json.ts";
import type { GaugedSection, Plan, PleatedSection } from "../../src/solve/plan.ts";
import { DEMOS, demo } from "../demos.ts";
import { BASE, exactOf, type Keys, merged, planOf } from "../recipes.ts";
import { hold, type Row } from "./rows.ts";
import rows from "./seventeen.json" with { type: "json" };

/** The blue printed cotton of the first demo. */
const DEMO: Keys = {
  wearer: { waist: "27 in", ease: "1/2 in" },
  cloth: { width: "44 in", selvedge: "1/4 in" },
};
const planWith = (keys: Keys): Plan => planOf(keys, merged(BASE, DEMO));

describe("what a maker would test, row by row", () => {
  it.each(
    (rows as readonly (Omit<Row, "section"> & { test: number })[]).map(
      (row) => [`${row.test}: ${row.rule}`, row] as const,
    ),
  )("%s", (_, row) => hold(row, DEMO));
});

describe("what a maker would test, in words", () => {
  it("2: the bites grow by 1.2 and more, never by 1.091", () => {
    const before = new Fraction("85/4").div(36);
    const after = planWith({
      fullness: { trial: { cloth: "21 1/4 in", pleats: "18", "closes-to": "3 3/4 in" } },
    });
    const grown = new Fraction(exactOf(after, "gauging.bite")).div(before).valueOf();
    expect(grown).toBeGreaterThanOrEqual(1.2);
    expect(grown).toBeLessThan(1.25);
  });

  it.each(DEMOS)("6: in %s no section spans the opening, and everything uses one place", (name) => {
    const plan = demo(name);
    const json: ReturnType<typeof planJson> = jsonOf(plan, "0");
    const waist = new Fraction(exactOf(plan, "waist.seam"));
    const at = new Fraction(json.seams.find(({ kind }) => kind !== "seam")?.station ?? "0").mul(waist);
    let from = new Fraction(0);
    for (const section of json.sections) {
      const to = from.add(section.waist);
      if (section.set === "gauged") expect(from.compare(at) < 0 && at.compare(to) < 0).toBe(false);
      from = to;
    }
    const near = at.mul(2).compare(waist) > 0 ? waist.sub(at) : at;
    expect(exactOf(plan, "opening.fromFront")).toBe(near.toFraction());
    const mapped = plan.map.find(({ kinds }) => kinds.includes("opening"));
    expect(new Fraction(mapped?.waist.value.toFraction() ?? "-1").div("25.4").toFraction()).toBe(
      at.toFraction(),
    );
  });

  it("8, 9: the figures draw the depth inside and the stitch at the fold", () => {
    const plan = planWith({
      fullness: { trial: { cloth: "21 1/4 in", pleats: "18", "closes-to": "2 1/4 in" } },
    });
    const words = new Map(
      (["drawn-up", "whipping"] as const).map((name) => [name, JSON.stringify(drawFigure(name, plan))]),
    );
    expect(words.get("drawn-up")).toContain("nearly all the depth stands inside");
    expect(words.get("whipping")).toContain("1/16 in below");
  });

  it("12: a box astride centre front: the faces of a half sum with n and a half", () => {
    const plan = planWith({
      fullness: {
        zones: "[{set: box, waist: 3 1/2 in, count: 3 1/2, depth: 1/2 in}, {set: gauged}]",
      },
    });
    const [left, right] = ["left", "right"].map((half) =>
      plan.sections.find(
        (section): section is PleatedSection => section.set === "box" && section.half === half,
      ),
    ) as [PleatedSection, PleatedSection];
    const inches = (of: readonly { value: Fraction }[]): Fraction[] =>
      of.map(({ value }) => new Fraction(value.toFraction()).div("25.4"));
    const faces = inches(left.faces);
    expect(faces).toHaveLength(4);
    expect(faces.reduce((a, b) => a.add(b)).toFraction()).toBe("7/2");
    // Half a pleat is half as wide as the others: with the other half's it makes a whole one.
    expect(faces[0]?.mul(2).toFraction()).toBe(faces[1]?.toFraction());
    expect(inches(right.faces).map(String)).toEqual(faces.map(String));
  });

  it("13: the inside strip of the left half is the mirror of the right, within one mark", () => {
    for (const name of DEMOS) {
      const plan = demo(name);
      const tape = new Fraction(plan.recipe.tape.value.toFraction());
      const half = (side: "left" | "right"): GaugedSection[] =>
        plan.gauged.filter((section) => section.half === side);
      const [left, right] = [half("left"), half("right").toReversed()];
      // The opening parts a section on its own side only; where the cloth's lines are the ruler there is no strip.
      if (left.length !== right.length || left.some(({ lines }) => lines !== undefined)) continue;
      left.forEach((section, i) => {
        const other = right[i] as GaugedSection;
        expect(other.pleats).toBe(section.pleats);
        const cloth = new Fraction(other.cloth.value.toFraction());
        section.marks.forEach((mark, n) => {
          const mirrored = cloth.sub((other.marks.at(-1 - n) as { value: Fraction }).value.toFraction());
          // A long stitch lies where the mirror has a short one; the pleats' own ends, every second mark, are mirrored.
          if (section.style === "long-and-short" && n % 2 === 1) return;
          const most = tape.add(section.remainder.value.toFraction());
          const off = mirrored.sub(mark.value.toFraction()).abs();
          expect(off.compare(most) <= 0, `${name}, ${section.name}, mark ${n + 1}`).toBe(true);
        });
      });
    }
  });

  it("16: a deeper fold raises the hem; trimming the fold never moves it", () => {
    const [plain, deeper] = ["40 in", "39 in"].map((front) =>
      planWith({ wearer: { "waist-to-floor": { front } } }),
    );
    const of = (plan: Plan | undefined, name: string): Fraction => new Fraction(exactOf(plan as Plan, name));
    expect(exactOf(plain as Plan, "breadths.cut")).toBe(exactOf(deeper as Plan, "breadths.cut"));
    expect(of(deeper, "turnDown.front").sub(of(plain, "turnDown.front")).toFraction()).toBe("1");
    expect(of(plain, "finished.front").sub(of(deeper, "finished.front")).toFraction()).toBe("1");
  });
});
