/** Answers of the workings, yes or no, put into the context beside the plan's values. */
import type { Context } from "../template/render.ts";

/** A copy of the context in which every answer stands at its dotted name. */
export function withAnswers(context: Context, answers: ReadonlyMap<string, boolean>): Context {
  const whole: Record<string, unknown> = { ...context };
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
