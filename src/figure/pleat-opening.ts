/** The opening in a pleated part: which fold covers it. */
import { add, type Quantity, sub, toFloat } from "../quantity/quantity.ts";
import type { Plan, PleatedSection } from "../solve/plan.ts";
import { placeInPleats, pleatLines } from "../solve/pleat-lines.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { namedValue, pen, penOf } from "./measure.ts";
import { drawnMarks, drawRow, placeOf, type Row } from "./pleat-end-on.ts";
import { fromFront, type LaidPleat, laidPleats } from "./pleat-fold.ts";

type Found =
  | { readonly at: "centre"; readonly end: "front" | "back"; readonly section: PleatedSection }
  | {
      readonly at: "inside";
      readonly section: PleatedSection;
      readonly all: readonly LaidPleat[];
      readonly pleat: number;
      /** On the section's cloth from its front end. */
      readonly cloth: number;
      readonly hidden: boolean;
    };

const isPleated = (section: Plan["sections"][number]): section is PleatedSection =>
  section.set !== "flat" && section.set !== "gauged";

/** Where the opening meets pleats: at a centre line where they end, or inside a section. Undefined where it meets none. */
function find(plan: Plan): Found | undefined {
  const share = toFloat(plan.opening.share.value);
  const half = share <= 0.5 ? "left" : "right";
  const round = penOf(plan, "skirt.round");
  const along = pen(plan.opening.alongTop);
  const place = half === "left" ? along : round - along;
  const whole = namedValue(plan, "skirt.round").quantity;
  const near = half === "left" ? plan.opening.alongTop : sub(whole, plan.opening.alongTop);
  for (const section of plan.sections.filter(isPleated)) {
    if (section.half !== half) continue;
    const start = fromFront(plan, section).cloth;
    const cloth = place - start;
    const length = pen(section.cloth);
    if (share === 0 && start < 1e-9) return { at: "centre", end: "front", section };
    if (share === 0.5 && Math.abs(cloth - length) < 1e-9) return { at: "centre", end: "back", section };
    if (cloth < -1e-9 || cloth > length + 1e-9) continue;
    // The lines of a part are those of the wearer's left half: the right is its mirror.
    const from =
      half === "left"
        ? section.from
        : sub(namedValue(plan, "waist.seam").quantity, add(section.from, section.waist));
    const lies = placeInPleats(pleatLines({ ...section, from }), sub(near, startOf(plan, section)));
    const atEnd = cloth <= 1e-9 || cloth >= length - 1e-9;
    if (!lies || (atEnd && lies.where !== "covered")) continue;
    const hidden = lies.where !== "face" || plan.opening.under !== undefined;
    return { at: "inside", section, all: laidPleats(plan, section), pleat: lies.pleat - 1, cloth, hidden };
  }
  return undefined;
}

/** Where a section begins along the cut top, from centre front by its own half's way. */
function startOf(plan: Plan, { half, clothFrom, cloth }: PleatedSection): Quantity {
  if (half === "left") return clothFrom;
  return sub(namedValue(plan, "skirt.round").quantity, add(clothFrom, cloth));
}

/** In words, which fold covers the opening; undefined where it stands in no pleats. */
export function openingPleat(plan: Plan): string | undefined {
  const found = find(plan);
  if (!found) return undefined;
  if (found.at === "inside") {
    const number = found.pleat + 1;
    const name = found.all[found.pleat]?.half
      ? "the half pleat"
      : `pleat ${number} of the ${found.section.name}, counted from the front`;
    return found.hidden
      ? `The opening comes in the hidden cloth behind ${name}: its fold covers the placket.`
      : `The opening comes in the face of ${name}, where it would show: move that pleat until a fold covers it.`;
  }
  const { section, end } = found;
  const inverted = section.set === "knife" && section.towards === end;
  if (inverted)
    return `At centre ${end} the two halves' edges meet over the opening: they cover the placket.`;
  return section.set === "knife" || section.count.value.d !== 1n
    ? `At centre ${end} the opening would cut a pleat's face in two: let the upper side run on as a whole face, laid over the under side.`
    : `At centre ${end} two pleats meet over the opening: they cover the placket.`;
}

/** Draws the pleats at the opening. `halves` draws both halves at a centre line. */
export function drawOpeningPleat(
  drawing: Drawing,
  plan: Plan,
  halves: (section: PleatedSection, end: "front" | "back") => void,
): void {
  const found = find(plan);
  if (!found) return;
  drawing.heading("At the opening, seen from above. Outside at the foot.");
  if (found.at === "centre") halves(found.section, found.end);
  else drawInside(drawing, found);
  drawing.note(openingPleat(plan) ?? "");
}

const WIDE = 300;
const FACE = 70;

function drawInside(
  drawing: Drawing,
  { section, all, pleat, cloth }: Extract<Found, { at: "inside" }>,
): void {
  const from = Math.max(0, pleat - 1);
  const pleats = all.slice(from, pleat + 2);
  const places = pleats.flatMap(({ marks }) => marks.map(({ waist }) => waist));
  const [low, high] = [Math.min(...places), Math.max(...places)];
  const scale = Math.min(WIDE / (high - low), FACE / Math.max(...pleats.map(({ face }) => face)));
  const way = section.half === "left" ? 1 : -1;
  const middle = PICTURE.width / 2;
  const layers = Math.min(56, Math.max(20, 7 * section.layers));
  const begin = (pleats[0]?.marks[0]?.waist ?? 0) - (low + high) / 2;
  const row: Row = {
    pleats,
    scale,
    start: middle + way * begin * scale,
    way,
    face: drawing.bottom + 30 + layers,
    behind: layers,
    first: from + 1,
    box: section.set !== "knife",
  };
  drawRow(drawing, row);
  const marks = pleats.flatMap((own) => drawnMarks(row, own));
  const after = marks.findIndex(
    (mark, i) => i > 0 && cloth <= mark.cloth + 1e-9 && mark.cloth > (marks[i - 1]?.cloth ?? 0),
  );
  const [a, b] = [marks[after - 1], marks[after]];
  if (a && b) {
    const part = (cloth - a.cloth) / (b.cloth - a.cloth);
    const at = placeOf(row, {
      waist: a.waist + (b.waist - a.waist) * part,
      behind: a.behind + (b.behind - a.behind) * part,
    });
    drawing.dot(at, 3.6);
    drawing.label("opening", at, {
      stand: { x: at.x, y: row.face - layers - 8 },
      sides: ["above"],
      gap: 0,
      leader: "always",
    });
  }
  const towards = (end: "front" | "back"): number =>
    middle + ((way === 1) === (end === "back") ? 1 : -1) * 130;
  for (const end of ["front", "back"] as const)
    drawing.label(
      `to the ${end}`,
      { x: towards(end), y: row.face + 20 },
      { sides: ["below"], gap: 0, leader: "never", size: LETTERING.small },
    );
  drawing.settle();
}
