/** Prose cut into sections at its headings. */
import { parseMarkdown } from "../html.ts";

const MAY_HAVE_HEADING = /^ {0,3}(?:#{1,2}(?:[ \t]|$)|=+[ \t]*$|-+[ \t]*$)/m;

/** Pieces of a text, each from one `##` heading to the next; what stands before the first is a piece too. */
export function splitAtHeadings(markdown: string): string[] {
  if (!MAY_HAVE_HEADING.test(markdown)) return [markdown];
  const starts = parseMarkdown(markdown).children.flatMap((node) =>
    node.type === "heading" && node.depth <= 2 ? [node.position?.start.offset ?? 0] : [],
  );
  return [0, ...starts]
    .map((start, i) => markdown.slice(start, starts[i] ?? markdown.length))
    .filter((piece) => piece.trim() !== "");
}

/** How many headings of a section's own depth stand at the top of a text. */
export const headingsIn = (markdown: string): number =>
  parseMarkdown(markdown).children.filter((node) => node.type === "heading" && node.depth <= 2).length;
