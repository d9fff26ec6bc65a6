/** Gauging close up: a stretch lying flat, seen from the inside, in true proportion. */
import { type Quantity, sub } from "../quantity/quantity.ts";
import type { Plan, Section } from "../solve/plan.ts";
import { arrow, dimension, extension } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { chiefSection, pen, penOf, placeName, printer, turnDownNear } from "./measure.ts";
import { rectangle } from "./svg.ts";
import { torn } from "./torn.ts";

/** The stretch in the picture; its right-hand end is where the sewing begins. */
const LEFT = 80;
const RIGHT = 300;
/** The cloth goes on past both ends of the stretch. */
const PAST = 14;
const DEEPEST = 170;
const LEAST_DEEP = 70;
const MARK = 1.5;

interface Stretch {
  readonly section: Section;
  readonly pleats: number;
  /** Units to an inch. */
  readonly scale: number;
  /** Height of the fold on the page. */
  readonly fold: number;
}

/** Marks run from the section's beginning, at the right, to the left. */
const across = ({ scale }: Stretch, mark: Quantity): number => RIGHT - pen(mark) * scale;

/** A stretch of five pleats where they are deep, six where they are not. */
const pleatsShown = (section: Section): number =>
  Math.min(section.pleats, pen(section.cloth) / section.pleats > 1 ? 5 : 6);

export function drawGauging(plan: Plan): Drawing {
  const drawing = new Drawing("gauging");
  const section = chiefSection(plan);
  const pleats = pleatsShown(section);
  const share = pen(section.from) / penOf(plan, "waist.seam");
  const start = placeName(plan, share) ?? "its beginning";
  drawing.heading("Inside of the skirt, lying flat. Fold and top upwards.");
  drawing.note(
    `The ${section.name}: the first ${pleats} of its ${section.pleats} pleats, from ${start}, in true proportion.`,
  );
  const fold = drawing.bottom + 60;
  const length = pen(section.marks[2 * pleats] ?? section.cloth);
  const stretch: Stretch = { section, pleats, scale: (RIGHT - LEFT) / length, fold };
  const foot = drawCloth(drawing, plan, stretch);
  drawBites(drawing, plan, stretch);
  drawRows(drawing, plan, stretch);
  if (plan.recipe.fullness.stay) drawStay(drawing, plan, stretch);
  drawing.settle();
  const way = Math.max(foot, drawing.bottom) + 12;
  arrow(drawing, { x: RIGHT, y: way }, { x: RIGHT - 60, y: way });
  drawing.label("way of sewing", { x: RIGHT - 60, y: way }, { sides: ["left"], leader: "never" });
  drawing.settle();
  drawing.note(
    section.style === "even"
      ? "All rows go through the same marks, two to a pleat. The knots are inside, over a scrap of tape."
      : "All rows go through the same marks, two to a pleat. Long stitch outside, short stitch inside: nearly all the depth will stand inside. The knots are inside, over a scrap of tape.",
  );
  return drawing;
}

/** The fold, the turned-down layer to its cut edge, the wrong side below, the stay between the layers. Returns the foot. */
function drawCloth(drawing: Drawing, plan: Plan, stretch: Stretch): number {
  const { section, scale, fold } = stretch;
  const turnDown = turnDownNear(plan, section.clothFrom);
  const edge = fold + pen(turnDown) * scale;
  const foot = fold + Math.max(LEAST_DEEP, Math.min(DEEPEST, edge - fold + 24));
  const [from, to] = [LEFT - PAST, RIGHT + PAST];
  const cut = edge < foot - 8;
  drawing.line("fold", [
    { x: from, y: fold },
    { x: to, y: fold },
  ]);
  if (cut) {
    drawing.line("cut", [
      { x: from, y: edge },
      { x: to, y: edge },
    ]);
    drawing.fill("wrong", rectangle(from, edge, to - from, foot - edge));
    drawing.keepClear({ x: from, y: edge, width: to - from, height: foot - edge });
  }
  drawing.line("station", [
    { x: RIGHT, y: fold },
    { x: RIGHT, y: foot },
  ]);
  drawing.line("break", torn({ x: from, y: fold }, { x: from, y: foot }));
  drawing.line("break", torn({ x: to, y: fold }, { x: to, y: foot }));
  drawing.line("break", torn({ x: from, y: foot }, { x: to, y: foot }));
  drawing.label("fold", { x: from, y: fold }, { sides: ["left"], leader: "never" });
  const depth = `cut edge, ${printer(plan).tape(turnDown)} below the fold at the dashed line`;
  if (cut)
    drawing.label(
      depth,
      { x: LEFT + 130, y: edge },
      { stand: { x: LEFT + 130, y: foot + 2 }, sides: ["below"], width: 200 },
    );
  else
    drawing.label(
      `turned-down layer: its ${depth}`,
      { x: (LEFT + RIGHT) / 2, y: foot - 40 },
      {
        sides: ["on"],
        width: 190,
        leader: "never",
      },
    );
  const last = fold + penOf(plan, "gauging.lastRow") * scale;
  drawing.label(
    "turned-down layer: right side of the cloth",
    { x: (LEFT + RIGHT) / 2, y: (last + Math.min(edge, foot)) / 2 },
    { sides: ["on"], width: 215, leader: "never" },
  );
  return foot;
}

/** The stay is cut three eighths of an inch (1 cm) deeper than the last row. */
function drawStay(drawing: Drawing, plan: Plan, { fold, scale }: Stretch): void {
  const past = plan.recipe.show === "cm" ? 1 / 2.54 : 3 / 8;
  const y = fold + (penOf(plan, "gauging.lastRow") + past) * scale;
  drawing.line("hidden", [
    { x: LEFT - PAST, y },
    { x: RIGHT + PAST, y },
  ]);
  drawing.label(
    "edge of the stay",
    { x: LEFT - PAST, y },
    {
      stand: { x: LEFT - PAST - 6, y: fold + 27 + 33 * plan.rows.length },
      sides: ["left"],
      width: 60,
    },
  );
}

/** The threads through their marks, each row at its real distance, knot and tail at the right. */
function drawRows(drawing: Drawing, plan: Plan, stretch: Stretch): void {
  const { section, pleats, scale, fold } = stretch;
  const { tape } = printer(plan);
  const marks = section.marks.slice(0, 2 * pleats + 1).map((mark) => across(stretch, mark));
  for (const [row, below] of plan.rows.entries()) {
    const y = fold + pen(below) * scale;
    for (let i = 0; i + 1 < marks.length; i += 1) {
      const [a, b] = [marks[i] as number, marks[i + 1] as number];
      drawing.line(i % 2 === 0 ? "under" : "over", [
        { x: a, y },
        { x: b, y },
      ]);
    }
    drawing.line("under", [
      { x: LEFT, y },
      { x: LEFT - PAST + 3, y },
    ]);
    for (const mark of marks) drawing.dot({ x: mark, y }, MARK);
    drawing.line("over", [
      { x: RIGHT, y },
      { x: RIGHT + 6, y: y + 1 },
      { x: RIGHT + 11, y: y - 1 },
    ]);
    drawing.dot({ x: RIGHT + 1, y }, 2.9);
    drawing.label(
      `row ${row + 1}: ${tape(below)}`,
      { x: LEFT - PAST, y },
      { stand: { x: LEFT - PAST - 6, y: fold + 27 + 33 * row }, sides: ["left"], width: 50 },
    );
    if (row === 0) drawing.label("knot", { x: RIGHT + PAST, y }, { sides: ["right"], leader: "moved" });
  }
}

/** One bite on each side, one pleat: their sizes above the fold, carried up from the marks they lie between. */
function drawBites(drawing: Drawing, plan: Plan, stretch: Stretch): void {
  const { section, pleats, scale, fold } = stretch;
  const { part } = printer(plan);
  const y = fold - 13;
  const row = fold + pen(plan.rows[0] as Quantity) * scale;
  const size = (from: number, to: number): Quantity =>
    sub(section.marks[to] as Quantity, section.marks[from] as Quantity);
  const measures: readonly (readonly [number, number, string])[] = [
    [0, 1, "outside"],
    [5, 6, "inside"],
    [2 * pleats - 2, 2 * pleats, "one pleat"],
  ];
  for (const [from, to, words] of measures) {
    if (to >= section.marks.length) continue;
    const ends = [from, to].map((i) => across(stretch, section.marks[i] as Quantity)) as [number, number];
    for (const end of ends) extension(drawing, { x: end, y: row }, { x: end, y: y - 3 });
    dimension(drawing, { x: ends[1], y }, { x: ends[0], y }, `${words} ${part(size(from, to))}`, {
      sides: ["above"],
      width: 74,
    });
  }
}

/** Where the needle goes in and out, drawn from the plan's own marks and rows. */
export function gauging(plan: Plan): Figure {
  const section = chiefSection(plan);
  const { tape, part } = printer(plan);
  const rows = plan.rows.map(tape).join(", ");
  const [first, second] = section.bites as [Quantity, Quantity];
  return drawGauging(plan).finish(
    "Gauging, close up from the inside",
    `A flat stretch of the ${section.name} seen from the inside, the fold at the top. ${plan.rows.length} rows of thread run ${rows} below the fold, all through the same needle marks. From the knot at the right the first bite, ${part(first)}, lies outside, the next, ${part(second)}, inside, and so on by turns: two bites make one pleat, ${section.pleats} pleats the section. The thread is drawn solid where it lies inside, dashed where it lies outside.`,
  );
}
