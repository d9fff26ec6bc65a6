/**
 * How pleats are folded, one after another from the end of a section that is nearer centre front: where the folds lie
 * on the flat cloth, and where the cloth lies along the waist once it is folded. Floats, in inches: for the pen.
 */
import type { Plan, PleatedSection, Section } from "../solve/plan.ts";
import { pen, penOf } from "./measure.ts";

/** `over`: the edge that shows, folded outwards. `under`: a hidden fold. `line`: where an edge or the next pleat comes to lie. */
export type Crease = "line" | "under" | "over";

export interface FoldMark {
  readonly kind: Crease;
  /** On the flat cloth, from the section's front end. */
  readonly cloth: number;
  /** Along the waist, from the section's front end. */
  readonly waist: number;
  /** How far behind the face it lies, 0 the face, 1 the backmost. */
  readonly behind: number;
}

export interface LaidPleat {
  readonly face: number;
  /** Depth of each fold behind the face. */
  readonly depth: number;
  readonly half: boolean;
  readonly marks: readonly FoldMark[];
}

/** Where a section's half pleat stands, if it has one: on centre front or on centre back. */
export function halfAt(plan: Plan, section: PleatedSection): "front" | "back" | undefined {
  if (section.count.value.d === 1n) return undefined;
  return fromFront(plan, section).waist < 1e-9 ? "front" : "back";
}

/** How far a section begins from centre front, by its own half's way, along the waist and along the cloth. */
export function fromFront(plan: Plan, { half, from, waist, clothFrom, cloth }: Section) {
  if (half === "left") return { waist: pen(from), cloth: pen(clothFrom) };
  return {
    waist: penOf(plan, "waist.seam") - pen(from) - pen(waist),
    cloth: penOf(plan, "skirt.round") - pen(clothFrom) - pen(cloth),
  };
}

/** Every pleat of a section with its folds, from its end nearer centre front. */
export function laidPleats(plan: Plan, section: PleatedSection): readonly LaidPleat[] {
  const halfEnd = halfAt(plan, section);
  const halfIs = halfEnd === "front" ? 0 : halfEnd === "back" ? section.faces.length - 1 : -1;
  let cloth = 0;
  let waist = 0;
  return section.faces.map((q, i) => {
    const face = pen(q);
    const listed = pen(section.depths[i] ?? section.depth);
    // A half box is one whole side of it: half a face, and on that side the folds at their full depth.
    const depth = i === halfIs && section.set !== "knife" ? 2 * listed : listed;
    const path = pathOf(section, face, depth, i === halfIs ? halfEnd : undefined);
    const marks = path.map(([kind, along, at, behind]) => ({
      kind,
      cloth: cloth + along,
      waist: waist + at,
      behind,
    }));
    cloth = marks.at(-1)?.cloth ?? cloth;
    waist += face;
    return { face, depth, half: i === halfIs, marks };
  });
}

/** The same pleat on the other half of the garment: mirrored about a place of the cloth that lies on a centre line. */
export const mirrored = (pleat: LaidPleat, centre: Pick<FoldMark, "cloth" | "waist">): LaidPleat => ({
  ...pleat,
  marks: pleat.marks
    .map((mark) => ({ ...mark, cloth: 2 * centre.cloth - mark.cloth, waist: 2 * centre.waist - mark.waist }))
    .reverse(),
});

type Step = readonly [Crease, number, number, number];

/** One pleat: kind of fold, place on its cloth, place along its waist, how far behind. */
function pathOf(
  section: PleatedSection,
  face: number,
  depth: number,
  half?: "front" | "back",
): readonly Step[] {
  // Half a pleat astride a centre line turns under the edge away from it, whichever way the others point.
  const away = half === "front" ? "back" : "front";
  if (section.set === "knife") return knife(face, depth, half ? away : section.towards);
  const folds = section.set === "double-box" ? 2 : 1;
  const before = half === "front" ? 0 : 2 * folds * depth;
  const steps: Step[] = [["line", 0, 0, half === "front" ? 0 : 1]];
  if (half !== "front") {
    for (let i = 1; i <= 2 * folds; i += 1) {
      const out = i % 2 === 0;
      steps.push([out ? "over" : "under", i * depth, out ? 0 : depth, 1 - i / (2 * folds)]);
    }
  }
  if (half === "back") return [...steps, ["line", before + face, face, 0]];
  for (let i = 0; i <= 2 * folds; i += 1) {
    const out = i % 2 === 0;
    const last = i === 2 * folds;
    steps.push([
      last ? "line" : out ? "over" : "under",
      before + face + i * depth,
      out ? face : face - depth,
      i / (2 * folds),
    ]);
  }
  return steps;
}

/** A knife pleat towards the back shows its fold at the back end of its face; towards the front, at the front end. */
function knife(face: number, depth: number, towards: "front" | "back"): readonly Step[] {
  // Between its hidden fold and the next edge the cloth runs straight: so far behind it lies at the line.
  const line = face / (face + depth);
  if (towards === "back")
    return [
      ["line", 0, 0, line],
      ["over", face, face, 0],
      ["under", face + depth, face - depth, 1],
      ["line", face + 2 * depth, face, line],
    ];
  return [
    ["line", 0, 0, line],
    ["under", depth, depth, 1],
    ["over", 2 * depth, 0, 0],
    ["line", 2 * depth + face, face, line],
  ];
}
