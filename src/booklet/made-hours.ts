/** Hours taken beside hours planned, and the pace that an estimate rests on. */
import {
  add,
  compare,
  isNegative,
  isZero,
  type Quantity,
  quantity,
  sub,
  TIME,
} from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import { RATE_KINDS } from "../recipe/as-made/pace.ts";
import type { Standing } from "../recipe/as-made/standing.ts";
import type { Plan, Stage } from "../solve/plan.ts";
import { TIME_STEP_MINUTES } from "../solve/shown.ts";

/** A time to the minute, as a maker reads her own. */
export function spanWords(q: Quantity): string {
  const all = q.value.abs().div(60).round().n;
  const [hours, minutes] = [all / 60n, all % 60n];
  const words = [hours > 0n && `${hours} h`, (minutes > 0n || hours === 0n) && `${minutes} min`];
  return `${isNegative(q) ? "-" : ""}${words.filter(Boolean).join(" ")}`;
}

/** Chapters whose hours hold more than one stage. */
const TOGETHER: Readonly<Record<string, readonly string[]>> = { seams: ["seams", "pocket"] };

const total = (stages: readonly Stage[], end: "low" | "high"): Quantity =>
  stages.map((stage) => stage[end]).reduce(add, quantity(0n, TIME));

/** One row a chapter that took time, in the order of the work; what no stage plans is told without a plan. */
export function madeHours(plan: Plan, { hours }: Standing) {
  const rows = [...hours].map(([chapter, taken]) => {
    const names = TOGETHER[chapter] ?? [chapter];
    const stages = plan.stages.filter(({ name }) => names.includes(name));
    const named = stages.map(({ name }) => name).join(" and ") || chapter.replaceAll("-", " ");
    if (stages.length === 0)
      return { stage: named, planned: "not counted", taken: spanWords(taken), difference: "" };
    const [low, high] = [onSteps(total(stages, "low")), onSteps(total(stages, "high"))];
    return {
      stage: named,
      planned: span(low, high),
      taken: spanWords(taken),
      difference: apart(taken, low, high),
    };
  });
  if (hours.size < 2) return rows;
  const all = [...hours.values()].reduce(add);
  return [...rows, { stage: "in all", planned: "", taken: spanWords(all), difference: "" }];
}

const STEP = quantity(TIME_STEP_MINUTES * 60n, TIME);

/** As every planned time is printed. */
const onSteps = (time: Quantity): Quantity => roundTo(time, STEP);

function span(low: Quantity, high: Quantity): string {
  if (isZero(high)) return `under ${spanWords(STEP)}`;
  if (isZero(low)) return `up to ${spanWords(high)}`;
  return spanWords(low) === spanWords(high) ? spanWords(low) : `${spanWords(low)} to ${spanWords(high)}`;
}

function apart(taken: Quantity, low: Quantity, high: Quantity): string {
  if (isZero(high)) return "";
  if (compare(taken, low) < 0) return `${spanWords(sub(low, taken))} quicker than the quicker hand`;
  if (compare(taken, high) > 0) return `${spanWords(sub(taken, high))} longer than the slower hand`;
  return "as planned";
}

const KINDS = {
  running: "running stitches",
  marking: "marks",
  gauging: "bites of gauging",
  whip: "whip stitches",
};

/** What of the estimate rests on the maker's own pace, and on how many garments; undefined where nothing does. */
export function paceWords({ recipe, values }: Plan): string | undefined {
  const { paces = {} } = recipe.recorded ?? {};
  const counts = new Map<number, string[]>();
  for (const kind of RATE_KINDS) {
    const pace = paces[kind];
    const used = kind === "running" || values.has("section.pleats");
    if (!pace || !used || recipe.work.rates[kind]) continue;
    counts.set(pace.garments, [...(counts.get(pace.garments) ?? []), KINDS[kind]]);
  }
  const parts = [...counts].map(
    ([n, kinds]) => `${kinds.join(", ")} from ${n} other ${n === 1 ? "garment" : "garments"} you recorded`,
  );
  return parts.length > 0 ? `your own: ${parts.join("; ")}` : undefined;
}
