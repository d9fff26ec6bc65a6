/** The layout on the cloth, to scale: selvedges, grain, the way up, every piece with its size, what is left over. */
import { equal } from "../quantity/quantity.ts";
import type { Piece, Plan } from "../solve/plan.ts";
import { arrow, dimension, head } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { LETTERING } from "./language.ts";
import { linesOf, widthOf } from "./lettering.ts";
import { pen, printer, shownOf } from "./measure.ts";
import { rectangle } from "./svg.ts";

/** The cloth's left edge on the page; lengths and grain stand left of it, small pieces' names right of it. */
const LEFT = 92;
const WIDEST = 150;
const LONGEST = 640;
/** Wider than this a margin for names is not left. */
const NAMES = 104;

interface Sheet {
  readonly top: number;
  /** Units to an inch. */
  readonly scale: number;
}

interface Laid {
  readonly piece: Piece;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
}

export function drawLayout(plan: Plan): Drawing {
  const drawing = new Drawing("layout");
  const { layout, recipe } = plan;
  drawing.heading("Right side of the cloth up. The top of every breadth lies upwards.");
  drawing.note("To scale, one layer of cloth. Sizes are across × along the cloth.");
  const sheet: Sheet = {
    top: drawing.bottom + 34,
    scale: Math.min(WIDEST / pen(layout.width), LONGEST / pen(layout.length)),
  };
  const pieces = layout.pieces.map((piece) => laid(piece, sheet));
  drawCloth(drawing, plan, sheet, pieces);
  for (const piece of pieces) drawing.line("cut", corners(piece), { closed: true });
  for (const piece of pieces.filter(({ piece }) => isBreadth(piece))) drawWayUp(drawing, piece);
  namePieces(drawing, plan, pieces);
  drawing.settle();
  drawScale(drawing, plan, sheet);
  const share = shownOf(plan, "cloth.waste");
  drawing.note(`Left over: ${share} of the cloth. Grain runs along the cloth in every piece.`);
  if (recipe.cloth.repeat?.down)
    drawing.note(
      `Every breadth begins at the same line of the pattern, which repeats every ${printer(plan).tape(recipe.cloth.repeat.down)} along the cloth; cut it to ${shownOf(plan, "breadths.cut")}.`,
    );
  return drawing;
}

const isBreadth = ({ name }: Piece): boolean => /^(half )?breadth/.test(name);

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
function drawCloth(drawing: Drawing, plan: Plan, { top, scale }: Sheet, pieces: readonly Laid[]): void {
  const { layout } = plan;
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
  dimension(drawing, { x: LEFT, y: top - 14 }, { x: right, y: top - 14 }, shownOf(plan, "cloth.width"), {
    sides: ["above"],
  });
  dimension(drawing, { x: 40, y: foot }, { x: 40, y: top }, shownOf(plan, "cloth.length"), {
    sides: ["left", "right"],
    width: 74,
    at: 0.55,
  });
  const grain = top + Math.min(90, length);
  arrow(drawing, { x: LEFT - 18, y: grain }, { x: LEFT - 18, y: top + 10 }, true);
  drawing.label("grain", { x: LEFT - 18, y: (grain + top) / 2 }, { sides: ["left"], leader: "never" });
}

/** A small arrow in the corner of a breadth, towards its top. */
function drawWayUp(drawing: Drawing, { x, y, width }: Laid): void {
  const at = x + Math.min(10, width / 4);
  drawing.line("dimension", [
    { x: at, y: y + 20 },
    { x: at, y: y + 5 },
  ]);
  head(drawing, { x: at, y: y + 20 }, { x: at, y: y + 4 }, 6);
}

/** Names and sizes: inside the piece where they fit, else at the right; a stack of equal small pieces is named once. */
function namePieces(drawing: Drawing, plan: Plan, pieces: readonly Laid[]): void {
  const small: Laid[][] = [];
  for (const piece of pieces) {
    if (nameInside(drawing, plan, piece)) continue;
    const stack = small.at(-1);
    const last = stack?.at(-1);
    if (stack && last && follows(last, piece)) stack.push(piece);
    else small.push([piece]);
  }
  for (const stack of small) {
    const [first, last] = [stack[0], stack.at(-1)] as [Laid, Laid];
    const y = (first.y + last.y + last.length) / 2;
    const name =
      stack.length === 1 ? first.piece.name : `${stem(first)}s ${number(first)} to ${number(last)}, each`;
    const x = first.x + first.width;
    if (stack.length > 1) {
      drawing.line("leader", [
        { x: x - 6, y: first.y + 2 },
        { x: x - 3, y: first.y + 2 },
        { x: x - 3, y: last.y + last.length - 2 },
        { x: x - 6, y: last.y + last.length - 2 },
      ]);
    }
    const right = LEFT + pen(plan.layout.width) * (first.width / pen(first.piece.width));
    drawing.label(
      `${name} ${sizeOf(plan, first.piece)}`,
      { x: x - 3, y },
      { stand: { x: right + 6, y }, sides: ["right"], width: NAMES },
    );
  }
}

const stem = ({ piece }: Laid): string => piece.name.replace(/ \d+$/, "");
const number = ({ piece }: Laid): string => / (\d+)$/.exec(piece.name)?.[1] ?? "";

/** Does a piece lie next below an equal one of its own kind? */
function follows(above: Laid, below: Laid): boolean {
  return (
    stem(above) === stem(below) &&
    number(below) !== "" &&
    equal(above.piece.x, below.piece.x) &&
    equal(above.piece.width, below.piece.width) &&
    equal(above.piece.length, below.piece.length) &&
    Math.abs(above.y + above.length - below.y) < 0.01
  );
}

const sizeOf = (plan: Plan, { width, length }: Piece): string => {
  const { tape } = printer(plan);
  return `${tape(width)} × ${tape(length)}`;
};

/** Writes name and size into a piece if there is room, clear of its arrow. */
function nameInside(drawing: Drawing, plan: Plan, { piece, x, y, width, length }: Laid): boolean {
  const size = LETTERING.small;
  const room = width - 8;
  const words = [piece.name, sizeOf(plan, piece)].flatMap((text) => linesOf(text, room, size));
  const whole = [piece.name, ...sizeOf(plan, piece).split(" × ")].every((text) =>
    text.split(" ").every((word) => widthOf(word, size) <= room),
  );
  const height = words.length * size * LETTERING.line;
  if (!whole || height > length - 6 || words.length > 4) return false;
  const wide = Math.max(...words.map((line) => widthOf(line, size)));
  drawing.set(words, size, { x: x + (width - wide) / 2, y: y + (length - height) / 2, width: wide, height });
  return true;
}

/** A bar of known length, since a printed or shown picture has no scale of its own. */
function drawScale(drawing: Drawing, plan: Plan, { scale }: Sheet): void {
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

export function layout(plan: Plan): Figure {
  const { tape } = printer(plan);
  const pieces = plan.layout.pieces.map(
    (piece) => `${piece.name} ${tape(piece.width)} across and ${tape(piece.length)} along`,
  );
  return drawLayout(plan).finish(
    "Layout on the cloth",
    `Cloth ${shownOf(plan, "cloth.width")} wide and ${shownOf(plan, "cloth.length")} long, right side up, one layer, drawn to scale. From its beginning: ${pieces.join("; ")}. All tops lie the same way and every piece keeps the grain. ${shownOf(plan, "cloth.waste")} of the cloth is left over.`,
  );
}
