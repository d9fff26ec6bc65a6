/** How each kind of value is printed: one function a style. */
import {
  decimal,
  printCloth,
  printExactly,
  printFine,
  printOnTape,
  printPart,
  type Showing,
  vulgar,
} from "../quantity/print.ts";
import { type Fraction, fraction, type Quantity, toInches } from "../quantity/quantity.ts";
import { nearestWhole, roundTo } from "../quantity/tape.ts";
import type { Style } from "./plan.ts";

const POUND = fraction("453.59237");
const SQUARE_METRE = fraction(1_000_000n);
const OUNCE_A_YARD = fraction("28.349523125").div(fraction("0.83612736").mul(SQUARE_METRE));

/** A number finer than this, as a price reckoned in a notebook, is no fraction that anyone reads. */
const FINEST_COUNT = 64n;

const STYLES: Record<Style, (q: Quantity, showing: Showing) => string> = {
  tape: printOnTape,
  tapeUp: (q, { show, tape }) => printExactly(roundTo(q, tape, "up"), show),
  tapeDown: (q, { show, tape }) => printExactly(roundTo(q, tape, "down"), show),
  part: printPart,
  fine: (q, { show }) => printFine(q, show),
  thick: (q) => `${decimal(q.value, 2)} mm`,
  whole: (q) => nearestWhole(q.value).toString(),
  cloth: (q, { show }) => printCloth(q, show),
  count: (q) => (q.value.d > FINEST_COUNT ? decimal(q.value, 4) : vulgar(q.value)),
  ratio: (q) => `${decimal(q.value, 2)} : 1`,
  share: (q) => `${decimal(q.value.mul(100), 1)} %`,
  weight: (q, { show }) => {
    const pounds = `${decimal(q.value.div(POUND), 1)} lb`;
    const kilograms = `${decimal(q.value.div(1000), 2)} kg`;
    return show === "in" ? `${pounds} (${kilograms})` : `${kilograms} (${pounds})`;
  },
  areal: (q, { show }) =>
    show === "in"
      ? `${decimal(q.value.div(OUNCE_A_YARD), 1)} oz/yd2`
      : `${decimal(q.value.mul(SQUARE_METRE), 0)} g/m2`,
  area: (q, { show }) =>
    show === "in"
      ? `${decimal(toInches(q), 0)} square inches`
      : `${decimal(q.value.div(SQUARE_METRE), 2)} square metres`,
  time: (q) => printTime(q),
  minutes: (q) => `${q.value.div(60).ceil().n} min`,
  rate: (q) => `${decimal(q.value.mul(60), 1)} a minute`,
  perLength: (q, { show }) =>
    show === "in" ? `${decimal(toInches(q), 1)} an inch` : `${decimal(q.value.mul(10), 1)} a centimetre`,
  shareWhole: (q) => `${decimal(q.value.mul(100), 0)} %`,
  shareFine: (q) => `${decimal(q.value.mul(100), 2)} %`,
  decimal: (q) => decimal(q.value, 4),
  money: (q, showing) => sumOfMoney(q.value, showing),
  hourly: (q, showing) => `${sumOfMoney(q.value.mul(3600), showing)} an hour`,
  price: (q, showing) =>
    showing.show === "in"
      ? `${sumOfMoney(q.value.mul("914.4"), showing)} a yard`
      : `${sumOfMoney(q.value.mul(1000), showing)} a metre`,
};

/** To the cent, with the recipe's own word for the currency. */
function sumOfMoney(sum: Fraction, { currency }: Showing): string {
  return `${decimal(sum, 2, true)}${currency ? ` ${currency}` : ""}`;
}

/** Times are printed to five minutes: no hand keeps closer. */
export const TIME_STEP_MINUTES = 5n;

/** A time as hours and minutes, on the nearest five minutes. */
export function printTime(q: Quantity): string {
  const step = fraction(TIME_STEP_MINUTES * 60n);
  const minutes = nearestWhole(q.value.div(step)) * TIME_STEP_MINUTES;
  const hours = minutes / 60n;
  const rest = minutes % 60n;
  if (hours === 0n) return `${rest} min`;
  return rest === 0n ? `${hours} h` : `${hours} h ${rest} min`;
}

/** A quantity ready to print in its style, units included. */
export function shown(q: Quantity, style: Style, showing: Showing): string {
  return STYLES[style](q, showing);
}
