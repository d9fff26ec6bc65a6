/** A chapter's title, as its shape has it. */
import shapes from "plainwork:shapes";
import type { Shape } from "../../../booklet/shape/tree.ts";

/** Without the values that stand in it. */
export function chapterTitle(name: string): string {
  const heading = (shapes[name] ?? []).find(
    (node) => typeof node === "object" && "tag" in node && node.tag === "h2",
  );
  return typeof heading === "object" && "in" in heading
    ? textsOf(heading.in).replace(/\s+/g, " ").trim()
    : name;
}

const textsOf = (shape: Shape): string =>
  shape
    .map((node) =>
      typeof node === "string"
        ? node
        : "in" in node
          ? textsOf(node.in)
          : "do" in node
            ? textsOf(node.do)
            : "",
    )
    .join("");
