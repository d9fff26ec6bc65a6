/** Sections as a chapter prints them: gauged ones with their bites, pleated ones with faces and depths. */
import { betweenPins } from "../figure/between-pins.ts";
import { printFine, printOnTape, vulgar } from "../quantity/print.ts";
import { add, isZero, type Quantity } from "../quantity/quantity.ts";
import { tally } from "../quantity/tape.ts";
import { placeName } from "../solve/place-name.ts";
import type { GaugedSection, Plan, PleatedSection, Section } from "../solve/plan.ts";
import { PLEAT_NAMES } from "../solve/pleat.ts";
import { onPartBand } from "./edge.ts";
import { pleatRows, topEnds } from "./pleat-words.ts";

type Print = (q: Quantity) => string;

/** One gauged section. */
export function gaugedContext(section: GaugedSection, plan: Plan, length: Print, waist: Quantity) {
  const ends = [section.from, add(section.from, section.waist)].map((at) => placeName(at, waist, plan));
  const whole = isZero(section.remainder) ? section.bites : section.bites.slice(0, -1);
  const bites = tally(whole).map(({ size, count }) => ({ size: length(size), count: String(count) }));
  const strands = plan.recipe.fullness.strands;
  const drawn = plan.recipe.fullness.thread === "drawn-along" ? section.waist : section.cloth;
  const threadEnds = (plan.values.get("fullness.threadEnds") as { quantity: Quantity }).quantity;
  const thread = { value: add(drawn, threadEnds).value.mul(strands.value), dim: drawn.dim };
  const outside = whole.filter((_, i) => i % 2 === 0);
  const inside = whole.filter((_, i) => i % 2 === 1);
  const last = section.bites.at(-1) as Quantity;
  const rest = isZero(section.remainder)
    ? ""
    : `, and the last of ${length(last)}, which takes what is finer than a mark`;
  return {
    name: section.name,
    half: section.half,
    onPartBand: onPartBand(section, plan, waist),
    fromWhere: ends[0],
    toWhere: ends[1],
    cloth: length(section.cloth),
    waist: length(section.waist),
    pleats: String(section.pleats),
    marks: String(section.marks.length),
    lines: section.lines === undefined ? "" : String(section.lines),
    needleAt: needleAt(section),
    spacing: printFine(section.spacing, plan.recipe.show),
    style: section.style,
    even: section.style === "even",
    longAndShort: section.style === "long-and-short",
    bites,
    bitesText: `${section.bites.length} bites: ${bites.map(({ size, count }) => `${count} of ${size}`).join(" and ")}${rest}`,
    longText: tallied(outside, length),
    shortText: `${tallied(inside, length)}${rest}`,
    thread: printOnTape(thread, { show: plan.recipe.show, tape: plan.recipe.tape }),
    checkpoints: checkpoints(section, length),
    betweenMarks: betweenPins(section.pleats),
  };
}

const ORDINALS = [
  "",
  "",
  "second ",
  "third ",
  "fourth ",
  "fifth ",
  "sixth ",
  "seventh ",
  "eighth ",
  "ninth ",
  "tenth ",
];

/** Where the needle enters when the cloth's own lines are the ruler: half a pleat's lines on. Empty otherwise. */
function needleAt({ lines }: GaugedSection): string {
  if (lines === undefined) return "";
  return `every ${ORDINALS[lines / 2] ?? `${lines / 2}th `}line`;
}

/** Every twentieth mark's place from the section's first, for checking a strip as it is ruled. */
function checkpoints(
  section: GaugedSection,
  length: (q: Quantity) => string,
): { mark: string; at: string }[] {
  return section.marks.flatMap((at, i) =>
    i > 0 && (i % 20 === 0 || i === section.marks.length - 1)
      ? [{ mark: String(i + 1), at: length(at) }]
      : [],
  );
}

function tallied(bites: readonly Quantity[], length: (q: Quantity) => string): string {
  const sizes = tally(bites).map(({ size, count }) => `${count} of ${length(size)}`);
  return sizes.length < 3 ? sizes.join(" and ") : `${sizes.slice(0, -1).join(", ")} and ${sizes.at(-1)}`;
}

/** "Knife pleats": a section's name for both halves, as a row begins with it. */
function titleOf({ name, half }: Section): string {
  const bare = name.replace(`${half} `, "");
  return `${bare.charAt(0).toUpperCase()}${bare.slice(1)}`;
}

/** Pleats of a section as text; "none" for a flat part. */
const pleatsIn = (section: Section): string =>
  section.set === "flat"
    ? "none"
    : section.set === "gauged"
      ? String(section.pleats)
      : vulgar(section.count.value);

/** Any section: what it is, from where to where, how much cloth on how much waist. */
export function partContext(section: Section, plan: Plan, length: Print, waist: Quantity) {
  const [from, to] = [section.from, add(section.from, section.waist)].map((at) => placeName(at, waist, plan));
  const set =
    section.set === "flat" ? "flat" : section.set === "gauged" ? "gauged" : PLEAT_NAMES[section.set];
  return {
    name: section.name,
    title: titleOf(section),
    half: section.half,
    left: section.half === "left",
    set,
    gauged: section.set === "gauged",
    flat: section.set === "flat",
    pleats: pleatsIn(section),
    ...topEnds(section, plan),
    fromWhere: from,
    toWhere: to,
    cloth: length(section.cloth),
    waist: length(section.waist),
  };
}

/** One pleated section; the other half is its mirror. */
export function pleatedContext(section: PleatedSection, plan: Plan, length: Print, waist: Quantity) {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const whole = section.count.value.d === 1n;
  const lists = (parts: readonly Quantity[]): string => parts.map(length).join(", ");
  return {
    ...partContext(section, plan, length, waist),
    count: vulgar(section.count.value),
    half: !whole,
    face: printOnTape(section.face, showing),
    depth: printOnTape(section.depth, showing),
    faces: tallied(section.faces, length),
    depths: tallied(section.depths, length),
    facesInOrder: lists(section.faces),
    depthsInOrder: lists(section.depths),
    towards: section.towards,
    knife: section.set === "knife",
    box: section.set === "box",
    doubleBox: section.set === "double-box",
    layers: String(section.layers),
    cloths: String(2 * section.layers),
    rows: pleatRows(section, length),
  };
}
