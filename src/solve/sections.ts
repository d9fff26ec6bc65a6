/** Sections: the parts drawn up on one thread each, a quarter of the waist seam at most, none across a centre line. */
import { add, div, isZero, less, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import { type BiteRules, layBites, marksOf } from "./bites.ts";
import type { Work } from "./context.ts";
import { countAllAlike } from "./count-alike.ts";
import { type Locked, layLocked } from "./follow-repeat.ts";
import { type Count, countPleats, type Rules, type Stretch } from "./gauging.ts";
import type { Opening } from "./opening.ts";
import type { FlatSection, GaugedSection, PleatedSection } from "./plan.ts";
import { isPleatSet, layersOf, layPleats, PLEAT_NAMES } from "./pleat.ts";
import { type SolvedZone, topOfWaist } from "./zones.ts";

/** A stretch with its place round the ring (from centre front by the left) and its name. */
export interface Part extends Stretch {
  readonly name: string;
  readonly half: "left" | "right";
  readonly zone: SolvedZone;
  readonly from: Quantity;
  readonly clothFrom: Quantity;
}

/** A zone of one half with its place from centre front on that half, in waist and in planned waist. */
interface Span {
  readonly zone: SolvedZone;
  readonly index: number;
  /** Which equal part of the zone, and of how many. */
  readonly part: number;
  readonly parts: number;
  readonly from: Quantity;
  readonly to: Quantity;
}

/** A half's spans from centre front: a gauged zone in the fewest equal parts of a quarter of the waist seam at most. */
function spansOf({ sheet }: Work, zones: readonly SolvedZone[]): readonly Span[] {
  // By the waist as planned: an edge that is made changes no section that may be marked already.
  const quarter = sheet.evaluate("waist.planned / 4");
  const pieces = ({ set, planned }: SolvedZone): number =>
    set === "gauged" ? Number(div(planned, quarter).value.ceil().n) : 1;
  let at = sub(quarter, quarter);
  return zones.flatMap((zone, index) => {
    const parts = pieces(zone);
    const each = div(zone.waist, plain(parts));
    // What back-share parts at the side is one gauged part still, by its name and its count.
    const [before, behind] = [zones[index - 1], zones[index + 1]];
    const first = zone.parted === "behind" && before ? pieces(before) : 0;
    const all = first + parts + (zone.parted === "before" && behind ? pieces(behind) : 0);
    return Array.from({ length: parts }, (_, part): Span => {
      const from = at;
      at = add(at, each);
      const of = { part: first + part, parts: all };
      return { zone, index: zone.parted === "behind" ? index - 1 : index, ...of, from, to: at };
    });
  });
}

/**
 * Cuts both halves into sections, from centre front round by the left. Where the opening stands inside a gauged section
 * it ends it there, on that side only: two sections, cloth in proportion to waist.
 */
export function cutSections(work: Work, zones: readonly SolvedZone[], opening: Opening): readonly Part[] {
  const seam = work.sheet.get("waist.seam");
  const spans = spansOf(work, zones);
  const left = spans.map((span) => ({ span, half: "left" as const, from: span.from, to: span.to }));
  const right = spans
    .map((span) => ({ span, half: "right" as const, from: sub(seam, span.to), to: sub(seam, span.from) }))
    .reverse();
  return [...left, ...right].flatMap(({ span, half, from, to }) => {
    const { zone } = span;
    const name = nameOf(half, span, spans);
    const inside = less(from, opening.waist) && less(opening.waist, to);
    const ends = inside && zone.set === "gauged" ? [from, opening.waist, to] : [from, to];
    const ratio = isZero(zone.waist) ? plain(1n) : div(zone.planned, zone.waist);
    return ends.slice(1).map((stop, i): Part => {
      const start = ends[i] as Quantity;
      const waist = sub(stop, start);
      const clothFrom = topOfWaist(zones, start);
      return {
        name: ends.length > 2 ? `${name}, ${i === 0 ? "up to" : "after"} the opening` : name,
        half,
        zone,
        from: start,
        clothFrom,
        cloth: sub(topOfWaist(zones, stop), clothFrom),
        waist,
        planned: mul(waist, ratio),
      };
    });
  });
}

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];

/** "left front quarter" where all is gauged; else by what it is and where it lies. */
function nameOf(half: "left" | "right", { zone, index, part, parts }: Span, spans: readonly Span[]): string {
  const zones = [...new Set(spans.map((span) => span.index))];
  // Half the waist seam makes two sections of a quarter, neither more nor less.
  if (zones.length === 1 && zone.set === "gauged") return `${half} ${part === 0 ? "front" : "back"} quarter`;
  const what =
    zone.set === "flat" ? "flat part" : zone.set === "gauged" ? "gauged part" : PLEAT_NAMES[zone.set];
  const alike = zones.filter((i) => spans.find((span) => span.index === i)?.zone.set === zone.set);
  const which =
    alike.length > 1 ? `${ORDINALS[alike.indexOf(index)] ?? `${alike.indexOf(index) + 1}th`} ` : "";
  const piece = parts > 1 ? `, ${ORDINALS[part] ?? part + 1} of ${parts}` : "";
  return `${half} ${which}${what}${piece}`;
}

/** The gauged section nearest centre back: the one the trial stands for. The wearer's left where both are as near. */
export function nearestBack(sheet: Work["sheet"], parts: readonly Part[]): Part {
  const back = sheet.evaluate("waist.seam / 2");
  let best = parts[0] as Part;
  let gap: Quantity | undefined;
  for (const part of parts) {
    const end = add(part.from, part.waist);
    const away = part.half === "left" ? sub(back, end) : sub(part.from, back);
    if (!gap || less(away, gap)) {
      best = part;
      gap = away;
    }
  }
  return best;
}

export interface CountedPart {
  readonly part: Part;
  readonly count: Count;
}

/**
 * Counts every part; parts of one size are counted once. With a back-share the part nearest centre back, where the pleats
 * stand closest, is counted first, and the others take its bites.
 */
export function countParts(
  work: Work,
  rules: Rules,
  parts: readonly Part[],
  bites: BiteRules,
): readonly CountedPart[] {
  if (work.recipe.fullness.backShare) {
    const counts = countAllAlike(work, rules, parts, bites, nearestBack(work.sheet, parts));
    return parts.map((part, i) => ({ part, count: counts[i] as Count }));
  }
  const known = new Map<string, Count>();
  return parts.map((part) => {
    const key = [part.cloth, part.waist].map((q) => q.value.toFraction()).join(" ");
    const count = known.get(key) ?? countPleats(work, rules, part, bites);
    known.set(key, count);
    return { part, count };
  });
}

const baseOf = ({ name, half, from, clothFrom, cloth, waist }: Part) => ({
  name,
  half,
  from,
  clothFrom,
  cloth,
  waist,
});

/** A counted part as a section, with its bites and marks. */
export function layGauged(part: Part, pleats: number, rules: BiteRules, locked?: Locked): GaugedSection {
  const { style, bites, remainder } = locked
    ? { style: "even" as const, bites: layLocked(part.cloth, locked), remainder: sub(part.cloth, part.cloth) }
    : layBites(part.cloth, pleats, rules);
  const section: GaugedSection = {
    ...baseOf(part),
    set: "gauged",
    pleats,
    bites,
    style,
    spacing: div(part.waist, plain(pleats)),
    marks: marksOf(bites),
    remainder,
  };
  if (locked) return { ...section, lines: locked.lines };
  return style === "long-and-short" ? { ...section, longSide: "outside" } : section;
}

/** A part with the cloth and the pleats of a section that is laid already: its bites are the same. */
export const laidAlike = (part: Part, section: GaugedSection): GaugedSection => ({
  ...section,
  ...baseOf(part),
  spacing: div(part.waist, plain(section.pleats)),
});

/** A flat or pleated part as a section. Lists run from the end nearer centre front. */
export function layPlain(
  part: Part,
  zones: readonly SolvedZone[],
  tape: Quantity,
): FlatSection | PleatedSection {
  const { set, pleats } = part.zone;
  if (!isPleatSet(set) || !pleats) return { ...baseOf(part), set: "flat" };
  const { count, face, depth, towards } = pleats;
  const halfAt = part.zone === zones[0] ? "front" : "back";
  return {
    ...baseOf(part),
    set,
    count,
    face,
    depth,
    ...layPleats(set, part.waist, part.cloth, count, tape, halfAt),
    towards,
    layers: layersOf(set, face, depth),
  };
}
