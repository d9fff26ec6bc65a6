/** Questions about the gauging that chapters ask through flags.ts. */
import { add, compare, equal, isZero, mul, plain, type Quantity } from "../quantity/quantity.ts";
import type { Plan, TrialRow } from "../solve/plan.ts";

/** Does this row of the trial table offer other bites than the planned ones? */
export function hasLonger({ pleats }: TrialRow, { values }: Plan): boolean {
  const planned = values.get("section.pleats")?.quantity;
  return pleats !== undefined && planned !== undefined && !equal(plain(pleats), planned);
}

/** Would one pleat more in the section nearest centre back need finer bites than the finest, or lines that the cloth has not? */
export function isFinest({ values, gauged }: Plan): boolean {
  const quantity = (name: string): Quantity | undefined => values.get(name)?.quantity;
  const [cloth, pleats, finest] = ["section.cloth", "section.pleats", "fullness.finestBite"].map(quantity);
  if (!cloth || !pleats || !finest) return false;
  const onePleatMore = mul(mul(finest, plain(2n)), add(pleats, plain(1n)));
  return gauged.some(({ lines }) => lines !== undefined) || compare(onePleatMore, cloth) > 0;
}

/** Does a gauged section end at the opening? */
export function gaugedToOpening({ gauged, opening, values }: Plan): boolean {
  const waist = values.get("waist.seam")?.quantity as Quantity;
  const places = [mul(waist, opening.share), ...(isZero(opening.share) ? [waist] : [])];
  return gauged.some(({ from, waist: own }) =>
    [from, add(from, own)].some((end) => places.some((place) => equal(place, end))),
  );
}
