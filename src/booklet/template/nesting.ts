/** Blocks inside blocks, as a plain reading of the tags has them: before the parser, whose time grows with the depth. */
import { DEEPEST_TEMPLATE } from "../../recipe/limits.ts";
import type { At } from "./tree.ts";

/** A block's opening tag. */
export interface Opened {
  readonly name: string;
  readonly index: number;
  readonly length: number;
}

const BLOCK_TAG = /(?<!\\)\{\{~?(?:([#/^])\s*([\w-]+)|else\s+\w)[^{}]*\}\}/g;

/** The blocks still open at the end, as a plain reading of the tags has it; and the first that nests too deeply. */
export function nesting(text: string): {
  readonly open: readonly Opened[];
  readonly tooDeep: Opened | undefined;
} {
  const open: Opened[] = [];
  let chained = 0;
  for (const tag of text.matchAll(BLOCK_TAG)) {
    const found = { name: tag[2] ?? "if", index: tag.index, length: tag[0].length };
    if (tag[1] === "/") {
      open.pop();
      chained = 0;
    } else if (tag[1] === undefined) chained += 1;
    else open.push(found);
    if (open.length + chained > DEEPEST_TEMPLATE) return { open, tooDeep: found };
  }
  return { open, tooDeep: undefined };
}

export function placeOfTag(text: string, { index, length }: Opened): At {
  const before = text.slice(0, index).split("\n");
  return [before.length, (before.at(-1) ?? "").length + 1, length];
}
