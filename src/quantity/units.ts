/**
 * The units a maker writes, each as an exact number of base units.
 * Sources: international yard and pound (1959); NIST Handbook 44 app. C; nail and ell: J. Ray, Practical Arithmetic (1859).
 */
import { AREAL, type Dim, type Fraction, fraction, LENGTH, MASS, PLAIN, RATE } from "./quantity.ts";

export interface Unit {
  readonly dim: Dim;
  /** Base units (mm, g, s) in one of this unit. */
  readonly size: Fraction;
}

const unit = (dim: Dim, size: string): Unit => ({ dim, size: fraction(size) });

const inch = unit(LENGTH, "25.4");
const foot = unit(LENGTH, "304.8");
const yard = unit(LENGTH, "914.4");
const nail = unit(LENGTH, "57.15");
const ell = unit(LENGTH, "1143");
const millimetre = unit(LENGTH, "1");
const centimetre = unit(LENGTH, "10");
const metre = unit(LENGTH, "1000");
const ounce = unit(MASS, "28.349523125");
const perSquareMetre = unit(AREAL, "1/1000000");
const perSquareYard: Unit = { dim: AREAL, size: ounce.size.div(yard.size.mul(yard.size)) };

const TABLE: readonly [Unit, readonly string[]][] = [
  [inch, ["in", "inch", "inches", '"', "″", "”", "''", "′′"]],
  [foot, ["ft", "foot", "feet", "'", "′", "’"]],
  [yard, ["yd", "yds", "yard", "yards"]],
  [nail, ["nail", "nails", "nl"]],
  [ell, ["ell", "ells"]],
  [millimetre, ["mm", "millimetre", "millimetres", "millimeter", "millimeters"]],
  [centimetre, ["cm", "centimetre", "centimetres", "centimeter", "centimeters"]],
  [metre, ["m", "metre", "metres", "meter", "meters"]],
  [unit(MASS, "1"), ["g", "gram", "grams"]],
  [unit(MASS, "1000"), ["kg"]],
  [ounce, ["oz", "ounce", "ounces"]],
  [unit(MASS, "453.59237"), ["lb", "lbs", "pound", "pounds"]],
  [perSquareMetre, ["g/m2", "g/m²", "gsm"]],
  [perSquareYard, ["oz/yd2", "oz/yd²"]],
  [unit(PLAIN, "1/100"), ["%", "per cent", "percent"]],
  [unit(RATE, "1/60"), ["per min", "per minute", "/min"]],
];

/** Every written form of a unit, to the unit. */
export const UNITS: ReadonlyMap<string, Unit> = new Map(
  TABLE.flatMap(([u, names]) => names.map((name) => [name, u] as const)),
);

/** Written forms of the units of one kind, longest first, for reading. */
export function formsOf(dim: Dim): string[] {
  return [...UNITS]
    .filter(([, u]) => u.dim === dim)
    .map(([name]) => name)
    .sort((a, b) => b.length - a.length);
}
