/** What every section through a hem has: the skirt's cloth, linings behind it, the stitch along the top, the braid, how deep it is. */
import type { Plan } from "../solve/plan.ts";
import { dimension, extension } from "./dimension.ts";
import type { Drawing } from "./drawing.ts";
import { penOf, shownOf } from "./measure.ts";
import { arc, type Point } from "./svg.ts";

/** Across the page: the skirt's cloth, its turning, the facing's turning, the facing, the braid. */
export const SKIRT = 214;
/** Between two layers; more where a lining lies between. */
export const CLOSE = 13;
export const apart = ({ recipe }: Plan): number => (recipe.lining || recipe.interlining ? 20 : CLOSE);
/** What is too small to be seen is drawn larger: the roll of the seam, the braid below the edge. */
export const ROLL = 9;
const BRAID = 8;

/** How far the facing's seam is rolled to the inside, and how far the braid stands below the edge: the rules of the hem chapter. */
export const hemRules = ({ recipe }: Plan) =>
  recipe.show === "cm"
    ? { roll: "1.5 mm", braid: "1.5 to 3 mm" }
    : { roll: "1/16 in", braid: "1/16 to 1/8 in" };

export const v = (x: number, y: number): Point => ({ x, y });

/** Room at the left for a lining that hangs by itself. */
export const beside = ({ recipe }: Plan): number => (recipe.lining?.to === "separate" ? 16 : 0);

/** Where the depth stands: left of the innermost layer, and of what hangs beside it; `clear` is further where there is a braid. */
export function leftOf(plan: Plan, inner: number, clear = 18): number {
  return inner - (plan.recipe.skirt.braid ? clear + 12 : clear) - beside(plan);
}

/** The hem's depth, from its head to its foot, left of its innermost layer. */
export function dimensionDepth(
  drawing: Drawing,
  plan: Plan,
  { inner, left, head, foot }: { inner: number; left: number; head: number; foot: number },
): void {
  extension(drawing, v(inner, head), v(left - 24, head));
  extension(drawing, v(inner, foot), v(left - 24, foot));
  dimension(drawing, v(left - 20, head), v(left - 20, foot), `depth ${shownOf(plan, "skirt.hem.depth")}`, {
    sides: ["left"],
    width: 60,
  });
}

/** Names what is turned in along the top, from the right. */
export function nameTurning(drawing: Drawing, text: string, at: Point, head: number): void {
  drawing.label(text, at, {
    stand: v(SKIRT + 18, head + 30),
    sides: ["right"],
    width: 110,
    leader: "always",
  });
}

/** Names the innermost layer: at the left of it, or from the right where a lining hangs beside it. */
export function nameInner(drawing: Drawing, plan: Plan, text: string, at: Point): void {
  if (beside(plan) > 0)
    drawing.label(text, at, {
      stand: v(SKIRT + 18, at.y + 14),
      sides: ["right"],
      width: 100,
      leader: "always",
    });
  else drawing.label(text, at, { sides: ["left"], leader: "never", gap: 8, width: 50 });
}

/** Interlining and lining: down to the hem's fold, or caught with the cloth in the facing's seam, or hanging by itself. */
export function drawBacking(
  drawing: Drawing,
  plan: Plan,
  { top, edge, scale }: { top: number; edge: number; scale: number },
): void {
  const { lining: behind, interlining, skirt } = plan.recipe;
  const name = (text: string, at: Point, y: number): void =>
    drawing.label(text, at, { stand: v(at.x - 46, y), sides: ["left"], width: 90, leader: "always" });
  if (interlining) {
    drawing.line("interlining", [v(SKIRT - 6, top), v(SKIRT - 6, edge - 6)]);
    name("interlining", v(SKIRT - 6, top + 8), top + 6);
  }
  if (!behind) return;
  // What is named behind it stands up beyond the lining, so that no pointer crosses it.
  const begin = interlining ? top + 16 : top;
  const y = begin + 8;
  const own = SKIRT - apart(plan);
  if (behind.to === "separate") {
    const x = own - 2 * CLOSE - (skirt.braid ? 30 : 16);
    const foot = edge - Math.max(penOf(plan, "lining.shorter") * scale, 6);
    const head = foot - Math.max(penOf(plan, "lining.hem") * scale, 10);
    drawing.line("lining", [
      v(x, begin),
      v(x, foot - 4),
      ...arc(v(x + 3.5, foot - 4), 3.5, 4, 180, 0),
      v(x + 7, head),
    ]);
    name(`lining, ${shownOf(plan, "lining.shorter")} shorter, with its own hem`, v(x, y), y + 10);
    return;
  }
  const x = SKIRT - 12;
  drawing.line(
    "lining",
    skirt.hem.kind === "turned" || skirt.hem.edge === "selvedge"
      ? [v(x, begin), v(x, edge - 4)]
      : [
          v(x, begin),
          v(x, edge - 5),
          v(own + 5, edge - 5),
          v(own + 5, edge - ROLL - penOf(plan, "skirt.seam") * scale),
        ],
  );
  name("lining", v(x, y), y);
}

/** The stitch along the top: through the inner layers and one thread of the outside. */
export function hemStitch(drawing: Drawing, plan: Plan, from: number, y: number): void {
  const { lining, interlining } = plan.recipe;
  const into =
    lining && lining.to !== "separate"
      ? { x: SKIRT - 12, text: "through the lining, not to the outside" }
      : interlining
        ? { x: SKIRT - 6, text: "through the interlining, not to the outside" }
        : { x: SKIRT, text: "one thread of the outside" };
  drawing.line("thread", [v(from - 5, y), v(into.x + 0.6, y)]);
  drawing.label(into.text, v(into.x, y), {
    stand: v(SKIRT + 18, y - 14),
    sides: ["right"],
    width: 110,
    leader: "always",
  });
}

/** The braid inside the edge, standing a little below it: the edge that wears. */
export function drawBraid(drawing: Drawing, plan: Plan, x: number, edge: number): void {
  const [top, foot] = [edge - 36, edge + BRAID];
  drawing.line("braid", [v(x, top), v(x, foot)]);
  drawing.line("thread", [v(x - 5, top + 3), v(x + 9, top + 3)]);
  drawing.label(`braid, ${hemRules(plan).braid} below the edge`, v(x, foot), {
    stand: v(x + 60, foot + 12),
    sides: ["below", "on"],
    width: 190,
    leader: "always",
  });
}
