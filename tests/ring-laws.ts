/**
 * Laws of the ring and of what is laid out, as laws.ts from first principles: all of it covered, once, in order; nothing
 * placed twice; thread enough; what a trial and a longer bite would mean.
 */
import Fraction from "fraction.js";
import type { Quantity } from "../src/quantity/quantity.ts";
import type { Plan } from "../src/solve/plan.ts";

interface Checks {
  readonly plan: Plan;
  law(holds: boolean, words: string): void;
  same(a: Fraction, b: Fraction, words: string): void;
  value(name: string): Fraction;
  has(name: string): boolean;
}

/** Inches, as plan.json has them; a share stays a share. */
const length = (q: Quantity): Fraction => q.value.div("25.4");
const TENTHS = "-3 -2 -1 0 1 2 3 4";
const ZERO = new Fraction(0n);
const sumOf = (list: readonly Fraction[]): Fraction => list.reduce((a, b) => a.add(b), ZERO);

/** One after the other from a start to an end, with nothing between and nothing twice. */
function inARow(
  { same }: Checks,
  parts: readonly { name: string; from: Fraction; to: Fraction }[],
  start: Fraction,
  end: Fraction,
  what: string,
): void {
  let at = start;
  for (const { name, from, to } of parts) {
    same(from, at, `${what}: the ${name} begins where the one before ended`);
    at = to;
  }
  same(at, end, `${what}: the last ends where the ring does`);
}

export function ringLaws(checks: Checks): void {
  const { plan, law, same, value, has } = checks;
  const [waist, round] = [value("waist.seam"), value("skirt.round")];
  same(value("skirt.quarter").mul(4), round, "four quarters of the round");

  // Sections cover the waist and the cloth, each place once.
  const along = (start: "from" | "clothFrom", size: "waist" | "cloth") =>
    plan.sections.map((section) => ({
      name: section.name,
      from: length(section[start]),
      to: length(section[start]).add(length(section[size])),
    }));
  inARow(checks, along("from", "waist"), ZERO, waist, "waist");
  inARow(checks, along("clothFrom", "cloth"), ZERO, round, "cloth");
  law(new Set(plan.sections.map(({ name }) => name)).size === plan.sections.length, "a name a section");

  // Breadths cover the round; a seam stands at every end of one, and nowhere else.
  const first = plan.breadths[0];
  const start = first ? length(first.from) : ZERO;
  const breadths = plan.breadths.map(({ name, from, to }) => ({ name, from: length(from), to: length(to) }));
  inARow(checks, breadths, start, start.add(round), "breadths");
  const seamWidth = has("seam.lost") ? value("seam.lost") : value("skirt.seam").mul(2);
  const usable = value("cloth.width").sub(value("cloth.selvedge").mul(2));
  for (const { whole, name, from, to } of plan.breadths)
    same(
      length(to).sub(length(from)),
      plan.recipe.skirt.run === "along"
        ? value("breadths.finished")
        : usable.div(whole ? 1 : 2).sub(seamWidth),
      `width of the ${name}`,
    );
  const ends = breadths.map(({ to }) => to.mod(round).toFraction()).sort();
  const seams = plan.seams.filter(({ kind }) => kind !== "slit").map(({ alongTop }) => length(alongTop));
  law(
    seams
      .map((seam) => seam.toFraction())
      .sort()
      .join() === ends.join(),
    "a seam at every breadth's end",
  );
  plan.seams.forEach(({ station, alongTop }, i) => {
    const before = plan.seams[i - 1];
    law(!before || station.value.compare(before.station.value) > 0, "seams stand in order, none twice");
    law(station.value.compare(0) >= 0 && station.value.compare(1) < 0, "seams stand on the waist seam");
    law(alongTop.value.compare(0) >= 0 && length(alongTop).compare(round) < 0, "seams stand on the top");
  });
  const open = plan.seams.find(({ kind }) => kind !== "seam");
  law(open?.station.value.equals(plan.opening.share.value) === true, "the opening is where it is said to be");

  // The curve goes once round, and through the stations.
  const [begin, finish] = [plan.curve[0], plan.curve.at(-1)];
  law(begin?.share.value.equals(0) === true && finish?.share.value.equals(1) === true, "the curve's ends");
  law(begin?.turnDown.value.equals(finish?.turnDown.value ?? 1) === true, "the curve closes");
  for (const { share, turnDown, alongTop, station } of plan.balance) {
    const here = plan.curve.find((point) => point.share.value.equals(share.value));
    law(here?.turnDown.value.equals(turnDown.value) === true, `the curve goes through the ${station}`);
    law(here?.alongTop.value.equals(alongTop.value) === true, `the curve's place at the ${station}`);
  }

  // Nothing is laid out twice, and the length is what the lowest piece needs.
  const { pieces } = plan.layout;
  law(new Set(pieces.map(({ name }) => name)).size === pieces.length, "no piece is laid out twice");
  const lowest = pieces.map(({ y, length: long }) => length(y).add(length(long)));
  const deepest = lowest.reduce((a, b) => (b.compare(a) > 0 ? b : a), ZERO);
  same(length(plan.layout.length), deepest, "the layout ends with its lowest piece");
  if (
    has("facing.strips") &&
    plan.recipe.skirt.hem.kind === "faced" &&
    plan.recipe.skirt.hem.cloth === "own"
  ) {
    const strips = pieces.filter(({ name }) => name.startsWith("facing")).length;
    law(value("facing.strips").compare(strips) <= 0, "no strip of the facing is missing");
    law(value("facing.strips").add(2).compare(strips) >= 0, "two joins more in the facing at most");
    const found = pieces.filter(({ name }) => name.startsWith("facing"));
    // Beside lengths that run along the body, and where there is room for it, the facing runs along too, on end in the layout.
    const onEnd = has("run.beside") && value("run.beside").compare(value("facing.depth")) >= 0;
    const goes = onEnd ? found.map(() => value("run.length")) : facingWidths(checks, strips);
    law(
      found
        .map((strip) => length(onEnd ? strip.length : strip.width).toFraction())
        .sort()
        .join() ===
        goes
          .map((width) => width.toFraction())
          .sort()
          .join(),
      "strips of the facing are as wide as they have to be",
    );
    for (const strip of found)
      same(length(onEnd ? strip.width : strip.length), value("facing.depth"), "depth of the facing's strips");
  }

  if (plan.gauged.length === 0) return;
  gaugedLaws(checks);
  tableOfWaists(checks);
}

/** The fewest strips are whole widths, but for the last, which has one selvedge; of more all are alike, up to a mark. */
function facingWidths({ value }: Checks, count: number): Fraction[] {
  const [width, selvedge, seam] = [value("cloth.width"), value("cloth.selvedge"), value("skirt.seam")];
  const usable = width.sub(selvedge.mul(2));
  const round = value("skirt.round");
  if (value("facing.strips").compare(count) !== 0) {
    const alike = round.div(count).add(seam.mul(2)).div(value("tape")).ceil().mul(value("tape"));
    return Array.from({ length: count }, () => alike.add(selvedge));
  }
  const rest = round.add(seam.mul(2 * count)).sub(usable.mul(count - 1));
  const last = rest.compare(usable) < 0 ? rest.add(selvedge) : width;
  return [...Array.from({ length: count - 1 }, () => width), last];
}

/** The table of other waists: four whole steps to either side and those asked for, by size, each with its hooks where there are any. */
function tableOfWaists({ plan, law, value }: Checks): void {
  const seam = value("waist.seam");
  const plain = seam.sub(sumOf(plan.gauged.map(({ waist }) => length(waist))));
  const step = plan.recipe.show === "cm" ? new Fraction(2000n, 2540n) : new Fraction(1n);
  const asked = (plan.recipe.attach.otherWaists ?? []).map(({ waist }) => length(waist));
  const steps = Array.from({ length: 9 }, (_, i) => seam.add(step.mul(i - 4)));
  const wanted = [...steps, ...asked]
    .filter((waist) => waist.compare(plain) > 0)
    .sort((a, b) => a.compare(b))
    .map((waist) => waist.toFraction());
  const found = plan.otherWaists.map(({ waist }) => length(waist).toFraction());
  law(found.join(" ") === [...new Set(wanted)].join(" "), "the table of other waists goes by whole steps");
  for (const row of plan.otherWaists) {
    const away = length(row.waist).sub(seam);
    law(row.asPlanned === (away.n === 0n), "one waist of the table is the one planned");
    law(
      row.asked === asked.some((waist) => waist.equals(length(row.waist))),
      "what is asked for is marked in the table",
    );
    // 2 in over the garment at most; of the lap half an inch is left.
    const inward = away.n !== 0n && away.compare(0) < 0 && away.compare(-2) >= 0;
    const outward =
      plan.recipe.attach.to === "waistband" &&
      away.compare(0) > 0 &&
      away.add("1/2").compare(value("attach.band.lap")) <= 0;
    const hooks =
      plan.recipe.attach.to !== "waistband" ? undefined : inward ? "garment" : outward ? "lap" : undefined;
    law(row.hook?.on === hooks, `hooks for a waist ${away.toFraction()} in from the planned one`);
    if (row.hook)
      law(length(row.hook.away).equals(away.abs()), "the eyes stand as far away as the waists differ");
  }
}

function gaugedLaws({ plan, law, same, value, has }: Checks): void {
  // A thread for every row of every section, long enough for what it runs through, with its ends.
  const sections = plan.gauged.map(({ cloth, waist }) =>
    length(plan.recipe.fullness.thread === "drawn-along" ? waist : cloth),
  );
  const oneRow = sumOf(sections).add(value("fullness.threadEnds").mul(sections.length));
  same(
    value("gauging.thread"),
    oneRow.mul(value("fullness.rows")).mul(value("fullness.strands")),
    "thread in all",
  );
  same(value("gauging.threads"), value("fullness.rows").mul(sections.length), "a thread a section and row");
  const each = value("gauging.threadEach").div(value("fullness.strands")).sub(value("fullness.threadEnds"));
  law(
    sections.some((section) => section.equals(each)),
    "the thread that is named is one section's",
  );

  // The rows run below the fold one under the other.
  plan.rows.forEach((below, i) => {
    const step = i === 0 ? value("fullness.firstRow") : value("fullness.betweenRows");
    same(length(below).sub(i === 0 ? ZERO : length(plan.rows[i - 1] as Quantity)), step, `row ${i + 1}`);
  });

  // Longer or shorter bites: as many fewer or more pleats, which close while they fit packed.
  for (const { section, change, pleats, perInch, closes } of plan.sensitivity) {
    const found = plan.gauged.find(({ name }) => name === section);
    if (!found) {
      law(false, `${section} is no section`);
      continue;
    }
    const off = new Fraction(BigInt(found.pleats)).div(change.value.add(1)).sub(pleats).abs();
    law(off.compare("1/2") <= 0, `pleats of the ${section} with bites ${change.value.toFraction()} longer`);
    const room = length(found.waist);
    same(perInch.value.mul("25.4").mul(room), new Fraction(BigInt(pleats)), `pleats an inch, ${section}`);
    const fits = value("gauging.packed").mul(pleats).compare(room) <= 0;
    law(fits === closes, `the ${section} closes with bites ${change.value.toFraction()} longer`);
  }

  // A trial: kept up to nine tenths of its target, kept but tight up to all of it, else longer bites that close.
  if (!has("trial.target")) return;
  if (has("section.lines")) {
    const half = value("section.pleats").div(2).floor();
    const fewest = value("fullness.leastTrial").div(value("section.pitch")).ceil();
    const wanted = [half, fewest, new Fraction(1n)].reduce((a, b) => (b.compare(a) > 0 ? b : a));
    same(value("trial.pleats"), wanted, "whole pleats of a trial on the lines");
  }
  const target = value("trial.target");
  const tenths = plan.trialTable.map(({ change }) => change.value.mul(10).toFraction()).join(" ");
  // Once a trial is sewn there is nothing left to ask.
  const asked = plan.recipe.fullness.trial ? ["", TENTHS] : [TENTHS];
  law(asked.includes(tenths), "the trial's table goes by tenths from three less to four more");
  for (const { change, measures, verdict, pleats } of plan.trialTable) {
    const wide = length(measures);
    same(wide, target.mul(change.value.add(1)), "a trial's width in the table");
    const kept = wide.compare(target.mul("9/10")) <= 0;
    law(kept === (verdict === "keep"), `a trial of ${wide.toFraction()} in is ${verdict}`);
    if (!kept)
      law(
        wide.compare(target) <= 0 === (verdict === "keep-tight"),
        `a trial of ${wide.toFraction()} in is ${verdict}, tight or not`,
      );
    if (pleats === undefined || has("section.lines")) continue;
    const packed = wide.div(value("trial.pleats")).mul(pleats);
    law(packed.compare(value("section.waist")) <= 0, `${pleats} pleats after such a trial close`);
  }
}
