/** An opening among laid pleats goes under the nearest fold, where it does not show (practice: a pleat laps it). */
import { printPart } from "../quantity/print.ts";
import { abs, add, less, min, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Opening } from "./opening.ts";
import { isPleatSet, layPleats, PLEAT_NAMES } from "./pleat.ts";
import { type LaidOut, placeInPleats, pleatLines } from "./pleat-lines.ts";
import { asPlanned, type SolvedZone, waistOfTop } from "./zones.ts";

const PATH = "attach.opening";

/** A laid zone of the wearer's left half on the waist as planned, by which slit and seam are sewn. */
interface Laid extends LaidOut {
  readonly clothFrom: Quantity;
  readonly name: string;
}

function laidZones({ sheet }: Work, zones: readonly SolvedZone[]): readonly Laid[] {
  const zero = sheet.evaluate("waist.planned - waist.planned");
  let [from, clothFrom] = [zero, zero];
  return zones.flatMap((zone, i) => {
    const start = { from, clothFrom };
    from = add(from, zone.planned);
    clothFrom = add(clothFrom, zone.cloth);
    const { set, pleats, planned, cloth } = zone;
    if (!isPleatSet(set) || !pleats) return [];
    const { count, towards } = pleats;
    const marks = layPleats(set, planned, cloth, count, sheet.showing.tape, i === 0 ? "front" : "back");
    return [{ ...start, ...marks, set, count, towards, cloth, name: PLEAT_NAMES[set] }];
  });
}

/**
 * The opening where it comes to be. A slit that would show on a face goes to the nearest line that a fold is laid to, of two
 * equally near the one nearer centre front, and from a centre line to the wearer's left: the fold lies over it. A seam stays
 * unless `under-fold` asks; then the placket leaves it for a slit. `under-fold: false` leaves all as it is asked for.
 */
export function underFold(work: Work, zones: readonly SolvedZone[], opening: Opening): Opening {
  const { recipe, sheet, say } = work;
  const asked = recipe.attach.opening.underFold;
  const round = sheet.get("skirt.round");
  const half = sheet.evaluate("skirt.round / 2");
  const onRight = less(half, opening.alongTop);
  const fromFront = min(opening.alongTop, sub(round, opening.alongTop));
  const found = laidZones(work, zones).find((laid) => {
    const place = placeInPleats(pleatLines(laid), sub(fromFront, laid.clothFrom));
    return place?.where === "face";
  });
  if (!found) {
    if (asked)
      say({
        code: "under-fold-none",
        level: "note",
        path: `${PATH}.under-fold`,
        text: `the opening, at ${opening.station}, does not fall on the face of a pleat: it stays where it is`,
      });
    return opening;
  }
  if (asked === false || (opening.kind === "seam" && !asked)) return opening;
  const lines = pleatLines(found).flatMap(({ folds }, i) => folds.map(({ to }) => ({ to, pleat: i + 1 })));
  const inside = sub(fromFront, found.clothFrom);
  const gap = (at: Quantity): Quantity => abs(sub(at, inside));
  const nearest = lines.reduce((a, b) => (less(gap(b.to), gap(a.to)) ? b : a));
  const near = add(found.clothFrom, nearest.to);
  const alongTop = onRight && near.value.n !== 0n ? sub(round, near) : near;
  const planned = waistOfTop(asPlanned(zones), alongTop);
  const under = `the fold of pleat ${nearest.pleat} of the ${found.name}`;
  const station = `${placeWords(work, planned, onRight)}, under a fold`;
  const before =
    opening.kind === "seam"
      ? `a seam stands at ${opening.station}, and there it`
      : `at ${opening.station} it`;
  say({
    code: "opening-under-fold",
    level: "note",
    path: PATH,
    text: `the opening falls among the ${found.name}: ${before} would show on a face. It goes ${printPart(gap(nearest.to), sheet.showing)} along the cut top to ${under}, ${station.replace(", under a fold", "")}; that is its place for slit, sections, band, piping and hooks alike`,
    hint:
      opening.kind === "seam"
        ? "take under-fold out, and the placket goes to the seam again; the pleats have to be moved over it then"
        : "write under-fold: false inside opening, if it is to stay where it was asked for",
  });
  return {
    waist: recipe.attach.made ? waistOfTop(zones, alongTop) : planned,
    planned,
    alongTop,
    kind: "slit",
    station,
    under,
  };
}

/** "5 1/4 in to the left of centre front", or of centre back where that is nearer. Goes by the waist as planned. */
function placeWords({ sheet }: Work, planned: Quantity, onRight: boolean): string {
  const waist = sheet.get("waist.planned");
  const front = min(planned, sub(waist, planned));
  const back = abs(sub(planned, sheet.evaluate("waist.planned / 2")));
  const fromBack = less(back, front);
  const near = fromBack ? back : front;
  const name = `centre ${fromBack ? "back" : "front"}`;
  if (near.value.compare(plain(0n).value) === 0) return name;
  return `${printPart(near, sheet.showing)} to the ${onRight ? "right" : "left"} of ${name}`;
}
