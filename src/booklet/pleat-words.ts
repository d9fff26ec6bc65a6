/** Pleats in words: the table of folds, what their direction makes at the centre lines, where seams and opening fall. */
import { printOnTape, printPart, vulgar } from "../quantity/print.ts";
import { add, equal, isWhole, isZero, less, min, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Plan, PleatedSection, Section } from "../solve/plan.ts";
import { PLEAT_NAMES } from "../solve/pleat.ts";
import { type Fold, type PlaceInPleats, placeInPleats, pleatLines } from "../solve/pleat-lines.ts";

const isPleated = (section: Section): section is PleatedSection =>
  section.set !== "flat" && section.set !== "gauged";

const leftHalf = (plan: Plan): Section[] => plan.sections.filter(({ half }) => half === "left");

/** One row a pleat: its face, and each fold with the line it is laid to. */
export function pleatRows(section: PleatedSection, length: (q: Quantity) => string) {
  const folded = ({ at, to }: Fold): string =>
    `${length(at)}, laid ${less(at, to) ? "back" : "forward"} to ${length(to)}`;
  return pleatLines(section).map(({ face, depth, half, folds }, i) => ({
    n: half ? `${i + 1} (half, astride the centre)` : String(i + 1),
    face: length(face),
    depth: length(depth),
    folds: folds.map(folded).join("; "),
  }));
}

/** What stands on a centre line where pleats reach it. */
function centre(
  section: Section | undefined,
  at: "front" | "back",
  name: string,
  plan: Plan,
): string | undefined {
  if (!section || !isPleated(section)) return undefined;
  if (!isWhole(section.count) && (at === "front") === isZero(section.from))
    return `One ${section.set === "double-box" ? "double box" : "box"} pleat, ${printOnTape(astride(section, at), { show: plan.recipe.show, tape: plan.recipe.tape })} wide, stands astride ${name}`;
  if (section.set !== "knife") return `Two pleats meet at ${name}, fold to fold`;
  return section.towards === at
    ? `The folds of both halves meet at ${name}: an inverted pleat`
    : `The faces of both halves join at ${name}: a box pleat twice as wide as the others`;
}

/** The whole face of a pleat astride a centre line: twice the half that each half of the garment has. */
const astride = ({ faces }: PleatedSection, at: "front" | "back"): Quantity => {
  const half = (at === "front" ? faces[0] : faces.at(-1)) as Quantity;
  return add(half, half);
};

/** For `garment`: what direction makes at centre front and centre back, and how the opening lies among the pleats. */
export function pleatWords(plan: Plan) {
  const half = leftHalf(plan);
  return {
    pleatsAtFront: centre(half[0], "front", "centre front", plan),
    pleatsAtBack: centre(half.at(-1), "back", "centre back", plan),
    openingAmong: openingPlace(plan)?.words,
    parts: halfInWords(half, plan),
  };
}

/**
 * "2 1/2 in left flat, then 11 1/4 in gauged in 72 pleats": one half, gauged sections side by side taken together. Where
 * the halves are gauged in unlike counts, because the opening parts a section, no count is said.
 */
function halfInWords(sections: readonly Section[], plan: Plan): string {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const gaugedOf = (side: "left" | "right"): number =>
    plan.gauged.filter(({ half }) => half === side).reduce((sum, { pleats }) => sum + pleats, 0);
  const alike = gaugedOf("left") === gaugedOf("right");
  const parts: { set: Section["set"]; waist: Quantity; pleats: Quantity }[] = [];
  for (const section of sections) {
    const pleats =
      section.set === "flat" ? plain(0n) : section.set === "gauged" ? plain(section.pleats) : section.count;
    const before = parts.at(-1);
    if (before && before.set === "gauged" && section.set === "gauged")
      parts[parts.length - 1] = {
        set: "gauged",
        waist: add(before.waist, section.waist),
        pleats: add(before.pleats, pleats),
      };
    else parts.push({ set: section.set, waist: section.waist, pleats });
  }
  return parts
    .map(({ set, waist, pleats }) => {
      const length = printPart(waist, showing);
      if (set === "flat") return `${length} left flat`;
      const count = vulgar(pleats.value);
      if (set === "gauged") return alike ? `${length} gauged in ${count} pleats` : `${length} gauged`;
      return `${length} laid in ${count} ${count === "1" ? PLEAT_NAMES[set].replace(/s$/, "") : PLEAT_NAMES[set]}`;
    })
    .join(", then ");
}

const WHERE: Record<PlaceInPleats["where"], string> = {
  covered: "covered by the fold of",
  edge: "at the very fold of",
  face: "on the face of",
  hidden: "hidden in the depth of",
};

/** Where a place round the flat top falls, if it falls among pleats. */
function among(plan: Plan, alongTop: Quantity): { words: string; where: PlaceInPleats["where"] } | undefined {
  const round = (plan.values.get("skirt.round") as { quantity: Quantity }).quantity;
  const fromFront = min(alongTop, sub(round, alongTop));
  for (const section of leftHalf(plan).filter(isPleated)) {
    const place = placeInPleats(pleatLines(section), sub(fromFront, section.clothFrom));
    if (place)
      return {
        words: `${WHERE[place.where]} pleat ${place.pleat} of the ${section.name.replace(/^left /, "")}`,
        where: place.where,
      };
  }
  return undefined;
}

/** Does the opening show on a face? */
export const openingOnFace = (plan: Plan): boolean => openingPlace(plan)?.where === "face";

/** An opening that was moved under a fold is covered by it, though an edge that is made shifts the folds by a hair. */
const openingPlace = (plan: Plan): ReturnType<typeof among> =>
  plan.opening.under
    ? { words: `covered by ${plan.opening.under}`, where: "covered" }
    : among(plan, plan.opening.alongTop);

/** The breadth seams that fall among pleats, the opening's own left out. */
export function seamsInPleats(plan: Plan) {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const round = (plan.values.get("skirt.round") as { quantity: Quantity }).quantity;
  return plan.seams
    .filter(({ kind }) => kind === "seam")
    .flatMap(({ alongTop, station }) => {
      const place = among(plan, alongTop);
      if (!place) return [];
      const centred = isZero(station) || equal(station, plain("1/2"));
      const side = isZero(station)
        ? "centre front"
        : equal(station, plain("1/2"))
          ? "centre back"
          : `${printOnTape(min(alongTop, sub(round, alongTop)), showing)} from centre front, ${less(station, plain("1/2")) ? "left" : "right"}`;
      const onFace = place.where === "face";
      return [
        {
          at: side,
          falls: onFace && centred ? "down the middle of the pleat there, where it shows" : place.words,
          shows: onFace && !centred,
          centred: onFace && centred,
        },
      ];
    });
}

/** Distances along the flat top from centre front of a section's two ends, by the nearer way. */
export function topEnds(section: Section, plan: Plan): { fromTop: string; toTop: string } {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const round = (plan.values.get("skirt.round") as { quantity: Quantity }).quantity;
  const print = (at: Quantity): string => printPart(min(at, sub(round, at)), showing);
  const end = { value: section.clothFrom.value.add(section.cloth.value), dim: section.cloth.dim };
  return { fromTop: print(section.clothFrom), toTop: print(end) };
}
