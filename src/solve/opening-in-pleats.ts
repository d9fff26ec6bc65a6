/** An opening that shows on the face of a pleat is warned of: it lies best under a fold. */
import { printOnTape } from "../quantity/print.ts";
import { add, less, min, type Quantity, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Opening } from "./opening.ts";
import type { Section } from "./plan.ts";
import { meetingDepth, stacks } from "./pleat.ts";
import { type PleatLines, placeInPleats, pleatLines } from "./pleat-lines.ts";

/** Warns, with the waist places of the nearest folds, so that the opening can be put under one. */
export function warnOfOpening(work: Work, sections: readonly Section[], opening: Opening): void {
  warnOfLayers(work, sections, opening);
  if (opening.under) return;
  const { sheet, say } = work;
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
      hint: `that face runs from ${print(near)} to ${print(far)} from centre front on the waist: ${opening.kind === "seam" ? "write under-fold: true inside opening, and a slit under the nearest fold takes the seam's place" : "put the opening at one of its edges"}, or move the pleat as the chapter on pleats says`,
    });
  }
}

/**
 * Warns where hidden folds would reach across the opening and be sewn in with its other side: pleats deeper than their
 * face, and, on a part band, pleats that point to the back, since the bodice's side has to lap over the band's.
 */
function warnOfLayers({ recipe, sheet, say }: Work, sections: readonly Section[], opening: Opening): void {
  const within = sections.find(
    ({ from, waist }) => less(from, opening.waist) && less(opening.waist, add(from, waist)),
  );
  if (!within || within.set === "flat" || within.set === "gauged") return;
  const stacked = stacks(within.set, within.face, within.depth);
  const wrongWay = recipe.attach.to === "part-band" && within.set === "knife" && within.towards === "back";
  if (!stacked && !wrongWay) return;
  const what = `the opening stands among the ${within.name.replace(/^(left|right) /, "")}`;
  const print = (q: Quantity): string => printOnTape(q, sheet.showing);
  const reach = print(sub(within.depth, meetingDepth(within.set, within.face)));
  const seam = sheet.get("waist.seam");
  const [first, last] = [within.from, add(within.from, within.waist)].map((q) => min(q, sub(seam, q)));
  const ends = [first, last] as [Quantity, Quantity];
  const [near, far] = less(ends[0], ends[1]) ? ends : [ends[1], ends[0]];
  const run = `they run from ${print(near)} to ${print(far)} from centre front on the waist`;
  say({
    code: "opening-under-layers",
    level: "warning",
    path: "attach.opening",
    text: stacked
      ? `${what}, which lie over each other: a depth of ${print(within.depth)} behind a face of ${print(within.face)}; hidden folds reach ${reach} across it, and whipped through they would sew it shut`
      : `${what}, and their folds, ${print(within.depth)} deep, point to the back: on a part band the bodice's side has to lap over the band's`,
    hint: stacked
      ? `take pleats no deeper than ${print(meetingDepth(within.set, within.face))} there, gauge that part, or move the opening out of the pleats: ${run}`
      : `write towards: front for those pleats, gauge that part, or move the opening out of the pleats: ${run}`,
  });
}
