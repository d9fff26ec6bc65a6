/** The figures speak of the edge that the garment has; the ring is the right way round. */
import type { Element } from "hast";
import { describe, expect, it } from "vitest";
import type { FigureName } from "../../src/figure/figure.ts";
import { drawFigure, figuresOf } from "../../src/figure/index.ts";
import { at, type Ring } from "../../src/figure/ring-parts.ts";
import { edgeAt, partBandOf } from "../../src/figure/sewn-edge.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { planOf } from "../recipes.ts";
import { garment } from "./plans.ts";

const lettering = (tree: Element): string =>
  tree.children
    .map((child) =>
      child.type === "text" ? `${child.value} ` : child.type === "element" ? lettering(child) : "",
    )
    .join("");
const words = (plan: Plan, figure: FigureName): string => {
  const { title, svg } = drawFigure(figure, plan);
  return `${title} ${lettering(svg)}`;
};

describe("a bodice edge", () => {
  const plan = garment("a bodice edge, long and short, a stay, a braid");
  it("has no band in any figure", () => {
    for (const figure of figuresOf(plan)) expect(words(plan, figure)).not.toMatch(/\bband/i);
  });
  it("is whipped through the casing beside the cord, never the cord", () => {
    const text = words(plan, "whipping");
    expect(text).toContain("casing beside the cord, never the cord");
    expect(text).toContain("cord is never pierced");
  });
  it("shows its cord wherever the edge is drawn", () => {
    for (const figure of ["finished", "drawn-up", "whipping"] as const)
      expect(words(plan, figure)).toContain("covered cord");
    expect(words(plan, "edge")).toContain("cord 1/16 in");
  });
});

describe("a plain band", () => {
  it("has no cord in any figure", () => {
    const plan = garment("four breadths, even bites");
    for (const figure of figuresOf(plan)) expect(words(plan, figure)).not.toMatch(/\bcord|bodice edge/i);
  });
});

describe("a part band", () => {
  const plan = garment("a part band, the opening at the wearer's front left");
  it("reaches from centre front to the opening, on the opening's side only", () => {
    expect(partBandOf(plan)).toEqual({ half: "left", inches: 5 });
    const carried = plan.sections.filter((section) => edgeAt(plan, section).name === "part band");
    expect(carried.map(({ half }) => half)).toEqual(["left"]);
    expect(carried[0]?.from.value.n).toBe(0n);
  });
  it("is drawn beside the bodice edge in section, ring and view", () => {
    for (const figure of ["finished", "edge", "waist-ring"] as const) {
      expect(words(plan, figure)).toContain("part band");
      expect(words(plan, figure)).toMatch(/bodice/);
    }
  });
  it("has its mirror on the wearer's right", () => {
    const right = planOf({
      attach: { to: "part-band", opening: { at: "front-right", "from-centre": "5 in" } },
    });
    expect(partBandOf(right)).toEqual({ half: "right", inches: 5 });
    const carried = right.sections.filter((section) => edgeAt(right, section).name === "part band");
    expect(carried.map(({ half }) => half)).toEqual(["right"]);
  });
});

describe("the ring", () => {
  const ring: Ring = { middle: { x: 180, y: 200 }, radius: 100, seam: 28 };
  it("has centre front at the foot and the wearer's left on the right", () => {
    expect(at(ring, 0)).toEqual({ x: 180, y: 300 });
    expect(at(ring, 7).x).toBeCloseTo(280, 9);
    expect(at(ring, 14).y).toBeCloseTo(100, 9);
    expect(at(ring, 21).x).toBeCloseTo(80, 9);
  });
  it("names every section's length and pleats", () => {
    const plan = garment("flat, knife, gauged");
    const text = words(plan, "waist-ring");
    for (const part of ["flat 2 in", "knife pleats 4 in: 4 towards the back", "gauged"])
      expect(text).toContain(part);
    for (const { pleats } of plan.gauged) expect(text).toContain(`${pleats} pleats`);
  });
});

describe("the hem", () => {
  it("shows a facing or a turned fold, and a braid only where there is one", () => {
    const faced = words(planOf({ skirt: { hem: { kind: "faced" } } }), "hem");
    const turned = words(planOf({ skirt: { hem: { kind: "turned" }, braid: "true" } }), "hem");
    expect(faced).toContain("seam rolled 1/16 in to the inside");
    expect(faced).not.toContain("braid");
    expect(turned).toContain("raw edge turned in 1/4 in");
    expect(turned).toContain("braid, 1/16 to 1/8 in below the edge");
    expect(turned).not.toContain("facing");
  });
});
