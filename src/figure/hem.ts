/** Section through the hem, layers drawn apart: facing, its seam rolled inside, braid; or the turned-up fold. */
import type { Plan } from "../solve/plan.ts";
import { dimension, extension } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { penOf, shownOf } from "./measure.ts";
import { arc, type Point } from "./svg.ts";
import { torn } from "./torn.ts";

/** Across the page: the skirt's cloth, its turning, the facing's turning, the facing, the braid. */
const SKIRT = 214;
/** Between two layers; more where a lining lies between. */
const CLOSE = 13;
const apart = ({ recipe }: Plan): number => (recipe.lining || recipe.interlining ? 20 : CLOSE);
/** How tall the hem's depth is drawn, and how much of the skirt stands above it. */
const TALL = 150;
const ABOVE = 44;
/** What is too small to be seen is drawn larger: the roll of the seam, the braid below the edge. */
const ROLL = 9;
const BRAID = 8;

/** How far the facing's seam is rolled to the inside, and how far the braid stands below the edge: the rules of the hem chapter. */
export const hemRules = ({ recipe }: Plan) =>
  recipe.show === "cm"
    ? { roll: "1.5 mm", braid: "1.5 to 3 mm" }
    : { roll: "1/16 in", braid: "1/16 to 1/8 in" };

const v = (x: number, y: number): Point => ({ x, y });

export function drawHem(plan: Plan): Drawing {
  const drawing = new Drawing("hem");
  const faced = plan.recipe.skirt.hem.kind === "faced";
  const woven = plan.recipe.skirt.hem.edge === "selvedge";
  const { braid } = plan.recipe.skirt;
  drawing.heading("Section through the hem. Inside at the left, outside at the right, waist upwards.");
  drawing.note(
    `The layers lie close; they are drawn apart, and far thicker than they are. Heights are in proportion${faced ? (woven ? ", but for what the selvedge stands below the facing" : ", but for the roll of the seam") : ""}${braid ? `${faced ? " and" : ", but for"} what shows of the braid` : ""}.`,
  );
  const top = drawing.bottom + 14;
  const edge = top + ABOVE + TALL;
  const scale = TALL / penOf(plan, "skirt.hem.depth");
  drawing.line("cloth", [v(SKIRT, top), v(SKIRT, woven ? edge : edge - 7)]);
  drawing.line("break", torn(v(SKIRT - 10, top), v(SKIRT + 10, top)));
  const right = { x: SKIRT + 2, width: 110 };
  drawing.label(plan.recipe.garment, v(SKIRT, top + 26), { sides: ["right"], gap: 8, leader: "never" });
  drawing.label(woven ? "hem edge: the selvedge" : "hem edge: a fold along one thread", v(SKIRT - 2, edge), {
    stand: v(right.x + 16, edge - 8),
    sides: ["right"],
    width: right.width,
    leader: "always",
  });
  drawBacking(drawing, plan, { top, edge, scale });
  if (woven) drawWoven(drawing, plan, edge, scale);
  else if (faced) drawFaced(drawing, plan, edge, scale);
  else drawTurned(drawing, plan, edge, scale);
  drawing.settle();
  drawing.note(words(plan));
  return drawing;
}

/** The skirt turns up by its seam; the facing hangs on it, turned in at the top. */
function drawFaced(drawing: Drawing, plan: Plan, edge: number, scale: number): void {
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
  const left = facing - (plan.recipe.skirt.braid ? 30 : 18) - beside(plan);
  const depth = `depth ${shownOf(plan, "skirt.hem.depth")}`;
  extension(drawing, v(facing, head), v(left - 24, head));
  extension(drawing, v(facing, sewn), v(left - 24, sewn));
  dimension(drawing, v(left - 20, head), v(left - 20, sewn), depth, { sides: ["left"], width: 60 });
  const far = SKIRT + 22;
  extension(drawing, v(own, sewn - seam), v(far + 4, sewn - seam));
  extension(drawing, v(own, sewn), v(far + 4, sewn));
  dimension(drawing, v(far, sewn - seam), v(far, sewn), `seam ${shownOf(plan, "skirt.seam")}`, {
    sides: ["right"],
    width: 90,
  });
  drawing.label(`top turned in ${shownOf(plan, "skirt.seam")}`, v(inner, head + seam), {
    stand: v(SKIRT + 18, head + 30),
    sides: ["right"],
    width: 110,
    leader: "always",
  });
  nameInner(drawing, plan, "facing", v(facing, (head + sewn) / 2));
  drawing.label(`seam rolled ${hemRules(plan).roll} to the inside`, v(other - 4, sewn), {
    stand: v(left - 62, edge + 14),
    sides: ["on"],
    width: 110,
    leader: "always",
  });
}

/** The selvedge is the hem edge; the facing lies flat inside it, both its edges turned in. */
function drawWoven(drawing: Drawing, plan: Plan, edge: number, scale: number): void {
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
  const left = facing - (plan.recipe.skirt.braid ? 30 : 18) - beside(plan);
  extension(drawing, v(facing, head), v(left - 24, head));
  extension(drawing, v(facing, foot), v(left - 24, foot));
  dimension(drawing, v(left - 20, head), v(left - 20, foot), `depth ${shownOf(plan, "skirt.hem.depth")}`, {
    sides: ["left"],
    width: 60,
  });
  drawing.label(`edges turned in ${shownOf(plan, "skirt.seam")}`, v(inner, head + seam), {
    stand: v(SKIRT + 18, head + 30),
    sides: ["right"],
    width: 110,
    leader: "always",
  });
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
function drawTurned(drawing: Drawing, plan: Plan, edge: number, scale: number): void {
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
  const left = own - (plan.recipe.skirt.braid ? 34 : 22) - beside(plan);
  extension(drawing, v(own, head), v(left - 24, head));
  extension(drawing, v(own, edge), v(left - 24, edge));
  dimension(drawing, v(left - 20, head), v(left - 20, edge), `depth ${shownOf(plan, "skirt.hem.depth")}`, {
    sides: ["left"],
    width: 60,
  });
  drawing.label(
    `raw edge turned in ${shownOf(plan, "skirt.hem.turnIn")}`,
    v(inner, head + Math.max(turn, 8)),
    {
      stand: v(SKIRT + 18, head + 30),
      sides: ["right"],
      width: 110,
      leader: "always",
    },
  );
  nameInner(drawing, plan, "turned up inside", v(own, (head + edge) / 2));
}

/** Names the innermost layer: at the left of it, or from the right where a lining hangs beside it. */
function nameInner(drawing: Drawing, plan: Plan, text: string, at: Point): void {
  if (beside(plan) > 0)
    drawing.label(text, at, {
      stand: v(SKIRT + 18, at.y + 14),
      sides: ["right"],
      width: 100,
      leader: "always",
    });
  else drawing.label(text, at, { sides: ["left"], leader: "never", gap: 8, width: 50 });
}

/** Room at the left for a lining that hangs by itself. */
const beside = ({ recipe }: Plan): number => (recipe.lining?.to === "separate" ? 16 : 0);

/** Interlining and lining: down to the hem's fold, or caught with the cloth in the facing's seam, or hanging by itself. */
function drawBacking(
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

/** The fold at the hem edge, from the skirt's outside to the layer within. */
const round = (from: number, to: number, y: number): Point[] =>
  arc(v((from + to) / 2, y), (from - to) / 2, 7, 0, 180);

/** The stitch along the top: through the inner layers and one thread of the outside. */
function hemStitch(drawing: Drawing, plan: Plan, from: number, y: number): void {
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
function drawBraid(drawing: Drawing, plan: Plan, x: number, edge: number): void {
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

/** What the figure says in words. */
function words(plan: Plan): string {
  const { kind, edge } = plan.recipe.skirt.hem;
  const braid = plan.recipe.skirt.braid
    ? ` The braid is sewn along its upper edge through the ${kind === "faced" ? "facing" : "turned-up layer"} only.`
    : "";
  const behind = plan.recipe.lining;
  const lined =
    behind && behind.to !== "separate"
      ? kind === "faced" && edge === "cut"
        ? " The lining's lower edge is caught in the same seam."
        : edge === "selvedge"
          ? " The lining ends under the facing."
          : " The lining ends in the fold."
      : "";
  if (edge === "selvedge")
    return `The selvedge is the hem edge, as it is woven: nothing is turned up. The facing, cut ${shownOf(plan, "facing.depth")} deep, lies flat inside, both edges turned in by ${shownOf(plan, "skirt.seam")}.${lined}${braid}`;
  if (kind === "faced")
    return `The facing, cut ${shownOf(plan, "facing.depth")} deep, hangs on a seam of ${shownOf(plan, "skirt.seam")} that lies ${hemRules(plan).roll} up inside, so that it does not show.${lined}${braid}`;
  return `${shownOf(plan, "hem.allowance")} is turned up in all: the depth of ${shownOf(plan, "skirt.hem.depth")} and the turn-in of ${shownOf(plan, "skirt.hem.turnIn")}.${lined}${braid}`;
}

export function hem(plan: Plan): Figure {
  const faced = plan.recipe.skirt.hem.kind === "faced";
  const what =
    plan.recipe.skirt.hem.edge === "selvedge"
      ? `From outside to inside: the ${plan.recipe.garment}'s cloth, ending in its selvedge, and the facing, its upper and lower edges turned in`
      : faced
        ? `From outside to inside: the ${plan.recipe.garment}'s cloth, folded at the hem edge, its turning, the facing's turning, the facing with its top turned in`
        : "The cloth folded up to the inside at the hem edge, its raw edge turned in at the top";
  return drawHem(plan).finish(
    "Section through the hem",
    `${what}${plan.recipe.skirt.braid ? `, and inside it the braid, which stands ${hemRules(plan).braid} below the edge` : ""}. ${words(plan)}`,
  );
}
