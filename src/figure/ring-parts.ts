/** The waist seam as a ring seen from above: places on it, and how its parts are drawn. */
import { toFloat } from "../quantity/quantity.ts";
import type { Plan, Section } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import { pen, penOf } from "./measure.ts";
import type { Point } from "./svg.ts";

export interface Ring {
  readonly middle: Point;
  /** The waist seam's radius on the page. */
  readonly radius: number;
  /** Length of the waist seam in inches. */
  readonly seam: number;
}

/** Depth of the fullness, inside the waist seam, on the page. */
export const DEEP = 16;
const STEP = 2;

/**
 * A place at a distance from centre front by the wearer's left, `out` units outside the waist seam. Seen from above
 * with centre front at the foot of the page the wearer's left is on the right.
 */
export function at({ middle, radius, seam }: Ring, inches: number, out = 0): Point {
  const angle = (2 * Math.PI * inches) / seam;
  const r = radius + out;
  return { x: middle.x + r * Math.sin(angle), y: middle.y + r * Math.cos(angle) };
}

/** Points along the ring from one place to another. */
export function along(ring: Ring, from: number, to: number, out = 0): Point[] {
  const parts = Math.max(1, Math.ceil((Math.abs(to - from) / ring.seam) * (360 / STEP)));
  return Array.from({ length: parts + 1 }, (_, i) => at(ring, from + ((to - from) * i) / parts, out));
}

/** The fullness of a section as it stands inside the waist seam: strokes a pleat where they can be told apart, else fewer. */
export function drawSection(drawing: Drawing, ring: Ring, section: Section): void {
  const from = pen(section.from);
  const waist = pen(section.waist);
  const step = (Math.PI * 2 * ring.radius) / ring.seam;
  if (section.set === "flat") return;
  if (section.set === "gauged") {
    const shown = Math.max(1, Math.min(section.pleats, Math.floor((waist * step) / 4)));
    for (let i = 0; i < shown; i += 1) {
      const place = from + (waist * (i + 0.5)) / shown;
      drawing.line("ease", [at(ring, place), at(ring, place, -DEEP)], { soft: true });
    }
    return;
  }
  const faces = section.half === "left" ? section.faces : section.faces.toReversed();
  const slant = section.set === "knife" ? slantOf(section.half, section.towards) : 0;
  let place = from;
  for (const face of faces) {
    const next = place + pen(face);
    if (section.set === "knife") {
      const shows = slant > 0 ? next : place;
      const hidden = shows - slant * Math.min(pen(face), (DEEP / step) * 1.2);
      drawing.line("body", [at(ring, shows), at(ring, hidden, -DEEP * 0.6)], { soft: true });
    } else {
      const inset = (next - place) * 0.32;
      for (const [edge, way] of [
        [place, 1],
        [next, -1],
      ] as const)
        drawing.line("body", [at(ring, edge), at(ring, edge + way * inset, -DEEP * 0.6)], { soft: true });
    }
    place = next;
  }
}

/** Do the edges that show lie further round by the wearer's left (1) or nearer (-1)? */
const slantOf = (half: "left" | "right", towards: "front" | "back"): 1 | -1 =>
  (half === "left") === (towards === "back") ? 1 : -1;

/** Seams of the skirt, a double stroke across the waist seam; where the opening stands there is no seam drawn. */
export function drawSeams(drawing: Drawing, plan: Plan, ring: Ring): void {
  const apart = ring.seam * 0.0032;
  for (const { station, kind } of plan.seams) {
    if (kind === "slit" || kind === "placket") continue;
    const place = toFloat(station.value) * ring.seam;
    for (const off of [-apart, apart])
      drawing.line("finished", [at(ring, place + off, 7), at(ring, place + off, -7)], { soft: true });
  }
}

/** Where the opening stands, from centre front by the wearer's left. */
export const openingOf = (plan: Plan): number =>
  toFloat(plan.opening.share.value) * penOf(plan, "waist.seam");
