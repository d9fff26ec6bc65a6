/** How much of the half waist seam each zone has. */
import { printExactly } from "../quantity/print.ts";
import { add, div, isNegative, isZero, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Asked } from "./zone.ts";

/** Prints a length for a message. */
export const shownIn =
  ({ sheet }: Work) =>
  (q: Quantity): string =>
    printExactly(q, sheet.showing.show);

/** Every zone's waist: one may leave it out and takes the rest. `scaled`: the made edge is shared in proportion when none does. */
export function waistsOf(
  work: Work,
  asked: readonly Asked[],
  half: Quantity,
  scaled: boolean,
): Quantity[] | undefined {
  const { say } = work;
  const print = shownIn(work);
  const open = asked.filter(({ waist }) => !waist);
  if (open.length > 1) {
    for (const zone of open.slice(1)) {
      say({
        code: "waist-twice-open",
        level: "error",
        path: zone.path,
        text: "a second zone leaves its waist out: only one can take the rest",
        hint: "give waist to all zones but one",
      });
    }
    return undefined;
  }
  const given = asked.flatMap(({ waist }) => (waist ? [waist] : []));
  const sum = given.reduce(add, sub(half, half));
  const rest = sub(half, sum);
  if (open.length === 1) {
    if (isNegative(rest) || isZero(rest)) {
      say({
        code: "zones-too-long",
        level: "error",
        path: open[0]?.path ?? "fullness",
        text: `the other zones take ${print(sum)} of the half waist seam of ${print(half)}, and leave nothing for this one`,
        hint: "make a zone shorter: the zones are those of one half",
      });
      return undefined;
    }
    return asked.map(({ waist }) => waist ?? rest);
  }
  if (isZero(rest)) return given;
  if (scaled) return given.map((waist) => mul(waist, div(half, sum)));
  say({
    code: "zones-do-not-add-up",
    level: "error",
    path: "fullness.zones",
    text: `the zones of one half make ${print(sum)}, and half the waist seam is ${print(half)}`,
    hint: `${isNegative(rest) ? "take away" : "add"} ${print(size(rest))}, or leave one zone's waist out to take the rest`,
  });
  return undefined;
}

/** A length without its sign. */
export const size = (q: Quantity): Quantity => (isNegative(q) ? mul(q, plain(-1n)) : q);
