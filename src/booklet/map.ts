/** The maker's map as its chapter prints it: letters as in the figure, distances by the nearer way. */
import { lettered } from "../figure/map-half.ts";
import { printOnTape } from "../quantity/print.ts";
import { isZero, min, type Quantity, sub } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";

export function mapContext(plan: Plan) {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const onTape = (q: Quantity): string => printOnTape(q, showing);
  const whole = (name: string): Quantity => (plan.values.get(name) as { quantity: Quantity }).quantity;
  const nearer = (at: Quantity, round: Quantity): string => onTape(min(at, sub(round, at)));
  return lettered(plan).map(({ letter, place }) => ({
    letter,
    place: place.place,
    waist: nearer(place.waist, whole("waist.seam")),
    top: nearer(place.alongTop, whole("skirt.round")),
    turnDown: onTape(place.turnDownMark),
    unsewn: place.unsewn
      ? isZero(place.unsewn.from)
        ? `down to ${onTape(place.unsewn.to)}`
        : `from ${onTape(place.unsewn.from)} to ${onTape(place.unsewn.to)}`
      : "-",
    isOpening: place.kinds.includes("opening"),
    isPocket: place.kinds.includes("pocket"),
  }));
}
