/** A card for laying pleats: every size of face and of depth at true size, from the card's left edge. */
import { rectangle } from "../figure/svg.ts";
import { printOnTape, printPart } from "../quantity/print.ts";
import { isWhole, type Quantity } from "../quantity/quantity.ts";
import { onMark, tally } from "../quantity/tape.ts";
import type { Plan, PleatedSection } from "../solve/plan.ts";
import { bracket, fits } from "./bracket.ts";
import type { Cut } from "./guide.ts";
import { lines, mm, words } from "./paper.ts";

const STEP = 5.6;
const LEAST_WIDTH = 90;

/** The pleated parts of the wearer's left half; the other half is their mirror. */
export const pleatedParts = ({ sections }: Plan): readonly PleatedSection[] =>
  sections.filter(
    (section): section is PleatedSection =>
      section.half === "left" && section.set !== "flat" && section.set !== "gauged",
  );

/** "knife pleats": a part's name for both halves. */
export const bareName = ({ name }: PleatedSection): string => name.replace(/^left /, "");

/**
 * The sizes among whole pleats, largest first: of half a pleat astride a centre line only the table speaks. A size that holds
 * what is finer than a mark is left out where there is another.
 */
function sizes(section: PleatedSection, list: readonly Quantity[], tape: Quantity): readonly Quantity[] {
  const halfFirst = section.from.value.n === 0n;
  const whole = isWhole(section.count) ? list : halfFirst ? list.slice(1) : list.slice(0, -1);
  const all = tally(whole).map(({ size }) => size);
  const onTape = all.filter((size) => onMark(size, tape));
  return onTape.length > 0 ? onTape : all;
}

/** One card a pleated part. */
export function pleatGauge(plan: Plan): Cut[] {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  return pleatedParts(plan).flatMap((section): Cut[] => {
    const bars = [
      ...sizes(section, section.faces, plan.recipe.tape).map((size) => ({ size, what: "face" })),
      ...sizes(section, section.depths, plan.recipe.tape).map((size) => ({ size, what: "depth" })),
    ].filter(({ size }) => fits(size));
    if (bars.length === 0) return [];
    const width = Math.max(LEAST_WIDTH, ...bars.map(({ size }) => mm(size)));
    const height = 8 + bars.length * STEP;
    const exactly = bars.map(({ what, size }) => `${what} ${printPart(size, showing)}`);
    return [
      {
        group: "pleat gauge",
        height: height + 4,
        words: `Pleat gauge for the ${bareName(section)}: ${bars.map(({ what, size }) => `${what} ${printOnTape(size, showing)}`).join(", ")}.`,
        draw: (top) => [
          lines(rectangle(0, top, width, height), { width: "cut" }),
          words(2, top + 4.4, `pleat gauge: ${bareName(section)}`, { bold: true }),
          ...bars.flatMap(({ size }, i) => bracket(size, top + 7 + i * STEP, exactly[i] as string)),
        ],
      },
    ];
  });
}
