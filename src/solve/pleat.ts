/**
 * Pleats: what one takes of waist and of cloth. A pleat of face v and depth d takes v of waist and v + k d of cloth, k being
 * 2 for knife, 4 for box, 8 for double box (published: rows 3, 4, 5).
 */
import { add, div, fraction, isWhole, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import { roundTo, share } from "../quantity/tape.ts";

export type PleatSet = "knife" | "box" | "double-box";
export type ZoneSet = "flat" | "gauged" | PleatSet;

export const PLEAT_NAMES: Readonly<Record<PleatSet, string>> = {
  knife: "knife pleats",
  box: "box pleats",
  "double-box": "double box pleats",
};

/** Depths of cloth that a pleat hides behind its face. */
export const TAKE_UP: Readonly<Record<PleatSet, bigint>> = { knife: 2n, box: 4n, "double-box": 8n };

/** Depth for one of face at which pleats just meet: knife a face, box and double box half of one. */
const MEETING: Readonly<Record<PleatSet, Quantity>> = {
  knife: plain(1n),
  box: plain(fraction(1n, 2n)),
  "double-box": plain(fraction(1n, 2n)),
};

export const isPleatSet = (set: ZoneSet): set is PleatSet => set !== "flat" && set !== "gauged";

/** The depth at which pleats of this face meet. */
export const meetingDepth = (set: PleatSet, face: Quantity): Quantity => mul(face, MEETING[set]);

/** Cloth that a waist takes, pleated. */
export function clothOf(set: PleatSet, waist: Quantity, count: Quantity, depth: Quantity): Quantity {
  return add(waist, mul(mul(count, depth), plain(TAKE_UP[set])));
}

/** Do pleats of this depth lie over each other? */
export const stacks = (set: PleatSet, face: Quantity, depth: Quantity): boolean =>
  depth.value.compare(meetingDepth(set, face).value) > 0;

/** Layers of cloth at the thickest place: the face, and two for every fold behind it. */
export function layersOf(set: PleatSet, face: Quantity, depth: Quantity): number {
  const behind = div(depth, meetingDepth(set, face)).value.ceil().n;
  const folds = set === "double-box" ? 2n : 1n;
  return Number(1n + 2n * folds * behind);
}

export interface PleatMarks {
  /** From the end nearer centre front; a half pleat astride a centre line stands at that end. */
  readonly faces: readonly Quantity[];
  readonly depths: readonly Quantity[];
}

/**
 * Faces and depths on tape marks: they differ by one mark at most and sum exactly; a remainder finer than a mark goes
 * into the last. What is shared is the waist, and the hidden cloth over 2, 4 or 8. With a half pleat (count n + 1/2) the
 * half takes half a face and half a depth, on marks, at the end that lies on the centre line.
 */
export function layPleats(
  set: PleatSet,
  waist: Quantity,
  cloth: Quantity,
  count: Quantity,
  tape: Quantity,
  halfAt: "front" | "back",
): PleatMarks {
  const hidden = div(sub(cloth, waist), plain(TAKE_UP[set]));
  return { faces: shared(waist, count, tape, halfAt), depths: shared(hidden, count, tape, halfAt) };
}

function shared(
  total: Quantity,
  count: Quantity,
  tape: Quantity,
  halfAt: "front" | "back",
): readonly Quantity[] {
  if (isWhole(count)) return share(total, Number(count.value.n), tape).parts;
  const half = roundTo(div(total, mul(count, plain(2n))), tape);
  const whole = Number(count.value.floor().n);
  if (whole === 0) return [total];
  const rest = share(sub(total, half), whole, tape).parts;
  return halfAt === "front" ? [half, ...rest] : [...rest, half];
}
