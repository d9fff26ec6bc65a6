/** The catalogue as one page: whole without script; with it garments are sought, sorted and compared, without a server. */

import { deflateRawSync } from "node:zlib";
import { script, scriptHash, style, styleHash } from "plainwork:catalogue";
import { escapeHtml } from "../../booklet/escape-html.ts";
import { unbroken } from "../../figure/lettering.ts";
import { NAMES } from "../../solve/names.ts";
import { meaningOf } from "../../solve/sheet.ts";
import type { Entry, SaidName } from "./entry.ts";
import {
  address,
  fullnessWords,
  methodWords,
  roundWords,
  titleWords,
  waistToHem,
  waistWords,
} from "./words.ts";

const POLICY = `default-src 'none'; script-src '${scriptHash}'; style-src '${styleHash}'; img-src 'self' file:; base-uri 'none'; form-action 'none'`;

/** So many garments stand in the page as it opens, more than any window is high; the script makes the others when they are looked at. */
export const FIRST = 36;

/** A value in words: a result's own, or what its recipe's key means; nothing where neither says. */
function aboutOf(name: string): string {
  if (name in NAMES) return NAMES[name as keyof typeof NAMES].about;
  const path = name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  const about = meaningOf(path);
  return about === path ? "" : about;
}

/**
 * What the script compares: names once, then one text a garment with its values, and their exact ones where these print
 * otherwise, line by line. Packed (raw deflate, base64) until two are compared: a thousand garments have megabytes of it.
 */
function numbers(entries: readonly Entry[]): string {
  const linesOf = (entry: Entry): string[][] =>
    entry.numbers
      .split("\n")
      .filter(Boolean)
      .map((line) => line.split("\t"));
  const names = [...new Set(entries.flatMap((entry) => linesOf(entry).map(([name = ""]) => name)))];
  const about = names.map((name) => aboutOf(name));
  const rows = entries.map((entry) => {
    const cells = new Map(
      linesOf(entry).map(([name = "", shown = "", exactly = ""]) => [
        name,
        exactly === shown ? exactly : `${shown}\t${exactly}`,
      ]),
    );
    return names.map((name) => cells.get(name) ?? "").join("\n");
  });
  return deflateRawSync(JSON.stringify({ names, about, rows })).toString("base64");
}

/** @param sketch its picture as lines, where it is to be seen at once */
function card(entry: Entry, i: number, sketch?: string): string {
  const { folder, kind, year, fibre, state, picture, pages } = entry;
  const to = escapeHtml(address(folder));
  const title = escapeHtml(titleWords(entry));
  const file = picture ? `<img src="${to}/${picture}" alt="" width="150" height="100" loading="lazy">` : "";
  const what = [year, kind, fibre, methodWords(entry)].filter((word) => word !== "").join(", ");
  const facts = [
    ["Waist to hem", waistToHem(entry)],
    ["Waist", waistWords(entry)],
    ["Round", roundWords(entry)],
    ["Fullness", fullnessWords(entry)],
  ]
    .filter(([, text]) => text !== "")
    .map(([name, text]) => `${name}: ${unbroken(text as string)}`)
    .join("\n");
  const more = pages
    .map(({ words, path }) => `<a href="${escapeHtml(address(path))}">${words}</a>`)
    .join(", ");
  return `<li data-i="${i}">${sketch ?? file}<h2><a href="${to}/booklet.html">${title}</a></h2><p>${escapeHtml(what)}</p><p class="facts">${escapeHtml(facts)}</p>${state === "" ? "" : `<p class="state">${escapeHtml(state)}</p>`}${more === "" ? "" : `<p>${more}</p>`}<label class="compare"><input type="checkbox" value="${i}" aria-label="compare ${title}"> compare</label></li>`;
}

/** The others: text to the script, garments like the first to a browser without it. */
function theRest(entries: readonly Entry[]): readonly string[] {
  if (entries.length <= FIRST) return [];
  const cards = entries.slice(FIRST).map((entry, i) => card(entry, FIRST + i));
  return ['<noscript id="rest"><ul class="garments">', ...cards, "</ul></noscript>"];
}

const select = (id: string, words: string, all: string, options: readonly string[]): string =>
  `<label>${words} <select id="${id}"><option value="">${all}</option>${options.map((one) => `<option>${escapeHtml(one)}</option>`).join("")}</select></label>`;

const kinds = (entries: readonly Entry[], of: (entry: Entry) => string): string[] =>
  [...new Set(entries.map(of))].filter((word) => word !== "").sort();

/** The words that are filtered by, for each garment: fibre, setting, state, year. */
const facets = (entries: readonly Entry[]): string =>
  JSON.stringify(
    entries.map((entry) => [
      entry.fibre,
      methodWords(entry),
      entry.state,
      entry.year,
      numberOf(entry, "skirt.fullness"),
    ]),
  ).replaceAll("<", "\\u003c");

/** A value for sorting: near enough. */
function numberOf({ values }: Entry, name: SaidName): number {
  const [n = "", d = "1"] = (values.get(name)?.exact ?? "").split("/");
  return Number(n) / Number(d) || 0;
}

/**
 * index.html. Same plans, same bytes.
 *
 * @param sketches the pictures of the first garments as lines, by folder; another's is a file that is read when it is looked at
 */
export function cataloguePage(
  entries: readonly Entry[],
  sketches: ReadonlyMap<string, string> = new Map(),
): string {
  const sorts = ["by name", "by year", "by fullness"];
  return [
    "<!DOCTYPE html>",
    '<html lang="en-GB">',
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escapeHtml(POLICY)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    "<title>Garments</title>",
    `<style>${style}</style>`,
    "</head>",
    "<body>",
    "<header><h1>Garments</h1></header>",
    "<main>",
    '<search id="find" hidden>',
    '<label>Search <input id="words" type="search" autocomplete="off" placeholder="title, year, fibre, set"></label>',
    select(
      "fibre",
      "Fibre",
      "any",
      kinds(entries, ({ fibre }) => fibre),
    ),
    select("set", "Set", "any", kinds(entries, methodWords)),
    select(
      "state",
      "State",
      "any",
      kinds(entries, ({ state }) => state),
    ),
    `<label>Order <select id="sort">${sorts.map((one) => `<option>${one}</option>`).join("")}</select></label>`,
    "</search>",
    `<p id="count" role="status">${entries.length} ${entries.length === 1 ? "garment" : "garments"}</p>`,
    '<section id="comparison" aria-label="Two garments compared" hidden></section>',
    '<ul id="garments" class="garments">',
    ...entries.slice(0, FIRST).map((entry, i) => card(entry, i, sketches.get(entry.folder))),
    "</ul>",
    '<button id="more" type="button" hidden>More garments</button>',
    ...theRest(entries),
    "</main>",
    `<script type="application/json" id="facets">${facets(entries)}</script>`,
    `<script type="text/plain" id="numbers">${numbers(entries)}</script>`,
    `<script>${script}</script>`,
    "</body>",
    "</html>",
    "",
  ].join("\n");
}
