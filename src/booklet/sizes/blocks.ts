/** A chapter's Markdown cut into the blocks that are the same, or not, from size to size; and put together again. */
import { withoutMarks } from "../marks.ts";

export type Kind = "heading" | "item" | "quote" | "table" | "figure" | "text" | "code";

/** One block. A list's items are blocks of their own, so are the drawings under them. */
export interface Block {
  readonly kind: Kind;
  /** Spaces before it: a drawing under a step. */
  readonly indent: string;
  /** `1. `, `- `, `## `, `> `. */
  readonly marker: string;
  /** Without its marker, number marks in it; a table's lines. */
  readonly text: string;
}

const ITEM = /^(?:\d+[.)]|[-*+])[ \t]+/;
const FIGURE = /^!\[[^\]]*\]\([^)]*\)$/;
const FENCE = /^(`{3,}|~{3,})/;

/** Cuts Markdown into its blocks. */
export function blocksOf(markdown: string): Block[] {
  const lines = markdown.split("\n");
  const blocks: Block[] = [];
  let at = 0;
  const take = (belongs: (line: string) => boolean): string[] => {
    const taken = [lines[at++] as string];
    while (at < lines.length && lines[at] !== "" && belongs(lines[at] as string))
      taken.push(lines[at++] as string);
    return taken;
  };
  const put = (kind: Kind, marker: string, text: string, indent = ""): void =>
    void blocks.push({ kind, indent, marker, text });
  while (at < lines.length) {
    const line = lines[at] as string;
    const indent = /^[ \t]*/.exec(line)?.[0] ?? "";
    const own = line.slice(indent.length);
    if (own === "") at += 1;
    else if (FENCE.test(own)) {
      const fence = FENCE.exec(own)?.[1] as string;
      const from = at++;
      while (at < lines.length && !(lines[at] as string).trimStart().startsWith(fence)) at += 1;
      put("code", "", lines.slice(from, ++at).join("\n"));
    } else if (FIGURE.test(withoutMarks(own))) {
      at += 1;
      put("figure", "", own, indent);
    } else if (own.startsWith("|"))
      put("table", "", take((next) => next.trimStart().startsWith("|")).join("\n"));
    else if (own.startsWith("#")) {
      at += 1;
      const marker = /^#+\s*/.exec(own)?.[0] as string;
      put("heading", marker, own.slice(marker.length));
    } else if (own.startsWith(">")) put("quote", "", take((next) => next.startsWith(">")).join("\n"));
    else if (ITEM.test(own)) {
      const marker = ITEM.exec(own)?.[0] as string;
      put(
        "item",
        marker,
        take((next) => !ITEM.test(next) && !/^[|#>]/.test(next))
          .join("\n")
          .slice(marker.length),
      );
    } else
      put(
        "text",
        "",
        take((next) => !ITEM.test(next) && !/^[|#>]/.test(next))
          .join("\n")
          .trimStart(),
        indent,
      );
  }
  return blocks;
}

/** Markdown of blocks: items of one list on lines side by side, all else apart. */
export function joined(blocks: readonly Block[]): string {
  let text = "";
  let last: Block | undefined;
  for (const block of blocks) {
    const sameList =
      last?.kind === "item" && block.kind === "item" && isNumbered(last.marker) === isNumbered(block.marker);
    const gap = last === undefined ? "" : sameList ? "\n" : "\n\n";
    text += `${gap}${block.indent}${block.marker}${block.text}`;
    last = block;
  }
  return text;
}

const isNumbered = (marker: string): boolean => /^\d/.test(marker);
