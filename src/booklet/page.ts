/** The booklet as one self-contained page: style, figures, data and script inside; opens from disk, asks for nothing. */

import {
  chapters as chapterTrees,
  core,
  coreHash,
  script,
  scriptHash,
  style,
  styleHash,
} from "plainwork:page";
import { recordedData } from "../recipe/as-made/recorded.ts";
import type { Plan } from "../solve/plan.ts";
import { measuresSection } from "./fields.ts";
import { howTo } from "./howto.ts";
import { paperHashes, paperStyles } from "./paper.ts";
import type { OwnPart, Parts } from "./parts.ts";
import { nodesToHtml } from "./stringify.ts";

const escapeHtml = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[c] as string);

/** JSON that cannot close its script element. */
const safeJson = (data: unknown): string => JSON.stringify(data).replaceAll("<", "\\u003c");

/** What the page works everything out from again: the recipe as it is written. */
const pageData = ({ recipe }: Plan, { notebook, pictures }: OwnPart, main: string) => {
  const unseen = [...pictures].filter(([path]) => !main.includes(`data-photograph="${path}"`));
  const recorded = recordedData(recipe.recorded ?? {});
  return {
    written: recipe.written,
    body: recipe.body,
    ...(recipe.list ? { list: recipe.list } : {}),
    ...(recorded ? { recorded } : {}),
    ...(notebook.body || Object.keys(notebook.templates).length > 0 ? { notebook } : {}),
    ...(unseen.length > 0 ? { pictures: Object.fromEntries(unseen) } : {}),
  };
};

/** Where the checksum of the whole page goes, once it is known. */
export const UNSEALED = "0".repeat(64);

/** The page's HTML. Deterministic: same plan and chapters, same bytes. `source` is what it can be worked out again from. */
export function bookletPage(
  plan: Plan,
  parts: Parts,
  version: string,
  own: OwnPart,
  source?: { readonly text: string; readonly sum: string },
): string {
  const main = nodesToHtml(parts.nodes);
  const title = escapeHtml(plan.recipe.title);
  const styles = [styleHash, ...paperHashes()].map((hash) => `'${hash}'`).join(" ");
  const policy = `default-src 'none'; script-src '${scriptHash}' '${coreHash}'; style-src ${styles}; img-src data:; base-uri 'none'; form-action 'none'`;
  return [
    "<!DOCTYPE html>",
    `<html lang="en-GB" data-units="${plan.recipe.show}">`,
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escapeHtml(policy)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta name="generator" content="Plainwork ${escapeHtml(version)}">`,
    `<title>${title}</title>`,
    `<style>${style}</style>`,
    ...paperStyles(),
    `<script type="application/ld+json">${safeJson(howTo(plan, parts.nodes))}</script>`,
    "</head>",
    "<body>",
    `<header><h1>${title}</h1></header>`,
    nodesToHtml([parts.contents]),
    `<main>${main}</main>`,
    nodesToHtml([measuresSection(plan)]),
    `<script type="application/json" id="recipe">${safeJson(pageData(plan, own, main))}</script>`,
    ...(source
      ? [
          `<script type="application/json" id="source" data-sum="${source.sum}" data-page="${UNSEALED}">${source.text}</script>`,
        ]
      : []),
    `<script type="text/plain" id="core">${core}</script>`,
    `<script type="text/plain" id="chapters">${chapterTrees}</script>`,
    `<script>${script}</script>`,
    "</body>",
    "</html>",
    "",
  ].join("\n");
}
