/** Sections: the parts drawn up on one thread each, a quarter of the waist seam at most, none across a centre line. */
import { add, div, less, mul, plain, type Quantity, sub, toCount } from "../quantity/quantity.ts";
import { type BiteRules, layBites, marksOf } from "./bites.ts";
import type { Work } from "./context.ts";
import { type Count, countPleats, type Rules, type Stretch } from "./gauging.ts";
import type { Opening } from "./opening.ts";
import type { Section } from "./plan.ts";
import { type SolvedZone, topOfWaist } from "./zones.ts";

/** A stretch with its place round the ring (from centre front by the left) and its name. */
export interface Part extends Stretch {
  readonly name: string;
  readonly half: "left" | "right";
  readonly from: Quantity;
  readonly clothFrom: Quantity;
}

/** Cuts each half's gauged zones into the fewest equal sections, and one more where the opening stands inside a section. */
export function cutSections(
  { sheet }: Work,
  zones: readonly SolvedZone[],
  opening: Opening,
): readonly Part[] {
  const seam = sheet.get("waist.seam");
  const quarter = sheet.get("waist.quarter");
  const ends: [Quantity, Quantity][] = [];
  let at = mul(seam, plain(0n));
  for (const zone of zones) {
    const count = toCount(plain(div(zone.waist, quarter).value.ceil()));
    const each = div(zone.waist, plain(count));
    for (let i = 0; i < count; i += 1) {
      ends.push([at, add(at, each)]);
      at = add(at, each);
    }
  }
  const mirrored = ends.map(([from, to]): [Quantity, Quantity] => [sub(seam, to), sub(seam, from)]).reverse();
  const all = [
    ...ends.map((end, i) => ({ end, half: "left" as const, name: nameOf("left", i, ends.length) })),
    ...mirrored.map((end, i) => ({
      end,
      half: "right" as const,
      name: nameOf("right", ends.length - 1 - i, ends.length),
    })),
  ];
  const ratio = div(sheet.get("waist.planned"), seam);
  return all.flatMap(({ end: [from, to], half, name }) => {
    const cut = less(from, opening.waist) && less(opening.waist, to);
    const spans = cut
      ? ([
          [from, opening.waist],
          [opening.waist, to],
        ] as const)
      : ([[from, to]] as const);
    return spans.map(([start, stop], i): Part => {
      const waist = sub(stop, start);
      const clothFrom = topOfWaist(zones, start);
      return {
        name: cut ? `${name}, ${i === 0 ? "up to" : "after"} the opening` : name,
        half,
        from: start,
        clothFrom,
        cloth: sub(topOfWaist(zones, stop), clothFrom),
        waist,
        planned: mul(waist, ratio),
      };
    });
  });
}

function nameOf(half: "left" | "right", i: number, count: number): string {
  if (count === 2) return `${half} ${i === 0 ? "front" : "back"} quarter`;
  if (count === 1) return `${half} half`;
  return `${half} section ${i + 1} from the front`;
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

/** Counts every part; parts of one size are counted once. */
export function countParts(
  work: Work,
  rules: Rules,
  parts: readonly Part[],
  bites: BiteRules,
): readonly CountedPart[] {
  const known = new Map<string, Count>();
  return parts.map((part) => {
    const key = [part.cloth, part.waist].map((q) => q.value.toFraction()).join(" ");
    const count = known.get(key) ?? countPleats(work, rules, part, bites);
    known.set(key, count);
    return { part, count };
  });
}

/** A counted part as a section, with its bites and marks. */
export function layOut(part: Part, pleats: number, rules: BiteRules): Section {
  const { style, bites, remainder } = layBites(part.cloth, pleats, rules);
  const section = {
    name: part.name,
    half: part.half,
    set: "gauged" as const,
    from: part.from,
    clothFrom: part.clothFrom,
    cloth: part.cloth,
    waist: part.waist,
    pleats,
    bites,
    style,
    spacing: div(part.waist, plain(pleats)),
    marks: marksOf(bites),
    remainder,
  };
  return style === "long-and-short" ? { ...section, longSide: "outside" } : section;
}
