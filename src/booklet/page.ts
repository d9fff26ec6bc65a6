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
import { wholeTitle } from "../recipe/recipe.ts";
import type { Plan } from "../solve/plan.ts";
import { escapeHtml } from "./escape-html.ts";
import { measuresSection } from "./fields.ts";
import { howTo } from "./howto.ts";
import { paperHashes, paperStyles } from "./paper.ts";
import type { OwnPart, Parts } from "./parts.ts";
import { sheetLinks } from "./sheets.ts";
import { nodesToHtml } from "./stringify.ts";

/** JSON that cannot close its script element. */
const safeJson = (data: unknown): string => JSON.stringify(data).replaceAll("<", "\\u003c");

/** What a page is put together from. */
export interface Framed {
  readonly title: string;
  readonly show: "in" | "cm";
  /** Further attributes of the whole page. */
  readonly attributes?: string;
  /** schema.org metadata. */
  readonly metadata?: unknown;
  /** Before and after the chapters, and the chapters, as HTML. */
  readonly before: string;
  readonly main: string;
  readonly after: string;
  /** What the page works everything out from again. */
  readonly data: unknown;
  /** What the page can be worked out again from, and its checksum. */
  readonly source?: { readonly text: string; readonly sum: string };
}

/** What the page works everything out from again: the recipe as it is written. */
export const pageData = ({ recipe }: Pick<Plan, "recipe">, { notebook, pictures }: OwnPart, main: string) => {
  const unseen = [...pictures].filter(([path]) => !main.includes(`data-photograph="${path}"`));
  const recorded = recordedData(recipe.recorded ?? {});
  return {
    written: recipe.written,
    body: recipe.body,
    ...(recipe.size === undefined ? {} : { size: recipe.size }),
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
  return framedPage(
    {
      title: wholeTitle(plan.recipe),
      show: plan.recipe.show,
      metadata: howTo(plan, parts.nodes),
      before: nodesToHtml([...sheetLinks(plan.recipe), parts.contents]),
      main,
      after: nodesToHtml([measuresSection(plan)]),
      data: pageData(plan, own, main),
      ...(source ? { source } : {}),
    },
    version,
  );
}

/** A page with the script and the core in it. */
export function framedPage(framed: Framed, version: string): string {
  const title = escapeHtml(framed.title);
  const styles = [styleHash, ...paperHashes()].map((hash) => `'${hash}'`).join(" ");
  const policy = `default-src 'none'; script-src '${scriptHash}' '${coreHash}'; style-src ${styles}; img-src data:; base-uri 'none'; form-action 'none'`;
  return [
    "<!DOCTYPE html>",
    `<html lang="en-GB" data-units="${framed.show}"${framed.attributes ? ` ${framed.attributes}` : ""}>`,
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escapeHtml(policy)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta name="generator" content="Plainwork ${escapeHtml(version)}">`,
    `<title>${title}</title>`,
    `<style>${style}</style>`,
    ...paperStyles(),
    ...(framed.metadata === undefined
      ? []
      : [`<script type="application/ld+json">${safeJson(framed.metadata)}</script>`]),
    "</head>",
    "<body>",
    `<header><h1>${title}</h1></header>`,
    framed.before,
    `<main>${framed.main}</main>`,
    framed.after,
    `<script type="application/json" id="recipe">${safeJson(framed.data)}</script>`,
    ...(framed.source
      ? [
          `<script type="application/json" id="source" data-sum="${framed.source.sum}" data-page="${UNSEALED}">${framed.source.text}</script>`,
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
