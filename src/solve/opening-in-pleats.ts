/** An opening that shows on the face of a pleat is warned of: it lies best under a fold. */
import { printOnTape } from "../quantity/print.ts";
import { add, min, type Quantity, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Opening } from "./opening.ts";
import type { Section } from "./plan.ts";
import { type PleatLines, placeInPleats, pleatLines } from "./pleat-lines.ts";

/** Warns, with the waist places of the nearest folds, so that the opening can be put under one. */
export function warnOfOpening({ sheet, say }: Work, sections: readonly Section[], opening: Opening): void {
  const round = sheet.get("skirt.round");
  const fromFront = min(opening.alongTop, sub(round, opening.alongTop));
  for (const section of sections) {
    if (section.half !== "left" || section.set === "flat" || section.set === "gauged") continue;
    const lines = pleatLines(section);
    const place = placeInPleats(lines, sub(fromFront, section.clothFrom));
    if (place?.where !== "face") continue;
    const before = lines.slice(0, place.pleat).map(({ face }) => face);
    const far = before.reduce(add, section.from);
    const near = sub(far, (lines[place.pleat - 1] as PleatLines).face);
    const print = (q: Quantity): string => printOnTape(q, sheet.showing);
    say({
      code: "opening-on-face",
      level: "warning",
      path: "attach.opening",
      text: `the opening falls on the face of pleat ${place.pleat} of each half's ${section.name.replace(/^left /, "")}, where it shows`,
      hint: `that face runs from ${print(near)} to ${print(far)} from centre front on the waist: put the opening at one of its edges, or move the pleat as the chapter on pleats says`,
    });
  }
}
