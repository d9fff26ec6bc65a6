/**
 * Sheets of one printed page beside the booklet: a commission sheet and a class sheet, from templates of their own by the same
 * plan. Files without script, to print and to fill in by hand; they fit A4 and Letter.
 */

import { shapes, style, styleHash } from "plainwork:sheets";
import type { Element } from "hast";
import { type Recipe, wholeTitle } from "../recipe/recipe.ts";
import type { Plan } from "../solve/plan.ts";
import { escapeHtml } from "./escape-html.ts";
import { chapterNodes } from "./html.ts";
import { html } from "./nodes.ts";
import { type Sheet, sheetsOf } from "./sheet-list.ts";
import { nodesToHtml } from "./stringify.ts";
import type { Context } from "./template/evaluate.ts";

/** A sheet's page. Throws TemplateError when its template asks for what is not there. */
export function sheetPage({ name, title }: Sheet, plan: Plan, context: Context, version: string): string {
  const figures = new Map();
  const { node } = chapterNodes(name, shapes[name] ?? [], { plan, context, figures, guides: figures });
  return barePage(`${title}: ${wholeTitle(plan.recipe)}`, nodesToHtml([node]), version);
}

/** A page in the style of the sheets, without script. @param main its HTML */
export function barePage(title: string, main: string, version: string): string {
  const policy = `default-src 'none'; style-src '${styleHash}'; base-uri 'none'; form-action 'none'`;
  return [
    "<!DOCTYPE html>",
    '<html lang="en-GB">',
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escapeHtml(policy)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta name="generator" content="Plainwork ${escapeHtml(version)}">`,
    `<title>${escapeHtml(title)}</title>`,
    `<style>${style}</style>`,
    "</head>",
    "<body>",
    `<main>${main}</main>`,
    "</body>",
    "</html>",
    "",
  ].join("\n");
}

/** Links to the sheets, for the head of the booklet's page. */
export const sheetLinks = (recipe: Recipe): Element[] => {
  const asked = sheetsOf(recipe);
  if (asked.length === 0) return [];
  const links = asked.map(({ file, title }) => html("li", {}, [html("a", { href: file }, [title])]));
  return [html("nav", { className: ["sheets"], ariaLabel: "Sheets of one page" }, [html("ul", {}, links)])];
};
