/** What the sheets of one page print beside the plan's values: words of what is agreed, a pupil's bites, the lesson's times. */
import { printPart } from "../quantity/print.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { tally } from "../quantity/tape.ts";
import type { Plan } from "../solve/plan.ts";
import { PLEAT_NAMES } from "../solve/pleat.ts";
import { SET_WORDS } from "./evidence.ts";

/** "6 of 9/16 in and 2 of 5/8 in". */
function tallied(bites: readonly Quantity[], print: (q: Quantity) => string): string {
  return tally(bites)
    .map(({ size, count }) => `${count} of ${print(size)}`)
    .join(" and ");
}

/** How the waist is set, in words: the method's own, or the zones of one half from centre front. */
function settingWords({ recipe, sections }: Plan, print: (q: Quantity) => string): string {
  const { method, zones } = recipe.fullness;
  if (!zones) return SET_WORDS[method ?? "gauged"];
  const parts = sections.filter(({ half }) => half === "left");
  const words = parts.map((part) => {
    const set = part.set === "flat" || part.set === "gauged" ? part.set : PLEAT_NAMES[part.set];
    return `${set} ${print(part.waist)}`;
  });
  return `on each half from centre front ${words.join(", ")}`;
}

/** Words of `garment.…`. */
export function sheetWords(plan: Plan) {
  const { recipe, sampler } = plan;
  const print = (q: Quantity): string => printPart(q, recipe);
  const bites = sampler?.bites ?? [];
  return {
    setting: settingWords(plan, print),
    use: recipe.commission?.use,
    brings: recipe.commission?.brings,
    samplerOutside: tallied(
      bites.filter((_, i) => i % 2 === 0),
      print,
    ),
    samplerInside: tallied(
      bites.filter((_, i) => i % 2 === 1),
      print,
    ),
    samplerBites: tallied(bites, print),
    samplerSet: sampler?.laid ? PLEAT_NAMES[sampler.laid.set] : "gauged",
    samplerTowards: sampler?.laid?.towards,
  };
}

/** Flags of `is.…`. */
export function sheetFlags({ recipe, sampler }: Plan) {
  return {
    commission: recipe.commission !== undefined,
    brings: recipe.commission?.brings !== undefined,
    deposit: recipe.commission?.deposit !== undefined,
    use: recipe.commission?.use !== undefined,
    priced: recipe.work.price?.hour !== undefined,
    sampler: sampler !== undefined,
    samplerGauged: sampler?.bites !== undefined,
    samplerKnife: sampler?.laid?.set === "knife",
    samplerLong: sampler?.style === "long-and-short",
  };
}

/** One row a stage of the lesson; `times` prints stages so that they add up. */
export function lessonContext(
  { sampler }: Plan,
  times: (stages: Plan["stages"]) => { name: string; time: string }[],
) {
  return times(sampler?.stages ?? []).map(({ name, time }) => ({
    name,
    time,
    marking: name === "marking",
    gauging: name === "gauging",
    sewing: name === "whipping" || name === "sewing to the edge",
  }));
}
