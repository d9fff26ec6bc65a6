/** Where opening and pocket come to be, from their definitions: the seams of the plan, tried one by one. As laws.ts. */
import Fraction from "fraction.js";
import type { Plan } from "../src/solve/plan.ts";

interface Checks {
  readonly plan: Plan;
  law(holds: boolean, words: string): void;
  value(name: string): Fraction;
  has(name: string): boolean;
}

const F = (text: string): Fraction => new Fraction(text);
const ofShare = (q: { readonly value: { toFraction(): string } }): Fraction => F(q.value.toFraction());
const inches = (q: Plan["opening"]["alongTop"]): Fraction => ofShare(q).div("25.4");
/** The shorter way round a ring. */
const apart = (a: Fraction, b: Fraction, ring: Fraction): Fraction => {
  const straight = a.sub(b).abs();
  return straight.mul(2).compare(ring) > 0 ? ring.sub(straight) : straight;
};
const ASKED: Readonly<Record<string, string>> = {
  "centre-front": "0",
  "side-left": "1/4",
  "centre-back": "1/2",
  "side-right": "3/4",
};

/** On an edge that is made every place is as planned in the cloth: tests/solve/made.test.ts holds it against the plan before. */
export function placeLaws(checks: Checks): void {
  if (checks.has("attach.made")) return;
  openingLaws(checks);
  pocketLaws(checks);
}

/** A seam within 1 in on the waist is the opening, of two as near the one on the wearer's left; else a slit where it is asked for. */
function openingLaws({ plan, law, value, has }: Checks): void {
  if (plan.opening.under) return;
  const waist = value("waist.seam");
  const { at } = plan.recipe.attach.opening;
  const offset = has("attach.opening.fromCentre") ? value("attach.opening.fromCentre") : F("0");
  const asked = ASKED[at] ? F(ASKED[at]).mul(waist) : at === "front-left" ? offset : waist.sub(offset);
  const seams = plan.seams
    .filter(({ kind }) => kind !== "slit")
    .map(({ station }) => ofShare(station).mul(waist));
  const gap = (seam: Fraction): Fraction => apart(seam, asked, waist);
  const nearest = seams.reduce((a, b) => (gap(b).compare(gap(a)) < 0 ? b : a));
  const moves = gap(nearest).compare(1) <= 0;
  law(plan.opening.kind === (moves ? "seam" : "slit"), "a seam within an inch is the opening");
  law(
    ofShare(plan.opening.share)
      .mul(waist)
      .equals(moves ? nearest : asked),
    "the opening stands at the nearest seam, or where it is asked for",
  );
}

/** The nearest free seam within an eighth of the waist of the right side, else of the left; of two as near the one in front. */
function pocketLaws({ plan, law, value }: Checks): void {
  if (!plan.pocket) return;
  const round = value("skirt.round");
  const free = plan.seams.filter(
    ({ kind, alongTop }) =>
      kind !== "slit" &&
      apart(inches(alongTop), inches(plan.opening.alongTop), round).compare(value("skirt.pocketWidth")) >= 0,
  );
  for (const [side, share] of [
    ["right", "3/4"],
    ["left", "1/4"],
  ] as const) {
    const gap = (seam: (typeof free)[number]): Fraction => ofShare(seam.station).sub(share).abs();
    const forward = (seam: (typeof free)[number]): Fraction => ofShare(seam.station).sub("1/2").abs();
    const near = free.filter((seam) => gap(seam).compare("1/8") <= 0);
    if (near.length === 0) continue;
    const best = near.reduce((a, b) => {
      const by = gap(b).compare(gap(a)) || forward(a).compare(forward(b));
      return by < 0 ? b : a;
    });
    law(plan.pocket.side === side, "the pocket is on the right wherever a seam is free there");
    law(
      ofShare(plan.pocket.share).equals(ofShare(best.station)),
      "the pocket is in the free seam nearest its side",
    );
    return;
  }
  law(false, "a pocket where no seam is free");
}
