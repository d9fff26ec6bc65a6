/** The catalogue as Markdown. */
import { escapeMarkdown } from "../../booklet/escape.ts";
import type { Entry } from "./entry.ts";
import {
  address,
  buyWords,
  fullnessWords,
  methodWords,
  roundWords,
  titleWords,
  waistToHem,
  waistWords,
} from "./words.ts";

const COLUMNS: readonly (readonly [head: string, cell: (entry: Entry) => string])[] = [
  ["Garment", (entry) => `[${escapeMarkdown(titleWords(entry))}](${address(entry.folder)}/booklet.md)`],
  ["", (entry) => (entry.drawing ? `[picture](${address(entry.folder)}/figures/finished.svg)` : "")],
  ["Year", ({ year }) => year],
  ["Fibre", ({ fibre }) => escapeMarkdown(fibre)],
  ["Set", (entry) => escapeMarkdown(methodWords(entry))],
  ["Waist seam", (entry) => escapeMarkdown(waistWords(entry))],
  ["Waist to hem", (entry) => escapeMarkdown(waistToHem(entry))],
  ["Round", (entry) => escapeMarkdown(roundWords(entry))],
  ["Fullness", (entry) => escapeMarkdown(fullnessWords(entry))],
  ["Cloth to buy", (entry) => escapeMarkdown(buyWords(entry))],
  ["Beside it", ({ pages }) => pages.map(({ words, path }) => `[${words}](${address(path)})`).join(", ")],
  ["State", ({ state }) => escapeMarkdown(state)],
];

/** index.md: one row a garment. */
export function catalogueMarkdown(entries: readonly Entry[]): string {
  const row = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [
    "# Garments",
    "",
    row(COLUMNS.map(([head]) => head)),
    `|${" --- |".repeat(COLUMNS.length)}`,
    ...entries.map((entry) => row(COLUMNS.map(([, cell]) => cell(entry)))),
    "",
  ].join("\n");
}
