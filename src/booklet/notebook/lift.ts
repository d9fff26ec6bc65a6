/** Workings blocks lifted out of a text, so that what stands in them is not read as prose. */
import type { Fence } from "./scan.ts";
import { workingsSlot } from "./slots.ts";

/** The text with a slot in the place of each workings block; every other line keeps its number. */
export function lift(text: string, workings: readonly Fence[]): string {
  const lines = text.split("\n");
  workings.forEach(({ open, lines: inside, isClosed }, block) => {
    const last = (inside.at(-1)?.number ?? open.number) + (isClosed ? 1 : 0);
    for (let number = open.number; number <= last; number += 1) lines[number - 1] = "";
    lines[open.number - 1] = workingsSlot(block);
  });
  return lines.join("\n");
}
