/** Hooks inside the band's upper end, their eyes on the lap. */
import { toCount } from "../../quantity/quantity.ts";
import type { Plan, Value } from "../../solve/plan.ts";
import type { Drawing } from "../drawing.ts";
import { pen, penOf, shownOf } from "../measure.ts";
import type { Point } from "../svg.ts";
import { goesOn, p, point, say, upright, way } from "./parts.ts";

/** The band is drawn so deep, or less where its lap is long. */
const DEEP = 56;
const LAP = 62;
/** Room for the lap and for eyes that stand further in. */
const MOST = 104;
/** Where the upper end is turned back, and where the lap's end lies. */
const [BACK, UNDER] = [112, 138] as const;

/** A counted value of the plan, such as its hooks. */
export const count = (plan: Plan, name: string): number => toCount((plan.values.get(name) as Value).quantity);

/** How far the hooks stand back from the end: a rule of the chapter, no value of the plan. */
export const setBack = ({ recipe }: Plan): { readonly inches: number; readonly shown: string } =>
  recipe.show === "cm" ? { inches: 3 / 25.4, shown: "3 mm" } : { inches: 1 / 8, shown: "1/8 in" };

/** Hook and eye both look to the left: towards the edge of the piece they are sewn to. */
export const hook = ({ x, y }: Point): Point[] => [
  p(x + 8, y - 3),
  p(x - 1, y - 3),
  p(x - 3, y - 1),
  p(x - 1, y + 1),
  p(x + 4, y + 1),
];
export const eye = ({ x, y }: Point): Point[] => [
  p(x + 4, y - 3),
  p(x, y - 3),
  p(x - 2, y - 1),
  p(x, y + 1),
  p(x + 4, y + 1),
];

/** The upper end turned back, hooks inside it; the lap, eyes on its outer face where the hooks come to lie. */
export function drawBand(drawing: Drawing, plan: Plan, top: number): void {
  const [depth, lap] = [penOf(plan, "attach.band.depth"), penOf(plan, "attach.band.lap")];
  const inward = Math.max(0, ...plan.hookSets.map(({ away, on }) => (on === "lap" ? 0 : pen(away))));
  const scale = Math.min(DEEP / depth, LAP / lap, MOST / (lap + inward));
  const foot = top + depth * scale;
  const back = setBack(plan);
  const set = Math.max(4, back.inches * scale);
  const end = BACK - Math.min(62, lap * scale);
  const mark = UNDER + lap * scale;
  const rest = mark + Math.max(38, inward * scale + 12);
  drawing.lines("fold", [upright(BACK, top, foot)], { soft: true });
  drawing.lines(
    "finished",
    [
      [p(BACK, top), p(end, top), p(end, foot), p(BACK, foot)],
      [p(rest, top), p(UNDER, top), p(UNDER, foot), p(rest, foot)],
    ],
    { soft: true },
  );
  drawing.lines(
    "body",
    [
      [p(end, top - 4), p(14, top - 4)],
      [p(end, foot - 4), p(14, foot - 4)],
    ],
    { soft: true },
  );
  goesOn(drawing, [
    [p(14, top - 4), p(14, foot - 4)],
    [p(rest, top), p(rest, foot)],
  ]);
  drawing.lines("station", [upright(mark, top, foot + 4)], { soft: true });
  const hooks = count(plan, "hooks.band");
  const heights = Array.from({ length: hooks }, (_, i) => top + ((i + 0.5) / hooks) * (foot - top));
  drawing.lines(
    "body",
    heights.flatMap((y) => [
      hook(p(end + set + 3, y)),
      ...[0, ...plan.hookSets.map(({ away, on }) => (on === "lap" ? -1 : 1) * pen(away))].map((off) =>
        eye(p(mark - set - 3 + off * scale, y)),
      ),
    ]),
    { soft: true },
  );
  way(drawing, p(BACK - 8, top - 9), p(UNDER + 10, top - 9));
  point(drawing, `${hooks} hooks, ${back.shown} from the end`, p(end + set, foot - 6), p(52, foot + 22), {
    sides: ["on"],
    width: 88,
  });
  say(drawing, `eyes at the closing mark; lap ${shownOf(plan, "attach.band.lap")}`, p(mark - 8, foot + 6), {
    sides: ["below"],
    gap: 3,
    width: 90,
  });
}
