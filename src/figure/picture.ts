/**
 * The garment as a small picture without words, for lists of garments: from the front and from the wearer's left, over its
 * supports, its fullness as folds. The same outline as the figure of the finished garment, at the size of a thumb.
 */
import type { Element } from "hast";
import { toFloat } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import { type Hang, hangOf, levelLines, slope } from "./hang.ts";
import { pen, penOf } from "./measure.ts";
import { el, type Point, through } from "./svg.ts";

/** What the picture takes up, in its own units; its place in a list is laid out before it is there. */
export const PICTURE_SIZE = { width: 150, height: 100 } as const;
const MARGIN = 6;
const GAP = 10;
/** Above the waist stands a strip for the band or the bodice's edge. */
const BAND = 4;
const STEPS = 6;
const FOLDS = 18;

interface Side {
  readonly hang: Hang;
  /** How far the hem stands out at the left and the right of the page, in inches. */
  readonly edges: readonly [number, number];
  /** Where a share of the waist, from centre front by the left, is seen, -1 to 1; nothing where it is not. */
  readonly sees: (share: number) => number | undefined;
}

const widthOf = ({ hang, edges }: Side): number => 2 * hang.waist + edges[0] + edges[1];

/** The line that falls from a place `at` across the view (-1 to 1), from one share of its way down to another. */
function fall({ hang, edges }: Side, at: number, from: number, to: number): Point[] {
  return Array.from({ length: STEPS + 1 }, (_, i) => {
    const down = from + ((to - from) * i) / STEPS;
    const out = hang.waist + slope(at < 0 ? edges[0] : edges[1], down);
    return { x: at * out, y: down * hang.height };
  });
}

/** Is the fullness set in at this share of the waist? A flat part has no folds. */
function isFull(plan: Plan, share: number): boolean {
  const at = share * penOf(plan, "waist.seam");
  return plan.sections.some(
    ({ set, from, waist }) => set !== "flat" && at >= pen(from) && at <= pen(from) + pen(waist),
  );
}

/** A picture of this size needs no finer places. */
const tenth = (n: number): number => Math.round(n * 10) / 10;

/** One view as an outline and its folds, in inches from the middle of its waist. */
function drawn(plan: Plan, side: Side): { outline: Point[]; folds: Point[][] } {
  const folds: Point[][] = [];
  for (let i = 0; i < FOLDS; i += 1) {
    const share = (i + 0.5) / FOLDS;
    const at = side.sees(share);
    if (at === undefined || !isFull(plan, share)) continue;
    folds.push(fall(side, at, 0, i % 2 === 0 ? 0.3 : 0.16));
    if (i % 2 === 0) folds.push(fall(side, at, 0.8, 1));
  }
  const opening = side.sees(toFloat(plan.opening.share.value));
  if (opening !== undefined)
    folds.push(fall(side, opening, 0, Math.min(0.9, penOf(plan, "skirt.placket") / side.hang.height)));
  for (const height of levelLines(plan)) {
    const down = 1 - height / side.hang.height;
    folds.push([-1, 1].map((at) => fall(side, at, down, down)[0] as Point));
  }
  return { outline: [...fall(side, -1, 0, 1), ...fall(side, 1, 0, 1).reverse()], folds };
}

/** An `svg` element, 150 by 100, that stands alone; it says nothing to who cannot see it, the list's words do. */
export function picture(plan: Plan): Element {
  const hang = hangOf(plan);
  const sides: readonly Side[] = [
    {
      hang,
      edges: [hang.right, hang.left],
      sees: (share) => (share <= 0.25 || share >= 0.75 ? Math.sin(2 * Math.PI * share) : undefined),
    },
    {
      hang,
      edges: [hang.front, hang.back],
      sees: (share) => (share <= 0.5 ? -Math.cos(2 * Math.PI * share) : undefined),
    },
  ];
  const { width, height } = PICTURE_SIZE;
  const across = sides.reduce((sum, side) => sum + widthOf(side), 0);
  const scale = Math.min((width - 2 * MARGIN - GAP) / across, (height - 2 * MARGIN - BAND) / hang.height);
  const top = (height + BAND - hang.height * scale) / 2;
  let left = (width - GAP - across * scale) / 2;
  let [outlines, folds] = ["", ""];
  for (const side of sides) {
    const middle = left + (hang.waist + side.edges[0]) * scale;
    const put = ({ x, y }: Point): Point => ({ x: tenth(middle + x * scale), y: tenth(top + y * scale) });
    const [half, band] = [hang.waist, BAND / scale];
    const parts = drawn(plan, side);
    outlines += through(parts.outline.map(put), true);
    outlines += `${through(
      [
        { x: -half, y: 0 },
        { x: -half, y: -band },
        { x: half, y: -band },
        { x: half, y: 0 },
      ].map(put),
    )}`;
    folds += parts.folds.map((points) => through(points.map(put))).join("");
    left += widthOf(side) * scale + GAP;
  }
  return el("svg", { viewBox: `0 0 ${width} ${height}` }, [
    el("title", {}, [`The ${plan.recipe.garment}, front and side`]),
    el("path", { d: folds, fill: "none", stroke: "currentColor", strokeWidth: "0.5" }),
    el("path", {
      d: outlines,
      fill: "none",
      stroke: "currentColor",
      strokeWidth: "1.1",
      strokeLineJoin: "round",
    }),
  ]);
}
