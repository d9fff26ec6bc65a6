/** A workings block as it stands in the booklet: a table of names, results and formulas. */
import { escapeMarkdown } from "../escape.ts";
import { marked } from "../marks.ts";
import type { WorkingsLine } from "./notebook.ts";
import type { Worked } from "./work.ts";

/** The table, as Markdown with number marks. A line that could not be calculated has no result. */
export function workingsTable(lines: readonly WorkingsLine[], { plan, answers }: Worked): string {
  if (lines.length === 0) return "";
  const withAbout = lines.some(({ about }) => about !== undefined);
  const result = ({ name }: WorkingsLine): string => {
    const value = plan.values.get(name);
    if (value) return marked(name, value.shown);
    const answer = answers.get(name);
    return answer === undefined ? "" : marked("", answer ? "yes" : "no");
  };
  const row = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  const heads = ["Worked out", "Comes to", ...(withAbout ? ["What it is"] : []), "By the formula"];
  return [
    row(heads),
    `|${" --- |".repeat(heads.length)}`,
    ...lines.map((line) =>
      row([
        escapeMarkdown(line.name),
        result(line),
        ...(withAbout ? [escapeMarkdown(line.about ?? "")] : []),
        escapeMarkdown(line.formula),
      ]),
    ),
  ].join("\n");
}
