/** Lengths of the plan for a drawing: as floats for the pen, as printed words for the labels. */
import { printFine, printOnTape, printPart, type Showing } from "../quantity/print.ts";
import { type Quantity, toFloat, toInches } from "../quantity/quantity.ts";
import type { Plan, Section, Station } from "../solve/plan.ts";

/** A length in inches, or a plain number, for the pen only: nothing is printed from it. */
export const pen = (q: Quantity): number => toFloat(toInches(q));

/** A named value for the pen. A name the plan does not have is a fault of the program. */
export function penOf(plan: Plan, name: string): number {
  return pen(valueOf(plan, name).quantity);
}

/** A named value as it is printed everywhere else. */
export const shownOf = (plan: Plan, name: string): string => valueOf(plan, name).shown;

function valueOf(plan: Plan, name: string) {
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

/** A section's two ends along the flat top, for the pen, and which of them is nearer centre back. */
export function isLeft(station: Station): boolean {
  return toFloat(station.share.value) <= 0.5;
}

/** The section that close-ups are drawn from: the one nearest centre back, the wearer's left where two are as near. */
export function chiefSection(plan: Plan): Section {
  const back = penOf(plan, "waist.seam") / 2;
  const away = ({ from, waist, half }: Section): number =>
    half === "left" ? back - pen(from) - pen(waist) : pen(from) - back;
  const [first, ...rest] = plan.sections;
  if (!first) throw new Error("the plan has no gauged section");
  return rest.reduce((best, section) => (away(section) < away(best) - 1e-9 ? section : best), first);
}

/** The turn-down at a place along the flat top, read off the plan's curve for the pen. */
export function turnDownAt(plan: Plan, alongTop: number): number {
  const { curve } = plan;
  for (let i = 1; i < curve.length; i += 1) {
    const [a, b] = [curve[i - 1], curve[i]];
    if (!a || !b || pen(b.alongTop) < alongTop) continue;
    const span = pen(b.alongTop) - pen(a.alongTop);
    const part = span === 0 ? 0 : (alongTop - pen(a.alongTop)) / span;
    return pen(a.turnDown) + part * (pen(b.turnDown) - pen(a.turnDown));
  }
  const last = curve.at(-1);
  return last ? pen(last.turnDown) : 0;
}
