/**
 * Where a pleated zone is marked and folded: every fold's line on the flat cloth, and the line it is laid to. Distances
 * run along the top from the zone's end nearer centre front; the wearer's right half is the mirror of the left.
 */
import { add, compare, isWhole, isZero, mul, plain, type Quantity } from "../quantity/quantity.ts";
import type { PleatedSection } from "./plan.ts";

/** One fold: chalked `at`, laid over to the line `to`. It points to the back when `to` lies further on. */
export interface Fold {
  readonly at: Quantity;
  readonly to: Quantity;
}

export interface PleatLines {
  /** The flat cloth of this pleat. */
  readonly from: Quantity;
  readonly end: Quantity;
  /** What shows of it. */
  readonly faceFrom: Quantity;
  readonly faceTo: Quantity;
  readonly face: Quantity;
  /** Of one fold, also where the list carries half a depth for half a pleat. */
  readonly depth: Quantity;
  /** Half of a pleat astride a centre line. */
  readonly half: boolean;
  readonly folds: readonly Fold[];
}

const times = (q: Quantity, n: bigint): Quantity => mul(q, plain(n));

/** Folds behind one side of a face: a box has one, a double box two. */
const SIDE = { knife: 1n, box: 1n, "double-box": 2n } as const;

/** What the lines of a pleated part are laid from. */
export type LaidOut = Pick<
  PleatedSection,
  "set" | "faces" | "depths" | "towards" | "count" | "from" | "cloth"
>;

/**
 * The lines of a section of the wearer's left half, from the end nearer centre front.
 *
 * A knife turns one edge of its face under, box and double box both. Half a pleat astride a centre line has its face on
 * that line and turns under the edge away from it, whichever way the other pleats point.
 */
export function pleatLines(section: LaidOut): readonly PleatLines[] {
  const known = KNOWN.get(section);
  if (known) return known;
  const lines = linesOf(section);
  KNOWN.set(section, lines);
  return lines;
}

/** Every seam and every fold asks for the lines of its section. */
const KNOWN = new WeakMap<LaidOut, readonly PleatLines[]>();

function linesOf(section: LaidOut): readonly PleatLines[] {
  const { set, faces, depths, towards, count, from } = section;
  const halfFirst = !isWhole(count) && isZero(from);
  const halfLast = !isWhole(count) && !halfFirst;
  let at = times(section.cloth, 0n);
  return faces.map((face, i): PleatLines => {
    const listed = depths[i] as Quantity;
    const half = (halfFirst && i === 0) || (halfLast && i === faces.length - 1);
    const folds = SIDE[set];
    // Half a box lists half a depth, and hides the whole of one side: twice as deep.
    const depth = half && set !== "knife" ? times(listed, 2n) : listed;
    const hidden = times(depth, 2n * folds);
    const both = set !== "knife" && !half;
    const before = both || (half ? halfLast : towards === "front");
    const start = at;
    const faceFrom = before ? add(start, hidden) : start;
    const faceTo = add(faceFrom, face);
    const end = both || !before ? add(faceTo, hidden) : faceTo;
    at = end;
    const each = Array.from({ length: Number(folds) }, (_, k) => times(depth, 2n * BigInt(k)));
    return {
      from: start,
      end,
      faceFrom,
      faceTo,
      face,
      depth,
      half,
      folds: [
        ...(before ? each.map((step) => ({ at: add(start, add(step, times(depth, 2n))), to: start })) : []),
        ...(both || !before ? each.map((step) => ({ at: add(faceTo, step), to: end })) : []),
      ],
    };
  });
}

/** Where a place on the flat cloth comes to lie once the pleats are laid. */
export interface PlaceInPleats {
  /** Counted from the end nearer centre front, from 1. */
  readonly pleat: number;
  /** `covered`: on a line that a fold is laid to. `edge`: at a fold. `face`: in plain sight. `hidden`: in the depth behind. */
  readonly where: "covered" | "edge" | "face" | "hidden";
}

/** The place of `at` (from the zone's end nearer centre front) among the pleats. Undefined outside the zone. */
export function placeInPleats(lines: readonly PleatLines[], at: Quantity): PlaceInPleats | undefined {
  const within = (low: Quantity, high: Quantity): boolean => compare(low, at) <= 0 && compare(at, high) <= 0;
  const find = (
    where: PlaceInPleats["where"],
    is: (line: PleatLines) => boolean,
  ): PlaceInPleats | undefined => {
    const i = lines.findIndex(is);
    return i < 0 ? undefined : { pleat: i + 1, where };
  };
  return (
    find("covered", ({ folds }) => folds.some(({ to }) => compare(to, at) === 0)) ??
    find("edge", ({ folds }) => folds.some((fold) => compare(fold.at, at) === 0)) ??
    find("face", ({ faceFrom, faceTo }) => within(faceFrom, faceTo)) ??
    find("hidden", ({ from, end }) => within(from, end))
  );
}
