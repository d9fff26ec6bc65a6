/** A template with every branch taken and every list gone through once, as Markdown, and where its parts stand in it. */
import type { Expression, Template } from "../template/tree.ts";
import { TemplateError } from "../template/tree.ts";
import type { Folder } from "./tree.ts";

/** A choice or a list: from `start` to `middle` what is done, from there to `end` what is done else. */
export interface Range {
  readonly kind: "if" | "each";
  readonly about: Expression;
  readonly start: number;
  readonly middle: number;
  readonly end: number;
}

export interface Expansion {
  readonly text: string;
  /** Outer ranges before inner ones. */
  readonly ranges: readonly Range[];
  /** What is printed in each slot. */
  readonly prints: readonly Expression[];
  /** Drawings; each stands in the text as an image of its number. */
  readonly drawings: readonly Drawing[];
}

export interface Drawing {
  readonly drawing: Folder;
  readonly name: Expression;
}

const SLOT_OPEN = "\uE000";
const SLOT_CLOSE = "\uE002";

/** A slot in parsed text. */
export const SLOT = /\uE000(\d+)\uE002/g;

/** Expands a template. A chapter within it cannot be. */
export function expand(template: Template): Expansion {
  let text = "";
  const ranges: Range[] = [];
  const prints: Expression[] = [];
  const drawings: Drawing[] = [];
  const walk = (parts: Template): void => {
    for (const part of parts) {
      if (typeof part === "string") text += part;
      else if ("print" in part) {
        const drawing = drawingOf(part.print);
        text += drawing
          ? `![drawing](drawings/${drawings.push(drawing) - 1}.svg)`
          : `${SLOT_OPEN}${prints.push(part.print) - 1}${SLOT_CLOSE}`;
      } else if ("chapter" in part) throw new TemplateError("a chapter cannot be put into another");
      else {
        const at = ranges.push(PLACE) - 1;
        const start = text.length;
        walk(part.do);
        const middle = text.length;
        // Blocks of two branches are never one block.
        if (areParted(text.slice(start), firstLines(part.else))) text += "\n";
        walk(part.else);
        ranges[at] = {
          kind: "if" in part ? "if" : "each",
          about: "if" in part ? part.if : part.each,
          start,
          middle,
          end: text.length,
        };
      }
    }
  };
  walk(template);
  return { text, ranges, prints, drawings };
}

/** What kind of block a line belongs to. */
function kindOf(line: string): "row" | "item" | "quote" | "heading" | "text" | "none" {
  const start = line.trimStart();
  if (start === "") return "none";
  if (start.startsWith("|")) return "row";
  if (/^(?:[-*+]|\d+[.)]) /.test(start)) return "item";
  if (start.startsWith(">")) return "quote";
  return start.startsWith("#") ? "heading" : "text";
}

/** Would what ends the one branch and what begins the other be read as one block, though they are two? */
function areParted(done: string, [first = "", second = ""]: readonly string[]): boolean {
  if (!done.endsWith("\n") || first === "") return false;
  const before = kindOf(done.trimEnd().split("\n").at(-1) ?? "");
  const after = kindOf(first);
  if (before === "row" && after === "row") return /^[|\s:-]*-[|\s:-]*$/.test(second);
  return before !== after && before !== "none" && before !== "heading";
}

/** The first two lines a branch begins with, as far as they are written. */
function firstLines(template: Template): string[] {
  let text = "";
  for (const part of template) {
    if (typeof part === "string") text += part;
    else if ("print" in part) text += "x";
    else if ("do" in part) text += firstLines(part.do).join("\n");
    if (text.split("\n").length > 2) break;
  }
  return text.split("\n").slice(0, 2);
}

const PLACE: Range = { kind: "if", about: "", start: 0, middle: 0, end: 0 };

const FOLDERS: Readonly<Record<string, Folder>> = { figure: "figures", guide: "guides" };

/** What `{{figure "balance"}}` and `{{guide name title}}` put in. */
function drawingOf(print: Expression): Drawing | undefined {
  if (typeof print === "string" || !("helper" in print)) return undefined;
  const drawing = FOLDERS[print.helper];
  const [name] = print.with;
  return drawing === undefined || name === undefined ? undefined : { drawing, name };
}
