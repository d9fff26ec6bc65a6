/** What the cloth shows of itself on the layout: lines of its pattern in the breadths, a border along its edges, its shading. */
import type { Piece, Plan } from "../solve/plan.ts";
import { isAlong } from "../solve/run.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING } from "./language.ts";
import { widthOf } from "./lettering.ts";
import { pen, penOf, printer, shownOf } from "./measure.ts";
import { rectangle } from "./svg.ts";

/** Where the cloth's left edge lies on the page, its head, and units to an inch. */
export interface Scaled {
  readonly left: number;
  readonly top: number;
  readonly scale: number;
}

/** Lines of a pattern closer than this are not drawn; numbers stand further apart. */
const CLOSEST = 3;
const NUMBERED = 15;
/** Room kept at a breadth's right edge for the numbers of its lines. */
export const NUMBERS = 18;

/** Is a piece of the layout one of those that make the round, or that are mounted on them? */
export const isRoundPiece = ({ name }: Piece): boolean =>
  /^(half |narrower )?breadth|^length |^whole width|^piece|^narrow strip/.test(name);

/** Is the pattern level with the hem drawn: does it repeat down the breadths? */
export const hasLevels = ({ recipe }: Plan): boolean =>
  recipe.cloth.repeat?.down !== undefined && !isAlong(recipe);

/**
 * The line of the pattern that comes to the hem edge, and every repeat above it, alike in every breadth and numbered
 * from the hem up; where they lie too close, the line at the hem alone. Returns what is to be said of them.
 */
export function drawLevels(drawing: Drawing, plan: Plan, at: Scaled): string | undefined {
  const { down } = plan.recipe.cloth.repeat ?? {};
  if (!down || !hasLevels(plan)) return undefined;
  const step = pen(down) * at.scale;
  const every = Math.max(1, Math.ceil(NUMBERED / step));
  const drawn = step >= CLOSEST;
  const allowance = penOf(plan, "hem.allowance") * at.scale;
  for (const piece of plan.layout.pieces.filter(isRoundPiece)) {
    const [x, width] = [at.left + pen(piece.x) * at.scale, pen(piece.width) * at.scale];
    const [head, foot] = [
      at.top + pen(piece.y) * at.scale,
      at.top + (pen(piece.y) + pen(piece.length)) * at.scale,
    ];
    for (let n = 0, y = foot - allowance; y > head + 1; n += 1, y -= step) {
      drawing.line(
        n === 0 ? "finished" : "ease",
        [
          { x, y },
          { x: x + width, y },
        ],
        { soft: true },
      );
      if (!drawn) break;
      if (n % every === 0 && y - LETTERING.small > head && n > 0) numberAt(drawing, String(n), x + width, y);
    }
  }
  const { tape } = printer(plan);
  const above = drawn
    ? ` above it the same line every ${tape(down)}, numbered from the hem up${every > 1 ? `, every ${ordinal(every)}` : ""}: equal numbers meet at every seam`
    : ` the lines above it, every ${tape(down)}, lie too close to draw`;
  return `Heavy lines: the line of the pattern that comes to the finished hem, ${shownOf(plan, "hem.allowance")} above the cut edge in every breadth;${above}.`;
}

const ordinal = (n: number): string => ({ 2: "second", 3: "third" })[n] ?? `${n}th`;

function numberAt(drawing: Drawing, text: string, right: number, y: number): void {
  const [width, height] = [widthOf(text, LETTERING.small), LETTERING.small * LETTERING.line];
  drawing.set([text], LETTERING.small, { x: right - width - 3, y: y - height, width, height });
}

/** Thin lines for the pattern in every breadth, where they are known and far enough apart. Returns what is to be said of them. */
export function drawDominant(drawing: Drawing, plan: Plan, { left, top, scale }: Scaled): string | undefined {
  const { dominant, across } = plan.recipe.cloth.repeat ?? {};
  if (!dominant || !across || pen(across) * scale < CLOSEST) return undefined;
  const { selvedge, width } = plan.recipe.cloth;
  for (const piece of plan.layout.pieces.filter(isRoundPiece)) {
    const [y, length] = [top + pen(piece.y) * scale, pen(piece.length) * scale];
    for (let at = pen(selvedge) + pen(dominant); at < pen(width) - pen(selvedge); at += pen(across)) {
      const x = left + at * scale;
      drawing.line(
        "ease",
        [
          { x, y },
          { x, y: y + length },
        ],
        { soft: true },
      );
    }
  }
  const { tape } = printer(plan);
  return `Thin lines in the breadths: the dominant line of the pattern, first ${tape(dominant)} inside the left selvedge, then every ${tape(across)}.`;
}

/** The border along the left edge, which comes to the hem, and along the other where there are two. Returns what is to be said. */
export function drawBorder(drawing: Drawing, plan: Plan, { left, top, scale }: Scaled): string | undefined {
  const { border, width } = plan.recipe.cloth;
  if (!border || !isAlong(plan.recipe)) return undefined;
  const [deep, off] = [pen(border.depth) * scale, pen(border.fromEdge) * scale];
  const length = pen(plan.layout.length) * scale;
  const places = border.edge === "both" ? [left + off, left + pen(width) * scale - off - deep] : [left + off];
  for (const x of places) drawing.fill("border", rectangle(x, top, deep, length));
  const { tape } = printer(plan);
  return `The border, ${tape(border.depth)} deep, begins ${tape(border.fromEdge)} inside the outer edge${border.edge === "both" ? " on both sides" : ""}; on the left it comes to the hem, ${shownOf(plan, "border.above")} above its finished edge.`;
}

/** How far into a length its border reaches from the left, in inches; names stand clear of it. */
export function borderIn(plan: Plan, piece: Piece): number {
  if (!plan.values.has("border.head") || !piece.name.startsWith("length ")) return 0;
  return penOf(plan, "hem.allowance") + penOf(plan, "border.head");
}

/** What is said of shaded cloth. */
export function shadeWords(plan: Plan): string | undefined {
  const { shaded } = plan.recipe.cloth;
  if (!shaded) return undefined;
  if ((shaded === "across") === isAlong(plan.recipe))
    return "Shaded from hem to waist: nothing is turned, and every piece has the same shade at the hem.";
  return "Shaded cloth: nothing is turned.";
}
