/** The three edges a hem may have, in section: a facing sewn on and rolled inside, a selvedge faced flat, the cloth turned up. */
import type { Plan } from "../solve/plan.ts";
import { dimension, extension } from "./dimension.ts";
import type { Drawing } from "./drawing.ts";
import {
  apart,
  CLOSE,
  dimensionDepth,
  drawBraid,
  hemRules,
  hemStitch,
  leftOf,
  nameInner,
  nameTurning,
  ROLL,
  SKIRT,
  v,
} from "./hem-layers.ts";
import { penOf, shownOf } from "./measure.ts";
import { arc, type Point } from "./svg.ts";

/** The skirt turns up by its seam; the facing hangs on it, turned in at the top. */
export function drawFaced(drawing: Drawing, plan: Plan, edge: number, scale: number): void {
  const seam = penOf(plan, "skirt.seam") * scale;
  const own = SKIRT - apart(plan);
  const [other, facing] = [own - CLOSE, own - 2 * CLOSE];
  const sewn = edge - ROLL;
  // Skirt: round the edge, up past the seam to its cut edge.
  drawing.line("cloth", [...round(SKIRT, own, edge - 7), v(own, sewn - seam)]);
  // Facing: from its cut edge down to the seam, over, and up to the turned-in top.
  const head = sewn - penOf(plan, "skirt.hem.depth") * scale;
  const inner = facing + 5;
  drawing.line("cloth", [
    v(other, sewn - seam),
    v(other, sewn),
    v(facing, sewn),
    v(facing, head + 3),
    ...arc(v((facing + inner) / 2, head + 3), (inner - facing) / 2, 3, 180, 360),
    v(inner, head + seam),
  ]);
  drawing.line("thread", [v(own + 4, sewn), v(other - 4, sewn)]);
  hemStitch(drawing, plan, facing, head + 5);
  if (plan.recipe.skirt.braid) drawBraid(drawing, plan, facing - 8, edge);
  const left = leftOf(plan, facing);
  dimensionDepth(drawing, plan, { inner: facing, left, head, foot: sewn });
  const far = SKIRT + 22;
  extension(drawing, v(own, sewn - seam), v(far + 4, sewn - seam));
  extension(drawing, v(own, sewn), v(far + 4, sewn));
  dimension(drawing, v(far, sewn - seam), v(far, sewn), `seam ${shownOf(plan, "skirt.seam")}`, {
    sides: ["right"],
    width: 90,
  });
  nameTurning(drawing, `top turned in ${shownOf(plan, "skirt.seam")}`, v(inner, head + seam), head);
  nameInner(drawing, plan, "facing", v(facing, (head + sewn) / 2));
  drawing.label(`seam rolled ${hemRules(plan).roll} to the inside`, v(other - 4, sewn), {
    stand: v(left - 62, edge + 14),
    sides: ["on"],
    width: 110,
    leader: "always",
  });
}

/** The selvedge is the hem edge; the facing lies flat inside it, both its edges turned in. */
export function drawWoven(drawing: Drawing, plan: Plan, edge: number, scale: number): void {
  const seam = penOf(plan, "skirt.seam") * scale;
  const facing = SKIRT - CLOSE - apart(plan);
  const inner = facing + 5;
  const foot = edge - ROLL;
  const head = foot - penOf(plan, "skirt.hem.depth") * scale;
  drawing.line("cloth", [
    v(inner, foot - seam),
    v(inner, foot - 3),
    ...arc(v((facing + inner) / 2, foot - 3), (inner - facing) / 2, 3, 0, 180),
    v(facing, head + 3),
    ...arc(v((facing + inner) / 2, head + 3), (inner - facing) / 2, 3, 180, 360),
    v(inner, head + seam),
  ]);
  hemStitch(drawing, plan, facing, head + 5);
  drawing.line("thread", [v(facing - 5, foot - 5), v(SKIRT - 2, foot - 5)]);
  if (plan.recipe.skirt.braid) drawBraid(drawing, plan, facing - 8, edge);
  const left = leftOf(plan, facing);
  dimensionDepth(drawing, plan, { inner: facing, left, head, foot });
  nameTurning(drawing, `edges turned in ${shownOf(plan, "skirt.seam")}`, v(inner, head + seam), head);
  nameInner(drawing, plan, "facing", v(facing, (head + foot) / 2));
  drawing.label(
    `facing hemmed to the selvedge, ${hemRules(plan).roll} above its edge`,
    v(facing - 4, foot - 5),
    {
      stand: v(left - 62, edge + 18),
      sides: ["on"],
      width: 124,
      leader: "always",
    },
  );
}

/** The cloth turns up by the hem's depth, its raw edge turned in. */
export function drawTurned(drawing: Drawing, plan: Plan, edge: number, scale: number): void {
  const own = SKIRT - CLOSE - apart(plan);
  const head = edge - penOf(plan, "skirt.hem.depth") * scale;
  const turn = penOf(plan, "skirt.hem.turnIn") * scale;
  const inner = own + 6;
  drawing.line("cloth", [
    ...round(SKIRT, own, edge - 7),
    v(own, head + 3),
    ...arc(v((own + inner) / 2, head + 3), (inner - own) / 2, 3, 180, 360),
    v(inner, head + Math.max(turn, 8)),
  ]);
  hemStitch(drawing, plan, own, head + 5);
  if (plan.recipe.skirt.braid) drawBraid(drawing, plan, own - 8, edge);
  const left = leftOf(plan, own, 22);
  dimensionDepth(drawing, plan, { inner: own, left, head, foot: edge });
  nameTurning(
    drawing,
    `raw edge turned in ${shownOf(plan, "skirt.hem.turnIn")}`,
    v(inner, head + Math.max(turn, 8)),
    head,
  );
  nameInner(drawing, plan, "turned up inside", v(own, (head + edge) / 2));
}

/** The fold at the hem edge, from the skirt's outside to the layer within. */
const round = (from: number, to: number, y: number): Point[] =>
  arc(v((from + to) / 2, y), (from - to) / 2, 7, 0, 180);
