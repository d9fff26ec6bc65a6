/** Prints quantities for a maker: inches as vulgar fractions, centimetres to the millimetre. */
import { type Fraction, fraction, LENGTH, type Quantity, quantity, toInches } from "./quantity.ts";
import { nearestWhole, roundTo } from "./tape.ts";

/** Which system lengths are printed in, and the smallest mark of the tape. */
export interface Showing {
  readonly show: "in" | "cm";
  readonly tape: Quantity;
  /** What stands after a sum of money; nothing when the recipe names no currency. */
  readonly currency?: string | undefined;
}

/** A rational as a vulgar fraction: `26 1/2`, `-3/4`, `12`. */
export function vulgar(f: Fraction): string {
  const sign = f.s < 0n ? "-" : "";
  const [whole, rest] = [f.n / f.d, f.n % f.d];
  if (rest === 0n) return `${sign}${whole}`;
  return `${sign}${whole === 0n ? "" : `${whole} `}${rest}/${f.d}`;
}

/** A rational as a decimal with at most `places` places, nearest with ties to even, no trailing zeros unless `fixed`. */
export function decimal(f: Fraction, places: number, fixed = false): string {
  const scaled = nearestWhole(f.abs().mul(fraction(10n ** BigInt(places))));
  const digits = scaled.toString().padStart(places + 1, "0");
  const cut = digits.length - places;
  const tail = fixed ? digits.slice(cut) : digits.slice(cut).replace(/0+$/, "");
  const sign = f.s < 0n && scaled !== 0n ? "-" : "";
  return `${sign}${digits.slice(0, cut)}${tail === "" ? "" : `.${tail}`}`;
}

/** Has this rational a decimal that ends within `places` places? */
export function ends(f: Fraction, places: number): boolean {
  return f.mul(fraction(10n ** BigInt(places))).d === 1n;
}

/** A length on its nearest tape mark: `26 1/2 in`, `67.3 cm`. */
export function printOnTape(q: Quantity, { show, tape }: Showing): string {
  return printExactly(roundTo(q, tape), show);
}

/** A length as it is: inches as a vulgar fraction of any denominator, centimetres as a decimal of at most six places. */
export function printExactly(q: Quantity, show: "in" | "cm"): string {
  return show === "in" ? `${vulgar(toInches(q))} in` : `${decimal(q.value.div(10), 6)} cm`;
}

/** The finest binary part of an inch that is worth printing as a fraction. */
const FINEST_PART = 128n;

/**
 * A length printed exactly where that can be read (binary parts of an inch to 1/128, decimals of a centimetre to four
 * places), else on its nearest tape mark after "about". For parts that must be seen to add up.
 */
export function printPart(q: Quantity, showing: Showing): string {
  const exact = showing.show === "in" ? FINEST_PART % toInches(q).d === 0n : ends(q.value.div(10), 4);
  return exact ? printExactly(q, showing.show) : `about ${printOnTape(q, showing)}`;
}

/** A small length, as thickness and spacing: three places of an inch, or millimetres to two places. */
export function printFine(q: Quantity, show: "in" | "cm"): string {
  return show === "in" ? `${decimal(toInches(q), 3)} in` : `${decimal(q.value, 2)} mm`;
}

const YARD = fraction("914.4");
const YARD_EIGHTH: Quantity = quantity(YARD.div(8), LENGTH);
const CENTIMETRE: Quantity = quantity(10n, LENGTH);

/** Cloth and thread as they are bought: yards and eighths, or metres and centimetres; never less than it is. */
export function printCloth(q: Quantity, show: "in" | "cm"): string {
  if (show === "cm") return `${decimal(roundTo(q, CENTIMETRE, "up").value.div(1000), 2, true)} m`;
  return `${vulgar(roundTo(q, YARD_EIGHTH, "up").value.div(YARD))} yd`;
}
