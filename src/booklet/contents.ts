/** The list of chapters at the head of a page. */
import type { Element } from "hast";
import { textOf } from "./chapter-shape.ts";
import { html } from "./nodes.ts";

/** A chapter's title; "" for a note without a heading. */
export const titleOf = (chapter: Element): string =>
  textOf(chapter.children.filter((node) => node.type === "element" && node.tagName === "h2")).trim();

/** Links to every chapter, and to the measures. */
export const contents = (chapters: readonly Element[]): Element =>
  html("nav", { className: ["contents"], ariaLabel: "Chapters" }, [
    html(
      "ol",
      {},
      chapters
        .filter((chapter) => titleOf(chapter) !== "")
        .map((chapter) =>
          html("li", {}, [html("a", { href: `#${String(chapter.properties.id)}` }, [titleOf(chapter)])]),
        ),
    ),
  ]);
