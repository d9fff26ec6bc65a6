/** Gauging close up: a stretch lying flat, from the inside, in true proportion. */
import { printExactly } from "../quantity/print.ts";
import { add, inches, type Quantity, sub } from "../quantity/quantity.ts";
import type { Plan, Section } from "../solve/plan.ts";
import { arrow, dimension, extension } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { PICTURE } from "./language.ts";
import { chiefSection, pen, penOf, printer, shownOf, turnDownAt } from "./measure.ts";
import { type Point, rectangle } from "./svg.ts";

/** Where the cloth lies in the picture: its right-hand end is where the sewing begins. */
const LEFT = 66;
const RIGHT = 326;
/** Deepest stretch of cloth drawn below the fold, in units. */
const DEEPEST = 150;

const FEWEST_PLEATS = 5;
const MOST_PLEATS = 6;

interface Stretch {
  readonly section: Section;
  readonly pleats: number;
  /** Units to an inch. */
  readonly scale: number;
  readonly fold: number;
}

/** Marks run from the section's beginning, at the right, to the left. */
const x = ({ scale }: Stretch, mark: Quantity): number => RIGHT - pen(mark) * scale;

export function drawGauging(plan: Plan): Drawing {
  const drawing = new Drawing("gauging");
  const section = chiefSection(plan);
  const pleats = Math.min(section.pleats, penOf(plan, "gauging.pitch") > 1 ? FEWEST_PLEATS : MOST_PLEATS);
  drawing.heading("Inside of the skirt, lying flat. Fold and top upwards.");
  drawing.note(
    `The first ${pleats} of ${section.pleats} pleats of the ${section.name}, in true proportion. Sewn from right to left.`,
  );
  const length = pen(section.marks[2 * pleats] ?? section.cloth);
  const fold = drawing.bottom + 34;
  const stretch: Stretch = { section, pleats, scale: (RIGHT - LEFT) / length, fold };
  drawCloth(drawing, plan, stretch);
  drawRows(drawing, plan, stretch);
  drawBites(drawing, plan, stretch);
  drawing.settle();
  drawing.note(
    section.style === "even"
      ? "Every row goes through the same marks. Dots are needle marks: two to a pleat."
      : "Every row goes through the same marks. The long stitch lies outside, the short one inside: so nearly all the depth will stand inside.",
  );
  return drawing;
}

/** The fold, the turned-down layer with its cut edge, the wrong side below it, the stay between the layers. */
function drawCloth(drawing: Drawing, plan: Plan, stretch: Stretch): void {
  const { section, scale, fold } = stretch;
  const turned = turnDownAt(plan, pen(section.clothFrom)) * scale;
  const foot = fold + Math.min(DEEPEST, turned + 22);
  const edge = fold + turned;
  const shown = printer(plan).tape(inches(exactTurnDown(plan, section)));
  const far = LEFT - 10;
  drawing.line("fold", [
    { x: far, y: fold },
    { x: RIGHT, y: fold },
  ]);
  const cut = edge < foot - 4;
  if (cut) {
    drawing.line("cut", [
      { x: far, y: edge },
      { x: RIGHT, y: edge },
    ]);
    drawing.fill("wrong", rectangle(far, edge, RIGHT - far, foot - edge));
  }
  drawing.line("seam", [
    { x: RIGHT, y: fold },
    { x: RIGHT, y: foot },
  ]);
  drawing.line("break", torn({ x: far, y: fold }, { x: far, y: foot }));
  drawing.line("break", torn({ x: far, y: foot }, { x: RIGHT, y: foot }));
  drawing.label(
    "fold",
    { x: LEFT + 20, y: fold },
    { sides: ["above"], gap: 6, leader: "always", within: { x: 0, y: fold - 34, width: 120, height: 32 } },
  );
  drawing.label(
    cut
      ? `turned-down layer; its cut edge is ${shown} below the fold here`
      : `turned-down layer; its cut edge is further down, ${shown} below the fold here`,
    { x: (LEFT + RIGHT) / 2, y: (fold + Math.min(edge, foot)) / 2 + 30 },
    { sides: ["on", "below"], leader: "never", width: 190 },
  );
  const { stay } = plan.recipe.fullness;
  if (stay) drawStay(drawing, plan, stretch);
}

/** The turn-down at the stretch's beginning as an exact length, from the station that stands there or the nearest. */
function exactTurnDown(plan: Plan, section: Section): string {
  return plan.balance.length > 0 ? nearestTurnDown(plan, section) : "0";
}
