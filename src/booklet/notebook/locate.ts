/** Where a stretch of a template begins in its text. */
import type { Place } from "../../recipe/message.ts";
import type { Template } from "../template/tree.ts";
import type { Line } from "./scan.ts";
import type { Span } from "./text-faults.ts";

/** Finds stretches one after the other: each is looked for after the one before. */
export function locator(lines: readonly Line[], span: Span): (template: Template) => Place {
  let from = 0;
  return (template) => {
    const [first] = template.filter((part) => typeof part !== "string" || part.trim() !== "");
    let index = from;
    if (typeof first === "string") {
      const begin = first.trimStart().split("\n")[0]?.trim() ?? "";
      const found = lines.findIndex(({ text }, i) => i >= from && text.trim().startsWith(begin));
      index = found < 0 ? from : found;
    } else if (first && "at" in first && first.at) index = first.at[0] - 1;
    from = Math.max(from, index);
    const text = lines[index]?.text ?? "";
    const lead = text.length - text.trimStart().length;
    return span(index + 1, lead + 1, Math.max(1, text.trim().length));
  };
}
