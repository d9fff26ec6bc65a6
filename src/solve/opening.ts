/** The opening: where it is asked for, and where it comes to be (trade: the placket goes to the seam within 1 in). */
import {
  abs,
  compare,
  fraction,
  inches,
  isZero,
  less,
  min,
  mul,
  plain,
  type Quantity,
  sub,
} from "../quantity/quantity.ts";
import type { OpeningPlace } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";
import type { Ring } from "./ring.ts";
import { asPlanned, type SolvedZone, topOfWaist, waistOfTop } from "./zones.ts";

/** How near on the waist seam a seam must be for the placket to go to it. */
export const NEAR = inches(1n);

export interface Opening {
  /** On the waist seam, from centre front by the wearer's left. */
  readonly waist: Quantity;
  /** The same on the waist seam as planned, before the edge was made. */
  readonly planned: Quantity;
  readonly alongTop: Quantity;
  readonly kind: "seam" | "slit";
  /** In words: "centre back", or how far from centre front on which side. */
  readonly station: string;
  /** The fold that it was moved under, in words: "the fold of pleat 4 of the knife pleats". */
  readonly under?: string;
}

const SHARES: Partial<Record<OpeningPlace, { share: string; words: string }>> = {
  "centre-front": { share: "0", words: "centre front" },
  "side-left": { share: "1/4", words: "the left side" },
  "centre-back": { share: "1/2", words: "centre back" },
  "side-right": { share: "3/4", words: "the right side" },
};

/**
 * Finds the opening. If a seam stands within 1 in of it on the waist seam, that seam's place is the opening (a tie: the left).
 * All of it goes by the waist as planned: seam or slit is sewn before the edge is made, and an edge that is made moves
 * nothing in the cloth, only the place on the waist that the cloth comes to.
 */
export function solveOpening(
  { recipe, sheet, say }: Work,
  ring: Ring,
  zones: readonly SolvedZone[],
): Opening {
  const { at, fromCentre } = recipe.attach.opening;
  const waistSeam = sheet.get("waist.planned");
  const plannedZones = asPlanned(zones);
  const comesTo = (place: Quantity, top: Quantity): Quantity =>
    recipe.attach.made ? waistOfTop(zones, top) : place;
  const fixed = SHARES[at];
  const offset = fromCentre ?? mul(waistSeam, plain(0n));
  const asked = fixed
    ? mul(waistSeam, plain(fraction(fixed.share)))
    : at === "front-left"
      ? offset
      : sub(waistSeam, offset);
  const words = fixed
    ? fixed.words
    : `${sheet.shown("attach.opening.fromCentre")} to the ${at.slice(6)} of centre front`;

  const gap = (place: Quantity): Quantity => {
    const straight = abs(sub(place, asked));
    return min(straight, sub(waistSeam, straight));
  };
  let nearest: { waist: Quantity; top: Quantity; gap: Quantity } | undefined;
  for (const top of ring.seams) {
    const waist = waistOfTop(plannedZones, top);
    const away = gap(waist);
    if (!nearest || less(away, nearest.gap)) nearest = { waist, top, gap: away };
  }
  if (!nearest || less(NEAR, nearest.gap)) {
    const alongTop = topOfWaist(plannedZones, asked);
    return { waist: comesTo(asked, alongTop), planned: asked, alongTop, kind: "slit", station: words };
  }
  if (nearest.gap.value.n !== 0n) {
    say({
      code: "opening-moved",
      level: "note",
      path: "attach.opening",
      text: `a seam stands near ${words}: the placket goes to it, and that seam is the opening for band, sections and hooks alike`,
    });
  }
  return {
    waist: comesTo(nearest.waist, nearest.top),
    planned: nearest.waist,
    alongTop: nearest.top,
    kind: "seam",
    station:
      nearest.gap.value.n === 0n
        ? words
        : fixed
          ? `the seam nearest ${words}`
          : seamWords(ring, nearest.top, at),
  };
}

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];

/** A seam counted from centre front on its own side: "the second seam to the left of centre front". */
function seamWords(ring: Ring, top: Quantity, at: OpeningPlace): string {
  const side = at.slice(6);
  const beside = ring.seams.filter((seam) => !isZero(seam));
  const place = beside.findIndex((seam) => compare(seam, top) === 0);
  const count = side === "left" ? place : beside.length - 1 - place;
  return `the ${ORDINALS[count] ?? `${count + 1}th`} seam to the ${side} of centre front`;
}
