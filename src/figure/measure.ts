/** Lengths of the plan for a drawing: as floats for the pen, as printed words for the labels. */
import { printFine, printOnTape, printPart, type Showing } from "../quantity/print.ts";
import { type Quantity, toFloat, toInches } from "../quantity/quantity.ts";
import type { GaugedSection, Plan } from "../solve/plan.ts";

/** A length in inches, or a plain number, for the pen only: nothing is printed from it. */
export const pen = (q: Quantity): number => toFloat(toInches(q));

/** A named value for the pen. A name the plan does not have is a fault of the program. */
export function penOf(plan: Plan, name: string): number {
  return pen(namedValue(plan, name).quantity);
}

/** A named value as it is printed everywhere else. */
export const shownOf = (plan: Plan, name: string): string => namedValue(plan, name).shown;

export function namedValue(plan: Plan, name: string) {
  const value = plan.values.get(name);
  if (!value) throw new Error(`the plan has no value "${name}"`);
  return value;
}

/** Prints lengths that have no name of their own, as the plan prints its named ones. */
export function printer({ recipe }: Plan) {
  const showing: Showing = { show: recipe.show, tape: recipe.tape };
  return {
    tape: (q: Quantity): string => printOnTape(q, showing),
    part: (q: Quantity): string => printPart(q, showing),
    fine: (q: Quantity): string => printFine(q, showing.show),
  };
}

/** The section that close-ups are drawn from: the one nearest centre back, the wearer's left where two are as near. */
export function chiefSection(plan: Plan): GaugedSection {
  const back = penOf(plan, "waist.seam") / 2;
  const away = ({ from, waist, half }: GaugedSection): number =>
    half === "left" ? back - pen(from) - pen(waist) : pen(from) - back;
  const [first, ...rest] = plan.gauged;
  if (!first) throw new Error("the plan has no gauged section");
  return rest.reduce((best, section) => (away(section) < away(best) - 1e-9 ? section : best), first);
}

/** The turn-down nearest a place along the flat top: a point of the plan's own curve, which holds every eighth. */
export function turnDownNear({ curve }: Plan, alongTop: Quantity): Quantity {
  const at = pen(alongTop);
  const away = (point: Plan["curve"][number]): number => Math.abs(pen(point.alongTop) - at);
  const [first, ...rest] = curve;
  if (!first) throw new Error("the plan has no turn-down curve");
  return rest.reduce((best, point) => (away(point) < away(best) ? point : best), first).turnDown;
}

/** What a place round the waist is called, if it has a name: a station or the opening. Shares count by the wearer's left. */
export function placeName(plan: Plan, share: number): string | undefined {
  const same = (other: Quantity): boolean => {
    const gap = Math.abs(toFloat(other.value) - share);
    return Math.min(gap, 1 - gap) < 1e-9;
  };
  if (same(plan.opening.share)) return "the opening";
  const station = plan.balance.find(({ share: place }) => same(place))?.station;
  return station?.startsWith("centre") ? station : station && `the ${station}`;
}
