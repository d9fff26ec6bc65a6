/** The laws themselves are tested: a good plan keeps them, and a plan spoilt in one place is caught, by name. */
import { describe, expect, it } from "vitest";
import { add, div, inches, plain, type Quantity, sub } from "../src/quantity/quantity.ts";
import type { Piece, Plan } from "../src/solve/plan.ts";
import { brokenLaws } from "./laws.ts";
import { planOf } from "./recipes.ts";

const good = planOf({
  cloth: { weight: "120 g/m2", repeat: { down: "3 in" } },
  skirt: { tucks: { count: "2", depth: "1/2 in" }, pocket: "true", hem: { kind: "faced", depth: "5 in" } },
});
const longer = (q: Quantity): Quantity => add(q, inches("1/16"));
const at = <T>(list: readonly T[], i: number, change: (item: T) => T): T[] =>
  list.map((item, k) => (k === i ? change(item) : item));
const valued = (name: string, change: (q: Quantity) => Quantity): Plan => {
  const values = new Map(good.values);
  const value = values.get(name);
  if (!value) throw new Error(`no value ${name}`);
  values.set(name, { ...value, quantity: change(value.quantity) });
  return { ...good, values };
};

const lined = planOf({
  cloth: { weight: "120 g/m2", repeat: { across: "2 in", match: "true", dominant: "1/2 in" } },
  lining: { width: "30 in", selvedge: "1/4 in", thickness: "0.1 mm", weight: "90 g/m2" },
  interlining: { width: "40 in", thickness: "0.5 mm", weight: "90 g/m2", to: "turned" },
});
const bordered = planOf({
  cloth: {
    width: "60 in",
    border: { depth: "6 in", edge: "both", "from-edge": "2 in", "above-hem": "1 in" },
  },
  skirt: {
    run: "along",
    breadths: null,
    round: "160 in",
    lengths: "2",
    flounces: { count: "1", depth: "8 in" },
  },
});
const borderedWith = (name: string, change: (q: Quantity) => Quantity): Plan => {
  const values = new Map(bordered.values);
  const value = values.get(name);
  if (!value) throw new Error(`no value ${name}`);
  values.set(name, { ...value, quantity: change(value.quantity) });
  return { ...bordered, values };
};
const borderedLaid = (name: string, change: (piece: Piece) => Piece): Plan => ({
  ...bordered,
  layout: {
    ...bordered.layout,
    pieces: bordered.layout.pieces.map((piece) => (piece.name === name ? change(piece) : piece)),
  },
});

const linedWith = (name: string, change: (q: Quantity) => Quantity): Plan => {
  const values = new Map(lined.values);
  const value = values.get(name);
  if (!value) throw new Error(`no value ${name}`);
  values.set(name, { ...value, quantity: change(value.quantity) });
  return { ...lined, values };
};

const SPOILT: readonly [string, Plan, string][] = [
  [
    "a border higher above the hem",
    borderedWith("border.above", longer),
    "the border above the finished hem",
  ],
  ["a border's head moved", borderedWith("border.head", longer), "the border's upper edge"],
  ["a second border moved", borderedWith("border.second", longer), "the other border lies"],
  ["the hem cut elsewhere", borderedWith("run.start", longer), "lies with the hem at one place"],
  ["the strip beside narrower", borderedWith("run.beside", longer), "make the cloth's width"],
  [
    "a length cut short",
    borderedLaid("length 2", (piece) => ({ ...piece, length: sub(piece.length, inches("1/8")) })),
    "the lengths reach the round",
  ],
  [
    "a length wider than it has to be",
    borderedLaid("length 1", (piece) => ({ ...piece, width: longer(piece.width) })),
    "is as wide as hem, skirt and turn-down",
  ],
  [
    "a facing strip along the body cut short",
    borderedLaid("facing strip 1", (piece) => ({ ...piece, length: sub(piece.length, inches("1/8")) })),
    "strips of the facing are as wide",
  ],
  [
    "a facing strip along the body too shallow",
    borderedLaid("facing strip 2", (piece) => ({ ...piece, width: sub(piece.width, inches("1/8")) })),
    "depth of the facing's strips",
  ],
  ["a length longer than the round asks", borderedWith("run.length", longer), "run.length by its rule"],
  [
    "a flounce strip off its border",
    borderedLaid("flounce strip 1", (piece) => ({ ...piece, x: sub(piece.x, inches("1/8")) })),
    "lies at a border",
  ],
  [
    "a hem levelled at the bottom, the top left alone",
    { ...good, balance: good.balance.map((s) => ({ ...s, turnDown: inches("2") })) },
    "cut length at",
  ],
  [
    "a section moved",
    { ...good, sections: at(good.sections, 1, (s) => ({ ...s, from: longer(s.from) })) },
    "waist: the",
  ],
  [
    "a section twice",
    { ...good, sections: [...good.sections, ...good.sections.slice(-1)] },
    "the sections' waists",
  ],
  ["a section left out", { ...good, sections: good.sections.slice(1) }, "the sections' cloth"],
  [
    "a bite longer",
    {
      ...good,
      sections: at(good.sections, 0, (s) =>
        s.set === "gauged" ? { ...s, bites: at(s.bites, 2, longer) } : s,
      ),
    },
    "bites of the",
  ],
  [
    "a mark left out",
    {
      ...good,
      sections: at(good.sections, 0, (s) => (s.set === "gauged" ? { ...s, marks: s.marks.slice(1) } : s)),
    },
    "marks of the",
  ],
  [
    "a breadth too wide",
    { ...good, breadths: at(good.breadths, 1, (b) => ({ ...b, to: longer(b.to) })) },
    "breadths",
  ],
  ["a seam left out", { ...good, seams: good.seams.filter((_, i) => i !== 1) }, "a seam a piece"],
  [
    "a seam moved",
    { ...good, seams: at(good.seams, 1, (s) => ({ ...s, alongTop: longer(s.alongTop) })) },
    "a seam at every breadth's end",
  ],
  ["seams out of order", { ...good, seams: [...good.seams].reverse() }, "in order"],
  ["stations out of order", { ...good, balance: [...good.balance].reverse() }, "one way round"],
  [
    "a turn-down longer",
    { ...good, balance: at(good.balance, 3, (s) => ({ ...s, turnDown: longer(s.turnDown) })) },
    "cut length at",
  ],
  [
    "a printed length longer",
    { ...good, balance: at(good.balance, 3, (s) => ({ ...s, finishedMark: longer(s.finishedMark) })) },
    "printed lengths at",
  ],
  [
    "the curve through another place",
    { ...good, curve: at(good.curve, 8, (s) => ({ ...s, turnDown: longer(s.turnDown) })) },
    "the curve goes through",
  ],
  [
    "a piece twice",
    {
      ...good,
      layout: { ...good.layout, pieces: [...good.layout.pieces, ...good.layout.pieces.slice(0, 1)] },
    },
    "do not overlap",
  ],
  [
    "a piece off the cloth",
    {
      ...good,
      layout: { ...good.layout, pieces: at(good.layout.pieces, 0, (p) => ({ ...p, x: longer(p.x) })) },
    },
    "lies on the cloth",
  ],
  [
    "a layout too long",
    { ...good, layout: { ...good.layout, length: longer(good.layout.length) } },
    "ends with its lowest piece",
  ],
  ["a tuck higher", { ...good, tucks: at(good.tucks, 0, (t) => ({ ...t, seam: longer(t.seam) })) }, "tuck 1"],
  ["the opening a slit", { ...good, opening: { ...good.opening, kind: "slit" } }, "a seam within an inch"],
  [
    "a pocket on the other side",
    good.pocket ? { ...good, pocket: { ...good.pocket, side: "left" } } : good,
    "the pocket is on the right",
  ],
  ["a row of other waists lost", { ...good, otherWaists: good.otherWaists.slice(1) }, "goes by whole steps"],
  [
    "eyes for another waist on the wrong side",
    {
      ...good,
      otherWaists: good.otherWaists.map((row) =>
        row.hook ? { ...row, hook: { ...row.hook, on: "lap" as const } } : row,
      ),
    },
    "hooks for a waist",
  ],
  [
    "a strip of facing too wide",
    {
      ...good,
      layout: {
        ...good.layout,
        pieces: good.layout.pieces.map((piece) =>
          piece.name === "facing strip 1" ? { ...piece, width: longer(piece.width) } : piece,
        ),
      },
    },
    "strips of the facing are as wide",
  ],
  [
    "a piece of lining too narrow",
    {
      ...lined,
      linings: at(lined.linings, 0, (l) => ({
        ...l,
        layout: {
          ...l.layout,
          pieces: at(l.layout.pieces, 0, (p) => ({ ...p, width: sub(p.width, inches("1/16")) })),
        },
      })),
    },
    "each piece of the lining is as wide",
  ],
  [
    "a dominant line's seam shared unevenly",
    ((): Plan => {
      const wide = planOf({
        cloth: { repeat: { across: "2 in", match: "true", dominant: "1/2 in", "lines-lost": "3" } },
      });
      const values = new Map(wide.values);
      for (const [name, more] of [
        ["seam.left", "2"],
        ["seam.right", "-2"],
      ] as const) {
        const value = values.get(name);
        if (value) values.set(name, { ...value, quantity: add(value.quantity, inches(more)) });
      }
      return { ...wide, values };
    })(),
    "the dominant line's seam is evenly shared",
  ],
  ["a row lower", { ...good, rows: at(good.rows, 1, longer) }, "row 2"],
  [
    "a stage longer",
    { ...good, stages: at(good.stages, 0, (s) => ({ ...s, low: add(s.low, s.low) })) },
    "stages, low",
  ],
  ["a pattern that meets nowhere", linedWith("breadths.finished", longer), "a breadth between its seams"],
  [
    "a dominant line beside the centre",
    linedWith("seam.left", longer),
    "a dominant line stands at centre front",
  ],
  ["a lining too short", linedWith("lining.cut", () => inches("30")), "the lining reaches the waist"],
  [
    "an interlining left out of the sums",
    linedWith("interlining.thickness", longer),
    "what the needle meets",
  ],
  ["too little lining", linedWith("lining.buy", () => inches("36")), "lining to buy"],
  [
    "a lining with a breadth too few",
    {
      ...lined,
      linings: at(lined.linings, 0, (l) => ({
        ...l,
        layout: { ...l.layout, pieces: l.layout.pieces.slice(1) },
      })),
    },
    "the lining goes round",
  ],
  ["an interlining of nothing", { ...lined, linings: lined.linings.slice(0, 1) }, "a layout for each lining"],
  ["a hook more", valued("hooks.count", (q) => add(q, plain(1n))), "hooks"],
  ["hooks beside the band", valued("hooks.bandFirst", longer), "hooks over the band's depth"],
  ["a short thread", valued("gauging.thread", () => inches("20")), "thread"],
  ["whipping thread too short", valued("whip.thread", () => inches("20")), "thread, whip"],
  ["a pin lost", valued("pins.count", (q) => sub(q, plain(1n))), "pins"],
  ["a needle lost", valued("needles.count", (q) => sub(q, plain(1n))), "needles"],
  ["seam thread left out", valued("thread.sewing", (q) => div(q, plain(2n))), "sewing thread"],
  ["a short band", valued("band.length", () => inches("20")), "band"],
  ["too little cloth to buy", valued("cloth.buy", () => inches("36")), "cloth to buy"],
  [
    "pleats that do not close",
    { ...good, sensitivity: at(good.sensitivity, 0, (s) => ({ ...s, closes: !s.closes })) },
    "closes with bites",
  ],
  [
    "a trial kept too wide",
    {
      ...good,
      trialTable: at(good.trialTable, good.trialTable.length - 1, (r) => ({
        ...r,
        verdict: "keep" as const,
      })),
    },
    "a trial of",
  ],
];

describe("the laws", () => {
  it("hold for the plan that is spoilt below", () => {
    expect(brokenLaws(good)).toEqual([]);
    expect(brokenLaws(lined)).toEqual([]);
  });
  it("a lining or interlining just as wide as what it covers is cut in whole widths", () => {
    const keys = {
      lining: { kind: "flat", to: "turned", width: "44 3/4 in", selvedge: "1/4 in", thickness: "0.1 mm" },
      interlining: { to: "short", width: "43 3/4 in", selvedge: "1/4 in", thickness: "0.1 mm" },
    };
    const plan = planOf(keys);
    expect(brokenLaws(plan)).toEqual([]);
    for (const { layout } of plan.linings)
      expect(layout.pieces.map(({ name }) => name)).toEqual([1, 2, 3, 4].map((n) => `whole width ${n}`));
  });
  it.each(SPOILT)("%s is noticed", (_, plan, words) => {
    const gauged = plan.sections.flatMap((section) => (section.set === "gauged" ? [section] : []));
    expect(brokenLaws({ ...plan, gauged }).join("\n")).toContain(words);
  });
});
