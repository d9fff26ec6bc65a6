/** A stretch of a pleated part lying flat: where each fold comes, which way it turns, faces and depths. */
import type { Plan, PleatedSection } from "../solve/plan.ts";
import { dimension, head } from "./dimension.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING } from "./language.ts";
import { printer } from "./measure.ts";
import { type Crease, type FoldMark, type LaidPleat, laidPleats } from "./pleat-fold.ts";
import { arc, type Point } from "./svg.ts";
import { torn } from "./torn.ts";

const LEFT = 24;
const WIDE = 312;
const TALL = 54;
/** The least width of a pleat on the page, so that its letters stand apart. */
const LEAST = { knife: 58, box: 98, "double-box": 150 } as const;
const LETTERS: Readonly<Record<Crease, string>> = { over: "A", under: "B", line: "C" };
const KINDS = { over: "crease-over", under: "crease-under", line: "crease-line" } as const;

/** So many pleats from the section's front end that none is blurred; at least one. */
export function drawnPleats(plan: Plan, section: PleatedSection): readonly LaidPleat[] {
  const all = laidPleats(plan, section);
  for (let n = all.length; n > 1; n -= 1) {
    const shown = all.slice(0, n);
    const narrow = Math.min(...shown.filter(({ half }) => !half).map(lengthOf));
    if ((narrow / reachOf(shown)) * WIDE >= LEAST[section.set]) return shown;
  }
  return all.slice(0, all[0]?.half ? 2 : 1);
}

const reachOf = (pleats: readonly LaidPleat[]): number => pleats.at(-1)?.marks.at(-1)?.cloth ?? 0;
const lengthOf = ({ marks }: LaidPleat): number => (marks.at(-1)?.cloth ?? 0) - (marks[0]?.cloth ?? 0);

/** Draws the strip of the wearer's left half, centre front to the left, as it is seen from the outside. */
export function drawStrip(drawing: Drawing, plan: Plan, section: PleatedSection): void {
  const pleats = drawnPleats(plan, section);
  const scale = WIDE / reachOf(pleats);
  const across = (cloth: number): number => LEFT + cloth * scale;
  const top = drawing.bottom + 52;
  const foot = top + TALL;
  const end = across(reachOf(pleats));
  drawing.line("fold", [
    { x: LEFT, y: top },
    { x: end, y: top },
  ]);
  drawing.line("break", torn({ x: LEFT, y: foot }, { x: end, y: foot }));
  const whole = pleats.length === section.faces.length;
  if (!whole) drawing.line("break", torn({ x: end, y: top }, { x: end, y: foot }));
  for (const [i, pleat] of pleats.entries()) {
    drawCreases(drawing, pleat, i, across, top, foot);
    drawTurns(drawing, pleat, across, top);
    const [a, b] = faceOf(pleat);
    drawing.label(
      pleat.half ? "half" : `${i + 1}`,
      { x: (across(a) + across(b)) / 2, y: top + 14 },
      { sides: ["on"], leader: "never", bold: true, size: LETTERING.small },
    );
  }
  measure(drawing, plan, section, pleats, across, foot);
  drawing.settle();
}

/**
 * From where to where on the cloth a pleat's face lies: the stretch in front of all others, which an edge A that shows
 * begins or ends. The hidden cloth may be just as long, where face and depth are alike.
 */
export function faceOf({ marks, face }: LaidPleat): readonly [number, number] {
  const shows = ({ kind, behind }: FoldMark): boolean => kind === "over" && behind === 0;
  for (const [i, mark] of marks.entries()) {
    const next = marks[i + 1];
    if (
      next &&
      (shows(mark) || shows(next)) &&
      Math.abs(next.cloth - mark.cloth - face) < 1e-9 &&
      Math.abs(next.waist - mark.waist - face) < 1e-9
    )
      return [mark.cloth, next.cloth];
  }
  return [marks[0]?.cloth ?? 0, marks.at(-1)?.cloth ?? 0];
}

function drawCreases(
  drawing: Drawing,
  { marks }: LaidPleat,
  nth: number,
  across: (cloth: number) => number,
  top: number,
  foot: number,
): void {
  // The line that ends a pleat begins the next one too.
  for (const { kind, cloth } of nth === 0 ? marks : marks.slice(1)) {
    const x = across(cloth);
    drawing.line(KINDS[kind], [
      { x, y: top },
      { x, y: foot },
    ]);
    drawing.label(
      LETTERS[kind],
      { x, y: foot },
      { sides: ["below"], gap: 5, leader: "never", size: LETTERING.small },
    );
  }
}

/** Arrows over the strip: each edge A is brought to the line C (of a double box, to the edge before it). */
function drawTurns(
  drawing: Drawing,
  { marks }: LaidPleat,
  across: (cloth: number) => number,
  top: number,
): void {
  for (const [i, mark] of marks.entries()) {
    if (mark.kind !== "under") continue;
    const [before, after] = [marks[i - 1], marks[i + 1]];
    if (!before || !after) continue;
    const [from, to] = before.behind < after.behind ? [before, after] : [after, before];
    const [a, b] = [across(from.cloth), across(to.cloth)];
    const rise = Math.min(20, 8 + Math.abs(b - a) / 8);
    const bow: Point[] = arc({ x: (a + b) / 2, y: top - 4 }, Math.abs(b - a) / 2, rise, 180, 360);
    const points = a < b ? bow : bow.toReversed();
    drawing.line("dimension", points);
    head(drawing, points.at(-3) as Point, points.at(-1) as Point);
  }
}

/** Face and depth of the first whole pleat, each written once. */
function measure(
  drawing: Drawing,
  plan: Plan,
  section: PleatedSection,
  pleats: readonly LaidPleat[],
  across: (cloth: number) => number,
  foot: number,
): void {
  const n = Math.max(
    0,
    pleats.findIndex(({ half }) => !half),
  );
  const pleat = pleats[n];
  if (!pleat) return;
  const { tape } = printer(plan);
  const y = foot + 30;
  const span = (from: number, to: number, text: string, level: number): void =>
    dimension(drawing, { x: across(from), y: y + level }, { x: across(to), y: y + level }, text, {
      sides: ["below"],
      width: 100,
    });
  const [a, b] = faceOf(pleat);
  const under = pleat.marks.findIndex(({ kind }) => kind === "under");
  const [from, to] = [pleat.marks[under - 1], pleat.marks[under]];
  span(a, b, `face ${tape(section.faces[n] ?? section.face)}`, 0);
  if (from && to) span(from.cloth, to.cloth, `depth ${tape(section.depths[n] ?? section.depth)}`, 30);
}
