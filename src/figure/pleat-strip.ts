/** A stretch of a pleated part lying flat: where each fold comes, which way it turns, faces and depths. */
import type { Plan, PleatedSection } from "../solve/plan.ts";
import { pleatLines } from "../solve/pleat-lines.ts";
import { dimension, head } from "./dimension.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING } from "./language.ts";
import { printer } from "./measure.ts";
import { type Crease, type FoldMark, halfAt, type LaidPleat, laidPleats, mirrored } from "./pleat-fold.ts";
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

const startOf = (pleats: readonly LaidPleat[]): number => pleats[0]?.marks[0]?.cloth ?? 0;
const reachOf = (pleats: readonly LaidPleat[]): number =>
  (pleats.at(-1)?.marks.at(-1)?.cloth ?? 0) - startOf(pleats);
const lengthOf = ({ marks }: LaidPleat): number => (marks.at(-1)?.cloth ?? 0) - (marks[0]?.cloth ?? 0);

/** What one strip shows: pleats in their order along the cloth, and where a centre line crosses it, if one does. */
export interface Strip {
  readonly pleats: readonly LaidPleat[];
  /** The number of the first of them that is not the other half's. */
  readonly first: number;
  readonly centre?: { readonly at: number; readonly name: "centre front" | "centre back" };
}

/**
 * The strips of a section. A pleat astride a centre line is drawn whole, its other half's mirror beside it: at the beginning
 * for centre front; for centre back at the end, or in a strip of its own where not all pleats are shown.
 */
export function stripsOf(plan: Plan, section: PleatedSection): readonly Strip[] {
  const all = laidPleats(plan, section);
  const shown = drawnPleats(plan, section);
  const half = halfAt(plan, section);
  if (half === "front") {
    const [own] = shown as readonly [LaidPleat];
    const at = { cloth: startOf(all), waist: own.marks[0]?.waist ?? 0 };
    const pleats = [mirrored(own, at), ...shown];
    return [{ pleats, first: 0, centre: { at: at.cloth, name: "centre front" } }];
  }
  if (half !== "back") return [{ pleats: shown, first: 1 }];
  const own = all.at(-1) as LaidPleat;
  const end = own.marks.at(-1);
  const at = { cloth: end?.cloth ?? 0, waist: end?.waist ?? 0 };
  const centre = { at: at.cloth, name: "centre back" } as const;
  const other = mirrored(own, at);
  if (shown.length === all.length) return [{ pleats: [...shown, other], first: 1, centre }];
  return [
    { pleats: shown, first: 1 },
    { pleats: [...all.slice(-2), other], first: all.length - 1, centre },
  ];
}

/** Draws a strip of the wearer's left half, centre front to the left, as it is seen from the outside. */
export function drawStrip(drawing: Drawing, plan: Plan, section: PleatedSection, strip: Strip): void {
  const { pleats, first, centre } = strip;
  const begin = startOf(pleats);
  const scale = WIDE / reachOf(pleats);
  const across = (cloth: number): number => LEFT + (cloth - begin) * scale;
  const top = drawing.bottom + (centre ? 66 : 52);
  const foot = top + TALL;
  const end = across(begin + reachOf(pleats));
  drawing.line("fold", [
    { x: LEFT, y: top },
    { x: end, y: top },
  ]);
  drawing.line("break", torn({ x: LEFT, y: foot }, { x: end, y: foot }));
  const all = laidPleats(plan, section);
  const torns = [
    ...(begin > 1e-9 ? [LEFT] : []),
    ...(pleats.at(-1) === all.at(-1) || centre?.name === "centre back" ? [] : [end]),
  ];
  for (const x of torns) drawing.line("break", torn({ x, y: top }, { x, y: foot }));
  if (centre) {
    const x = across(centre.at);
    drawing.line("station", [
      { x, y: top - 40 },
      { x, y: foot + 4 },
    ]);
    drawing.label(
      centre.name,
      { x, y: top - 40 },
      { sides: ["above"], gap: 1, leader: "never", size: LETTERING.small },
    );
  }
  for (const [i, pleat] of pleats.entries()) {
    drawCreases(drawing, pleat, i, across, top, foot, centre?.at);
    drawTurns(drawing, pleat, across, top);
    // The other half's part of a pleat astride the line has no number of its own.
    if (pleat.half && all.every(({ marks }) => marks[0]?.cloth !== pleat.marks[0]?.cloth)) continue;
    const [a, b] = faceOf(pleat);
    drawing.label(
      `${first + i}`,
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
  centre?: number,
): void {
  // The line that ends a pleat begins the next one too; on a centre line nothing is folded or laid.
  for (const { kind, cloth } of nth === 0 ? marks : marks.slice(1)) {
    if (centre !== undefined && Math.abs(cloth - centre) < 1e-9) continue;
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

/** Face and depth of the first whole pleat (of half a one where no other is shown), each written once. */
function measure(
  drawing: Drawing,
  plan: Plan,
  section: PleatedSection,
  pleats: readonly LaidPleat[],
  across: (cloth: number) => number,
  foot: number,
): void {
  const all = laidPleats(plan, section);
  const own = pleats.filter((pleat) => all.some(({ marks }) => marks[0]?.cloth === pleat.marks[0]?.cloth));
  const pleat = own.find(({ half }) => !half) ?? own[0];
  const exact = pleatLines(section)[all.findIndex(({ marks }) => marks[0]?.cloth === pleat?.marks[0]?.cloth)];
  if (!pleat || !exact) return;
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
  span(a, b, `${pleat.half ? "half the face" : "face"} ${tape(exact.face)}`, 0);
  if (from && to) span(from.cloth, to.cloth, `depth ${tape(exact.depth)}`, 30);
}
