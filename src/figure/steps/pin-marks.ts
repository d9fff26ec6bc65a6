/** Where the skirt is pinned to its edge: centre lines, sides, ends of parts and the opening, along one half. */
import { type Quantity, toFloat } from "../../quantity/quantity.ts";
import type { Plan, Section } from "../../solve/plan.ts";
import { pen, penOf } from "../measure.ts";

/** Both ends of the half across the page. */
export const [LEFT, RIGHT] = [30, 330] as const;

export interface Mark {
  readonly x: number;
  readonly words: string;
}

export interface PinnedHalf {
  readonly side: "left" | "right";
  /** Where a place stands across the page, in inches from centre front by the left. */
  across(at: Quantity): number;
  readonly sections: readonly Section[];
  readonly marks: readonly Mark[];
}

/** The half that the opening is in, from the inside: the wearer's left half runs from right to left. */
export function pinnedHalf(plan: Plan): PinnedHalf {
  const waist = penOf(plan, "waist.seam");
  const share = toFloat(plan.opening.share.value);
  const side = share > 0.5 ? "right" : "left";
  const from = (at: number): number => (side === "left" ? at : waist - at) / (waist / 2);
  const place = (share: number): number =>
    side === "left" ? RIGHT - share * (RIGHT - LEFT) : LEFT + share * (RIGHT - LEFT);
  const across = (at: Quantity): number => place(from(pen(at)));
  const sections = plan.sections.filter((section) => section.half === side);
  const named: Mark[] = [
    { x: place(0), words: "centre front: white" },
    { x: place(0.5), words: "side: blue" },
    { x: place(1), words: "centre back: red" },
  ];
  const opening: Mark = { x: place(from(share * waist)), words: "opening" };
  const marks: Mark[] = [];
  const put = (mark: Mark): void => {
    const same = marks.findIndex(({ x }) => Math.abs(x - mark.x) < 0.5);
    const before = marks[same];
    if (!before) marks.push(mark);
    else if (mark.words !== "" && mark.words !== "green")
      marks[same] = {
        x: before.x,
        words: [before.words, mark.words].filter((words) => words !== "" && words !== "green").join(", "),
      };
  };
  for (const mark of named) put(mark);
  const green = plan.sections.some(({ set }) => set !== "gauged") ? "green" : "";
  for (const { from: start, waist: length } of sections)
    for (const at of [pen(start), pen(start) + pen(length)]) put({ x: place(from(at)), words: green });
  put(opening);
  return { side, across, sections, marks: marks.sort((a, b) => a.x - b.x) };
}
