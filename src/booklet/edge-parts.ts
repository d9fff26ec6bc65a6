/** The parts of the waist as they lie along an edge that is marked from the opening. */
import { printPart } from "../quantity/print.ts";
import { add, equal, isZero, less, min, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import { onPartBand } from "./edge.ts";

/** One part between two marks of the edge. */
export interface EdgePart {
  readonly name: string;
  readonly fromWhere: string;
  readonly toWhere: string;
  readonly waist: string;
  readonly onPartBand: boolean;
}

/**
 * Every part round the edge, gauged, pleated and flat alike, in the order in which they are passed from the opening. A part that the
 * opening lies in comes twice, cut there. With a part band the way goes round by the back to centre front and along the band to the
 * closing mark; else it goes from the opening on in the order front, left side, back, right side.
 */
export function edgeParts(plan: Plan, waist: Quantity): EdgePart[] {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const band = plan.recipe.attach.to === "part-band";
  const opening = mul(waist, plan.opening.share);
  const zero = sub(waist, waist);
  const cut = plan.sections.flatMap((section) => {
    const end = add(section.from, section.waist);
    const inside = less(section.from, opening) && less(opening, end);
    const pieces: (readonly [Quantity, Quantity])[] = inside
      ? [
          [section.from, opening],
          [opening, end],
        ]
      : [[section.from, end]];
    return pieces.map(([from, to]) => ({ section, from, to }));
  });
  const ahead = cut.filter(({ from }) => !less(from, opening));
  const behind = cut.filter(({ from }) => less(from, opening));
  // From an opening on the right the way by the back runs against the order of the sections.
  const against = band && less(plain("1/2"), plan.opening.share);
  const order = against
    ? [...behind.reverse(), ...ahead.reverse()].map((part) => ({ ...part, from: part.to, to: part.from }))
    : [...ahead, ...behind];
  const where = (at: Quantity, first: boolean, last: boolean): string => {
    if (first) return band ? "the opening mark" : "the opening";
    if (last) return band ? "the closing mark" : "the opening";
    const station = plan.balance.find(({ measured, share }) => measured && equal(mul(waist, share), at));
    if (station) return station.station;
    if (isZero(sub(waist, at)) || equal(at, zero)) return "centre front";
    return `${printPart(min(at, sub(waist, at)), showing)} from centre front`;
  };
  return order.map(({ section, from, to }, i) => {
    const [low, high] = less(from, to) ? [from, to] : [to, from];
    return {
      name: section.name,
      fromWhere: where(from, i === 0, false),
      toWhere: where(to, false, i === order.length - 1),
      waist: printPart(sub(high, low), showing),
      onPartBand: onPartBand({ ...section, from: low, waist: sub(high, low) }, plan, waist),
    };
  });
}
