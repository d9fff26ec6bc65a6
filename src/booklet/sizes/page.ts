/** Pages of all sizes together: self-contained, without script; a size is chosen by a press, and its numbers stand in the text. */

import { sizeStyle, style } from "plainwork:page";
import version from "plainwork:version";
import type { Element } from "hast";
import { escapeHtml } from "../escape-html.ts";
import { html } from "../nodes.ts";
import { paperStyles } from "../paper.ts";
import { nodesToHtml } from "../stringify.ts";
import { classOf } from "./nodes.ts";
import type { SizeSet } from "./set.ts";

const idOf = (size: number): string => `show-${size + 1}`;

/** For each size: its numbers instead of the letters, and its columns alone. */
const chosenStyle = (count: number): string =>
  Array.from({ length: count }, (_, size) => {
    const chosen = `:root:has(#${idOf(size)}:checked)`;
    const own = classOf(size).at(-1);
    return `${chosen} .key,${chosen} table.sizes .s:not(.${own}),${chosen} .not-${size + 1}{display:none}${chosen} .by-size .${own}{display:inline}${chosen} table.sizes td[colspan]::after{content:none}`;
  }).join("");

/** A row of presses: all sizes, or one. */
function chooser({ sizes }: SizeSet): Element {
  const press = (id: string, words: string, checked: boolean): Element =>
    html("label", {}, [
      html("input", { type: "radio", name: "show", id, ...(checked ? { checked: true } : {}) }),
      words,
    ]);
  const all = html("fieldset", { className: ["show-sizes"] }, [
    html("legend", {}, ["Show the numbers of"]),
    html("p", {}, ["Choose your size, and its own numbers stand in the text and alone in the tables."]),
    press("show-all", "all sizes", true),
    ...sizes.map(({ name }, size) => press(idOf(size), name, false)),
  ]);
  return html("section", { ariaLabel: "Choose a size" }, [all]);
}

/** A page's HTML. Deterministic: same sizes, same bytes. */
export function setPage(
  set: SizeSet,
  title: string,
  contents: readonly Element[],
  main: readonly Element[],
): string {
  return [
    "<!DOCTYPE html>",
    `<html lang="en-GB">`,
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta name="generator" content="Plainwork ${escapeHtml(version)}">`,
    `<title>${escapeHtml(title)}</title>`,
    `<style>${style}</style>`,
    `<style>${sizeStyle}${chosenStyle(set.sizes.length)}</style>`,
    ...paperStyles(),
    "</head>",
    "<body>",
    `<header><h1>${escapeHtml(title)}</h1></header>`,
    nodesToHtml([chooser(set), ...contents]),
    `<main>${nodesToHtml([...main])}</main>`,
    "</body>",
    "</html>",
    "",
  ].join("\n");
}
