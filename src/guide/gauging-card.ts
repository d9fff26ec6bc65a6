/** A small card for gauging: the depths of the rows, every size of bite, how close the ridges stand when drawn up. */
import type { Element } from "hast";
import { rectangle } from "../figure/svg.ts";
import { printFine, printOnTape, printPart } from "../quantity/print.ts";
import { millimetres, mul, plain, type Quantity } from "../quantity/quantity.ts";
import { tally } from "../quantity/tape.ts";
import { exact } from "../solve/json.ts";
import type { GaugedSection, Plan } from "../solve/plan.ts";
import { bracket, fits } from "./bracket.ts";
import type { Cut } from "./guide.ts";
import { level, lines, mm, paragraph, TEXT, upright, words } from "./paper.ts";

const LEAST_WIDTH = 120;
/** Height of one bracket, and of the comb with its words. */
const STEP = 5.2;
const COMB = 10;
/** How much of the drawn-up edge the comb shows. */
const COMB_WIDTH = 56;

/** The lowest row that a card holds; with rows further down there is none. */
const LOWEST_ROW = 140;

/** Sections that differ in their bites or in their spacing get a card each; without gauging there is none. */
export function gaugingCards(plan: Plan): Cut[] {
  if (mm(plan.rows.at(-1) ?? millimetres(0n)) > LOWEST_ROW) return [];
  const kinds = new Map<string, GaugedSection[]>();
  for (const section of plan.gauged) {
    const key = [...sizesOf(section).map(({ size }) => exact(size)), exact(section.spacing)].join(" ");
    kinds.set(key, [...(kinds.get(key) ?? []), section]);
  }
  return [...kinds.values()].map((sections) => card(sections, kinds.size === 1, plan));
}

/** Each size of bite, and on which side it lies where that is always the same; what is finer than a mark left out. */
function sizesOf({ bites, style, remainder }: GaugedSection) {
  const on = (side: number): readonly Quantity[] => bites.filter((_, i) => i % 2 === side);
  const whole = (sizes: readonly Quantity[], last: boolean) =>
    tally(last && remainder.value.n !== 0n ? sizes.slice(0, -1) : sizes).map(({ size }) => size);
  if (style === "even") return whole(bites, true).map((size) => ({ size, side: "" }));
  return [
    ...whole(on(0), false).map((size) => ({ size, side: ", outside" })),
    ...whole(on(1), true).map((size) => ({ size, side: ", inside" })),
  ];
}

function card(sections: readonly GaugedSection[], all: boolean, plan: Plan): Cut {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const section = sections[0] as GaugedSection;
  const sizes = sizesOf(section).filter(({ size }) => fits(size));
  const width = Math.max(LEAST_WIDTH, ...sizes.map(({ size }) => mm(size)));
  const last = mm(plan.rows.at(-1) as Quantity);
  const names = all ? "every gauged section" : sections.map(({ name }) => name).join(", ");
  const height = last + 7 + sizes.length * STEP + COMB + 3;
  const draw = (top: number): Element[] => {
    const below = top + last + 7;
    const combTop = below + sizes.length * STEP + 1;
    return [
      lines(rectangle(0, top, width, height), { width: "cut" }),
      lines(level(top, 0, width), { width: "edge" }),
      words(62, top + 4, "this edge to the fold", { size: TEXT.small }),
      lines(plan.rows.map((row) => level(top + mm(row), 0, 24)).join(""), { width: "cut" }),
      ...plan.rows.map((row, i) =>
        words(26, top + mm(row) + 1, `row ${i + 1}: ${printOnTape(row, showing)}`),
      ),
      words(62, top + 8, "gauging card", { bold: true }),
      ...paragraph(names, LEAST_WIDTH - 64).draw(62, top + 9),
      ...sizes.flatMap(({ size, side }, i) =>
        bracket(size, below + i * STEP, `bite ${printPart(size, showing)}${side}`),
      ),
      ...comb(section, combTop, plan),
    ];
  };
  return {
    group: "gauging card",
    height: height + 4,
    words: `Gauging card for ${names}: rows ${plan.rows.map((row) => printOnTape(row, showing)).join(", ")} below the fold; bites ${sizes.map(({ size }) => printPart(size, showing)).join(", ")}.`,
    draw,
  };
}

/** The ridges of the drawn-up section as lines: half a space at the end, then one space each. */
function comb({ spacing }: GaugedSection, top: number, { recipe }: Plan): Element[] {
  const step = mm(spacing);
  const count = Math.floor(COMB_WIDTH / step + 1 / 2);
  const at = Array.from({ length: count }, (_, i) => mm(mul(spacing, plain(2 * i + 1))) / 2);
  return [
    lines(at.map((x) => upright(x, top, top + 5)).join(""), { width: "cut" }),
    words(0.8, top + 8.6, `drawn up: a ridge at each line, ${printFine(spacing, recipe.show)} apart`, {
      size: TEXT.small,
    }),
  ];
}
