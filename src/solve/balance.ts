/**
 * The balance between the measured stations: a monotone cubic, flat at centre front and centre back, evaluated exactly.
 * Slopes at the sides are Fritsch & Butland's (the harmonic mean of the rises where they agree, else 0): the curve
 * never passes its neighbours. This project's own modelling choice.
 */
import { add, compare, equal, fraction, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import { STATIONS } from "../recipe/stations.ts";
import type { Work } from "./context.ts";
import { monotone } from "./monotone.ts";
import type { Plan, Station } from "./plan.ts";
import { topOf } from "./trims.ts";
import { dropAt } from "./waist-edge.ts";
import { type SolvedZone, topsOfWaist } from "./zones.ts";

/** A length at a share of the waist seam (0 to 1 from centre front by the left), from the four measured ones. */
export function curve(
  front: Quantity,
  left: Quantity,
  right: Quantity,
  back: Quantity,
): (share: Quantity) => Quantity {
  const [onLeft, onRight] = [left, right].map((side) =>
    monotone([front, side, back].map((height, at) => ({ at: plain(at), height }))),
  ) as [(at: Quantity) => Quantity, (at: Quantity) => Quantity];
  return (share) =>
    compare(share, HALF) > 0 ? onRight(mul(sub(ONE, share), FOUR)) : onLeft(mul(share, FOUR));
}

const ONE = plain(1n);
const TWO = plain(2n);
const FOUR = plain(4n);
const HALF = plain(fraction(1n, 2n));

/** How finely the turn-down curve is given for drawing: parts of the whole round. */
const CURVE_PARTS = 64;

/** The finished length at any share of the waist seam: the curve, less what a pointed edge drops there. */
export function finishedBy(work: Pick<Work, "recipe" | "sheet">): (share: Quantity) => Quantity {
  const { sheet } = work;
  const front = sheet.get(sheet.has("finished.level") ? "finished.level" : "finished.front");
  const [left, right] = [sheet.get("finished.left"), sheet.get("finished.right")];
  const level = curve(front, left, right, sheet.get("finished.back"));
  return (share) => sub(level(share), dropAt(work, share));
}

type Place = Plan["curve"][number] & { readonly finished: Quantity };

/** What is turned down at any share of the waist seam, and where along the cut top. */
function placer(work: Pick<Work, "recipe" | "sheet">, zones: readonly SolvedZone[]) {
  const top = work.sheet.get(topOf(work.recipe));
  const seam = work.sheet.get("waist.seam");
  const finishedAt = finishedBy(work);
  const topAt = topsOfWaist(zones);
  return (share: Quantity): Place => {
    const finished = finishedAt(share);
    return { share, finished, alongTop: topAt(mul(seam, share)), turnDown: sub(top, finished) };
  };
}

/** The eight stations. Needs the lengths and the zones. */
export function solveBalance(work: Work, zones: readonly SolvedZone[]): Plan["balance"] {
  const { recipe, sheet } = work;
  const top = sheet.get(topOf(recipe));
  const offFloor = sheet.get("skirt.offFloor");
  const place = placer(work, zones);
  return STATIONS.map((station, i): Station => {
    const at = place(plain(fraction(BigInt(i), 8n)));
    const finishedMark = roundTo(at.finished, sheet.showing.tape);
    return {
      ...at,
      station,
      toFloor: add(at.finished, offFloor),
      measuredToFloor: add(add(at.finished, offFloor), dropAt({ recipe, sheet }, at.share)),
      finishedMark,
      turnDownMark: sub(top, finishedMark),
      measured: i % 2 === 0,
    };
  });
}

/** The curve for drawing, made the first time it is asked for: who only works numbers out draws nothing. */
export function curveOnce(work: Work, zones: readonly SolvedZone[]): () => Plan["curve"] {
  let made: Plan["curve"] | undefined;
  return () => {
    made ??= drawnCurve(work, zones);
    return made;
  };
}

function drawnCurve(work: Work, zones: readonly SolvedZone[]): Plan["curve"] {
  const place = placer(work, zones);
  const point = (i: number): Plan["curve"][number] => {
    const { share, alongTop, turnDown } = place(plain(fraction(BigInt(i), BigInt(CURVE_PARTS))));
    return { share, alongTop, turnDown };
  };
  const left = Array.from({ length: CURVE_PARTS / 2 }, (_, i) => point(i));
  const behind = point(CURVE_PARTS / 2);
  const round = mul(behind.alongTop, TWO);
  // The halves are set alike: where the sides are alike too, the right one is the left one turned over.
  const right = equal(work.sheet.get("finished.left"), work.sheet.get("finished.right"))
    ? left.toReversed().map(({ share, alongTop, turnDown }) => ({
        share: sub(ONE, share),
        alongTop: sub(round, alongTop),
        turnDown,
      }))
    : left.map((_, i) => point(CURVE_PARTS / 2 + 1 + i));
  return [...left, behind, ...right];
}
