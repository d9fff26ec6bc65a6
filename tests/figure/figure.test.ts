import fc from "fast-check";
import type { Element } from "hast";
import { describe, expect, it } from "vitest";
import { FIGURE_NAMES, type Figure, type FigureName } from "../../src/figure/figure.ts";
import { drawFigure, figuresOf } from "../../src/figure/index.ts";
import { printer } from "../../src/figure/measure.ts";
import { svgFile } from "../../src/figure/serialize.ts";
import { el, through } from "../../src/figure/svg.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { DEMOS, demo } from "../demos.ts";
import { all, outlinesOf } from "./outlines.ts";
import { garment, garmentsWith } from "./plans.ts";

const words = (element: Element | undefined): string =>
  (element?.children ?? []).map((child) => (child.type === "text" ? child.value : "")).join("");

const known = new Map<string, Figure>();
/** A figure of a garment or of a demo, drawn the first time it is asked for. */
function drawnOnce(figure: FigureName, name: string, of: (name: string) => Plan = garment): Figure {
  const key = `${figure} ${of.name} ${name}`;
  const made = known.get(key) ?? drawFigure(figure, of(name));
  known.set(key, made);
  return made;
}

describe.each(FIGURE_NAMES)("the figure %s", (figure) => {
  const names = garmentsWith(figure);
  it.each(names)("has a title and a description that name it: %s", (name) => {
    const { svg, title, description } = drawnOnce(figure, name);
    expect(title.length).toBeGreaterThan(5);
    expect(description).toMatch(/\d/);
    const [first, second] = svg.children as Element[];
    expect([first?.tagName, second?.tagName]).toEqual(["title", "desc"]);
    expect(svg.properties.ariaLabelledBy).toEqual([first?.properties.id, second?.properties.id]);
    expect(first?.properties.id).toBe(`fig-${figure}-title`);
    expect([words(first), words(second)]).toEqual([title, description]);
    expect(svg.properties.role).toBe("img");
  });

  it.each(names)("is the same bytes from the same plan, and has no broken number: %s", (name) => {
    const file = svgFile(drawnOnce(figure, name).svg);
    expect(svgFile(drawFigure(figure, garment(name)).svg)).toBe(file);
    const drawn = file.replace(/>[^<]*</g, "><");
    expect(/NaN|undefined|Infinity/.exec(file)).toBeNull();
    expect(/\.\d{3,}/.exec(drawn)).toBeNull();
  });

  it("takes its colour from the page and says which side is seen and which way is up", () => {
    const { svg } = drawnOnce(figure, names[0] as string);
    const colours = new Set(
      [...all(svg, "path"), ...all(svg, "circle"), ...all(svg, "g")].flatMap(({ properties }) =>
        [properties.fill, properties.stroke].filter(
          (paint) => paint !== undefined && !String(paint).startsWith("url("),
        ),
      ),
    );
    expect([...colours].sort()).toEqual(["currentColor", "none"]);
    // A chart shows no cloth.
    if (figure === "evidence" || figure === "range") return;
    const text = all(svg, "text").map(words).join(" ");
    expect(text).toMatch(/inside|outside|right side of the cloth/i);
    expect(text).toMatch(/up\b|upwards|above/);
  });

  it("keeps its ids to itself", () => {
    const { svg } = drawnOnce(figure, names[0] as string);
    const ids = [svg, ...["title", "desc", "pattern", "clipPath"].flatMap((tag) => all(svg, tag))]
      .map(({ properties }) => properties.id)
      .filter((id) => id !== undefined);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(new RegExp(`^fig-${figure}-`));
    const used = [...svgFile(svg).matchAll(/url\(#([^)]*)\)/g)].map(([, id]) => id);
    expect(ids).toEqual(expect.arrayContaining(used));
  });
});

describe.each(DEMOS)("the figures of %s", (name) => {
  const plan = demo(name);
  const drawn = figuresOf(plan).map((figure) => drawnOnce(figure, name, demo));

  it("are described in the garment's own printed values", () => {
    const { tape, part, fine } = printer(plan);
    const values = [...plan.values.values()].map(({ shown }) => shown);
    const bites = plan.gauged.flatMap(({ bites, spacing }) => [...bites.map(part), fine(spacing)]);
    const own = new Set([...values, ...bites, ...plan.rows.map(tape)].filter((text) => /\d/.test(text)));
    for (const { name: figure, description } of drawn) {
      const said = [...own].filter((text) =>
        new RegExp(`(?<![\\d/.])${text}(?![\\d/.]\\d)`).test(description),
      );
      expect(said.length, `${figure}: ${description}`).toBeGreaterThan(0);
    }
  });

  it("are described otherwise than those of other garments", () => {
    for (const other of DEMOS.filter((demo) => demo !== name))
      for (const { name: figure, description } of drawn) {
        if (!figuresOf(demo(other)).includes(figure as FigureName)) continue;
        // What is said of a turned hem, or of one moment's handwork, may be the same; the numbers of the whole are not.
        if (figure === "hem" || figure === "breadths" || figure.startsWith("step-")) continue;
        expect(drawnOnce(figure as FigureName, other, demo).description).not.toBe(description);
      }
  });

  it("take less than 160 KB in all", () => {
    const bytes = drawn.map(({ svg }) => Buffer.byteLength(svgFile(svg)));
    expect(bytes.reduce((a, b) => a + b)).toBeLessThan(160_000);
  });
});

describe("path data", () => {
  it("reads back as the points it was written from, to a hundredth of a unit, without adding errors up", () => {
    const coordinate = fc.double({ min: -1000, max: 1000, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 1, maxLength: 60 }), (points) => {
        const [outline, ...others] = outlinesOf(through(points.map(([x, y]) => ({ x, y }))));
        expect(others).toEqual([]);
        expect(outline?.length).toBe(points.length);
        for (const [i, [x, y]] of (outline ?? []).entries()) {
          expect(Math.abs(x - (points[i]?.[0] ?? Number.NaN))).toBeLessThanOrEqual(0.005 + 1e-9);
          expect(Math.abs(y - (points[i]?.[1] ?? Number.NaN))).toBeLessThanOrEqual(0.005 + 1e-9);
        }
      }),
    );
  });
});

describe("the file of a figure", () => {
  it("holds text that would break it, and puts aside what a file cannot hold", () => {
    const svg = el("svg", { viewBox: "0 0 10 10" }, [el("defs"), el("text", {}, ['<a> & "b" \u0000\ud800'])]);
    expect(svgFile(svg)).toContain("&lt;a&gt; &amp; &quot;b&quot; \ufffd\ufffd");
  });
});

describe("a petticoat's figures", () => {
  it("call it a petticoat", () => {
    const plan = demo("white-sheer-petticoat");
    for (const name of figuresOf(plan)) {
      const { svg, title, description } = drawFigure(name, plan);
      expect(`${title} ${description} ${svgFile(svg)}`, name).not.toMatch(/\bskirt\b/);
    }
  });
});
