/** One half of the map: the waist seam's ruler above, the cut top's below, every place of the one joined to its place on the other. */
import { toFloat } from "../quantity/quantity.ts";
import type { MapPlace, Plan } from "../solve/plan.ts";
import { PLEAT_NAMES } from "../solve/pleat.ts";
import { spread } from "./column.ts";
import type { Drawing } from "./drawing.ts";
import { LEFT, WIDE } from "./flat-half.ts";
import { LETTERING, type LineKind, PICTURE } from "./language.ts";
import { widthOf } from "./lettering.ts";
import { pen, penOf } from "./measure.ts";
import { letterOf, nameRow } from "./row.ts";
import { drawRuler, STRIP } from "./ruler.ts";

/** From one ruler to the other. */
const BETWEEN = 74;
/** Room for the letters above the upper ruler and below the lower one. */
const ROW = 16;
const LIFT = 13;

export interface LetteredPlace {
  readonly letter: string;
  readonly place: MapPlace;
}

/** Every place with the letter it has in figure and table. */
export const lettered = (plan: Plan): readonly LetteredPlace[] =>
  plan.map.map((place, i) => ({ letter: letterOf(i), place }));

/** What joins a place's two ends: the opening before the seams, these before stations and ends of parts. */
function lineOf({ kinds }: MapPlace): LineKind {
  if (kinds.includes("opening")) return "finished";
  if (kinds.includes("seam") || kinds.includes("pocket")) return "seam";
  return kinds.includes("station") ? "station" : "body";
}

export function drawMapHalf(drawing: Drawing, plan: Plan, side: "left" | "right"): void {
  const half = { waist: penOf(plan, "waist.seam") / 2, top: penOf(plan, "skirt.round") / 2 };
  const fromFront = (at: number, whole: number): number | undefined => {
    const way = side === "left" || at === 0 ? at : 2 * whole - at;
    return way <= whole * (1 + 1e-9) ? way : undefined;
  };
  const across = (share: number): number =>
    side === "left" ? LEFT + share * WIDE : LEFT + WIDE - share * WIDE;
  const places = lettered(plan)
    .flatMap(({ letter, place }) => {
      const waist = fromFront(pen(place.waist), half.waist);
      const top = fromFront(pen(place.alongTop), half.top);
      if (waist === undefined || top === undefined) return [];
      return [{ letter, place, upper: across(waist / half.waist), lower: across(top / half.top) }];
    })
    .sort((a, b) => a.upper - b.upper || a.lower - b.lower);

  const letters = drawing.bottom + 6;
  const top = letters + ROW + LIFT;
  const joins = { from: top + STRIP, to: top + STRIP + BETWEEN };
  const unit = plan.recipe.show === "cm" ? 2.54 : 1;
  const ruler = (length: number) => ({
    length: length * unit,
    across: (at: number) => across(at / unit / length),
  });
  lettersAbove(drawing, places, letters, top);
  drawRuler(drawing, { ...ruler(half.waist), top, edge: "foot", kind: "finished" });
  drawRuler(drawing, { ...ruler(half.top), top: joins.to, edge: "top", kind: "cut" });
  for (const { place, upper, lower } of places) {
    const kind = lineOf(place);
    const line = [
      { x: upper, y: joins.from },
      { x: lower, y: joins.to },
    ];
    // The opening has two finished edges.
    const beside = kind === "finished" ? [-1.6, 1.6] : [0];
    for (const off of beside)
      drawing.line(
        kind,
        line.map(({ x, y }) => ({ x: x + off, y })),
      );
  }
  nameParts(drawing, plan, { side, half, across, middle: (joins.from + joins.to) / 2 });
  drawing.settle();
  const foot = joins.to + STRIP;
  nameRow(
    drawing,
    places.map(({ letter, lower }) => ({ text: letter, at: { x: lower, y: foot } })),
    foot + LIFT,
    40,
  );
}

interface Across {
  readonly letter: string;
  readonly upper: number;
}

/** The letters in a row above the upper ruler, each led down to its place. */
function lettersAbove(drawing: Drawing, places: readonly Across[], top: number, ruler: number): void {
  const size = LETTERING.small;
  const entries = places.map(({ letter, upper }) => ({ size: widthOf(letter, size), middle: upper }));
  const middles = spread(entries, 4, PICTURE.margin, PICTURE.width - PICTURE.margin);
  for (const [i, { letter, upper }] of places.entries()) {
    const width = (entries[i] as { size: number }).size;
    const x = middles[i] as number;
    const height = size * LETTERING.line;
    drawing.set([letter], size, { x: x - width / 2, y: top, width, height }, { anchor: "middle" });
    drawing.line("leader", [
      { x, y: top + height + 1 },
      { x: upper, y: ruler },
    ]);
  }
}

interface Between {
  readonly side: "left" | "right";
  readonly half: { readonly waist: number; readonly top: number };
  readonly across: (share: number) => number;
  readonly middle: number;
}

/** How each part is set, written between the rulers where it has room; a garment gauged all round says it once, in the note. */
function nameParts(drawing: Drawing, plan: Plan, { side, half, across, middle }: Between): void {
  if (plan.sections.every(({ set }) => set === "gauged")) return;
  for (const { set, half: on, from, waist, clothFrom, cloth } of plan.sections) {
    if (on !== side) continue;
    const centre = (start: number, length: number, whole: number): number => {
      const at = start + length / 2;
      return (side === "left" ? at : 2 * whole - at) / whole;
    };
    const upper = centre(pen(from), pen(waist), half.waist);
    const lower = centre(pen(clothFrom), pen(cloth), half.top);
    const wide =
      (WIDE * (toFloat(waist.value) / (half.waist * 25.4) + toFloat(cloth.value) / (half.top * 25.4))) / 2;
    const text = set === "flat" || set === "gauged" ? set : PLEAT_NAMES[set];
    if (widthOf(text, LETTERING.small) + 6 > wide) continue;
    drawing.label(
      text,
      { x: (across(upper) + across(lower)) / 2, y: middle },
      { sides: ["on"], size: LETTERING.small, leader: "never" },
    );
  }
}
