/** The layout on the cloth, to scale: selvedges, grain, the way up, every piece with its size, what is left over. */
import type { Layout, Piece, Plan } from "../solve/plan.ts";
import { isAlong } from "../solve/run.ts";
import { arrow, dimension, head } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import { noteEstimate } from "./estimate.ts";
import type { Figure } from "./figure.ts";
import {
  borderIn,
  drawBorder,
  drawDominant,
  drawLevels,
  hasLevels,
  isRoundPiece,
  shadeWords,
} from "./layout-lines.ts";
import { type Laid, namePieces } from "./layout-names.ts";
import { pen, printer, shownOf } from "./measure.ts";
import { rectangle } from "./svg.ts";

/** The cloth's left edge on the page; lengths and grain stand left of it, small pieces' names right of it. */
const LEFT = 92;
const WIDEST = 150;
const LONGEST = 520;

export interface Sheet {
  readonly top: number;
  /** Units to an inch. */
  readonly scale: number;
}

/** One cloth with its pieces, and the names of the values that say how wide and how long it is. */
export interface OnCloth {
  readonly layout: Layout;
  readonly width: string;
  readonly length: string;
}

export function drawLayout(plan: Plan): Drawing {
  const drawing = new Drawing("layout");
  const { recipe } = plan;
  const along = isAlong(recipe);
  drawing.heading(
    along
      ? "Right side of the cloth up. Hem at the left, top at the right."
      : "Right side of the cloth up. The top of every breadth lies upwards.",
  );
  drawing.note("To scale, one layer of cloth. Sizes are across × along the cloth.");
  const sheet = drawOnCloth(drawing, plan, {
    layout: plan.layout,
    width: "cloth.width",
    length: "cloth.length",
  });
  const at = { ...sheet, left: LEFT };
  const lines = [
    drawDominant(drawing, plan, at),
    drawLevels(drawing, plan, at),
    drawBorder(drawing, plan, at),
  ];
  drawing.settle();
  drawScale(drawing, plan, sheet);
  const share = shownOf(plan, "cloth.waste");
  drawing.note(
    `Left over: ${share} of the cloth. Grain runs along the cloth in every piece${along ? ": across the body in the lengths, which go round it, and lengthwise in the band" : ""}.`,
  );
  if (hasLevels(plan) && recipe.cloth.repeat?.down)
    drawing.note(
      `Every breadth begins at the same line of the pattern, which repeats every ${printer(plan).tape(recipe.cloth.repeat.down)} along the cloth; cut it to ${shownOf(plan, "breadths.cut")}.`,
    );
  for (const words of [...lines, shadeWords(plan)]) if (words) drawing.note(words);
  if (recipe.cloth.oneWay)
    drawing.note(
      along
        ? "The cloth runs one way: every piece lies as it is drawn, none turned end for end."
        : "The cloth runs one way: every top points the way of the arrow marked up, strips and facings too.",
    );
  noteEstimate(drawing, plan);
  return drawing;
}

/** Cloth and pieces, named, to scale. */
export function drawOnCloth(drawing: Drawing, plan: Plan, on: OnCloth): Sheet {
  const { layout } = on;
  const sheet: Sheet = {
    top: drawing.bottom + 34,
    scale: Math.min(WIDEST / pen(layout.width), LONGEST / pen(layout.length)),
  };
  const pieces = layout.pieces.map((piece) => laid(piece, sheet));
  drawCloth(drawing, plan, on, sheet, pieces);
  for (const piece of pieces) drawing.line("cut", corners(piece), { closed: true });
  for (const piece of pieces.filter(({ piece }) => isRoundPiece(piece)))
    drawWayUp(
      drawing,
      { ...piece, x: piece.x + borderIn(plan, piece.piece) * sheet.scale },
      wayUp(plan, layout),
    );
  namePieces(drawing, plan, pieces, LEFT + pen(layout.width) * sheet.scale);
  return sheet;
}

function laid(piece: Piece, { top, scale }: Sheet): Laid {
  return {
    piece,
    x: LEFT + pen(piece.x) * scale,
    y: top + pen(piece.y) * scale,
    width: pen(piece.width) * scale,
    length: pen(piece.length) * scale,
  };
}

const corners = ({ x, y, width, length }: Laid) => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + length },
  { x, y: y + length },
];

/** The cloth with its selvedges, what no piece takes, its width and length, and the way of the grain. */
function drawCloth(
  drawing: Drawing,
  plan: Plan,
  on: OnCloth,
  { top, scale }: Sheet,
  pieces: readonly Laid[],
): void {
  const { layout } = on;
  const width = pen(layout.width) * scale;
  const length = pen(layout.length) * scale;
  const [right, foot] = [LEFT + width, top + length];
  const holes = pieces.map((piece) => rectangle(piece.x, piece.y, piece.width, piece.length));
  drawing.fill("waste", [rectangle(LEFT, top, width, length), ...holes].join(""));
  drawing.keepClear({ x: LEFT, y: top, width, height: length });
  for (const x of [LEFT - 2.4, LEFT, right, right + 2.4]) {
    drawing.line("selvedge", [
      { x, y: top - 6 },
      { x, y: foot + 6 },
    ]);
  }
  for (const y of [top, foot]) {
    drawing.line("cut", [
      { x: LEFT, y },
      { x: right, y },
    ]);
  }
  dimension(drawing, { x: LEFT, y: top - 14 }, { x: right, y: top - 14 }, shownOf(plan, on.width), {
    sides: ["above"],
  });
  dimension(drawing, { x: 40, y: foot }, { x: 40, y: top }, shownOf(plan, on.length), {
    sides: ["left", "right"],
    width: 74,
    at: 0.55,
  });
  const grain = top + Math.min(90, length);
  arrow(drawing, { x: LEFT - 18, y: grain }, { x: LEFT - 18, y: top + 10 }, true);
  drawing.label("grain", { x: LEFT - 20, y: grain }, { sides: ["below"], leader: "never" });
  if (!plan.recipe.cloth.oneWay || isAlong(plan.recipe) || layout !== plan.layout || length < 220) return;
  arrow(drawing, { x: LEFT - 18, y: grain + 80 }, { x: LEFT - 18, y: grain + 36 });
  drawing.label("up", { x: LEFT - 18, y: grain + 80 }, { sides: ["below"], leader: "never" });
}

type Way = "up" | "right";

/** Where a breadth's top lies: upwards, unless it runs along the body. */
const wayUp = (plan: Plan, layout: Layout): Way =>
  layout === plan.layout && isAlong(plan.recipe) ? "right" : "up";

/** A small arrow in the corner of a breadth, towards its top. */
function drawWayUp(drawing: Drawing, { x, y, width }: Laid, way: Way): void {
  const at = x + Math.min(10, width / 4);
  const tail = way === "up" ? { x: at, y: y + 20 } : { x: at, y: y + 10 };
  const tip = way === "up" ? { x: at, y: y + 4 } : { x: at + 16, y: y + 10 };
  const near = { x: tip.x - Math.sign(tip.x - tail.x), y: tip.y - Math.sign(tip.y - tail.y) };
  drawing.line("dimension", [tail, near]);
  head(drawing, tail, tip, 6);
}

/** A bar of known length, since a printed or shown picture has no scale of its own. */
export function drawScale(drawing: Drawing, plan: Plan, { scale }: Sheet): void {
  const metric = plan.recipe.show === "cm";
  const inches = metric ? 50 / 2.54 : 20;
  const y = drawing.bottom + 16;
  const x = LEFT;
  drawing.line("body", [
    { x, y },
    { x: x + inches * scale, y },
  ]);
  for (const at of [0, 0.5, 1]) {
    drawing.line("body", [
      { x: x + inches * scale * at, y: y - 3 },
      { x: x + inches * scale * at, y: y + 3 },
    ]);
  }
  drawing.label(
    metric ? "50 cm at this scale" : "20 in at this scale",
    { x: x + inches * scale, y },
    { sides: ["right"], leader: "never", gap: 8 },
  );
  drawing.settle();
}

/** Which way the tops lie, in words. */
const waysWords = (plan: Plan): string =>
  isAlong(plan.recipe)
    ? "The hem of every length lies at the left, its top at the right,"
    : "All tops lie the same way";

export function layout(plan: Plan): Figure {
  const { tape } = printer(plan);
  const pieces = plan.layout.pieces.map(
    (piece) => `${piece.name} ${tape(piece.width)} across and ${tape(piece.length)} along`,
  );
  return drawLayout(plan).finish(
    "Layout on the cloth",
    `Cloth ${shownOf(plan, "cloth.width")} wide and ${shownOf(plan, "cloth.length")} long, right side up, one layer, drawn to scale. From its beginning: ${pieces.join("; ")}. ${waysWords(plan)} and every piece keeps the grain. ${shownOf(plan, "cloth.waste")} of the cloth is left over.`,
  );
}
