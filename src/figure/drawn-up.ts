/** A drawn-up section seen from above: how deep the pleats stand, on which side, how close, and how close they could. */
import type { GaugedSection, Plan } from "../solve/plan.ts";
import type { Box } from "./box.ts";
import { dimension, extension } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { chiefSection, pen, penOf, printer, shownOf } from "./measure.ts";
import { type Serpentine, serpentine } from "./serpentine.ts";
import { edgeAt, type SewnEdge } from "./sewn-edge.ts";
import { through } from "./svg.ts";

const LEFT = 60;
const WIDE = 190;
/** The deepest a pleat may stand in the picture. */
const DEEPEST = 190;
/** Thickness of the edge that the ridges stand against, for the picture only. */
const BAND = 6;

interface Stretch {
  readonly section: GaugedSection;
  readonly pleats: number;
  /** Bites of the stretch, in units of the picture. */
  readonly bites: readonly number[];
  /** One wall's thickness, in units. */
  readonly wall: number;
  readonly scale: number;
  readonly edge: SewnEdge;
}

/** So many pleats that the picture is about as deep as it is wide: four to nine. */
function stretchOf(plan: Plan): Stretch {
  const section = chiefSection(plan);
  const spacing = pen(section.spacing);
  const depth = pen(section.cloth) / section.pleats / 2;
  const wished = Math.round((WIDE / DEEPEST) * (depth / spacing));
  const pleats = Math.min(section.pleats, Math.max(4, Math.min(9, wished)));
  const scale = Math.min(WIDE / (pleats * spacing), DEEPEST / depth);
  const bites = section.bites.slice(0, 2 * pleats).map((bite) => pen(bite) * scale);
  return {
    section,
    pleats,
    bites,
    scale,
    edge: edgeAt(plan, section),
    wall: (penOf(plan, "gauging.packed") / 2) * scale,
  };
}

/** How far the folds stand from the thread, on one side. */
const reach = (bites: readonly number[], side: "inside" | "outside"): number =>
  Math.max(...bites.filter((_, i) => i % 2 === (side === "inside" ? 0 : 1))) / 2;

interface Laid {
  readonly shape: Serpentine;
  readonly inside: number;
  readonly outside: number;
  readonly thread: number;
}

/** Lays one serpentine down below everything so far: cloth cut through, thread, the edge against its ridges. */
function lay(drawing: Drawing, { bites, wall, edge }: Stretch, spacing: number, above: number): Laid {
  const thread = drawing.bottom + above + reach(bites, "inside") + wall / 2;
  const shape = serpentine({ left: LEFT + 10, thread, spacing, bites, wall });
  const outside = thread + reach(bites, "outside") + wall / 2;
  const [from, to] = [LEFT, shape.right + 10];
  drawing.fill("wall", through([...shape.upper, ...[...shape.lower].reverse()], true));
  drawing.line("body", [...shape.upper, ...[...shape.lower].reverse()], { closed: true });
  drawing.line("thread", [
    { x: from, y: thread },
    { x: to, y: thread },
  ]);
  for (const x of shape.walls) drawing.dot({ x, y: thread }, 1.5);
  const across = (y: number) => [
    { x: from, y },
    { x: to, y },
  ];
  if (edge.piped) drawing.line("cord", across(outside + 2.5));
  else drawing.line("finished", across(outside + 1.5));
  drawing.line("finished", across(outside + 1.5 + BAND));
  return { shape, outside, thread, inside: thread - reach(bites, "inside") - wall / 2 };
}

export function drawDrawnUp(plan: Plan): Drawing {
  const drawing = new Drawing("drawn-up");
  const stretch = stretchOf(plan);
  const { section, pleats, scale } = stretch;
  const { fine } = printer(plan);
  drawing.heading(
    `Looking down on the fold: inside of the ${plan.recipe.garment} above, outside and ${stretch.edge.name} below.`,
  );
  drawing.note(
    `A stretch of ${pleats} of the ${section.pleats} pleats of the ${section.name}, in true proportion; the cloth is drawn as thick as it is.`,
  );
  const drawn = lay(drawing, stretch, pen(section.spacing) * scale, 44);
  measureDrawnUp(drawing, plan, stretch, drawn);
  labelParts(drawing, stretch, drawn);
  drawing.settle();

  if (section.style !== "even") drawEvenBeside(drawing, stretch);

  drawing.note(`The same ${pleats} pleats packed as close as the cloth allows:`, { above: 14 });
  const packed = lay(drawing, stretch, penOf(plan, "gauging.packed") * scale, 12);
  const [first, second] = [packed.shape.walls[0] ?? 0, packed.shape.walls[2] ?? 0];
  const y = packed.outside + BAND + 16;
  for (const x of [first, second]) extension(drawing, { x, y: packed.thread }, { x, y: y + 3 });
  dimension(drawing, { x: first, y }, { x: second, y }, `packed ${shownOf(plan, "gauging.packed")}`, {
    sides: ["below"],
  });
  drawing.settle();
  drawing.note(
    `Set ${fine(section.spacing)} apart; packed they are ${shownOf(plan, "gauging.packed")} apart, and nothing goes closer.`,
  );
  return drawing;
}

/** For long-and-short bites the same pleats in even ones: as deep, as close, the thread elsewhere. */
function drawEvenBeside(drawing: Drawing, stretch: Stretch): void {
  const { bites, section, scale } = stretch;
  const mean = bites.reduce((sum, bite) => sum + bite, 0) / bites.length;
  drawing.note(
    "In even bites they would be as deep and as close, but the thread would run through their middle:",
    {
      above: 14,
    },
  );
  lay(drawing, { ...stretch, bites: bites.map(() => mean) }, pen(section.spacing) * scale, 12);
  drawing.settle();
}

/** Depth at the right, spacing above. */
function measureDrawnUp(drawing: Drawing, plan: Plan, { section }: Stretch, laid: Laid): void {
  const { shape, inside, outside } = laid;
  const x = shape.right + 18;
  extension(drawing, { x: shape.right - 4, y: inside }, { x: x + 4, y: inside });
  extension(drawing, { x: shape.right + 10, y: outside }, { x: x + 4, y: outside });
  dimension(drawing, { x, y: inside }, { x, y: outside }, `depth ${shownOf(plan, "gauging.depth")}`, {
    sides: ["right", "left"],
    width: 70,
  });
  const [first, second] = [shape.walls[0] ?? 0, shape.walls[2] ?? 0];
  const y = inside - 12;
  for (const wall of [first, second]) extension(drawing, { x: wall, y: laid.thread }, { x: wall, y: y - 3 });
  dimension(drawing, { x: first, y }, { x: second, y }, `spacing ${printer(plan).fine(section.spacing)}`, {
    sides: ["above", "right"],
    width: 150,
  });
}

/** Which is which: inside, outside, the ridge that is sewn, the thread, the edge. */
function labelParts(drawing: Drawing, { section, pleats, edge }: Stretch, laid: Laid): void {
  const { shape, inside, outside, thread } = laid;
  const wall = (i: number): number => shape.walls[i] ?? 0;
  const back = 2 * Math.ceil(pleats / 2);
  drawing.label(
    section.style === "even" ? "free fold, inside" : "free fold, inside: nearly all the depth",
    { x: (wall(back) + wall(back + 1)) / 2, y: inside },
    { stand: { x: 265, y: inside - 10 }, sides: ["above"], width: 130 },
  );
  const foot = outside + BAND + 6;
  drawing.label(
    `ridge outside: sewn to the ${edge.name}, right sides together`,
    { x: (wall(3) + wall(4)) / 2, y: outside - 2 },
    { stand: { x: 190, y: foot + 8 }, sides: ["below"], width: 170 },
  );
  drawing.label(edge.name, { x: LEFT, y: outside + 1.5 + BAND / 2 }, { sides: ["left"], width: 50 });
  drawing.label("thread", { x: LEFT, y: thread }, { sides: ["left"] });
  drawing.keepClear(boundsOf(laid));
}

function boundsOf({ shape, inside, outside }: Laid): Box {
  return { x: shape.left, y: inside, width: shape.right - shape.left, height: outside - inside };
}

/** The drawn-up stretch, its depth and spacing, and the same pleats packed. */
export function drawnUp(plan: Plan): Figure {
  const section = chiefSection(plan);
  const { fine } = printer(plan);
  const depth = shownOf(plan, "gauging.depth");
  const side =
    section.style === "even"
      ? "the thread runs through the middle of their depth"
      : "the long stitches lie outside and the cloth folds away from them, so nearly all the depth stands inside and the thread runs close to the outer ridges";
  return drawDrawnUp(plan).finish(
    "Pleats drawn up, seen from above",
    `Upright pleats with round backs, ${depth} deep from ridge to ridge, ${fine(section.spacing)} from one to the next; ${side}. The outer ridges lie against the ${edgeAt(plan, section).name} and are sewn to it, right sides together. Below, the same pleats packed: ${shownOf(plan, "gauging.packed")} from one to the next, closer than which nothing fits.`,
  );
}
