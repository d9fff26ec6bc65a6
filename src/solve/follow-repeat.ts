/**
 * Checks and stripes as a ruler: the pitch is locked to a whole even number of lines, one line being one repeat across.
 * Both bites are half of it; tape marks do not apply (published: row 10).
 */
import { add, div, fraction, less, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import { nearestWhole } from "../quantity/tape.ts";

export interface Locked {
  /** Lines in one pleat: even, two at least. */
  readonly lines: number;
  readonly pitch: Quantity;
  readonly pleats: number;
  /** Whole lines that the free pitch would have held. */
  readonly free: number;
}

const TWO = plain(2n);

/**
 * The largest even number of lines not above the free pitch, two at least; where its pleats do not fit the waist packed,
 * the next even number. Undefined when none fits within the deepest pitch.
 */
export function lockPitch(
  cloth: Quantity,
  waist: Quantity,
  wanted: number,
  repeat: Quantity,
  packed: Quantity,
  deepest: Quantity,
): Locked | undefined {
  const free = div(div(cloth, plain(wanted)), repeat).value.floor();
  const most = div(waist, packed).value.floor();
  const even = free.sub(free.mod(2));
  for (let lines = even.compare(2) < 0 ? fraction(2n) : even; ; lines = lines.add(2)) {
    const pitch = mul(repeat, plain(lines));
    if (less(deepest, pitch)) return undefined;
    const pleats = nearestWhole(div(cloth, pitch).value);
    if (pleats < 1n) return undefined;
    if (pleats <= most.n)
      return { lines: Number(lines.n), pitch, pleats: Number(pleats), free: Number(free.n) };
  }
}

/** Another cloth at the pitch of one that is locked already. */
export const lockedAt = (cloth: Quantity, locked: Locked): Locked => ({
  ...locked,
  pleats: Number(nearestWhole(div(cloth, locked.pitch).value)),
});

/** The bites of a locked pitch: halves of it, and the last pleat takes the rest of the cloth. */
export function layLocked(cloth: Quantity, { pitch, pleats }: Locked): readonly Quantity[] {
  const half = div(pitch, TWO);
  const last = div(sub(cloth, mul(pitch, plain(pleats - 1))), TWO);
  return Array.from({ length: 2 * pleats }, (_, i) => (i < 2 * pleats - 2 ? half : last));
}

/** How many whole pleats of this pitch the cloth holds, and what is over. */
export function wholePleats(cloth: Quantity, pitch: Quantity): { whole: number; over: Quantity } {
  const whole = div(cloth, pitch).value.floor();
  return { whole: Number(whole.n), over: sub(cloth, mul(pitch, plain(whole))) };
}

/** The next even number of lines above and its pitch. */
export const evenAbove = ({ lines }: Locked, repeat: Quantity): { lines: number; pitch: Quantity } => ({
  lines: lines + 2,
  pitch: add(mul(repeat, plain(lines)), mul(repeat, TWO)),
});
