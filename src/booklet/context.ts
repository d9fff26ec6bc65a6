/** The template context: the plan's values and lists, ready to print, under the names a chapter may use. */

import { guidesOf } from "../guide/index.ts";
import { stripKinds } from "../guide/marking-strip.ts";
import { printOnTape, printPart } from "../quantity/print.ts";
import {
  add,
  compare,
  equal,
  isZero,
  less,
  min,
  mul,
  plain,
  type Quantity,
  sub,
} from "../quantity/quantity.ts";
import { nearestWhole } from "../quantity/tape.ts";
import { wholeTitle } from "../recipe/recipe.ts";
import type { GaugedSection, Plan, Stage, Value } from "../solve/plan.ts";
import { printTime, TIME_STEP_MINUTES } from "../solve/shown.ts";
import { asMadeContext, madeOf } from "./as-made.ts";
import { bandPlaces } from "./band-places.ts";
import { edgeWords, pipingStrips } from "./edge.ts";
import { edgeParts } from "./edge-parts.ts";
import { estimatesContext, isEstimated } from "./estimates.ts";
import { evidenceContext } from "./evidence.ts";
import { flagsOf } from "./flags.ts";
import { piecesOfLining } from "./lining.ts";
import { paceWords } from "./made-hours.ts";
import { mapContext } from "./map.ts";
import { notCounted } from "./not-counted.ts";
import { notionsOf } from "./notions.ts";
import { pleatWords, seamsInPleats } from "./pleat-words.ts";
import { Printed } from "./printed.ts";
import { hookSetsContext, otherWaistsContext } from "./range.ts";
import { runWords } from "./run.ts";
import { gaugedContext, partContext, pleatedContext } from "./section-context.ts";
import { lessonContext, sheetWords } from "./sheet-context.ts";
import { stayDepth } from "./stay.ts";
import { sensitivityContext, trialContext } from "./trial-context.ts";
import { pocketWords, trimsContext } from "./trims.ts";

export type Context = Record<string, unknown>;

/** Puts `value` into nested objects by its dotted name. */
function nest(into: Context, name: string, value: unknown): void {
  const parts = name.split(".");
  const last = parts.pop() as string;
  let at = into;
  for (const part of parts) {
    const next = at[part] ?? {};
    at[part] = next;
    at = next as Context;
  }
  at[last] = value;
}

/** Everything a chapter can print for this plan. */
export function contextOf(plan: Plan): Context {
  const { recipe } = plan;
  const showing = { show: recipe.show, tape: recipe.tape };
  const context: Context = {};
  for (const value of plan.values.values()) nest(context, value.name, new Printed(value));
  const length = (q: Quantity): string => printPart(q, showing);
  const onTape = (q: Quantity): string => printOnTape(q, showing);
  const round = (plan.values.get("skirt.round") as { quantity: Quantity }).quantity;
  const waist = (plan.values.get("waist.seam") as { quantity: Quantity }).quantity;
  const least = (plan.values.get("balance.least") as { quantity: Quantity }).quantity;
  const fromFront = (along: Quantity): string => onTape(min(along, sub(round, along)));
  const sideOf = (share: Quantity): string => {
    const half = plain("1/2");
    if (isZero(share)) return "centre front";
    if (equal(share, half)) return "centre back";
    return less(share, half) ? "left" : "right";
  };

  context.garment = {
    title: wholeTitle(recipe),
    kind: recipe.garment,
    year: recipe.year === undefined ? undefined : String(recipe.year),
    wearer: recipe.wearer.name,
    over: recipe.wearer.over,
    cloth: recipe.cloth.name,
    fibre: recipe.cloth.fibre,
    lining: recipe.lining?.name,
    interlining: recipe.interlining?.name,
    stay: recipe.fullness.stay?.name ?? (recipe.fullness.stay ? "the stay" : undefined),
    stayDepth: stayDepth(plan),
    opening: plan.opening.station,
    notCounted: notCounted(plan),
    pace: paceWords(plan),
    hands: madeOf(plan)?.hands,
    begun: madeOf(plan)?.begun,
    finished: madeOf(plan)?.finished,
    ...pleatWords(plan),
    longSide: plan.gauged.find((section) => section.longSide)?.longSide,
    ...edgeWords(plan),
    ...pocketWords(plan),
    ...runWords(plan),
    ...sheetWords(plan),
  };
  context.is = flagsOf(plan);
  context.stations = plan.balance.map((station) => ({
    station: station.station,
    toFloor: onTape(station.measuredToFloor),
    fromFront: fromFront(station.alongTop),
    finished: onTape(station.finished),
    up: onTape(station.finishedMark),
    turnDown: onTape(station.turnDownMark),
    spare: less(least, station.turnDownMark) ? onTape(sub(station.turnDownMark, least)) : "nothing",
    measured: station.measured,
  }));
  context.sections = plan.gauged.map((section) => gaugedContext(section, plan, length, waist));
  context.parts = plan.sections.map((section) => partContext(section, plan, length, waist));
  context.pleats = plan.sections
    .filter((section) => section.half === "left")
    .flatMap((section) =>
      section.set === "flat" || section.set === "gauged"
        ? []
        : [pleatedContext(section, plan, length, waist)],
    );
  context.seamsInPleats = seamsInPleats(plan);
  context.rows = plan.rows.map((below, i) => ({ n: String(i + 1), below: onTape(below) }));
  context.sensitivity = sensitivityContext(plan);
  context.trialTable = plan.trialTable.map((row) => trialContext(row, plan));
  context.map = mapContext(plan);
  context.otherWaists = otherWaistsContext(plan);
  context.hookSets = hookSetsContext(plan);
  context.pipingStrips = pipingStrips(plan);
  context.bandMarks = bandMarks(plan, waist, onTape);
  context.bandPlaces = bandPlaces(plan, waist);
  context.edgeParts = edgeParts(plan, waist);
  context.seams = plan.seams.map((seam) => ({
    station: sideOf(seam.station),
    alongTop: fromFront(seam.alongTop),
    kind: plan.pocket && equal(seam.station, plan.pocket.share) ? `${seam.kind}, with the pocket` : seam.kind,
    half: less(seam.station, plain("1/2")) ? "left" : "right",
  }));
  Object.assign(context, trimsContext(plan, onTape));
  context.ring = plan.breadths.map((breadth, i) => ({
    n: String(i + 1),
    name: breadth.name,
    whole: breadth.whole,
    width: onTape(sub(breadth.to, breadth.from)),
  }));
  context.pieces = piecesContext(plan, plan.layout.pieces, onTape);
  for (const which of ["lining", "interlining"] as const)
    context[`${which}Pieces`] = piecesOfLining(plan.linings, which, (pieces) =>
      piecesContext(plan, pieces, onTape),
    );
  context.notions = notionsOf(plan);
  context.stages = stagesContext(plan.stages);
  context.lesson = lessonContext(plan, stagesContext);
  context.warnings = plan.messages
    .filter(({ level }) => level === "warning")
    .map(({ text, hint }) => ({ text, hint: hint ?? "" }));
  context.remarks = plan.messages
    .filter(({ level }) => level === "note")
    .map(({ text, hint }) => ({ text, hint: hint ?? "" }));
  context.defaults = [
    ...recipe.given.filter(({ source }) => source === "default").map(({ path, text }) => ({ path, text })),
    ...recipe.chosenByDefault.map(({ path, text }) => ({ path, text })),
  ];
  context.strips = stripKinds(plan).map(({ letter, sections, marks }) => ({
    letter,
    cloth: length((sections[0] as GaugedSection).cloth),
    marks: String(marks.length),
    sections: sections.map(({ name }) => name).join(", "),
  }));
  context.guides = guidesOf(plan).map(({ name, title }) => ({ name, title }));
  Object.assign(context, asMadeContext(plan), estimatesContext(plan), evidenceContext(plan));
  context.workings = [...plan.values.values()].map(workingRow);
  return context;
}

/** A value's row in the workings: what is said already, as its number or its formula, is not said again. */
function workingRow({ name, shown, about, how, inNumbers, source, path, ...value }: Value) {
  const isSaid = inNumbers === how || inNumbers === shown;
  const rule = value.rule ?? (source === "workings" ? "workings" : "");
  return path === undefined
    ? { name, shown, about, how, inNumbers: isSaid ? "" : inNumbers, source, rule }
    : { name, shown, about, how: isSaid ? how : `${how}, as ${inNumbers}`, inNumbers: "", source, rule };
}

/** The four quarter places on the band from its end at the opening, going round by the wearer's left. */
function bandMarks(
  plan: Plan,
  waist: Quantity,
  onTape: (q: Quantity) => string,
): { place: string; at: string }[] {
  return plan.balance
    .filter(({ measured }) => measured)
    .map(({ station, share }) => {
      const ahead = sub(share, plan.opening.share);
      const turn = less(ahead, plain(0n)) ? add(ahead, plain(1n)) : ahead;
      return { station, along: mul(waist, turn) };
    })
    .sort((a, b) => compare(a.along, b.along))
    .map(({ station, along }) => ({ place: station, at: onTape(along) }));
}

function piecesContext(plan: Plan, pieces: Plan["layout"]["pieces"], onTape: (q: Quantity) => string) {
  const groups = new Map<string, { name: string; count: number; width: string; length: string }>();
  const estimated = isEstimated(plan);
  for (const piece of pieces) {
    const name = piece.name.replace(/ \d+$/, "");
    const width = onTape(piece.width);
    const length = onTape(piece.length);
    const key = `${name} ${width} ${length}`;
    const group = groups.get(key) ?? { name, count: 0, width, length };
    group.count += 1;
    groups.set(key, group);
  }
  const order = ["breadth", "length", "half breadth", "waistband", "part band"];
  const rank = (name: string): number => (order.indexOf(name) + order.length + 1) % (order.length + 1);
  return [...groups.values()]
    .sort((a, b) => rank(a.name) - rank(b.name))
    .map((group) => ({
      ...group,
      count: String(group.count),
      ofEstimate: estimated && /breadth|placket|^whole width$|^piece$|^narrow strip$/.test(group.name),
      acrossEstimate: estimated && group.name === "length",
    }));
}

/** "10 min to 15 min"; one time where both ends print alike. */
const span = (low: string, high: string): string => {
  const words = low === "0 min" ? `under ${TIME_STEP_MINUTES} min` : low;
  if (low === high) return words;
  return low === "0 min" ? `up to ${high}` : `${low} to ${high}`;
};

/** Stage times on five minutes, so rounded that they add up to the printed whole. */
function stagesContext(stages: readonly Stage[]) {
  const step = BigInt(TIME_STEP_MINUTES) * 60n;
  const parts = (of: (stage: Stage) => Quantity): string[] => {
    let sum = plain(0n).value;
    let printed = 0n;
    return stages.map((stage) => {
      sum = sum.add(of(stage).value);
      const upTo = nearestWhole(sum.div(step)) * step;
      const part = upTo - printed;
      printed = upTo;
      return printTime({ value: plain(part).value, dim: of(stage).dim });
    });
  };
  const low = parts((stage) => stage.low);
  const high = parts((stage) => stage.high);
  return stages.map(({ name }, i) => ({ name, time: span(low[i] as string, high[i] as string) }));
}
