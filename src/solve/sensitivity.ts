/** What happens when the bites run long or short: always shown, since no hand keeps a sixteenth for yards. */
import { add, div, fraction, mul, plain } from "../quantity/quantity.ts";
import { nearestWhole } from "../quantity/tape.ts";
import type { Work } from "./context.ts";
import { closes } from "./gauging.ts";
import type { GaugedSection, Sensitivity } from "./plan.ts";

/** Bites longer or shorter by these shares. */
export const CHANGES = [
  fraction(-1n, 4n),
  fraction(-1n, 10n),
  fraction(0n),
  fraction(1n, 10n),
  fraction(1n, 4n),
];

/** For every section: pleats when each bite is so much longer, how many an inch, and whether they still close. */
export function sensitivityOf({ sheet }: Work, sections: readonly GaugedSection[]): readonly Sensitivity[] {
  const packed = sheet.get("gauging.packed");
  return sections.flatMap((section) =>
    CHANGES.map((by): Sensitivity => {
      const change = plain(by);
      const factor = add(plain(1n), change);
      const pleats = Number(nearestWhole(plain(section.pleats).value.div(factor.value)));
      return {
        section: section.name,
        change,
        pleats,
        perInch: div(plain(pleats), section.waist),
        closes: closes(pleats, packed, section.waist),
      };
    }),
  );
}

/** The mean bite of a section after a change, for printing beside it. */
export function biteAfter(section: GaugedSection, change: Sensitivity["change"]) {
  return mul(div(section.cloth, plain(2 * section.pleats)), add(plain(1n), change));
}
