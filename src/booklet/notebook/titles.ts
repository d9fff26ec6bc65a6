/** Headings that would be a section's title. */
import { parseMarkdown } from "../parse.ts";

/** How many stand at the top of a text. */
export const titlesIn = (markdown: string): number =>
  parseMarkdown(markdown).children.filter((node) => node.type === "heading" && node.depth <= 2).length;
