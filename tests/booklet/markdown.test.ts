/** The booklet's Markdown: every chapter renders for every kind of garment, and reads the same by the reference parser. */
import { Parser } from "commonmark";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CHAPTERS, chaptersOf } from "../../src/booklet/chapters.ts";
import { contextOf } from "../../src/booklet/context.ts";
import { joinChapters, writeChapters } from "../../src/booklet/markdown.ts";
import { escapedMarks } from "../../src/booklet/marks.ts";
import { parseMarkdown } from "../../src/booklet/parse.ts";
import { templateNames } from "../../src/booklet/template/chapter.ts";
import { FIGURE_NAMES } from "../../src/figure/figure.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { randomRecipe } from "../random.ts";
import { type Keys, planOf, tried } from "../recipes.ts";

const titles = Object.fromEntries(FIGURE_NAMES.map((name) => [name, `Title of ${name}`]));
const markdownOf = (plan: Plan): string =>
  escapedMarks(joinChapters(plan, writeChapters(plan, { ...contextOf(plan), figures: titles })));

const GARMENTS: Record<string, Keys> = {
  "as plain as can be": {},
  "metric, half breadth, slit, unlike sides, stay, three rows": {
    show: "cm",
    wearer: { "waist-to-floor": { side: null, left: "104 cm", right: "103 cm" } },
    skirt: { breadths: "3 1/2", hem: { kind: "turned", depth: "7 cm" } },
    fullness: {
      rows: "3",
      stay: { name: "glazed cotton", thickness: "0.2 mm" },
      thread: "full-length",
      strands: "1",
    },
    attach: { band: { from: "faced" } },
  },
  "everything said": {
    year: "1864",
    wearer: { name: "W-1", ease: "-1/4 in", over: "a hoop", hoop: { round: "150 in", height: "9 in" } },
    cloth: {
      name: "silk",
      fibre: "silk",
      sheer: "true",
      weight: "80 g/m2",
      shrinkage: "3 %",
      repeat: { across: "3/4 in", down: "3/4 in" },
    },
    skirt: { braid: "true", hem: { kind: "faced", cloth: "other" } },
    attach: {
      made: "25 in",
      "placket-hooks": "all-along",
      opening: { at: "front-left", "from-centre": "3 in" },
    },
  },
  "a trial that passed": { fullness: { trial: { cloth: "21 5/8 in", pleats: "18", "closes-to": "2 in" } } },
  "a trial that could not close": {
    fullness: { trial: { cloth: "21 5/8 in", pleats: "18", "closes-to": "4 in" } },
  },
  "long-and-short": { cloth: { thickness: "0.45 mm" } },
  "a bodice edge": {
    year: "1858",
    attach: { to: "bodice-edge", whip: "every", "placket-hooks": "all-along" },
  },
  "a bodice edge, metric, made, whipped every other": {
    show: "cm",
    cloth: { weight: "40 g/m2" },
    attach: { to: "bodice-edge", made: "64 cm", whip: "every-other", opening: { at: "centre-front" } },
  },
  "a part band on the left": {
    attach: { to: "part-band", opening: { at: "front-left", "from-centre": "3 in" } },
  },
  "a part band on the right, metric, faced, made": {
    show: "cm",
    attach: {
      to: "part-band",
      made: "64 cm",
      band: { from: "faced" },
      opening: { at: "front-right", "from-centre": "16 cm" },
    },
  },
  "a piped waistband": { attach: { piping: { cord: "1/8 in" } } },
  "tucks, flounces on the cross and a pocket": {
    skirt: {
      pocket: "true",
      tucks: { count: "3", depth: "1/2 in" },
      flounces: { count: "2", depth: "8 in", cut: "cross" },
    },
  },
  "one tuck and one flounce, metric": {
    show: "cm",
    skirt: { tucks: { count: "1", depth: "1 cm" }, flounces: { count: "1", depth: "20 cm" } },
  },
  "flounces over opening and pocket, not gathered": {
    skirt: { pocket: "true", flounces: { count: "3", depth: "11 in", fullness: "1" } },
  },
  "a petticoat with tucks over its opening": {
    garment: "petticoat",
    skirt: { hem: { kind: "turned" }, tucks: { count: "14", depth: "1 in" } },
  },
  "estimated over a hoop, everything priced": {
    year: "1857",
    wearer: {
      "waist-to-floor": null,
      "waist-height": "40 in",
      hoop: { round: "110 in", height: "9 in", offset: "2 in" },
    },
    cloth: { fibre: "silk", sheer: "true", weight: "80 g/m2" },
    work: { price: { cloth: "9.50 per yd", notions: "12.00", hour: "22.00", currency: "GBP" } },
  },
  "only the work priced": { work: { price: { hour: "22.00" } } },
  "flat front, a stay": {
    fullness: { method: "flat-front-gauged", stay: { name: "tarlatan", thickness: "0.2 mm" } },
  },
  "pleated, metric": { show: "cm", fullness: { method: "pleated" } },
  "pleated, too thick to turn down": { cloth: { thickness: "0.6 mm" }, fullness: { method: "pleated" } },
  "pleated with a gauged back, too thick to turn down": {
    cloth: { thickness: "0.6 mm" },
    fullness: { method: "pleated-gauged-back" },
    attach: { band: { from: "faced" } },
  },
  "a box astride the front, flat, knives, the rest gauged; opening on a pleat": {
    cloth: { thickness: "0.15 mm" },
    fullness: {
      zones:
        "[{set: box, waist: 3 1/2 in, count: 3 1/2, depth: 1/2 in}, {set: flat, waist: 1 in}, {set: knife, waist: 3 in, depth: 1 in, towards: front}, {set: gauged}]",
    },
    attach: { opening: { at: "front-right", "from-centre": "1 1/2 in" } },
  },
  "checks as the ruler": {
    cloth: { thickness: "0.2 mm", repeat: { across: "3/8 in", down: "3/8 in" } },
    fullness: { "follow-repeat": "true" },
  },
  "light and whipped every other": { cloth: { weight: "40 g/m2" }, attach: { whip: "every-other" } },
};

describe("chapters", () => {
  it("each template is a chapter and each chapter has a template", () => {
    expect([...templateNames].sort()).toEqual([...CHAPTERS].sort());
  });

  it("of tucks and flounces stand in the booklets that have them, between hem and balance", () => {
    expect(chaptersOf(planOf()).filter((name) => name === "tucks" || name === "flounces")).toEqual([]);
    const trimmed = planOf({
      skirt: { tucks: { count: "1", depth: "1/2 in" }, flounces: { count: "1", depth: "8 in" } },
    });
    expect(chaptersOf(trimmed)).toEqual(expect.arrayContaining(["tucks", "flounces"]));
    expect(CHAPTERS.slice(CHAPTERS.indexOf("hem"), CHAPTERS.indexOf("balance") + 1)).toEqual([
      "hem",
      "tucks",
      "flounces",
      "balance",
    ]);
  });

  describe.each(Object.entries(GARMENTS))("%s", (_, keys) => {
    const markdown = markdownOf(planOf(keys));

    it("has nothing missing and nothing left of the template in it", () => {
      expect(markdown).not.toMatch(/undefined|null|NaN|\[object|\{\{|\}\}|[\uE000-\uE0FF]/);
      expect(markdown).not.toMatch(/\n{3,}/);
      expect(markdown.replace(/^\|.*$/gm, "")).not.toMatch(/\S {2,}\S/);
      expect(markdown).not.toMatch(/\b1 (pleats|hooks|pins|seams|strips|threads)\b|breadthes|\bin in\b/);
    });

    it("CommonMark's reference parser sees the same headings, lists and images as the program", () => {
      expect(shapeByReference(markdown)).toEqual(shapeOfOurs(markdown));
    });

    it("pipe tables have even rows", () => {
      for (const block of markdown.split("\n\n").filter((text) => text.startsWith("|"))) {
        const widths = block.split("\n").map((line) => line.replaceAll("\\|", "").split("|").length);
        expect(new Set(widths).size, block).toBe(1);
      }
    });
  });

  it("only those that apply appear", () => {
    const edges = ["piping", "band", "bodice-edge", "part-band", "dog-leg"];
    const of = (keys: Keys) => chaptersOf(planOf(keys)).filter((name) => edges.includes(name));
    expect(of({})).toEqual(["band"]);
    expect(of({ attach: { piping: { cord: "1/8 in" } } })).toEqual(["piping", "band"]);
    expect(of({ attach: { to: "bodice-edge" } })).toEqual(["piping", "bodice-edge"]);
    expect(of({ attach: { to: "part-band", opening: { at: "front-left", "from-centre": "3 in" } } })).toEqual(
      ["piping", "bodice-edge", "part-band", "dog-leg"],
    );
  });

  it("the wearer's side of a part band, and what hangs on it", () => {
    const on = (side: "left" | "right") =>
      markdownOf(
        planOf({ attach: { to: "part-band", opening: { at: `front-${side}`, "from-centre": "3 in" } } }),
      );
    expect(on("left")).toContain(
      "left front quarter, up to the opening | centre front | the closing mark | 3 in | the part band |",
    );
    expect(on("right")).toContain(
      "right front quarter, after the opening | centre front | the closing mark | 3 in | the part band |",
    );
    for (const side of ["left", "right"] as const) {
      expect(on(side).match(/\| the part band \|/g)).toHaveLength(1);
      expect(on(side)).toContain(`The band runs on towards the wearer's ${side}`);
    }
  });

  it("a bodice edge is never called a band", () => {
    const markdown = markdownOf(planOf({ attach: { to: "bodice-edge" } }));
    expect(markdown.split("\n## Workings")[0]).not.toMatch(/\bbands?\b|waistband/i);
    expect(markdown).toContain("casing beside the cord");
  });

  it("chapters that do not apply do not appear, and nothing is gauged where nothing is", () => {
    const names = (keys: Keys): string[] => {
      const plan = planOf(keys);
      return writeChapters(plan, { ...contextOf(plan), figures: titles }).map(({ name }) => name);
    };
    const without = (...left: string[]): string[] => CHAPTERS.filter((name) => !left.includes(name));
    const rare = ["tucks", "flounces", "piping", "bodice-edge", "part-band", "dog-leg"];
    expect(names({})).toEqual(without("pleats", "setting-pleats", "sewing-pleats", ...rare));
    expect(names({ fullness: { method: "pleated-gauged-back" } })).toEqual(
      without("setting-pleats", "sewing-pleats", ...rare),
    );
    const plan = planOf({ fullness: { method: "pleated" } });
    expect(chaptersOf(plan)).toEqual(
      without("trial", "marking", "gauging", "setting", "whipping", "another-waist", ...rare),
    );
    // A warning's way out and the evidence may still name gauging, and the workings list every default.
    const [text] = markdownOf(plan)
      .replace(/### Read these before you cut[^#]*/, "")
      .replace(/## Evidence and choice[\s\S]*?(?=\n## )/, "")
      .split("## Workings");
    expect(text).not.toMatch(/\b(gaug|whip|bites?\b)/i);
  });

  it("every chapter can be written for whatever random recipes make", () => {
    let written = 0;
    fc.assert(
      fc.property(randomRecipe, (source) => {
        const { plan } = tried(source);
        if (!plan) return;
        written += 1;
        expect(markdownOf(plan)).not.toMatch(/undefined|NaN|\[object|\{\{|\}\}|[\uE000-\uE0FF]/);
      }),
      { numRuns: 60 },
    );
    expect(written).toBeGreaterThan(20);
  });

  it("text of the maker's own stays text", () => {
    const plan = planOf({
      title: "A *bold* | [title](javascript:alert(1)) <script>",
      cloth: { name: "check `a` | b _c_" },
    });
    const markdown = markdownOf(plan);
    expect(markdown).not.toContain("<script>");
    const texts = JSON.stringify(parseMarkdown(markdown));
    expect(texts).not.toContain('"type":"html"');
    expect(texts).not.toContain('"type":"link"');
    expect(texts).toContain("A *bold* | [title](javascript:alert(1)) <script>");
    expect(texts).toContain("check `a` | b _c_");
  });
});

/** Headings with their level and text, list items counted, images by their place: in the order of the text. */
function shapeByReference(markdown: string): string[] {
  const shape: string[] = [];
  const walker = new Parser().parse(markdown).walker();
  for (let event = walker.next(); event; event = walker.next()) {
    const { node } = event;
    if (!event.entering) continue;
    if (node.type === "heading") shape.push(`h${node.level}`);
    if (node.type === "list") shape.push(`list ${node.listType}`);
    if (node.type === "item") shape.push("item");
    if (node.type === "image") shape.push(`image ${node.destination}`);
    if (node.type === "block_quote") shape.push("quote");
  }
  return shape;
}

interface MdNode {
  readonly type: string;
  readonly depth?: number;
  readonly ordered?: boolean;
  readonly url?: string;
  readonly children?: readonly MdNode[];
}

function shapeOfOurs(markdown: string): string[] {
  const shape: string[] = [];
  const walk = (node: MdNode): void => {
    if (node.type === "heading") shape.push(`h${node.depth}`);
    if (node.type === "list") shape.push(`list ${node.ordered ? "ordered" : "bullet"}`);
    if (node.type === "listItem") shape.push("item");
    if (node.type === "image") shape.push(`image ${node.url}`);
    if (node.type === "blockquote") shape.push("quote");
    node.children?.forEach(walk);
  };
  walk(parseMarkdown(markdown) as unknown as MdNode);
  return shape;
}
