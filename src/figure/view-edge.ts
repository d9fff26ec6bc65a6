/** What stands above the waist seam in a view of the whole skirt: the band, or the bodice's edge with its covered cord. */
import { toFloat } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import type { Drawing } from "./drawing.ts";
import { LETTERING } from "./language.ts";
import { penOf, shownOf } from "./measure.ts";
import type { Point } from "./svg.ts";
import { torn } from "./torn.ts";

export interface Above {
  readonly title: string;
  readonly front: boolean;
  readonly across: (share: number) => number;
  readonly sees: (share: number) => boolean;
  readonly middle: number;
  /** Units to an inch. */
  readonly scale: number;
  /** The ends of the waist seam on the page. */
  readonly from: Point;
  readonly to: Point;
}

/** How much of a bodice is drawn, and how far it leans outwards. */
const BODICE = { up: 22, out: 5 } as const;
const TITLE = 52;

/** The waist seam is where every length begins: band or bodice stands above it. */
export function drawAbove(drawing: Drawing, plan: Plan, above: Above): void {
  const { to } = plan.recipe.attach;
  drawing.label(
    above.title,
    { x: above.middle, y: above.from.y - TITLE },
    { sides: ["on"], bold: true, leader: "never" },
  );
  const up = to === "waistband" ? drawBand(drawing, plan, above) : drawBodice(drawing, plan, above);
  const { from, to: end, middle } = above;
  drawing.label(
    above.front ? `waist seam ${shownOf(plan, "waist.seam")}` : edgeWords(plan),
    above.front ? from : { x: end.x - 3, y: end.y - (to === "waistband" ? up : 1) },
    {
      stand: { x: middle, y: from.y - up - 9 },
      sides: ["above"],
      gap: 0,
      width: 172,
      size: LETTERING.small,
    },
  );
}

/** What the side view says of the edge. */
function edgeWords(plan: Plan): string {
  const { to, piping } = plan.recipe.attach;
  if (to !== "waistband") return "bodice edge, piped";
  return `band ${shownOf(plan, "attach.band.depth")}${piping ? ", piped" : ""}`;
}

function drawBand(drawing: Drawing, plan: Plan, { from, to, scale }: Above): number {
  const depth = penOf(plan, "attach.band.depth") * scale;
  const corners = [from, to, { x: to.x, y: to.y - depth }, { x: from.x, y: from.y - depth }];
  drawing.line("finished", corners, { closed: true });
  if (plan.recipe.attach.piping) drawing.line("cord", [from, to], { soft: true });
  return depth;
}

/** The bodice's lower edge; of a part band only its place is seen, under the free front. */
function drawBodice(drawing: Drawing, plan: Plan, above: Above): number {
  const { from, to, middle, scale } = above;
  const tops = [
    { x: from.x - BODICE.out, y: from.y - BODICE.up },
    { x: to.x + BODICE.out, y: to.y - BODICE.up },
  ] as const;
  drawing.line("body", [from, tops[0]]);
  drawing.line("body", [to, tops[1]]);
  drawing.line("break", torn(tops[0], tops[1]));
  const half = (to.x - from.x) / 2;
  const xOf = (share: number): number => middle + above.across(share) * half;
  const cord = (a: number, b: number): void =>
    drawing.line(
      "cord",
      [
        { x: a, y: from.y },
        { x: b, y: from.y },
      ],
      { soft: true },
    );
  const opening = toFloat(plan.opening.share.value);
  if (plan.recipe.attach.to !== "part-band" || !(above.sees(opening) || above.sees(0))) {
    cord(from.x, to.x);
    return BODICE.up;
  }
  // From centre front to the opening: the free front's plain edge, the part band behind it.
  const left = opening <= 0.5;
  const ends = [0, opening].map((share) =>
    above.sees(share) ? xOf(share) : above.front ? (left ? to.x : from.x) : middle,
  ) as [number, number];
  const [a, b] = [Math.min(...ends), Math.max(...ends)];
  if (a > from.x) cord(from.x, a);
  if (b < to.x) cord(b, to.x);
  drawing.line("finished", [
    { x: a, y: from.y },
    { x: b, y: from.y },
  ]);
  const depth = penOf(plan, "attach.band.depth") * scale;
  drawing.line(
    "hidden",
    [
      { x: a, y: from.y },
      { x: a, y: from.y - depth },
      { x: b, y: from.y - depth },
      { x: b, y: from.y },
    ],
    { soft: true },
  );
  return BODICE.up;
}
