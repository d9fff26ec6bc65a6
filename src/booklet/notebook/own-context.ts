/** The template context of a plan with the maker's workings: answers, yes or no, stand beside the plan's values. */
import { contextOf } from "../context.ts";
import type { Context } from "../template/evaluate.ts";
import type { Worked } from "./work.ts";

/** @param figures the title of every figure that this garment has, by its name */
export function ownContext({ plan, answers }: Worked, figures: Readonly<Record<string, string>>): Context {
  const whole: Record<string, unknown> = { ...contextOf(plan), figures };
  for (const [name, answer] of answers) {
    const steps = name.split(".");
    const last = steps.pop() as string;
    let at = whole;
    for (const step of steps) {
      at[step] = { ...(at[step] as object | undefined) };
      at = at[step] as Record<string, unknown>;
    }
    at[last] = answer;
  }
  return whole;
}
