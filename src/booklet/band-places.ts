/** Marks of a band whose waist is set in parts. */
import { printPart } from "../quantity/print.ts";
import { add, compare, isZero, less, mul, type Quantity, sub } from "../quantity/quantity.ts";
import type { Plan, Section } from "../solve/plan.ts";

/**
 * Every mark of the band in order from the opening, going round as the sections do, front, left, back, right: ends of the parts and the measured
 * stations. Both ends of the band are the opening itself and stand not among them.
 */
export function bandPlaces(plan: Plan, waist: Quantity): { place: string; at: string }[] {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const opening = mul(waist, plan.opening.share);
  const places = new Map<string, { names: string[]; along: Quantity }>();
  const put = (at: Quantity, name: string): void => {
    const ahead = sub(at, opening);
    const along = less(ahead, sub(waist, waist)) ? add(ahead, waist) : ahead;
    const key = along.value.toFraction();
    const known = places.get(key);
    if (known) known.names.push(name);
    else places.set(key, { names: [name], along });
  };
  for (const { station, share, measured } of plan.balance) if (measured) put(mul(waist, share), station);
  plan.sections.forEach((section, i) => {
    const before = plan.sections.at(i - 1) as Section;
    put(section.from, `end of the ${before.name}; start of the ${section.name}`);
  });
  return [...places.values()]
    .filter(({ along }) => !isZero(along))
    .sort((a, b) => compare(a.along, b.along))
    .map(({ names, along }) => ({ place: names.join(": "), at: printPart(along, showing) }));
}
