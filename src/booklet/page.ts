/** The booklet as one self-contained page: style, figures, data and script inside; opens from disk, asks for nothing. */

import { script, scriptHash, style, styleHash } from "plainwork:page";
import type { Element } from "hast";
import type { Plan } from "../solve/plan.ts";
import { howTo } from "./howto.ts";
import { titleOf } from "./notebook/note.ts";
import { nodesToHtml } from "./stringify.ts";

const escapeHtml = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[c] as string);

/** JSON that cannot close its script element. */
const safeJson = (data: unknown): string => JSON.stringify(data).replaceAll("<", "\\u003c");

/** What the page's script reads: how every value was worked out. */
function pageData(plan: Plan) {
  return Object.fromEntries(
    [...plan.values.values()].map(({ name, shown, about, how, inNumbers, rule }) => [
      name,
      { shown, about, how, inNumbers, rule: rule ?? "" },
    ]),
  );
}

function contents(chapters: readonly Element[]): string {
  const items = chapters.flatMap((chapter) => {
    const title = titleOf(chapter);
    return title === undefined
      ? []
      : `<li><a href="#${String(chapter.properties.id)}">${escapeHtml(title)}</a></li>`;
  });
  return `<nav class="contents" aria-label="Chapters"><ol>${items.join("")}</ol></nav>`;
}

/** The page's HTML. Deterministic: same plan and chapters, same bytes. */
export function bookletPage(plan: Plan, chapters: readonly Element[], version: string): string {
  const title = escapeHtml(plan.recipe.title);
  const policy = `default-src 'none'; script-src '${scriptHash}'; style-src '${styleHash}'; img-src data:; base-uri 'none'; form-action 'none'`;
  return [
    "<!DOCTYPE html>",
    '<html lang="en-GB">',
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escapeHtml(policy)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta name="generator" content="Plainwork ${escapeHtml(version)}">`,
    `<title>${title}</title>`,
    `<style>${style}</style>`,
    `<script type="application/ld+json">${safeJson(howTo(plan, chapters))}</script>`,
    "</head>",
    "<body>",
    `<header><h1>${title}</h1></header>`,
    contents(chapters),
    `<main>${nodesToHtml(chapters)}</main>`,
    `<script type="application/json" id="values">${safeJson(pageData(plan))}</script>`,
    `<script>${script}</script>`,
    "</body>",
    "</html>",
    "",
  ].join("\n");
}
