/** A workings block as it stands in the booklet: a table of names with their remarks, results and formulas. */
import { escapeMarkdown } from "../escape.ts";
import { marked } from "../marks.ts";
import type { WorkingsLine } from "./notebook.ts";
import type { Worked } from "./work.ts";

/** The table, as Markdown with number marks. A line that could not be calculated has no result. */
export function workingsTable(lines: readonly WorkingsLine[], { plan, answers }: Worked): string {
  if (lines.length === 0) return "";
  const result = ({ name }: WorkingsLine): string => {
    const value = plan.values.get(name);
    if (value) return marked(name, value.shown);
    const answer = answers.get(name);
    return answer === undefined ? "" : marked("", answer ? "yes" : "no");
  };
  const row = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  const what = ({ name, about }: WorkingsLine): string =>
    `**${escapeMarkdown(name)}**${about === undefined ? "" : `: ${escapeMarkdown(about)}`}`;
  const heads = ["Worked out", "Comes to", "By the formula"];
  return [
    row(heads),
    `|${" --- |".repeat(heads.length)}`,
    ...lines.map((line) => row([what(line), result(line), escapeMarkdown(line.formula)])),
  ].join("\n");
}
