/**
 * An original carried to another body. Three answers: the same bites and pleats an inch (the seams take what is over of whole
 * and half breadths), the same breadths (the bite follows), or the same fullness as nearly as half breadths come to it (the bites
 * stay, the pleats an inch follow). A flat front and a gauged back grow as the waist does. [ours]
 */
import {
  abs,
  div,
  fraction,
  inches,
  less,
  max,
  mul,
  plain,
  type Quantity,
  sub,
} from "../../quantity/quantity.ts";
import { nearestWhole, roundTo } from "../../quantity/tape.ts";
import { MOST_BREADTHS } from "../../recipe/limits.ts";
import type { Original } from "../../recipe/original/schema.ts";
import { fourOf, STATIONS } from "./derive.ts";
import type { Findings } from "./findings.ts";

export const KEEPS = ["pitch", "breadths", "ratio"] as const;
export type Keep = (typeof KEEPS)[number];

/** What a recipe is written from, for the original's own body or for another. */
export interface Carried {
  readonly keep?: Keep;
  readonly waist: Quantity;
  readonly ease: Quantity;
  /** Waist seam to hem. */
  readonly lengths: Readonly<Record<(typeof STATIONS)[number], Quantity>>;
  readonly breadths: Quantity;
  readonly seam: Quantity;
  /** Pleats along the gauged waist, an inch; absent where nothing is gauged. */
  readonly perInch?: Quantity;
  /** Flat in front, or gauged behind, both halves. */
  readonly part?: Quantity;
}

const perInchOf = (q: Quantity): Quantity => mul(q, inches("1"));

/** The garment as it was. */
export function asItWas(found: Findings): Carried {
  return {
    waist: found.get("waist.seam"),
    ease: inches("0"),
    lengths: Object.fromEntries(STATIONS.map((at) => [at, found.get(`length.${at}`)])) as Carried["lengths"],
    breadths: found.get("breadths.count"),
    seam: found.get("seam.taken"),
    ...(found.has("pleats.perInch") ? { perInch: perInchOf(found.get("pleats.perInch")) } : {}),
    ...partOf(found, plain(1n)),
  };
}

function partOf(found: Findings, times: Quantity): Pick<Carried, "part"> {
  if (found.has("flat.waist")) return { part: mul(found.get("flat.waist"), times) };
  const behind = found.has("gauged.waist") && less(found.get("gauged.waist"), found.get("waist.seam"));
  return behind ? { part: mul(found.get("gauged.waist"), times) } : {};
}

/** The garment on another body. Undefined where so many breadths are never sewn. */
export function carriedTo(
  { waist, ease, lengths }: NonNullable<Original["wearer"]>,
  keep: Keep,
  found: Findings,
): Carried | undefined {
  const seam = { value: waist.value.add(ease.value), dim: waist.dim };
  const times = div(seam, found.get("waist.seam"));
  const isGauged = found.has("pleats.all");
  const gauged = isGauged ? mul(found.get("gauged.waist"), times) : seam;
  const four = fourOf(lengths);
  const wished = mul(found.get("hem.round"), times);
  const base = {
    keep,
    waist,
    ease,
    lengths: {
      front: four.front,
      left: four.left ?? four.front,
      right: four.right ?? four.front,
      back: four.back ?? four.front,
    },
    ...partOf(found, times),
  };
  const perInch = (pleats: Quantity): Pick<Carried, "perInch"> =>
    isGauged ? { perInch: perInchOf(div(pleats, gauged)) } : {};
  const followed = isGauged ? nearest(mul(found.get("pleats.perInch"), gauged)) : plain(0n);
  const seamOf = found.get("seam.taken");
  if (keep === "breadths")
    return { ...base, breadths: found.get("breadths.count"), seam: seamOf, ...perInch(followed) };
  if (keep === "ratio") {
    const breadths = halves().reduce((a, b) =>
      less(away(b, wished, found), away(a, wished, found)) ? b : a,
    );
    const cloth = (): Quantity => gaugedCloth(roundOf(breadths, seamOf, found), times, found);
    const pleats = isGauged ? nearest(div(cloth(), found.get("pleat.pitch"))) : followed;
    return { ...base, breadths, seam: seamOf, ...perInch(pleats) };
  }
  const round = isGauged ? roundFor(mul(followed, found.get("pleat.pitch")), times, found) : wished;
  const breadths = halves().find((n) => !less(roundOf(n, seamOf, found), round));
  if (!breadths) return undefined;
  const usable = mul(breadths, found.get("breadths.usable"));
  const taken = div(sub(usable, round), mul(plain(2n), seams(breadths)));
  // A seam that can be marked: the bites keep within a hair.
  const marked = max(roundTo(taken, found.get("tape"), "down"), seamOf);
  return { ...base, breadths, seam: marked, ...perInch(followed) };
}

const nearest = (q: Quantity): Quantity => plain(nearestWhole(q.value));

/** Whole and half breadths from one to the most there may be. */
const halves = (): Quantity[] =>
  Array.from({ length: 2 * MOST_BREADTHS - 1 }, (_, i) => plain(fraction(BigInt(i + 2), 2n)));

const seams = (breadths: Quantity): Quantity => plain(breadths.value.ceil());

/** The round of so many breadths with these seams. */
const roundOf = (breadths: Quantity, seam: Quantity, found: Findings): Quantity =>
  sub(mul(breadths, found.get("breadths.usable")), mul(mul(plain(2n), seams(breadths)), seam));

const away = (breadths: Quantity, wished: Quantity, found: Findings): Quantity =>
  abs(sub(roundOf(breadths, found.get("seam.taken"), found), wished));

/** The gauged cloth in a round, and the round of a gauged cloth: what is flat takes its waist, what is pleated its share. */
function gaugedCloth(round: Quantity, times: Quantity, found: Findings): Quantity {
  if (found.has("flat.waist")) return sub(round, mul(found.get("flat.waist"), times));
  return div(mul(round, found.get("gauged.waist")), found.get("waist.seam"));
}
function roundFor(cloth: Quantity, times: Quantity, found: Findings): Quantity {
  if (found.has("flat.waist"))
    return { value: cloth.value.add(found.get("flat.waist").value.mul(times.value)), dim: cloth.dim };
  return div(mul(cloth, found.get("waist.seam")), found.get("gauged.waist"));
}
