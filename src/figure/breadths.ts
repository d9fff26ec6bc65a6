/** The pieces of the skirt in their order, opened out flat at centre front: seams, opening, pocket, to scale. */
import { isZero, min, type Quantity, sub } from "../quantity/quantity.ts";
import type { Breadth, Plan } from "../solve/plan.ts";
import { isAlong } from "../solve/run.ts";
import { arrow, dimension } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { widthOf } from "./lettering.ts";
import { pen, penOf, printer, shownOf } from "./measure.ts";
import { type Name, nameRow } from "./row.ts";
import { rectangle } from "./svg.ts";

const LEFT = 26;
const WIDE = PICTURE.width - 2 * LEFT;

/** Where a place of the round lies across the page. */
const acrossOf = (plan: Plan): ((alongTop: number) => number) => {
  const round = penOf(plan, "skirt.round");
  return (alongTop) => LEFT + (alongTop / round) * WIDE;
};

/** Have the seams room for their places in one row under the hem? */
function isCrowded(plan: Plan): boolean {
  const words = places(plan, 0).map(({ text }) => widthOf(text, LETTERING.small) + 5);
  return words.reduce((sum, width) => sum + width, 0) > PICTURE.width - 2 * PICTURE.margin;
}

/** The pieces round the skirt. */
export const breadths = (plan: Plan): Figure =>
  drawBreadths(plan).finish(`The pieces round the ${plan.recipe.garment}`, description(plan));

/** Draws the pieces round the skirt. */
export function drawBreadths(plan: Plan): Drawing {
  const drawing = new Drawing("breadths");
  drawing.heading("The pieces joined, right side of the cloth. Cut top upwards.");
  drawing.note(
    "Opened out flat, to scale: both ends are centre front, and it goes round by the wearer's left. What stays open is measured from the cut top.",
  );
  const across = acrossOf(plan);
  const scale = WIDE / penOf(plan, "skirt.round");
  const top = drawing.bottom + 30;
  const foot = top + penOf(plan, "breadths.cut") * scale;
  drawOutline(drawing, top, foot);
  const lines = drawLines(drawing, plan, top, foot);
  drawSeams(drawing, plan, top, foot);
  if (isAlong(plan.recipe)) drawAlong(drawing, plan, top, foot, scale);
  drawOpenings(drawing, plan, top, scale);
  const [first] = plan.breadths.filter(
    ({ whole, from, to }) => whole && pen(from) >= 0 && pen(to) <= penOf(plan, "skirt.round"),
  );
  if (first)
    dimension(
      drawing,
      { x: across(pen(first.from)), y: foot + 9 },
      { x: across(pen(first.to)), y: foot + 9 },
      shownOf(plan, "breadths.finished"),
      { sides: ["below"] },
    );
  const crowded = isCrowded(plan);
  const named = crowded ? [plan.breadths[0], plan.breadths.at(-1)] : plan.breadths;
  for (const piece of new Set(named)) if (piece) namePiece(drawing, plan, piece, (top + foot) / 2 + 8);
  drawing.settle();
  const round = `The round is ${shownOf(plan, "skirt.round")}.`;
  if (crowded) drawing.note(`${round} The table has the seams' places along the cut top.`, { above: 10 });
  else {
    nameRow(drawing, places(plan, foot), drawing.bottom + 20, 60);
    drawing.note(
      `${round} The numbers under the hem are the seams' places along the cut top, from centre front by the nearer way.`,
      { above: 10 },
    );
  }
  if (lines) drawing.note(lines);
  if (isAlong(plan.recipe)) drawing.note(alongWords(plan));
  return drawing;
}

/** Cloth that runs along the body: the border above the hem, and the grain's arrow across the body. */
function drawAlong(drawing: Drawing, plan: Plan, top: number, foot: number, scale: number): void {
  if (plan.values.has("border.above")) {
    const hem = foot - penOf(plan, "hem.allowance") * scale;
    const head = hem - penOf(plan, "border.head") * scale;
    drawing.fill(
      "border",
      rectangle(LEFT, head, WIDE, (penOf(plan, "border.head") - penOf(plan, "border.above")) * scale),
    );
  }
  const y = top + (foot - top) * 0.34;
  arrow(drawing, { x: LEFT + WIDE / 2 - 40, y }, { x: LEFT + WIDE / 2 - 90, y }, true);
  drawing.label("grain", { x: LEFT + WIDE / 2 - 40, y }, { sides: ["right"], leader: "never" });
}

function drawOutline(drawing: Drawing, top: number, foot: number): void {
  const level = (y: number) => [
    { x: LEFT, y },
    { x: LEFT + WIDE, y },
  ];
  drawing.line("cut", level(top));
  drawing.line("cut", level(foot));
  for (const x of [LEFT, LEFT + WIDE])
    drawing.line("station", [
      { x, y: top - 6 },
      { x, y: foot + 6 },
    ]);
}

/** The dominant lines, which meet at every seam, from centre front round; returns what is to be said of them. */
function drawLines(drawing: Drawing, plan: Plan, top: number, foot: number): string | undefined {
  const { match, dominant, across: repeat } = plan.recipe.cloth.repeat ?? {};
  if (!match || !dominant || !repeat) return undefined;
  const across = acrossOf(plan);
  const round = penOf(plan, "skirt.round");
  if ((pen(repeat) / round) * WIDE >= 3)
    for (let at = pen(repeat); at < round - 1e-9; at += pen(repeat))
      drawing.line(
        "ease",
        [
          { x: across(at), y: top },
          { x: across(at), y: foot },
        ],
        { soft: true },
      );
  return `A dominant line of the pattern lies at centre front; from there ${shownOf(plan, "repeat.between")} repeats go to a breadth, ${shownOf(plan, "breadths.finished")}, and meet at every seam.`;
}

/** How the cloth lies on the body, and its border. */
const alongWords = (plan: Plan): string =>
  `The cloth runs along the body: its length goes round, its grain with it.${plan.values.has("border.above") ? ` The border lies ${shownOf(plan, "border.above")} to ${shownOf(plan, "border.head")} above the finished hem.` : ""}`;

function drawSeams(drawing: Drawing, plan: Plan, top: number, foot: number): void {
  const across = acrossOf(plan);
  for (const { alongTop, kind } of plan.seams) {
    if (kind === "slit") continue;
    const x = across(pen(alongTop));
    drawing.line("seam", [
      { x, y: top },
      { x, y: foot },
    ]);
  }
}

/** The opening and the pocket's slit: heavy lines as long as they stay unsewn. */
function drawOpenings(drawing: Drawing, plan: Plan, top: number, scale: number): void {
  const across = acrossOf(plan);
  const open = (alongTop: Quantity, from: number, to: number): number => {
    const x = across(pen(alongTop));
    drawing.line("finished", [
      { x, y: top + from * scale },
      { x, y: top + to * scale },
    ]);
    return x;
  };
  const unsewn = penOf(plan, "placket.unsewn");
  const x = open(plan.opening.alongTop, 0, unsewn);
  drawing.label(
    `open for ${shownOf(plan, "placket.unsewn")}`,
    { x, y: top },
    { sides: ["above"], gap: 4, width: 170 },
  );
  if (plan.pocket) {
    const at = open(plan.pocket.alongTop, penOf(plan, "pocket.from"), penOf(plan, "pocket.to"));
    drawing.label("pocket", { x: at, y: top }, { sides: ["above"], gap: 4, width: 60 });
  }
}

/** "breadth 3" as 3; the piece astride centre front stands at both ends. */
function namePiece(drawing: Drawing, plan: Plan, { name, from, to }: Breadth, y: number): void {
  const across = acrossOf(plan);
  const round = penOf(plan, "skirt.round");
  const word = name === "half breadth" ? "half" : name.replace(/^(?:breadth|length) /, "");
  const [start, end] = [pen(from), pen(to)];
  const middles = start < 0 ? [end / 2, round + start / 2] : [(start + end) / 2];
  for (const middle of middles) drawing.label(word, { x: across(middle), y }, { sides: ["on"], width: 40 });
}

/** Every seam's place along the cut top from centre front, by the nearer way. */
function places(plan: Plan, foot: number): Name[] {
  const across = acrossOf(plan);
  const round = plan.values.get("skirt.round")?.quantity as Quantity;
  const print = printer(plan);
  return plan.seams
    .filter(({ kind, alongTop }) => kind !== "slit" && !isZero(alongTop))
    .map(({ alongTop }) => ({
      text: print.tape(min(alongTop, sub(round, alongTop))),
      at: { x: across(pen(alongTop)), y: foot },
    }));
}

function description(plan: Plan): string {
  const names = plan.breadths.map(({ name }) => name).join(", ");
  const print = printer(plan);
  const seams = plan.seams
    .filter(({ kind }) => kind !== "slit")
    .map(({ alongTop }) => print.tape(alongTop))
    .join(", ");
  const pocket = plan.pocket
    ? ` The pocket's slit runs from ${shownOf(plan, "pocket.from")} to ${shownOf(plan, "pocket.to")} below the cut top at ${plan.pocket.station}.`
    : "";
  return `From centre front round by the wearer's left: ${names}; in all ${shownOf(plan, "skirt.round")}. Seams stand along the cut top at ${seams} from centre front by the left. The opening, at ${plan.opening.station}, stays unsewn for ${shownOf(plan, "placket.unsewn")} from the cut top.${pocket}`;
}
