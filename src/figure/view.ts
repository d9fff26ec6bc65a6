/** One view of the standing skirt: outline, level hem, floor, supports, fullness, band, opening, lengths. */
import { toFloat } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import { type Hang, levelLines, slope } from "./hang.ts";
import { LETTERING } from "./language.ts";
import { pen, penOf, shownOf } from "./measure.ts";
import type { Point } from "./svg.ts";
import { drawAbove } from "./view-edge.ts";

export interface View {
  readonly title: string;
  readonly hang: Hang;
  /** Where a place of the waist (share from centre front by the left) is seen: -1 at the left of the page to 1 at the right. */
  readonly across: (share: number) => number;
  readonly sees: (share: number) => boolean;
  /** How far the hem stands out at the left and the right of the page, in inches. */
  readonly edges: readonly [number, number];
  readonly lengths: readonly { readonly words: readonly string[]; readonly at: number }[];
}

export interface Stand {
  readonly middle: number;
  /** The waist seam's height on the page, and units to an inch. */
  readonly top: number;
  readonly scale: number;
}

const PLEATS_DRAWN = 36;
const STEPS = 12;
/** The words under the two edges of a view: how far out they stand, how wide they may be. */
const OUT = 45;
const COLUMN = 82;
/** The words under its middle stand two lines lower, between those of the edges. */
const LOWER = 2 * LETTERING.small * LETTERING.line + 4;

/** The point `down` (0 waist, 1 hem) of the line that falls from a place `at` across the view, -1 to 1. */
function falls({ hang, edges }: View, { middle, top, scale }: Stand, at: number, down: number): Point {
  const wide = hang.waist + slope(at < 0 ? edges[0] : edges[1], down);
  return { x: middle + at * wide * scale, y: top + down * hang.height * scale };
}

const lineDown = (view: View, stand: Stand, at: number, from: number, to: number): Point[] =>
  Array.from({ length: STEPS + 1 }, (_, i) => falls(view, stand, at, from + ((to - from) * i) / STEPS));

export function drawView(drawing: Drawing, plan: Plan, view: View, stand: Stand): void {
  const hem = falls(view, stand, 1, 1).y;
  const floor = hem + penOf(plan, "skirt.offFloor") * stand.scale;
  drawSupports(drawing, plan, view, stand);
  drawFullness(drawing, plan, view, stand);
  for (const at of [-1, 1]) drawing.line("body", lineDown(view, stand, at, 0, 1));
  const [left, right] = [falls(view, stand, -1, 1), falls(view, stand, 1, 1)];
  drawing.line("finished", [left, right]);
  for (const height of levelLines(plan)) drawLevel(drawing, view, stand, height);
  drawing.line("ease", [
    { x: stand.middle - 84, y: floor },
    { x: stand.middle + 84, y: floor },
  ]);
  drawAbove(drawing, plan, {
    title: view.title,
    front: view.title === "front",
    across: view.across,
    sees: view.sees,
    middle: stand.middle,
    scale: stand.scale,
    from: falls(view, stand, -1, 0),
    to: falls(view, stand, 1, 0),
  });
  drawLengths(drawing, view, stand, floor);
  drawOpening(drawing, plan, view, stand);
}

/** An edge of the border, a flounce or a tuck, level above the hem. */
function drawLevel(drawing: Drawing, view: View, stand: Stand, height: number): void {
  const down = 1 - height / view.hang.height;
  drawing.line("ease", [falls(view, stand, -1, down), falls(view, stand, 1, down)], { soft: true });
}

/** What is worn beneath: an outline inside the skirt's, and the hoop's lowest steel where its height is known. */
function drawSupports(drawing: Drawing, plan: Plan, view: View, stand: Stand): void {
  const inner = (at: number, down: number): Point => {
    const { x, y } = falls(view, stand, at, down);
    return { x: x - at * (2 + 3 * down), y };
  };
  const hoop = plan.recipe.wearer.hoop?.height;
  const foot = hoop ? 1 - (pen(hoop) - penOf(plan, "skirt.offFloor")) / view.hang.height : 0.94;
  for (const at of [-1, 1])
    drawing.line(
      "support",
      Array.from({ length: STEPS + 1 }, (_, i) => inner(at, 0.04 + ((foot - 0.04) * i) / STEPS)),
      { soft: true },
    );
  drawing.line("support", [inner(-1, foot), inner(1, foot)], { soft: true });
}

/**
 * Folds run down from the gauged and pleated parts of the waist, and up from the hem; the middle stays clear for the
 * words. Of the laid pleats each edge is drawn, of the gauged ones only some.
 */
function drawFullness(drawing: Drawing, plan: Plan, view: View, stand: Stand): void {
  const waist = penOf(plan, "waist.seam");
  for (const share of pleatEdges(plan)) {
    if (view.sees(share))
      drawing.line("ease", lineDown(view, stand, view.across(share), 0, 0.3), { soft: true });
  }
  for (let i = 0; i < PLEATS_DRAWN; i += 1) {
    const share = (i + 0.5) / PLEATS_DRAWN;
    const gauged = plan.gauged.some(
      ({ from, waist: length }) => share * waist >= pen(from) && share * waist <= pen(from) + pen(length),
    );
    if (!view.sees(share) || !gauged) continue;
    const at = view.across(share);
    const long = i % 2 === 0;
    drawing.line("ease", lineDown(view, stand, at, 0, long ? 0.24 : 0.13), { soft: true });
    if (long) drawing.line("ease", lineDown(view, stand, at, 0.86, 1), { soft: true });
  }
}

/** Where the faces of laid pleats meet, as shares of the waist. A half astride a centre line has no edge there. */
function pleatEdges(plan: Plan): number[] {
  const waist = penOf(plan, "waist.seam");
  return plan.sections.flatMap((section) => {
    if (section.set === "flat" || section.set === "gauged") return [];
    const faces = section.half === "left" ? section.faces : section.faces.toReversed();
    let at = pen(section.from);
    return faces.map((face) => {
      at += pen(face);
      return at / waist;
    });
  });
}

/** The opening where this view sees it, with its length. */
function drawOpening(drawing: Drawing, plan: Plan, view: View, stand: Stand): void {
  const share = toFloat(plan.opening.share.value);
  if (!view.sees(share)) return;
  const at = view.across(share);
  const down = Math.min(0.9, penOf(plan, "skirt.placket") / view.hang.height);
  const edge = Math.abs(at) > 0.99;
  const shift = edge ? -2.5 * Math.sign(at) : 0;
  const points = lineDown(view, stand, at, 0, down).map(({ x, y }) => ({ x: x + shift, y }));
  drawing.line("finished", points);
  const foot = points.at(-1) as Point;
  drawing.line("finished", [
    { x: foot.x - 4, y: foot.y },
    { x: foot.x + 4, y: foot.y },
  ]);
  drawing.label(`opening ${shownOf(plan, "skirt.placket")}`, foot, {
    stand:
      Math.abs(at) > 0.3 ? { x: foot.x + 10 * Math.sign(at), y: foot.y - 18 } : { x: foot.x, y: foot.y + 4 },
    sides: at > 0.3 ? ["right"] : at < -0.3 ? ["left"] : ["below"],
    leader: edge ? "moved" : "never",
    width: 54,
    size: LETTERING.small,
  });
}

/** Three places: what they are called, how long the skirt is there. The hem is level, and a note says how far off the floor. */
function drawLengths(drawing: Drawing, view: View, stand: Stand, floor: number): void {
  for (const { words, at } of view.lengths) {
    if (at === 0) drawing.line("station", lineDown(view, stand, 0, 0, 1));
    const hem = falls(view, stand, at, 1);
    const x = hem.x - at * 0.8;
    drawing.line("dimension", [
      { x, y: hem.y },
      { x, y: floor },
    ]);
    drawing.label(
      words.join(" "),
      { x, y: floor },
      {
        stand: { x: stand.middle + at * OUT, y: floor + 2 + (at === 0 ? LOWER : 0) },
        sides: ["below"],
        width: COLUMN,
        size: LETTERING.small,
        leader: at === 0 ? "always" : "never",
      },
    );
  }
}
