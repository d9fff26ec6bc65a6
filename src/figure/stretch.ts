/** The stretch of a section that the gauging figure shows, and where it lies on the page. */
import type { Quantity } from "../quantity/quantity.ts";
import type { GaugedSection } from "../solve/plan.ts";
import { pen } from "./measure.ts";

/** Its ends on the page; the right-hand end is where the sewing begins. */
export const LEFT = 80;
export const RIGHT = 300;
/** The cloth goes on past both ends. */
export const PAST = 14;

export interface Stretch {
  readonly section: GaugedSection;
  readonly pleats: number;
  /** Units to an inch. */
  readonly scale: number;
  /** Height of the fold on the page. */
  readonly fold: number;
}

/** Lays a stretch down with its fold at a height: five pleats where they are deep, six where they are not. */
export function stretchOf(section: GaugedSection, fold: number): Stretch {
  const pleats = Math.min(section.pleats, pen(section.cloth) / section.pleats > 1 ? 5 : 6);
  const length = pen(section.marks[2 * pleats] ?? section.cloth);
  return { section, pleats, scale: (RIGHT - LEFT) / length, fold };
}

/** Marks run from the section's beginning, at the right, to the left. */
export const across = ({ scale }: Stretch, mark: Quantity): number => RIGHT - pen(mark) * scale;

/** Names beside the left edge stand below one another: the middle of the nth. */
export const besideLeft = ({ fold }: Stretch, nth: number) => ({
  x: LEFT - PAST - 6,
  y: fold + 27 + 33 * nth,
});
