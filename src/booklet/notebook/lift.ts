/** Workings blocks lifted out of a text before its tags are read, and their tables put in where they stood. */
import { escapeMarkdown } from "../escape.ts";
import type { Part, Template } from "../template/tree.ts";
import type { WorkingsLine } from "./notebook.ts";
import type { Fence } from "./scan.ts";

const OPEN = "\uE010";
const CLOSE = "\uE011";

/** Characters that texts may not hold: they carry marks and places, or cannot be printed. */
export const FORBIDDEN = /[\p{Co}\p{Cs}\u2028\u2029]|[^\P{Cc}\t\r\n]/u;

/** The text with a mark in the place of each workings block; every other line keeps its number. */
export function lift(text: string, workings: readonly Fence[]): string {
  const lines = text.split("\n");
  workings.forEach(({ open, lines: inside, isClosed }, block) => {
    const last = (inside.at(-1)?.number ?? open.number) + (isClosed ? 1 : 0);
    for (let number = open.number; number <= last; number += 1) lines[number - 1] = "";
    lines[open.number - 1] = `${OPEN}${block}${CLOSE}`;
  });
  return lines.join("\n");
}

/** A tree with the tables of the workings in the places of the marks. */
export function putIn(template: Template, blocks: readonly (readonly WorkingsLine[])[]): Template {
  return template.flatMap((part): Part[] => {
    if (typeof part === "string") return inText(part, blocks);
    return "do" in part ? [{ ...part, do: putIn(part.do, blocks), else: putIn(part.else, blocks) }] : [part];
  });
}

function inText(text: string, blocks: readonly (readonly WorkingsLine[])[]): Part[] {
  return text
    .split(/\uE010(\d+)\uE011/)
    .flatMap((piece, i): Part[] =>
      i % 2 === 0 ? [piece] : ["\n\n", ...table(blocks[Number(piece)] ?? []), "\n\n"],
    )
    .filter((part) => part !== "");
}

/** Names with their remarks, results and formulas. */
function table(lines: readonly WorkingsLine[]): Part[] {
  if (lines.length === 0) return [];
  const rows = lines.flatMap(({ name, about, formula, isAnswer }): Part[] => {
    const path = `@root.${name}`;
    const result: Part = isAnswer ? { if: path, do: ["yes"], else: ["no"] } : { print: path };
    const what = about === undefined ? "" : `: ${escapeMarkdown(about)}`;
    return [`\n| **${escapeMarkdown(name)}**${what} | `, result, ` | ${escapeMarkdown(formula)} |`];
  });
  return ["| Worked out | Comes to | By the formula |\n| --- | --- | --- |", ...rows];
}
